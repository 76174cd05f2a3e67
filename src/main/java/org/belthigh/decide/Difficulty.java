package org.belthigh.decide;

import java.util.Optional;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Toss;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;

/**
 * How a toss compares with what its drill asks for, in notches of about one rung.
 *
 * <p>A faster feed is harder, and so is a toss from nearer, which leaves less time to decide, and a
 * ball that flies true where the drill has one that slows down. What the log does not say is taken
 * to be as the drill has it. The size of a notch and the distance that makes one are ours, common
 * practice.
 *
 * @param nearer part of the drill's distance by which a toss must be nearer to be a notch harder;
 *     as much farther makes it a notch easier
 */
record Difficulty(double nearer) {
  private static final int MOST = 3;

  /** The same for a slower and a faster feed; a tee has no flight at all. */
  private static int rank(Feed feed) {
    return switch (feed) {
      case NONE, TEE -> 0;
      case FLIP -> 1;
      case FRONT_TOSS -> 2;
      case OVERHAND, MACHINE -> 3;
    };
  }

  /** Notches by which {@code toss} is harder than {@code drill}, -3 to 3; below 0 easier. */
  int notches(Toss toss, Drill drill, AgeBand band) {
    int notches = feed(toss, drill) + distance(toss, drill, band) + ball(toss, drill);
    return Math.max(-MOST, Math.min(MOST, notches));
  }

  private static int feed(Toss toss, Drill drill) {
    Optional<Feed> feed = toss.feed().filter(f -> f != Feed.NONE && drill.feed() != Feed.NONE);
    return feed.map(f -> rank(f) - rank(drill.feed())).orElse(0);
  }

  /** Distances compare only where the ball comes the same way. */
  private int distance(Toss toss, Drill drill, AgeBand band) {
    int asked = drill.feet().getOrDefault(band, 0);
    boolean comparable =
        asked > 0 && toss.feet().isPresent() && toss.feed().orElse(drill.feed()) == drill.feed();
    if (!comparable) {
      return 0;
    }
    double share = toss.feet().getAsDouble() / asked;
    return share <= 1 - nearer ? 1 : share >= 1 / (1 - nearer) ? -1 : 0;
  }

  private static int ball(Toss toss, Drill drill) {
    Optional<Ball> ball =
        toss.ball().filter(b -> b != Ball.NONE && !drill.balls().containsValue(b));
    boolean known =
        ball.isPresent() && drill.balls().values().stream().anyMatch(b -> b != Ball.NONE);
    if (!known) {
      return 0;
    }
    boolean drillSlow =
        drill.balls().values().stream().filter(b -> b != Ball.NONE).allMatch(Ball::slows);
    boolean drillTrue =
        drill.balls().values().stream().filter(b -> b != Ball.NONE).noneMatch(Ball::slows);
    boolean slow = ball.get().slows();
    return slow && drillTrue ? -1 : !slow && drillSlow ? 1 : 0;
  }
}
