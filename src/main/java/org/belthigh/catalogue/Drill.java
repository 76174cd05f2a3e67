package org.belthigh.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.LocalText;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/**
 * One thing to do, with all that a person needs to set it up.
 *
 * @param swing whether the hitter swings at all
 * @param logged whether a log is asked for; where not, nothing is written and nothing is missed
 * @param balls the ball by place; the keys are the places where the drill may be done
 * @param feet toss distance by age band, in feet; 0 for a tee
 * @param decisionMs flight time aimed at, in milliseconds
 * @param mix where the tosses go, in whole percent, adding up to 100
 * @param fields which field is called before a toss; empty where none is, or the hitter picks
 * @param startCount where a countdown starts; 12 unless said
 * @param reps tosses per player and visit
 * @param swings full swings of those, at most {@code reps}; 0 without a swing
 * @param minutes one visit to the station
 * @param perMinute tosses per minute that the station can run
 * @param adults grown-ups needed; at least 1 wherever there is a swing
 * @param safety decides what must be printed beside it
 */
public record Drill(
    String id,
    LocalText name,
    Skill skill,
    DrillKind kind,
    LocalText setup,
    LocalText cue,
    LocalText write,
    boolean swing,
    boolean logged,
    Map<Place, Ball> balls,
    Feed feed,
    Map<AgeBand, Integer> feet,
    OptionalInt decisionMs,
    Mix mix,
    Optional<Fields> fields,
    int startCount,
    int reps,
    int swings,
    int minutes,
    double perMinute,
    int adults,
    int helpers,
    List<String> gear,
    Safety safety,
    Variant easier,
    Variant harder,
    Optional<LocalText> adapt) {
  public Drill {
    balls = Map.copyOf(balls);
    feet = Map.copyOf(feet);
    gear = List.copyOf(gear);
  }

  /** What must be printed beside a drill. */
  public enum Safety implements Coded {
    WATCH,
    TEE,
    SOFT_TOSS,
    FRONT_TOSS,
    OVERHAND,
    MACHINE
  }

  /** Whole percent of tosses by height, and balls; adds up to 100. */
  public record Mix(int low, int belt, int high, int ball) {
    public Mix {
      if (low + belt + high + ball != 100) {
        throw new IllegalArgumentException(
            "A mix adds up to 100, but " + low + "+" + belt + "+" + high + "+" + ball + " do not");
      }
    }
  }

  /** Which field is called before a toss. */
  public enum Fields implements Coded {
    /** Always the pull side. */
    PULL,
    /** Always the opposite field. */
    OPPOSITE,
    /** One after the other in no order: three until 13, then five. */
    ANY
  }

  /** An easier or a harder form: another drill, or just words. */
  public record Variant(Optional<String> drill, LocalText text) {}

  /** Whether a ball comes through the air, from a hand or a machine. */
  public boolean tossed() {
    return feed != Feed.NONE && feed != Feed.TEE;
  }

  /** Whether it is done by watching the tosses to another hitter: without gear, and not at home. */
  public boolean watchesOthers() {
    return feed == Feed.NONE && adults == 0 && !swing && !at(Place.HOME);
  }

  /** Whether it may be done at {@code place}. */
  public boolean at(Place place) {
    return balls.containsKey(place);
  }
}
