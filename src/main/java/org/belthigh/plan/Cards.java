package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Comeback;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Hold;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Player;
import org.belthigh.intake.Wellness;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/** The card: one player, one week, at most three things to do. */
final class Cards {
  private static final int MOST_THINGS = 3;

  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final LocalDate first;

  Cards(Catalogue catalogue, Curriculum curriculum, LocalDate first) {
    this.catalogue = catalogue;
    this.curriculum = curriculum;
    this.first = first;
  }

  Card card(
      Player player,
      List<Day> days,
      List<SkillDecision> focus,
      List<SkillDecision> decisions,
      List<Hold> holds,
      Optional<Comeback> back,
      ArmBox arm,
      PlannedWeek kind,
      boolean assumed) {
    LocalDate last = first.plusDays(6);
    List<Day> week = days.stream().filter(d -> !d.date().isAfter(last)).toList();
    List<Card.Thing> things = things(player, week, focus, decisions);
    SkillDecision lead = focus.get(0);
    boolean idle = things.isEmpty();
    boolean off = kind.kind() == PlannedWeek.Kind.TIME_OFF;
    return new Card(
        first,
        last,
        idle
            ? Phrase.of(
                holds.stream().anyMatch(h -> h.stopsSwinging() && !h.from().isAfter(last))
                    ? "aim.heal"
                    : off ? "aim.time-off" : "aim.rest")
            : Phrase.of("aim", "aim", Focus.aim(lead)),
        idle
            ? LocalText.of("Watch a game and have fun", "Mira un juego y diviértete")
            : Focus.cue(lead),
        kind.says().filter(says -> off || !idle),
        things,
        idle ? Optional.empty() : Optional.of(picture(player, lead, things)),
        movesOn(focus, idle),
        wentWell(player, decisions),
        arm,
        held(inFamily(holds), back, "hold.back", assumed && !idle),
        held(inTheOpen(holds), back, "hold.open.back", assumed && !idle));
  }

  private static List<Phrase> held(
      List<Phrase> holds, Optional<Comeback> back, String says, boolean assumed) {
    Stream<Phrase> allowed = back.map(b -> Phrase.of(says, "last", b.last())).stream();
    Stream<Phrase> days = assumed ? Stream.of(Phrase.of("day.assumed")) : Stream.of();
    return Stream.of(holds.stream(), allowed, days).flatMap(s -> s).distinct().toList();
  }

  private List<Phrase> inTheOpen(List<Hold> holds) {
    return holds.stream().filter(h -> h.cause().isPresent()).map(this::inTheOpen).toList();
  }

  private Phrase inTheOpen(Hold hold) {
    Phrase what = Phrase.of("hold.open." + hold.kind().id());
    return hold.from().isAfter(first)
        ? Phrase.of("hold.from", "date", hold.from(), "what", what)
        : what;
  }

  private static List<Phrase> inFamily(List<Hold> holds) {
    List<Phrase> lines = new ArrayList<>();
    Set<Wellness.Kind> said = EnumSet.noneOf(Wellness.Kind.class);
    for (Hold hold : holds) {
      if (hold.cause().isPresent()) {
        // a sore arm holds throwing and swinging: the cause is said once
        boolean first = said.add(hold.cause().get());
        lines.add(first ? hold.because().phrase() : Phrase.of("hold.also." + hold.kind().id()));
        hold.notes().forEach(n -> lines.add(n.phrase()));
      }
    }
    return lines;
  }

  private SpotPicture picture(Player player, SkillDecision lead, List<Card.Thing> things) {
    return new SpotPicture(
        HomeWork.grain(lead),
        HomeWork.side(player),
        lookFor(lead),
        Body.rows(Body.stature(player, catalogue.growth(), first)),
        player.heightCm().isEmpty(),
        things.stream().anyMatch(t -> t.swings() > 0));
  }

  /** Belt-high is where a good ball to hit is; a caller of spots looks for all of them. */
  private static List<String> lookFor(SkillDecision lead) {
    boolean rows = HomeWork.grain(lead) == org.belthigh.model.Grain.ROW;
    return rows && lead.skill() != Skill.SEE ? List.of("belt") : List.of();
  }

  /** Drills of the week, the most important skill first, home before the rest. */
  private List<Card.Thing> things(
      Player player, List<Day> week, List<SkillDecision> focus, List<SkillDecision> decisions) {
    Map<String, List<Day>> byDrill = new LinkedHashMap<>();
    for (Day day : week) {
      for (Item item : day.items()) {
        byDrill.computeIfAbsent(day.place() + "|" + item.drill(), k -> new ArrayList<>()).add(day);
      }
    }
    return byDrill.entrySet().stream()
        .map(e -> thing(player, e.getValue(), e.getKey(), decisions))
        .sorted(
            Comparator.<Card.Thing>comparingInt(t -> t.place() == Place.HOME ? 0 : 1)
                .thenComparingInt(t -> rank(t, focus))
                .thenComparingInt(t -> -t.days().size())
                .thenComparing(t -> t.days().get(0)))
        .limit(MOST_THINGS)
        .sorted(Comparator.comparing(t -> t.days().get(0)))
        .toList();
  }

