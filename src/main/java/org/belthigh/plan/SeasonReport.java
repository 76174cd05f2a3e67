package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;

/**
 * One player's season up to the day a plan is made for: only what the log has.
 *
 * @param first first day of the season
 * @param last last day that is counted
 * @param worked skills with a logged toss, in the order of the skills
 * @param courses shares by stretches of whole fortnights; those with too little to show are left
 *     out
 * @param spots calls by spot, then and now, from each side of the plate with calls enough
 * @param weeks the latest twelve, counted from the season's first day; the last perhaps not over
 *     yet
 * @param mostPitches most pitches in one day by the strictest of the club's books; empty for a
 *     player who does not pitch
 * @param ahead what comes next, one line a skill
 * @param sources where bars and cut-offs come from
 */
public record SeasonReport(
    LocalDate first,
    LocalDate last,
    List<Worked> worked,
    List<Course> courses,
    List<Spots> spots,
    List<Week> weeks,
    OptionalInt mostPitches,
    List<Phrase> ahead,
    Phrase sources) {
  public SeasonReport {
    worked = List.copyOf(worked);
    courses = List.copyOf(courses);
    spots = List.copyOf(spots);
    weeks = List.copyOf(weeks);
    ahead = List.copyOf(ahead);
  }

  /**
   * A skill that was worked on.
   *
   * @param days with a logged toss of one of its drills
   */
  public record Worked(Skill skill, LocalText step, int days, int tosses) {}

  /**
   * How one share moved.
   *
   * @param what is counted, as words are named after it: {@code calls}, {@code belts-swung}, {@code
   *     balls-let-go}, {@code hard-hits}, {@code sent}
   * @param points by stretch, oldest first; at least one
   */
  public record Course(String what, List<Point> points) {
    public Course {
      points = List.copyOf(points);
    }
  }

  /** The share of a stretch that begins on {@code first}. */
  public record Point(LocalDate first, Share share) {}

  /**
   * Right calls by where the toss was, from one side of the plate.
   *
   * @param side where the hitter stood
   * @param now first day of the later half
   */
  public record Spots(
      Grain grain, Side side, LocalDate now, Map<Spot, Share> before, Map<Spot, Share> after) {
    public Spots {
      before = Map.copyOf(before);
      after = Map.copyOf(after);
    }
  }

  /**
   * A week's load. What nobody wrote down is empty, which is not zero.
   *
   * @param swings that were logged
   * @param most swings a week at the player's age on its first day
   * @param pitches that were reported, of every team
   * @param dayMost the most of them in one day
   */
  public record Week(
      LocalDate first, OptionalInt swings, int most, OptionalInt pitches, OptionalInt dayMost) {}
}
