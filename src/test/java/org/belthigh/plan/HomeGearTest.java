package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.TestClub;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Ball;
import org.belthigh.model.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Families have what they have: a sheet asks for nothing else, in its words or in its list. */
class HomeGearTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Curriculum CURRICULUM = CATALOGUE.curricula().get("belthigh-2027");
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);

  @TempDir private Path folder;

  /** Four weeks for three players with nothing on record, each with the same home. */
  private List<PlayerPlan> plans(String space, String gear) throws Unusable {
    Path club =
        TestClub.in(folder)
            .with(
                "roster.csv",
                "id,first_name,born,bats,group,home_space,home_gear",
                "p01,Ana,2017-05-02,R,u10," + space + "," + gear,
                "p02,Ben,2017-09-12,L,u10," + space + "," + gear,
                "p03,Cruz,2016-12-30,S,u10," + space + "," + gear)
            .folder();
    ClubRecord record = Intake.read(club, CATALOGUE);
    PlanRequest request =
        new PlanRequest(MONDAY, 4, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return new Planner(CATALOGUE).plan(record, request).players();
  }

  private static Stream<Item> items(List<PlayerPlan> plans) {
    return plans.stream()
        .flatMap(p -> p.days().stream())
        .filter(d -> d.place() == Place.HOME)
        .flatMap(d -> d.items().stream());
  }

  private static List<String> names(DrillText text) {
    return text.gear().stream().map(g -> g.name().in("en")).toList();
  }

  private static String name(String gear) {
    return CURRICULUM.gear().get(gear).in("en");
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "driveway, plastic foam tee",
    "driveway, plastic foam net",
    "driveway, plastic foam",
    "driveway, plastic foam tee net",
    "driveway, foam",
    "driveway, plastic",
    "yard, foam tee",
    "hallway, plastic foam tee net",
    "hallway, foam",
    "hallway, none"
  })
  void nobody_is_asked_for_gear_that_the_family_lacks(String space, String gear) throws Unusable {
    List<PlayerPlan> plans = plans(space, gear);
    Set<String> has = Set.of(gear.split(" "));

    assertThat(items(plans)).isNotEmpty();
    assertThat(items(plans))
        .allSatisfy(
            item -> {
              Drill drill = CURRICULUM.drill(item.drill());
              if (!has.contains("tee")) {
                assertThat(drill.gear()).doesNotContain("tee");
              }
              if (!has.contains("net")) {
                assertThat(drill.gear()).doesNotContain("net");
              }
              if (item.ball() != Ball.NONE) {
                assertThat(has).contains(item.ball().id());
              }
              if (space.equals("hallway")) {
                assertThat(item.swings()).isZero();
                assertThat(item.ball()).isIn(Ball.FOAM, Ball.NONE);
              }
            });
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"plastic foam", "foam", "plastic", "foam tee"})
  void the_list_of_gear_names_the_ball_in_hand_and_no_other(String gear) throws Unusable {
    List<HomeSheet> sheets =
        plans("driveway", gear).stream().flatMap(p -> p.home().stream()).toList();

    assertThat(sheets).isNotEmpty();
    assertThat(sheets).allSatisfy(s -> assertGearAgrees(s.drill()));
  }

  /** Marked balls are made at home of whatever balls there are. */
  private static void assertGearAgrees(DrillText text) {
    List<String> names = names(text);
    boolean marked = names.contains(name("marked-balls"));
    assertThat(names.contains(name("plastic-balls")))
        .isEqualTo(text.ball() == Ball.PLASTIC && !marked);
    assertThat(names.contains(name("foam-balls"))).isEqualTo(text.ball() == Ball.FOAM && !marked);
    assertThat(names).doesNotContain(name("screen"), name("ball-bucket"), name("tennis-balls"));
  }

  @Test
  void the_gear_of_every_drill_that_can_be_done_at_home_agrees_with_its_ball() {
    Told told = new Told(CURRICULUM, new DrillChoice(CURRICULUM, Map.of(), false));

    assertThat(CURRICULUM.drills().values().stream().filter(d -> d.at(Place.HOME)))
        .isNotEmpty()
        .allSatisfy(
            drill -> {
              Ball ball = drill.balls().get(Place.HOME);
              assertGearAgrees(told.of(drill, ball, Place.HOME, 12));
              if (ball == Ball.PLASTIC) {
                assertGearAgrees(told.of(drill, Ball.FOAM, Place.HOME, 12));
              }
            });
  }

  /** A family with foam only reads the same words as one with plastic. */
  @Test
  void no_set_up_at_home_asks_for_plastic_where_foam_would_do() {
    assertThat(CURRICULUM.drills().values().stream().filter(d -> d.at(Place.HOME)))
        .allSatisfy(
            drill -> {
              assertThat(drill.setup().in("en").replace("plastic or foam", ""))
                  .doesNotContain("plastic");
              assertThat(drill.setup().in("es").replace("plástico o espuma", ""))
                  .doesNotContain("plástico");
            });
  }

  @Test
  void where_a_screen_stands_at_practice_eyes_are_protected_at_home() {
    Told told = new Told(CURRICULUM, new DrillChoice(CURRICULUM, Map.of(), false));

    assertThat(
            CURRICULUM.drills().values().stream()
                .filter(d -> d.at(Place.HOME) && d.gear().contains("screen")))
        .isNotEmpty()
        .allSatisfy(
            drill -> assertThat(names(told.of(drill, Place.HOME, 12))).contains(name("eyewear")));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"plastic foam", "foam", "plastic"})
  void without_a_tee_no_sheet_says_to_go_back_to_the_tee(String gear) throws Unusable {
    assertThat(
            plans("driveway", gear).stream()
                .flatMap(p -> p.home().stream())
                .flatMap(s -> s.easier().stream()))
        .isNotEmpty()
        .allSatisfy(e -> assertThat(e.in("en")).doesNotContain("tee"));
  }
}
