package org.belthigh.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Home;
import org.belthigh.model.Ball;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;

/** What is said for safety beside a drill, and before a session at home. */
final class Cautions {
  private Cautions() {}

  /** Whether who tosses {@code drill} stands behind a screen there. No driveway has one. */
  static boolean screened(Drill drill, Place place) {
    return place != Place.HOME && drill.gear().contains(Gear.SCREEN);
  }

  /** Beside a drill that is done with {@code ball}. */
  static List<Caution> of(Drill drill, Ball ball, Place place) {
    List<Caution> cautions = new ArrayList<>();
    if (drill.swing()) {
      cautions.add(Caution.of("safety.swing", Gear.HELMET));
    } else if (ball == Ball.NONE) {
      cautions.add(Caution.of("safety.bare"));
    } else {
      cautions.add(Caution.of("safety.watch", Gear.HELMET));
    }
    if (ball != Ball.NONE) {
      feeding(drill, place).forEach(cautions::add);
    }
    if (drill.swing() && ball != Ball.NONE && drill.gear().contains(Gear.NET)) {
      cautions.add(Caution.of("safety.net", Gear.NET));
    }
    return List.copyOf(cautions);
  }

  /** How the ball comes, and what keeps who sends it safe. */
  private static Stream<Caution> feeding(Drill drill, Place place) {
    boolean screened = screened(drill, place);
    return switch (drill.feed()) {
      case NONE -> Stream.empty();
      case TEE -> Stream.of(Caution.of("safety.tee"));
      case MACHINE -> Stream.of(Caution.of("safety.machine", Gear.MACHINE, Gear.SCREEN));
      case FLIP -> Stream.of(tossed("safety.soft-toss", screened));
      case FRONT_TOSS -> Stream.of(tossed("safety.front-toss", screened));
      case OVERHAND -> Stream.of(tossed("safety.overhand", screened));
    };
  }

  private static Caution tossed(String key, boolean screened) {
    return screened
        ? Caution.of(key + ".screen", Gear.SCREEN)
        : Caution.of(key + ".open", Gear.EYEWEAR);
  }

  /**
   * Before a session at home.
   *
   * @param feet from whom who tosses to the hitter; 0 where nobody tosses
   * @param ring feet around the hitter in which nobody else is
   */
  static List<Caution> atHome(Home home, Drill drill, Ball ball, int feet, int ring) {
    boolean tossed = drill.tossed() && feet > 0;
    List<Caution> cautions = new ArrayList<>();
    cautions.add(Caution.of("home.check.adult"));
    if (ball != Ball.NONE) {
      cautions.add(Caution.of("home.check.ball." + ball.id()));
    }
    if (tossed) {
      cautions.add(Caution.of("home.check.eyes", Gear.EYEWEAR));
    }
    if (drill.swing() || tossed) {
      cautions.add(Caution.of("home.check.helmet", Gear.HELMET));
    }
    if (drill.swing()) {
      cautions.add(new Caution(ring(tossed, feet, ring), Set.of()));
    }
    cautions.add(Caution.of(home.swings() ? "home.check.ground" : "home.check.hall"));
    cautions.add(Caution.of("home.check.light"));
    cautions.add(Caution.of("home.check.pain"));
    return List.copyOf(cautions);
  }

  /** Who is inside the ring: who tosses from nearer than its edge cannot but be. */
  private static Phrase ring(boolean tossed, int feet, int ring) {
    String who = !tossed ? "tee" : feet < ring ? "inside" : "outside";
    return Phrase.of("home.check.ring." + who);
  }
}
