package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.DrillQuestion;
import org.belthigh.decide.Hold;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Player;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.plan.practice.Need;

/**
 * Answers "why not this drill?" for one player: what speaks against it by the rules, and where
 * nothing does, what is chosen before it.
 */
final class WhyNot {
  /** Drills that are named; the others are counted. */
  private static final int NAMED = 3;

  private final Curriculum curriculum;
  private final Player player;
  private final Drill drill;

  /** Decisions of the weeks that are planned, one a skill. */
  private final List<SkillDecision> working;

  private final Map<String, Integer> used;

  WhyNot(
      Curriculum curriculum,
      Player player,
      Drill drill,
      List<SkillDecision> working,
      Map<String, Integer> used) {
    this.curriculum = curriculum;
    this.player = player;
    this.drill = drill;
    this.working = List.copyOf(working);
    this.used = Map.copyOf(used);
  }

  /**
   * At home.
   *
   * @param choice the family's
   * @param free whether the week has a day for it
   * @param focus the skills in the order in which the week has them
   * @param bores drills that the player has had too often running
   * @param most sessions running with one drill
   * @param swingsLeft what the load leaves that day
   * @param tosses of a session
   */
  DrillAnswer.Setting home(
      LocalDate day,
      DrillChoice choice,
      boolean free,
      List<SkillDecision> focus,
      Predicate<Drill> bores,
      int most,
      Set<Hold.Kind> held,
      int swingsLeft,
      int tosses) {
    DrillQuestion asked =
        asked(choice.there(Place.HOME, true), day, held).swingsLeft(swingsLeft, tosses);
    List<Phrase> notes = new ArrayList<>();
    if (!free) {
      notes.add(Phrase.of("why-not.no-home-day"));
    }
    notes.addAll(turn(focus, d -> choice.against(d, asked).isEmpty(), bores));
    if (bores.test(drill)) {
      notes.add(Phrase.of("why-not.bores", "player", player.firstName(), "times", most));
    }
    List<Drill> order =
        decision(drill).workOn().drills().stream()
            .map(curriculum::drill)
            .filter(d -> choice.against(d, asked).isEmpty())
            .sorted(
                Comparator.comparing(bores::test)
                    .thenComparing(DrillChoice.leastUsed(used, Place.HOME)))
            .toList();
    List<Drill> before = order.subList(0, Math.max(0, order.indexOf(drill)));
    if (before.isEmpty() && notes.isEmpty() && order.contains(drill)) {
      notes.add(Phrase.of("why-not.comes-first"));
    }
    return setting(Place.HOME, day, choice, asked, notes, before, d -> atHome(d, bores));
  }

  /**
   * At a practice.
   *
   * @param adult whether a grown-up is there
   * @param no why there is no hitting for the player, or why nobody knows yet what comes first;
   *     empty where there is and one knows
   */
  DrillAnswer.Setting practice(
      LocalDate day,
      Place place,
      DrillChoice choice,
      boolean adult,
      Set<Hold.Kind> held,
      Optional<Phrase> no,
      List<SkillDecision> focus,
      Function<Drill, Need> need) {
    DrillQuestion asked = asked(choice.there(place, adult), day, held);
    List<Phrase> notes = new ArrayList<>();
    no.ifPresent(notes::add);
    boolean ranked = choice.against(drill, asked).isEmpty() && no.isEmpty();
    if (ranked) {
      notes.add(serves(need.apply(drill), focus));
      notes.add(Phrase.of("why-not.group"));
    }
    Comparator<Drill> order =
        Comparator.comparing(need).thenComparing(d -> used.getOrDefault(d.id(), 0));
    List<Drill> before =
        choice.drills(place).stream()
            .filter(d -> choice.against(d, asked).isEmpty() && order.compare(d, drill) < 0)
            .sorted(order.thenComparing(Drill::id))
            .toList();
    return setting(
        place,
        day,
        choice,
        asked,
        notes,
        ranked ? before : List.of(),
        d -> need.apply(d) == need.apply(drill) ? lessOften(d) : said("why-not.before.need", d));
  }

