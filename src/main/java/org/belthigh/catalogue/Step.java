package org.belthigh.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.model.Coded;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Skill;

/**
 * One step of a skill's ladder.
 *
 * @param id such as {@code see-2}; people never see the number
 * @param rung 1 for the first step of the ladder
 * @param aim what the child tries to do, one short sentence
 * @param letGo what to say instead to a hitter who swings at too many balls; only where {@code
 *     measured} is takes-and-chases, and there empty where the usual words serve
 * @param measured how its tosses are counted
 * @param grain how finely spots are called; only where {@code measured} is zone-call
 * @param fromAge youngest age, in whole years, at which it is asked for
 * @param judgedFrom below this age it is a game and nobody is judged
 * @param startFrom youngest age that begins here without a log; empty where nobody does
 * @param startTo oldest such age
 * @param needs steps, of any skill, that must be behind the player
 * @param tosses counted tosses before a judgement is tried
 * @param bars what a judgement is held against; two for choose, one for the others
 * @param drills ids, in the order of preference
 */
public record Step(
    String id,
    Skill skill,
    int rung,
    LocalText name,
    LocalText aim,
    LocalText cue,
    LocalText easyCue,
    Optional<LetGo> letGo,
    Measured measured,
    Optional<Grain> grain,
    int fromAge,
    OptionalInt judgedFrom,
    OptionalInt startFrom,
    OptionalInt startTo,
    List<String> needs,
    int tosses,
    List<Bar> bars,
    List<String> drills) {
  public Step {
    needs = List.copyOf(needs);
    bars = List.copyOf(bars);
    drills = List.copyOf(drills);
  }

  /** Aim and cue for a hitter who swings at too many balls. */
  public record LetGo(LocalText aim, LocalText cue) {}

  /** How the tosses of a step are counted. */
  public enum Measured implements Coded {
    ZONE_CALL,
    TAKES_AND_CHASES,
    HARD_HIT,
    FIELD_CALL
  }

  /** Which share a bar is about. */
  public enum Counted implements Coded {
    CALLS,
    TAKES,
    CHASES,
    HARD_HITS,
    SENT
  }

  /**
   * A mark and a floor, by the ids of their parameters. For takes and chases fewer is better, so
   * the mark lies below the floor.
   */
  public record Bar(Counted counted, String mark, String floor) {}

  /** Whether a player of {@code age} without a log begins here. */
  public boolean startsAt(int age) {
    return startFrom.isPresent() && age >= startFrom.getAsInt() && age <= startTo.orElseThrow();
  }

  /** Whether a player of {@code age} is judged here, or only plays. */
  public boolean judged(int age) {
    return judgedFrom.isEmpty() || age >= judgedFrom.getAsInt();
  }
}
