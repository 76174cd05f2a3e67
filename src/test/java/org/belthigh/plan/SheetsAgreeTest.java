package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.plan.practice.Effort;
import org.belthigh.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one line of a sheet asks for, the list beside it has, the drawing shows and a club owns. */
class SheetsAgreeTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Curriculum CURRICULUM = CATALOGUE.curricula().get("belthigh-2027");
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);

  /** Words of gear by language, and the gear that must then be listed. */
  private static final Map<String, Map<String, Pattern>> SPOKEN =
      Map.of(
          "en",
          Map.of(
              "screen", word("screens?"),
              "net", word("nets?"),
              "helmet", word("helmets?"),
              "eyewear", word("eye protection|eyes protected|glasses"),
              "machine", word("machines?")),
          "es",
          Map.of(
              "screen", word("pantallas?"),
              "net", word("red|redes"),
              "helmet", word("cascos?"),
              "eyewear", word("lentes|ojos protegidos"),
              "machine", word("máquinas?")));

  private static final Words WORDS = Words.load(Map.of());

  @TempDir private Path folder;

  private static Pattern word(String words) {
    return Pattern.compile(
        "(?<![\\p{L}])(" + words + ")(?![\\p{L}])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  private static List<String> said(List<Phrase> phrases, String language) {
    return phrases.stream().map(p -> WORDS.say(p, language)).toList();
  }

  /** Everything a drill says, on a sheet for {@code language}. */
  private static List<String> said(DrillText text, String language) {
    Stream<LocalText> own =
        Stream.concat(
            Stream.of(text.setup(), text.cue(), text.write()),
            Stream.concat(text.easier().stream(), text.adapt().stream()));
    return Stream.concat(own.map(t -> t.in(language)), said(text.safety(), language).stream())
        .toList();
  }

  private static void assertListed(
      String where, String language, List<String> said, List<Gear> listed) {
    SPOKEN
        .get(language)
        .forEach(
            (gear, words) ->
                said.stream()
                    .filter(line -> words.matcher(line).find())
                    .forEach(
                        line -> assertThat(ids(listed)).as("%s: %s", where, line).contains(gear)));
  }

  private static Set<String> ids(List<Gear> gear) {
    return gear.stream().map(Gear::id).collect(Collectors.toSet());
  }

  private static int count(List<Gear> gear, String id) {
    return gear.stream().filter(g -> g.id().equals(id)).mapToInt(Gear::count).sum();
  }

  @Test
  void no_drill_speaks_of_gear_that_its_list_does_not_have_at_any_place() {
    int seen = 0;
    for (Map<String, Integer> stock :
        List.of(
            Map.<String, Integer>of(),
            Map.of("balls", 12),
            Map.of("tees", 2, "nets", 1),
            Map.of("tees", 2, "nets", 1, "screens", 1, "machines", 1))) {
      DrillChoice choice = new DrillChoice(CURRICULUM, stock, false);
      Told told = new Told(CURRICULUM, choice);
      for (Place place : List.of(Place.FIELD, Place.CAGE)) {
        for (Drill drill : choice.drills(place)) {
          for (int age : List.of(8, 10, 12, 14, 16, 18)) {
            DrillText text = told.of(drill, place, age);
            for (String language : SPOKEN.keySet()) {
              assertListed(drill.id() + " " + place, language, said(text, language), text.gear());
            }
            boolean hard = text.ball() == Ball.BASEBALL || text.ball() == Ball.SOFTBALL;
            assertThat(ids(text.gear()).contains("screen"))
                .as(drill.id())
                .isEqualTo(drill.tossed() && hard);
            assertThat(ids(text.gear()).contains("eyewear"))
                .as(drill.id())
                .isEqualTo(drill.tossed() && !hard);
            seen++;
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(500);
  }

  /** One group; {@code equipment} as club.yaml has it, empty where it says nothing. */
  private Plan plan(String equipment, int adults, int players, int age, String home)
      throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Agreeing
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-07-24"}
        groups:
          - {id: u, name: Under, age: [%d, %d]}
        places:
          - {id: barn, name: Barn, kind: cage, stations: 2}
        %s
        """
            .formatted(age - 1, age, equipment));
    StringBuilder roster =
        new StringBuilder("id,first_name,born,bats,group,pitches,home_space,home_gear\n");
    for (int i = 0; i < players; i++) {
      roster.append(
          "a%d,Kid%s,%d-01-05,%s,u,yes,%s\n"
              .formatted(i, (char) ('a' + i), 2027 - age, i % 3 == 0 ? "L" : "R", home));
    }
    Files.writeString(folder.resolve("roster.csv"), roster);
    Files.writeString(
        folder.resolve("calendar.csv"),
        "date,group,kind,minutes,adults,place\n2027-04-06,u,practice,90,%1$d,field\n2027-04-08,u,practice,90,%1$d,barn\n"
            .formatted(adults));
    ClubRecord record = Intake.read(folder, CATALOGUE);
    PlanRequest request =
        new PlanRequest(MONDAY, 1, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return new Planner(CATALOGUE, Effort.USUAL).plan(record, request);
  }

  @ParameterizedTest
  @CsvSource({
    "'',                                                          99, 99, 0",
    "'equipment: {tees: 3, nets: 2}',                              0,  2, 0",
    "'equipment: {tees: 2, nets: 1, screens: 1}',                  1,  1, 0",
    "'equipment: {tees: 4, nets: 4, screens: 3, machines: 1}',     3,  4, 1"
  })
  void a_practice_asks_for_what_the_club_has_and_lists_what_it_asks_for(
      String equipment, int screens, int nets, int machines) throws Exception {
    for (int adults : List.of(1, 3)) {
      for (int players : List.of(4, 14)) {
        for (int age : List.of(8, 10, 12, 14)) {
          Plan plan = plan(equipment, adults, players, age, "driveway,plastic foam");
          assertThat(plan.groups().get(0).practices()).hasSize(2);
          for (PracticeSheet sheet : plan.groups().get(0).practices()) {
            assertThat(count(sheet.gear(), "screen")).isLessThanOrEqualTo(screens);
            assertThat(count(sheet.gear(), "net")).isLessThanOrEqualTo(nets);
            assertThat(count(sheet.gear(), "machine")).isLessThanOrEqualTo(machines);
            assertAgrees(sheet);
          }
        }
      }
    }
  }

  private static void assertAgrees(PracticeSheet sheet) {
    Map<String, DrillText> drills =
        sheet.drills().stream().collect(Collectors.toMap(DrillText::id, d -> d));
    assertWay(sheet, drills, sheet.ground(), sheet.stations(), sheet.rotations());
    for (PracticeSheet.OtherWay way : sheet.otherWays()) {
      assertWay(sheet, drills, way.place(), way.stations(), way.rotations());
    }
    for (String language : SPOKEN.keySet()) {
      List<String> said = new ArrayList<>(said(sheet.cautions(), language));
      sheet.drills().forEach(d -> said.addAll(said(d, language)));
      assertListed(sheet.date().toString(), language, said, sheet.gear());
    }
    assertThat(ids(sheet.gear())).contains("helmet", "bat");
  }

  private static void assertWay(
      PracticeSheet sheet,
      Map<String, DrillText> drills,
      Place place,
      List<PracticeSheet.Station> stations,
      List<PracticeSheet.Rotation> rotations) {
    Pattern elsewhere =
        place == Place.CAGE ? word("fence|field|cerca|fildean") : word("cage|jaula");
    for (PracticeSheet.Rotation rotation : rotations) {
      List<DrillText> at =
          rotation.posts().stream()
              .filter(p -> !p.drill().isEmpty())
              .map(p -> drills.get(p.drill()))
              .toList();
      for (Gear gear : sheet.gear()) {
        int used = at.stream().mapToInt(d -> count(d.gear(), gear.id())).sum();
        assertThat(used).as(gear.id()).isLessThanOrEqualTo(gear.count());
      }
      assertThat(ids(sheet.gear()))
          .containsAll(at.stream().flatMap(d -> ids(d.gear()).stream()).toList());
      boolean tossed = at.stream().anyMatch(d -> d.feed() != Feed.NONE && d.feed() != Feed.TEE);
      for (PracticeSheet.Post post : rotation.posts()) {
        assertThat(WORDS.say(post.writes(), "en")).doesNotContainPattern(elsewhere);
        assertThat(WORDS.say(post.writes(), "es")).doesNotContainPattern(elsewhere);
        if (post.drill().equals("watch-behind-net")) {
          assertThat(tossed).as("somebody tosses while others watch").isTrue();
        }
        PracticeSheet.Station station = stations.get(post.station() - 1);
        if (!post.drill().isEmpty()) {
          assertThat(ids(station.needs())).containsAll(ids(drills.get(post.drill()).gear()));
          assertThat(station.fields()).isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'driveway,plastic foam'",
    "'driveway,foam'",
    "'driveway,plastic foam tee net'",
    "'yard,plastic'",
    "'yard,plastic foam tee'",
    "'hallway,foam'",
    "'hallway,plastic foam tee net'"
  })
  void a_home_sheet_lists_what_it_asks_for_and_draws_what_it_says(String home) throws Exception {
    Set<String> rings = new LinkedHashSet<>();
    int seen = 0;
    for (int age : List.of(8, 10, 12, 14, 16, 18)) {
      Plan plan = plan("", 2, 4, age, home);
      List<HomeSheet> sheets = plan.players().stream().flatMap(p -> p.home().stream()).toList();
      seen += sheets.size();
      for (HomeSheet sheet : sheets) {
        DrillText drill = sheet.drill();
        for (String language : SPOKEN.keySet()) {
          List<String> said = new ArrayList<>(said(drill, language));
          said.addAll(said(sheet.cautions(), language));
          said.addAll(said(sheet.howTo(), language));
          sheet.easier().ifPresent(e -> said.add(e.in(language)));
          assertListed(drill.id(), language, said, sheet.needs());
          assertThat(said).noneMatch(line -> word("cage|jaula|fence|station").matcher(line).find());
        }
        assertThat(ids(sheet.needs())).doesNotContain("screen", "machine");
        assertThat(sheet.picture().bat()).isEqualTo(drill.swing());
        assertThat(ids(sheet.needs()).contains("bat")).isEqualTo(drill.swing());
        assertThat(sheet.eyes()).isEqualTo(ids(sheet.needs()).contains("eyewear"));
        assertThat(sheet.smaller().isEmpty()).isEqualTo(!drill.swing());
        List<String> ring =
            sheet.checks().stream().map(Phrase::key).filter(k -> k.contains(".ring.")).toList();
        String who =
            drill.feet() == 0 ? "tee" : drill.feet() < sheet.ringFeet() ? "inside" : "outside";
        assertThat(ring).isEqualTo(drill.swing() ? List.of("home.check.ring." + who) : List.of());
        rings.addAll(ring);
        if (home.startsWith("hallway")) {
          assertThat(drill.swing()).isFalse();
        }
      }
    }
    assertThat(seen).isPositive();
    assertThat(rings.isEmpty()).isEqualTo(home.startsWith("hallway"));
  }

  /** Less ball, then less bat, then no bat. */
  @Test
  void a_small_place_is_told_what_it_may_do_instead() throws Exception {
    Set<List<String>> ways = new LinkedHashSet<>();
    for (int age : List.of(8, 10, 12, 14)) {
      plan("", 2, 4, age, "driveway,plastic foam").players().stream()
          .flatMap(p -> p.home().stream())
          .filter(h -> h.drill().swing() && h.drill().ball() == Ball.PLASTIC)
          .filter(h -> h.drill().feed() == Feed.FRONT_TOSS)
          .map(h -> h.smaller().stream().map(Phrase::key).toList())
          .forEach(ways::add);
    }

    assertThat(ways)
        .containsExactly(List.of("home.smaller.foam", "home.smaller.dry", "home.smaller.watch"));
  }

  /** On cards, home sheets and practice sheets a day's drill has one ball and one distance. */
  @Test
  void the_card_says_the_same_ball_and_distance_as_the_home_sheet() throws Exception {
    for (int age : List.of(8, 10, 12, 14)) {
      for (PlayerPlan player : plan("", 2, 4, age, "yard,plastic foam tee").players()) {
        for (HomeSheet sheet : player.home()) {
          player.card().things().stream()
              .filter(t -> t.place() == Place.HOME && t.days().get(0).equals(sheet.date()))
              .forEach(
                  t -> {
                    assertThat(t.ball()).isEqualTo(sheet.drill().ball());
                    assertThat(t.feet()).isEqualTo(sheet.drill().feet());
                    assertThat(t.feed()).isEqualTo(sheet.drill().feed());
                    assertThat(t.swings() > 0).isEqualTo(sheet.drill().swing());
                  });
        }
      }
    }
  }
}