  private DrillQuestion asked(DrillQuestion there, LocalDate day, Set<Hold.Kind> held) {
    DrillQuestion asked = there.hitter(player.firstName(), player.ageOn(day));
    for (SkillDecision decision : working) {
      asked = asked.worksOn(decision.workOn());
    }
    return asked.behind(behind()).held(held);
  }

  /** The steps below those that are worked on. */
  private List<Step> behind() {
    return working.stream()
        .flatMap(
            d ->
                curriculum.ladders().get(d.skill()).steps().stream()
                    .filter(s -> s.rung() < d.workOn().rung()))
        .toList();
  }

  private SkillDecision decision(Drill of) {
    return working.stream().filter(d -> d.skill() == of.skill()).findFirst().orElseThrow();
  }

  private DrillAnswer.Setting setting(
      Place place,
      LocalDate day,
      DrillChoice choice,
      DrillQuestion asked,
      List<Phrase> notes,
      List<Drill> before,
      Function<Drill, Phrase> why) {
    return new DrillAnswer.Setting(
        place,
        day,
        Phrase.of("why-not.where", "place", place.id(), "date", day),
        choice.against(drill, asked),
        notes,
        before.stream().limit(NAMED).map(d -> new DrillAnswer.Before(d, why.apply(d))).toList(),
        Math.max(0, before.size() - NAMED));
  }

  /** When the drill's skill has its turn at home. */
  private List<Phrase> turn(
      List<SkillDecision> focus, Predicate<Drill> open, Predicate<Drill> bores) {
    // a skill without a drill that may be done has no turn, and one whose drills bore comes later
    Optional<SkillDecision> first =
        focus.stream()
            .filter(d -> any(d, open.and(bores.negate())))
            .findFirst()
            .or(() -> focus.stream().filter(d -> any(d, open)).findFirst())
            .filter(d -> d.skill() != drill.skill());
    if (focus.stream().noneMatch(d -> d.skill() == drill.skill())) {
      return List.of(
          Phrase.of("why-not.turn.other", "skills", names(focus), "skill", name(decision(drill))));
    }
    return first.stream()
        .map(d -> Phrase.of("why-not.turn.later", "first", name(d), "skill", name(decision(drill))))
        .toList();
  }

  private boolean any(SkillDecision decision, Predicate<Drill> wanted) {
    return decision.workOn().drills().stream().map(curriculum::drill).anyMatch(wanted);
  }

  /** What the drill is to the player at a practice. */
  private Phrase serves(Need need, List<SkillDecision> focus) {
    String key =
        switch (need) {
          case FIRST -> "first";
          case SECOND -> "second";
          case EASIER -> "easier";
          case OTHER, NOT_YET -> "other";
        };
    return Phrase.of(
        "why-not.serves." + key, "skills", names(focus), "skill", name(decision(drill)));
  }

  private List<Phrase> names(List<SkillDecision> decisions) {
    return decisions.stream().map(d -> Phrase.of("why-not.skill", "skill", name(d))).toList();
  }

  private LocalText name(SkillDecision decision) {
    return curriculum.ladders().get(decision.skill()).name();
  }

  private Phrase atHome(Drill before, Predicate<Drill> bores) {
    if (bores.test(drill) && !bores.test(before)) {
      return said("why-not.before.fresh", before);
    }
    if (used(before) < used(drill)) {
      return lessOften(before);
    }
    boolean tellsMore =
        DrillChoice.reluctance(before, Place.HOME) < DrillChoice.reluctance(drill, Place.HOME);
    return said(tellsMore ? "why-not.before.tells-more" : "why-not.before.order", before);
  }

  private Phrase lessOften(Drill before) {
    return said("why-not.before.less-often", before)
        .with("had", used(before))
        .with("own", used(drill));
  }

  private static Phrase said(String key, Drill before) {
    return Phrase.of(key, "drill", before.name());
  }

  private int used(Drill of) {
    return used.getOrDefault(of.id(), 0);
  }
}
