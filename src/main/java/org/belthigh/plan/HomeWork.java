package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Growth;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Player;
import org.belthigh.model.Bats;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;

/** One session in the driveway: which drill, how much of it, and the sheet that says so. */
final class HomeWork {
  private final DrillChoice choice;
  private final Doses doses;
  private final Told told;
  private final Growth growth;

  HomeWork(DrillChoice choice, Doses doses, Told told, Growth growth) {
    this.choice = choice;
    this.doses = doses;
    this.told = told;
    this.growth = growth;
  }

  /** What a session consists of. */
  record Session(Drill drill, SkillDecision decision, Item item) {}

  /**
   * The session of {@code day}.
   *
   * @param focus skills to work on, the one that comes first tried first
   * @param swingsLeft most swings the load allows that day
   * @return empty where no drill fits
   */
  Optional<Session> session(
      Player player,
      LocalDate day,
      List<SkillDecision> focus,
      Map<String, Integer> used,
      int swingsLeft) {
    int age = player.ageOn(day);
    for (SkillDecision decision : focus) {
      // after a dip two thirds are enough
      int tosses = doses.homeTosses(age) * (Focus.dip(decision) ? 2 : 3) / 3;
      for (DrillChoice.Swings swings : tries(swingsLeft, tosses)) {
        Optional<Session> session =
            choice
                .of(decision.workOn(), Place.HOME, true, swings, used)
                .map(d -> session(d, decision, age, tosses));
        if (session.filter(s -> s.item().swings() <= swingsLeft).isPresent()) {
          return session;
        }
      }
    }
    return Optional.empty();
  }

  private static List<DrillChoice.Swings> tries(int swingsLeft, int tosses) {
    return swingsLeft >= tosses
        ? List.of(DrillChoice.Swings.WANTED, DrillChoice.Swings.BARRED)
        : List.of(DrillChoice.Swings.BARRED);
  }

  private Session session(Drill drill, SkillDecision decision, int age, int tosses) {
    int swings = drill.swing() ? swings(drill, tosses) : 0;
    Item item =
        new Item(
            drill.id(),
            drill.skill(),
            decision.workOn().id(),
            choice.ball(drill, Place.HOME),
            drill.feed(),
            Told.feet(drill, age),
            tosses,
            swings,
            doses.homeMinutes(age));
    return new Session(drill, decision, item);
  }

  /** Every strike of the list may be swung at, so that the limit holds whatever the hitter does. */
  private static int swings(Drill drill, int tosses) {
    Drill.Mix mix = drill.mix();
    int[] counts =
        TossScript.counts(new int[] {mix.low(), mix.belt(), mix.high(), mix.ball()}, tosses);
    return tosses - counts[3];
  }

  /** The sheet of a session. */
  HomeSheet sheet(Player player, LocalDate day, Session session) {
    Drill drill = session.drill();
    int age = player.ageOn(day);
    Grain grain = grain(session.decision());
    List<Spot> spots = TossScript.of(drill.mix(), session.item().reps(), player.id() + '|' + day);
    DrillText text = told.of(drill, Place.HOME, age);
    boolean tossed = drill.feed() != Feed.NONE && drill.feed() != Feed.TEE;
    return new HomeSheet(
        day,
        text,
        session.item().minutes(),
        checks(drill, tossed),
        doses.batRingFeet(),
        doses.homeClearFeet(),
        tossed,
        tossed ? script(spots, grain) : List.of(),
        answers(drill),
        new SpotPicture(
            grain,
            side(player),
            List.of(),
            Body.rows(Body.stature(player, growth, day)),
            player.heightCm().isEmpty()),
        howTo(player, drill, text, tossed),
        stop(),
        Phrase.of("home.afterwards"));
  }

  /** The grain a child works at: that of the step, or low, belt, high where spots are no aim. */
  static Grain grain(SkillDecision decision) {
    Step step = decision.workOn();
    return step.grain().orElse(Grain.ROW);
  }

  /** The side to draw; a switch hitter's sheets show the right side, the other is its mirror. */
  static Side side(Player player) {
    return player.bats() == Bats.LEFT ? Side.LEFT : Side.RIGHT;
  }

  private static List<HomeSheet.ScriptToss> script(List<Spot> spots, Grain grain) {
    List<HomeSheet.ScriptToss> script = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      script.add(new HomeSheet.ScriptToss(i + 1, Phrase.of("target." + grain.seen(spots.get(i)))));
    }
    return script;
  }

  private static List<Phrase> checks(Drill drill, boolean tossed) {
    return java.util.stream.Stream.of(
            Optional.of("home.check.adult"),
            tossed ? Optional.of("home.check.ball") : Optional.<String>empty(),
            tossed ? Optional.of("home.check.eyes") : Optional.<String>empty(),
            drill.swing() ? Optional.of("home.check.helmet") : Optional.<String>empty(),
            drill.swing() ? Optional.of("home.check.ring") : Optional.<String>empty(),
            Optional.of("home.check.ground"),
            Optional.of("home.check.light"),
            Optional.of("home.check.pain"))
        .flatMap(Optional::stream)
        .map(Phrase::of)
        .toList();
  }

  /**
   * What one tick means, and what is written: without a swing only what was called can be right.
   */
  private static List<Phrase> answers(Drill drill) {
    String marks =
        drill.kind() == DrillKind.ZONE_CALL || drill.skill() == Skill.SEE
            ? "home.marks.see"
            : drill.swing() ? "home.marks." + drill.skill().id() : "home.marks.watch";
    return List.of(Phrase.of(marks + ".one"), Phrase.of(marks + ".two"));
  }

  private static List<Phrase> howTo(Player player, Drill drill, DrillText text, boolean tossed) {
    if (!tossed) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    lines.add(Phrase.of("home.how.stand", "distance", Say.distance(text.feet())));
    boolean quick = drill.decisionMs().isPresent();
    lines.add(Phrase.of(quick ? "home.how.firm" : "home.how.arc"));
    lines.add(Phrase.of("home.how.aim"));
    if (player.bats() == Bats.SWITCH && drill.swing()) {
      lines.add(Phrase.of("home.how.sides"));
    }
    lines.add(Phrase.of("home.how.cue", "cue", drill.cue()));
    return lines;
  }

  private static List<Phrase> stop() {
    return List.of(
        Phrase.of("home.stop.pain"), Phrase.of("home.stop.tired"), Phrase.of("home.stop.dark"));
  }
}
