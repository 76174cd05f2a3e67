package org.belthigh.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Column;
import org.belthigh.model.Grain;
import org.belthigh.model.Row;
import org.belthigh.model.Spot;

/**
 * How likely each order of tosses is.
 *
 * <p>Each toss is drawn by itself from the shares, and a list is thrown away whole if a run gets
 * too long, or if, in a list of {@value #SHORT} or more, too few or too many belt-high tosses or
 * balls came: what is left is as likely as before, one against the other. Counts vary from list to
 * list, so that a child who counts learns next to nothing; {@code docs/toss-scripts.md} says how
 * much.
 *
 * <p>The limits are ours, an estimate: a run may go on as long as one of its kind would come more
 * than one time in twenty, at least three tosses for a row, a column or balls and two for a spot.
 * Forbidding repeats altogether would teach "never the same twice".
 */
final class TossLaw {
  private static final int SAME_ANSWER = 3;
  private static final int SAME_SPOT = 2;

  /** A run that would come less often than this is too long. */
  private static final double RARE = 0.05;

  /** A list with fewer tosses may have any count of belt-high ones and of balls. */
  private static final int SHORT = 12;

  private static final int BALLS = Math.max(Row.values().length, Column.values().length);

  private static final int TRIES = 100_000;

  private final double[] shares;
  private final int tosses;
  private final int[] groups;
  private final int[] spotRuns;
  private final int[] groupRuns = new int[BALLS + 1];
  private final Bounds belts;
  private final Bounds balls;

  /** Fewest and most of a kind, both allowed. */
  record Bounds(int least, int most) {
    /**
     * Half of what is expected, and half as much again and one: wide, so that it tells little. A
     * short list has none: its last tosses would be told by the first.
     */
    static Bounds of(int tosses, double share) {
      double expected = tosses * share;
      return tosses < SHORT
          ? new Bounds(0, tosses)
          : new Bounds((int) Math.ceil(expected / 2), (int) Math.ceil(1.5 * expected + 1));
    }
  }

  /**
   * A law for {@code tosses} tosses.
   *
   * @param shares weight of each spot, 0 or more; a spot that is missing is never tossed
   * @param grain at which spots are told apart: by columns runs are of a column, else of a row
   */
  TossLaw(Map<Spot, Double> shares, int tosses, Grain grain) {
    double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!(sum > 0) || tosses < 1) {
      throw new IllegalArgumentException("No law for " + tosses + " tosses of " + shares);
    }
    this.tosses = tosses;
    this.groups =
        Arrays.stream(Spot.values()).mapToInt(spot -> group(spot, grain == Grain.COLUMN)).toArray();
    this.shares = new double[Spot.values().length];
    shares.forEach((spot, share) -> this.shares[spot.ordinal()] = share / sum);
    spotRuns = new int[this.shares.length];
    for (Spot spot : Spot.values()) {
      spotRuns[spot.ordinal()] = longest(share(spot), SAME_SPOT);
      groupRuns[group(spot)] = longest(share(s -> group(s) == group(spot)), SAME_ANSWER);
    }
    belts = Bounds.of(tosses, share(Spot::beltHigh));
    balls = Bounds.of(tosses, share(Spot.BALL));
  }

  /** The law of a drill's mix, the three sides alike. */
  static TossLaw of(Drill.Mix mix, int tosses) {
    return new TossLaw(shares(mix), tosses, Grain.ROW);
  }

  /** Each spot's part of a mix, the three sides alike. */
  static Map<Spot, Double> shares(Drill.Mix mix) {
    Map<Spot, Double> shares = new EnumMap<>(Spot.class);
    int[] rows = {mix.low(), mix.belt(), mix.high()};
    for (Row row : Row.values()) {
      for (Column column : Column.values()) {
        shares.put(Spot.at(row, column), rows[row.ordinal()] / 300.0);
      }
    }
    shares.put(Spot.BALL, mix.ball() / 100.0);
    return shares;
  }

  private static int longest(double share, int least) {
    return share >= 1
        ? Integer.MAX_VALUE
        : Math.max(least, (int) Math.ceil(Math.log(RARE) / Math.log(share)));
  }

  /** Runs are of a row or a column, or of balls. */
  private static int group(Spot spot, boolean byColumn) {
    Optional<Integer> answer =
        byColumn ? spot.column().map(Column::ordinal) : spot.row().map(Row::ordinal);
    return answer.orElse(BALLS);
  }

  private int group(Spot spot) {
    return groups[spot.ordinal()];
  }

  private double share(Predicate<Spot> which) {
    return Arrays.stream(Spot.values()).filter(which).mapToDouble(this::share).sum();
  }

  /** How likely a toss goes there before anything is thrown away, 0 to 1. */
  double share(Spot spot) {
    return shares[spot.ordinal()];
  }

  int tosses() {
    return tosses;
  }

  /**
   * All that the past of a list says about its future.
   *
   * @param last empty at the start
   * @param spotRun tosses to the same spot just now
   * @param groupRun tosses to the same row or column, or balls, just now
   */
  record Past(int tossed, Optional<Spot> last, int spotRun, int groupRun, int belts, int balls) {}

  Past start() {
    return new Past(0, Optional.empty(), 0, 0, 0, 0);
  }

  /** The past with one toss more, or empty where no list may go on like that. */
  Optional<Past> after(Past past, Spot spot) {
    boolean sameSpot = past.last().filter(s -> s == spot).isPresent();
    boolean sameGroup = past.last().filter(s -> group(s) == group(spot)).isPresent();
    int spotRun = sameSpot ? past.spotRun() + 1 : 1;
    int groupRun = sameGroup ? past.groupRun() + 1 : 1;
    int beltsNow = past.belts() + (spot.beltHigh() ? 1 : 0);
    int ballsNow = past.balls() + (spot.strike() ? 0 : 1);
    int left = tosses - past.tossed() - 1;
    boolean allowed =
        share(spot) > 0
            && (spotRun <= spotRuns[spot.ordinal()] || !spot.strike())
            && groupRun <= groupRuns[group(spot)]
            && beltsNow <= belts.most()
            && ballsNow <= balls.most()
            && beltsNow + left >= belts.least()
            && ballsNow + left >= balls.least();
    return allowed
        ? Optional.of(
            new Past(past.tossed() + 1, Optional.of(spot), spotRun, groupRun, beltsNow, ballsNow))
        : Optional.empty();
  }

  /** One list. */
  List<Spot> draw(SplittableRandom random) {
    for (int i = 0; i < TRIES; i++) {
      List<Spot> list = attempt(random);
      if (list.size() == tosses) {
        return Collections.unmodifiableList(list);
      }
    }
    throw new IllegalStateException("No list of " + tosses + " tosses keeps to its limits");
  }

  private List<Spot> attempt(SplittableRandom random) {
    List<Spot> list = new ArrayList<>(tosses);
    Optional<Past> past = Optional.of(start());
    while (list.size() < tosses) {
      Spot spot = one(random);
      past = after(past.orElseThrow(), spot);
      if (past.isEmpty()) {
        return List.of();
      }
      list.add(spot);
    }
    return list;
  }

  private Spot one(SplittableRandom random) {
    double left = random.nextDouble();
    Spot drawn = Spot.BALL;
    for (Spot spot : Spot.values()) {
      if (share(spot) > 0) {
        drawn = spot;
        left -= share(spot);
        if (left < 0) {
          break;
        }
      }
    }
    return drawn;
  }
}