  private int rank(Card.Thing thing, List<SkillDecision> focus) {
    for (int i = 0; i < focus.size(); i++) {
      Step step = focus.get(i).workOn();
      boolean own =
          step.drills().stream()
              .map(curriculum::drill)
              .anyMatch(d -> d.name().equals(thing.drill()));
      if (own) {
        return i;
      }
    }
    return focus.size();
  }

  private Card.Thing thing(
      Player player, List<Day> days, String key, List<SkillDecision> decisions) {
    String drillId = key.substring(key.indexOf('|') + 1);
    Item item =
        days.get(0).items().stream()
            .filter(i -> i.drill().equals(drillId))
            .findFirst()
            .orElseThrow();
    Drill drill = curriculum.drill(drillId);
    return new Card.Thing(
        days.stream().map(Day::date).toList(),
        days.get(0).place(),
        drill.name(),
        item.ball(),
        item.feed(),
        item.feet(),
        item.reps(),
        item.swings(),
        goodEnough(player, item, decisions));
  }

  /**
   * So many of so many, from the mark of the step; how the drill went, where nothing is counted.
   */
  private Phrase goodEnough(Player player, Item item, List<SkillDecision> decisions) {
    Step step =
        decisions.stream()
            .filter(d -> d.skill() == item.skill())
            .findFirst()
            .orElseThrow()
            .workOn();
    Step.Bar bar = step.bars().get(0);
    AgeBand band = AgeBand.of(player.ageOn(first));
    double mark = catalogue.parameter(bar.mark()).on(first).at(band);
    boolean judged = step.judged(player.ageOn(first));
    boolean watched = item.feed() == Feed.NONE && item.ball() == Ball.NONE;
    return switch (bar.counted()) {
      case CALLS -> watched ? Phrase.of("good.calls") : ofReps("good.calls.count", mark, item);
      case TAKES -> Phrase.of("good.choose");
      case HARD_HITS ->
          item.swings() == 0 ? Phrase.of("good.watch") : ofSwings("good.hard", mark, item);
      case CHASES -> Phrase.of("good.choose");
      case SENT ->
          !judged || item.swings() == 0
              ? Phrase.of("good.play")
              : ofSwings("good.sent", mark, item);
    };
  }

  private static Phrase ofReps(String key, double mark, Item item) {
    return Phrase.of(key, "good", atLeast(mark, item.reps()), "of", item.reps());
  }

  private static Phrase ofSwings(String key, double mark, Item item) {
    return Phrase.of(key, "good", atLeast(mark, item.swings()), "of", item.swings());
  }

  /** The fewest of {@code of} that reach {@code mark}, exactly as written in decimals. */
  static int atLeast(double mark, int of) {
    return java.math.BigDecimal.valueOf(mark)
        .multiply(java.math.BigDecimal.valueOf(of))
        .setScale(0, java.math.RoundingMode.CEILING)
        .intValueExact();
  }

  /** What has not been seen enough is left off the card. */
  private static List<Phrase> movesOn(List<SkillDecision> focus, boolean idle) {
    if (idle) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    for (SkillDecision decision : focus) {
      if (decision.outcome() == Outcome.MOVE_UP) {
        lines.add(
            Phrase.of(
                "moves.up",
                "from",
                decision.step().name(),
                "to",
                decision.next().orElseThrow().name()));
      } else if (decision.dip()) {
        lines.add(Phrase.of("moves.easy"));
      } else if (decision.outcome() != Outcome.NOT_SEEN_ENOUGH) {
        decision
            .settles()
            .ifPresent(
                more ->
                    lines.add(
                        Phrase.of("moves.more", "step", decision.step().name(), "more", more)));
      }
    }
    return lines.isEmpty() ? List.of(Phrase.of("moves.log")) : lines;
  }

  /** The share that lies furthest above its floor, in plain counts. */
  private static Phrase wentWell(Player player, List<SkillDecision> decisions) {
    return decisions.stream()
        .filter(d -> d.outcome() != Outcome.FIRM_UP)
        .flatMap(d -> d.evidence().bars().stream())
        .filter(r -> r.share().seen() >= 5)
        .filter(r -> lead(r) > 0)
        .max(Comparator.comparingDouble(Cards::lead))
        .map(r -> praise(player, r))
        .orElse(Phrase.of("well.welcome", "player", player.firstName()));
  }

  private static double lead(Evidence.Reading reading) {
    double ahead = reading.share().value() - reading.floor();
    return reading.mark() < reading.floor() ? -ahead : ahead;
  }

  private static Phrase praise(Player player, Evidence.Reading reading) {
    int made = reading.share().made();
    int seen = reading.share().seen();
    boolean fewer = reading.mark() < reading.floor();
    return Phrase.of(
        "well." + reading.counted().id(),
        "player",
        player.firstName(),
        "made",
        fewer ? seen - made : made,
        "of",
        seen);
  }
}
