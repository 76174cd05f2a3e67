package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;

/**
 * The home sheets ask for what their drills need, as many of each as one session uses, and for
 * nothing else: bat, tee, net and the ball in hand, a helmet, and a pair of eyes at each end of a
 * toss.
 */
final class HomeGearCheck {
  /** What a home sheet is done without: no family has a screen, and the sheet is written on. */
  private static final Set<String> ELSEWHERE = Set.of("screen", "clipboard");

  private final Given given;

  HomeGearCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    String where = child.id() + ", home_gear";
    Map<String, Integer> wanted = wanted(child);
    Map<String, Integer> found = new TreeMap<>();
    for (JsonNode gear : child.said().path("home_gear")) {
      String what = gear.path("what").asText();
      if (found.put(what, gear.path("count").asInt()) != null) {
        given.fault(where, what + " is asked for twice", "each thing stands once");
      }
    }
    Set<String> all = new TreeSet<>(wanted.keySet());
    all.addAll(found.keySet());
    for (String what : all) {
      int asked = found.getOrDefault(what, 0);
      int needed = wanted.getOrDefault(what, 0);
      if (asked != needed) {
        given.broken(
            where, asked + " of " + what + " asked for", "its drills at home need " + needed);
      }
    }
  }

  private Map<String, Integer> wanted(Given.Child child) {
    Map<String, Integer> wanted = new TreeMap<>();
    LocalDate end = given.plan().from().plusDays(Week.DAYS);
    for (JsonNode day : child.said().path("days")) {
      boolean first = Given.date(day, "date").filter(d -> d.isBefore(end)).isPresent();
      if (first && day.path("place").asText().equals("home")) {
        day.path("items").forEach(item -> session(item, wanted));
      }
    }
    return wanted;
  }

  private void session(JsonNode item, Map<String, Integer> wanted) {
    Optional.ofNullable(given.curriculum().drills().get(item.path("drill").asText()))
        .ifPresent(
            drill -> {
              Optional<Ball> ball = Coded.find(Ball.class, item.path("ball").asText());
              boolean tossed = drill.tossed() && item.path("feet").asInt() > 0;
              drill.gear().stream()
                  .map(g -> inHand(g, ball))
                  .filter(g -> ball.filter(b -> DrillGear.isFor(g, b)).isPresent())
                  .filter(g -> !ELSEWHERE.contains(g))
                  .forEach(g -> wanted.put(g, DrillGear.count(g)));
              if (tossed) {
                wanted.put(DrillGear.EYEWEAR, DrillGear.count(DrillGear.EYEWEAR));
              }
              if (tossed || drill.swing()) {
                wanted.put("helmet", 1);
              }
            });
  }

  private static String inHand(String gear, Optional<Ball> ball) {
    return gear.equals("plastic-balls") && ball.equals(Optional.of(Ball.FOAM))
        ? "foam-balls"
        : gear;
  }
}
