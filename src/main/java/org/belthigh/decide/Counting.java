package org.belthigh.decide;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Toss;
import org.belthigh.model.AgeBand;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Skill;
import org.belthigh.model.Went;

/**
 * Which tosses count for a step, and which of them are successes.
 *
 * <p>A toss of a drill that belongs to easier steps of the same ladder alone does not count: nobody
 * moves up by easy days. A hitter who only watched has let nothing go.
 */
final class Counting {
  private final Curriculum curriculum;
  private final Step step;
  private final Map<String, Integer> hardest = new HashMap<>();
  private final Map<String, Integer> harder = new HashMap<>();

  Counting(Curriculum curriculum, Step step) {
    this.curriculum = curriculum;
    this.step = step;
  }

  /** Whether {@code toss} is a success of that kind; empty where it does not count. */
  Optional<Boolean> success(Step.Counted counted, Toss toss) {
    Drill drill = curriculum.drill(toss.drill());
    if (tooEasy(drill)) {
      return Optional.empty();
    }
    return switch (counted) {
      case CALLS -> call(toss);
      case TAKES -> choice(drill, toss, MeasureKind.MIDDLE_TAKE, toss.swing());
      case CHASES -> choice(drill, toss, MeasureKind.BALL_SWING, !toss.swing());
      case HARD_HITS -> driven(drill) ? toss.hit().map(h -> h == Hit.HARD) : Optional.empty();
      case SENT -> sent(toss);
    };
  }

  /** Whether tallies of {@code measure} with {@code drill} are of that kind and hard enough. */
  boolean counts(Step.Counted counted, MeasureKind measure, String drill) {
    boolean same =
        switch (counted) {
          case CALLS -> measure == MeasureKind.ZONE_RECOGNITION;
          case TAKES -> measure == MeasureKind.MIDDLE_TAKE;
          case CHASES -> measure == MeasureKind.BALL_SWING;
          case HARD_HITS ->
              measure == MeasureKind.COUNTDOWN
                  || (measure == MeasureKind.HARD_HIT && driven(curriculum.drill(drill)));
          case SENT -> measure == MeasureKind.FIELD_CALL;
        };
    return same && !tooEasy(curriculum.drill(drill));
  }

  /** How many rungs above the step a drill lies; 0 where it is the step's own or no ladder's. */
  int harder(String drill) {
    return harder.computeIfAbsent(
        drill,
        d -> step.drills().contains(d) ? 0 : Math.max(0, rungs(d).min().orElse(0) - step.rung()));
  }

  /** Rungs and notches by which a toss is harder than the step asks; below 0 easier. */
  int harder(Toss toss, Difficulty difficulty, AgeBand band) {
    return harder(toss.drill()) + difficulty.notches(toss, curriculum.drill(toss.drill()), band);
  }

  private boolean tooEasy(Drill drill) {
    int most = hardest.computeIfAbsent(drill.id(), d -> rungs(d).max().orElse(Integer.MAX_VALUE));
    return most < step.rung();
  }

  /** The rungs of this ladder that a drill belongs to. */
  private IntStream rungs(String drill) {
    return curriculum.ladders().get(step.skill()).steps().stream()
        .filter(s -> s.drills().contains(drill))
        .mapToInt(Step::rung);
  }

  private Optional<Boolean> call(Toss toss) {
    Grain grain = step.grain().orElseThrow();
    return toss.answer(grain).map(grain.seen(toss.zone())::equals);
  }

  /**
   * Whoever only watches chooses nothing, a ball that waits on a tee asks for no choice, and one
   * near the edge is neither right nor wrong.
   */
  private static Optional<Boolean> choice(
      Drill drill, Toss toss, MeasureKind measure, boolean good) {
    boolean tee = toss.feed().orElse(drill.feed()) == Feed.TEE;
    boolean counts = toss.countsFor(measure) && !toss.watched() && !tee && !toss.nearEdge();
    return counts ? Optional.of(good) : Optional.empty();
  }

  private static boolean driven(Drill drill) {
    return drill.skill() == Skill.DRIVE || drill.kind() == DrillKind.COUNTDOWN;
  }

  private static Optional<Boolean> sent(Toss toss) {
    return toss.countsFor(MeasureKind.FIELD_CALL)
        ? Optional.of(toss.went().flatMap(Went::field).equals(toss.field()))
        : Optional.empty();
  }
}
