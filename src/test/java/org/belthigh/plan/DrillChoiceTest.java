package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Home;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;
import org.belthigh.model.Space;
import org.junit.jupiter.api.Test;

/** What the rules leave open, against a plain reading of each drill, over all that may be there. */
class DrillChoiceTest {
  private static final Curriculum CURRICULUM =
      CatalogueLoader.load().orThrow().curricula().get("belthigh-2027");
  private static final List<String> COUNTED = List.of("tees", "nets", "screens", "machines");

  private static boolean people(Drill drill, boolean adult) {
    return (drill.adults() == 0 || adult) && drill.helpers() == 0;
  }

  private static boolean gear(Drill drill, Map<String, Integer> stock) {
    boolean counts = !stock.isEmpty();
    return List.of("tee", "net", "screen").stream()
            .filter(drill.gear()::contains)
            .allMatch(g -> !counts || stock.getOrDefault(g + "s", 0) > 0)
        && (drill.feed() != Feed.MACHINE || stock.getOrDefault("machines", 0) > 0);
  }

  private static boolean home(Drill drill, Home home, int room, int age) {
    Ball ball = drill.balls().get(Place.HOME);
    return !drill.gear().contains("machine")
        && List.of(Home.Gear.TEE, Home.Gear.NET).stream()
            .allMatch(g -> !drill.gear().contains(g.id()) || home.gear().contains(g))
        && (ball == Ball.NONE || home.instead(ball) != Ball.NONE)
        && Told.feet(drill, age) <= room
        && (home.swings() || !drill.swing());
  }

  /** Nothing counted, and each of the sixteen ways in which a club has some of each or none. */
  private static Map<String, Integer> stock(int way) {
    Map<String, Integer> stock = new HashMap<>();
    for (int i = 0; i < COUNTED.size() && way < 1 << COUNTED.size(); i++) {
      stock.put(COUNTED.get(i), 3 * (way >> i & 1));
    }
    return stock;
  }

  @Test
  void at_practice_what_the_club_has_decides() {
    for (int way = 0; way <= 1 << COUNTED.size(); way++) {
      DrillChoice choice = new DrillChoice(CURRICULUM, stock(way), false);
      for (Place place : List.of(Place.FIELD, Place.CAGE)) {
        for (boolean adult : new boolean[] {true, false}) {
          for (Drill drill : CURRICULUM.drills().values()) {
            assertThat(choice.fits(drill, place, adult))
                .as("%s, %s, %s, grown-up %s", drill.id(), place, stock(way), adult)
                .isEqualTo(drill.at(place) && people(drill, adult) && gear(drill, stock(way)));
          }
        }
      }
    }
  }

  @Test
  void at_home_what_the_family_has_decides() {
    DrillChoice clubs = new DrillChoice(CURRICULUM, Map.of(), false);
    for (Space space : Space.values()) {
      for (int way = 0; way < 1 << Home.Gear.values().length; way++) {
        Home home = new Home(space, gear(way));
        for (int room : new int[] {12, 15, 20}) {
          for (int age : new int[] {7, 10, 13}) {
            DrillChoice choice = clubs.in(home, room, age);
            for (Drill drill : CURRICULUM.drills().values()) {
              assertThat(choice.fits(drill, Place.HOME, true))
                  .as("%s, %s, %d feet, age %d", drill.id(), home, room, age)
                  .isEqualTo(
                      drill.at(Place.HOME) && people(drill, true) && home(drill, home, room, age));
            }
          }
        }
      }
    }
  }

  private static Set<Home.Gear> gear(int way) {
    Set<Home.Gear> gear = EnumSet.noneOf(Home.Gear.class);
    for (Home.Gear one : Home.Gear.values()) {
      if ((way >> one.ordinal() & 1) > 0) {
        gear.add(one);
      }
    }
    return gear;
  }
}
