package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;

/** What a drill needs at a practice, by the auditor's own list, and how many of it. */
final class DrillGear {
  static final String SCREEN = "screen";
  static final String EYEWEAR = "eyewear";
  private static final int PAIRS = 2;
  private static final Set<Feed> BY_HAND = Set.of(Feed.FLIP, Feed.FRONT_TOSS, Feed.OVERHAND);

  /** The balls among the gear: only those are brought that the drill is done with there. */
  private static final Map<String, Set<Ball>> BALLS =
      Map.of(
          "plastic-balls", Set.of(Ball.PLASTIC),
          "foam-balls", Set.of(Ball.FOAM),
          "tennis-balls", Set.of(Ball.TENNIS),
          "ball-bucket", Set.of(Ball.BASEBALL, Ball.SOFTBALL));

  private DrillGear() {}

  /** How many of each thing; nothing where the drill cannot be done there. */
  static Map<String, Integer> of(Drill drill, Place place) {
    Ball ball = drill.balls().get(place);
    Map<String, Integer> gear = new TreeMap<>();
    if (ball == null) {
      return gear;
    }
    Set<String> things = new TreeSet<>(drill.gear());
    things.removeIf(thing -> !isFor(thing, ball));
    if (drill.swing() || ball != Ball.NONE) {
      things.add("helmet");
    }
    if (ball != Ball.NONE && drill.feed() == Feed.MACHINE) {
      things.add("machine");
      things.add(SCREEN);
    }
    if (ball != Ball.NONE && BY_HAND.contains(drill.feed()) && !drill.gear().contains(SCREEN)) {
      things.add(EYEWEAR);
    }
    if (drill.gear().contains(SCREEN)) {
      things.remove(EYEWEAR);
    }
    things.forEach(thing -> gear.put(thing, count(thing)));
    return gear;
  }

  /** Whether a thing is used with that ball: other balls than the one in hand stay away. */
  static boolean isFor(String thing, Ball ball) {
    return !BALLS.containsKey(thing) || BALLS.get(thing).contains(ball);
  }

  /** How many of a thing one hitter needs: eyewear for both ends of a toss. */
  static int count(String thing) {
    return thing.equals(EYEWEAR) ? PAIRS : 1;
  }

  /** A list of gear as a plan has it. */
  static Map<String, Integer> listed(JsonNode gear) {
    Map<String, Integer> listed = new TreeMap<>();
    gear.forEach(g -> listed.merge(g.path("what").asText(), g.path("count").asInt(), Integer::sum));
    return listed;
  }

  /** Of each thing the more of the two. */
  static void most(Map<String, Integer> into, Map<String, Integer> more) {
    more.forEach((thing, count) -> into.merge(thing, count, Math::max));
  }

  /** Of each thing both together. */
  static void add(Map<String, Integer> into, Map<String, Integer> more) {
    more.forEach((thing, count) -> into.merge(thing, count, Integer::sum));
  }
}
