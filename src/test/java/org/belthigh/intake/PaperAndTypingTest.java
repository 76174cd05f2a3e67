package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What log sheets ask for can be typed as it stands, and drills go by the names that they print.
 */
class PaperAndTypingTest {
  private static final org.belthigh.catalogue.Catalogue WHOLE = CatalogueLoader.load().orThrow();
  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private List<String> tallies(String... lines) {
    club.with("logs/a.txt", lines);
    return club.read().tallies().stream().map(PaperAndTypingTest::shown).toList();
  }

  private static String shown(Tally t) {
    return t.player()
        + " "
        + t.drill()
        + " "
        + t.measure().id()
        + " "
        + t.made()
        + "/"
        + t.of()
        + t.side().map(s -> " " + s.letter()).orElse("");
  }

  @ParameterizedTest
  @CsvSource({
    "zone-call, Ana + + - +, p01 zone-call zone-recognition 3/4 R",
    "zone-call, Ana ++-+, p01 zone-call zone-recognition 3/4 R",
    "zone-call, Ana ✓ ✔ √ v V, p01 zone-call zone-recognition 5/5 R",
    "zone-call, Ana ✓4 +b -5 v1 +, p01 zone-call zone-recognition 4/5 R",
    "zone-call, Cruz L: + - / +, p03 zone-call zone-recognition 2/3 L",
    "zone-call, 'Ana -4, – — −b', p01 zone-call zone-recognition 0/4 R",
    "field-call, Ana + - +, p01 field-call field-call 2/3 R",
    "zone-call, Cruz L + -, p03 zone-call zone-recognition 1/2 L",
    "zone-call, Cruz der + -, p03 zone-call zone-recognition 1/2 R",
    "countdown, Ana 1 1 2 2 2 1 1 2, p01 countdown countdown 8/12 R",
    "countdown, Ana 2 2 2 2 2 2 1, p01 countdown countdown 6/12 R",
  })
  void marks_of_a_log_sheet_are_a_tally(String drill, String line, String tally) {
    assertThat(tallies("2027-03-08", drill, line)).containsExactly(tally);
    assertThat(club.read().tosses()).isEmpty();
    assertThat(club.messages().stream().filter(m -> m.startsWith("fault"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'Tee, belt-high', Ana + + - +, p01 tee-belt-high hard-hit 3/4 R",
    "side-flip, Ana ++-4+, p01 side-flip hard-hit 3/4 R",
    "front-toss-drive, Ben 5/8, p02 front-toss-drive hard-hit 5/8 L",
    "early-on-late, Ben hard 5/8, p02 early-on-late hard-hit 5/8 L",
  })
  void ticks_of_a_drill_about_hitting_it_hard_are_hard_hits(String drill, String line, String tally)
      throws Unusable {
    club.with("logs/a.txt", "2027-03-08", drill, line);

    ClubRecord record = Intake.read(club.folder(), WHOLE);

    assertThat(record.problems()).isEmpty();
    assertThat(record.tallies()).map(PaperAndTypingTest::shown).containsExactly(tally);
  }

  @ParameterizedTest
  @CsvSource({"countdown", "zone-call", "belt-is-mine", "tee-three-fields"})
  void hard_hits_are_counted_in_drills_about_them_alone(String drill) throws Unusable {
    club.with("logs/a.txt", "2027-03-08", drill, "Ana hard 5/8");

    ClubRecord record = Intake.read(club.folder(), WHOLE);

    assertThat(record.tallies()).isEmpty();
    assertThat(record.problems())
        .map(Problem::toString)
        .singleElement()
        .asString()
        .contains("hard hits of " + drill + " are not counted");
  }

  /** Whatever marks a log sheet asks for are counted: nothing is written down in vain. */
  @Test
  void every_drill_whose_sheet_asks_for_ticks_counts_them() throws Unusable {
    Curriculum curriculum = curriculum(WHOLE);
    List<Drill> ticked =
        curriculum.drills().values().stream()
            .filter(Drill::logged)
            .filter(d -> d.kind() != DrillKind.COUNTDOWN)
            .filter(d -> d.kind() != DrillKind.NONE || d.skill() == Skill.DRIVE)
            .toList();
    club.with(
        "logs/a.txt",
        Stream.concat(
                Stream.of("2027-03-08"), ticked.stream().flatMap(d -> Stream.of(d.id(), "Ana +-+")))
            .toArray(String[]::new));

    ClubRecord record = Intake.read(club.folder(), WHOLE);

    assertThat(record.tallies()).hasSameSizeAs(ticked).allMatch(t -> t.made() == 2 && t.of() == 3);
  }

  @Test
  void a_round_of_swings_that_did_not_end_is_asked_about_and_makes_no_takes() {
    assertThat(tallies("2027-03-08", "countdown", "Ana 1 1 2", "Ben 1 5h")).isEmpty();
    assertThat(club.read().tosses()).hasSize(2).allMatch(t -> t.player().equals("p02"));
    assertThat(club.messages())
        .hasSize(1)
        .first()
        .asString()
        .startsWith("fault")
        .contains("line 3");
  }

  @ParameterizedTest
  @CsvSource({"countdown", "belt-is-mine"})
  void ticks_that_count_nowhere_are_told(String drill) throws Unusable {
    club.with("logs/a.txt", "2027-03-08", drill, "Ana + -");

    ClubRecord record = Intake.read(club.folder(), WHOLE);

    assertThat(record.tallies()).isEmpty();
    assertThat(record.problems())
        .map(Problem::toString)
        .singleElement()
        .asString()
        .contains("line 3", "not counted");
  }

  @Test
  void a_drill_without_a_bat_is_not_said_to_count_hits() {
    Curriculum whole = WHOLE.curricula().get("belthigh-2027");
    ShortMarks.Word tick = new ShortMarks.Word("+", Origin.of("logs/a.txt", 3));

    assertThat(PaperMarks.notCounted(tick, Optional.of(whole.drill("watch-behind-net"))).text())
        .contains("with the spot of each toss, such as 45 55");
    assertThat(PaperMarks.notCounted(tick, Optional.of(whole.drill("belt-is-mine"))).text())
        .contains("with the spot of each toss, such as 5h 4m");
  }

  @Test
  void spots_and_calls_that_were_typed_apart_are_told() {
    club.with(
        "logs/a.txt", "2027-03-08", "zone-call", "Ana 5 5, 4 4, b b", "Ben b b", "Cruz L 5h 4");

    assertThat(club.messages())
        .singleElement()
        .asString()
        .startsWith("warning CLUB/logs/a.txt line 3")
        .contains("no toss of this line has a call", "Maybe 4 5 was to be 45");
  }

  @Test
  void a_dash_behind_a_spot_is_told_with_both_things_that_it_may_be() {
    club.with("logs/a.txt", "2027-03-08", "zone-call", "Ana 45 8-");

    assertThat(club.messages()).singleElement().asString().contains("Maybe 5n for spot 5", "-5");
  }

  private static Curriculum curriculum(org.belthigh.catalogue.Catalogue catalogue) {
    return catalogue.curricula().values().iterator().next();
  }

  @Test
  void ticks_beside_tosses_of_the_same_drill_are_told() {
    assertThat(tallies("2027-03-08", "zone-call", "Ana 45 + 55")).isEmpty();
    assertThat(club.read().tosses()).hasSize(2);
    assertThat(club.messages()).anyMatch(m -> m.contains("this tally is left out"));
  }

  static Stream<String> printed() {
    return WHOLE.curricula().values().stream()
        .flatMap(c -> c.drills().values().stream())
        .flatMap(
            d ->
                d.name().byLanguage().values().stream()
                    .flatMap(n -> Stream.of(n, bare(n), n.toUpperCase(Locale.ROOT)))
                    .map(n -> d.id() + "\n" + n));
  }

  private static String bare(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
  }

  @Test
  void every_drill_goes_by_its_name_as_printed_in_every_language() {
    Curriculum curriculum = WHOLE.curricula().get("belthigh-2027");
    Bearings.Drills drills = new Bearings.Drills(curriculum);

    List<String> lost =
        printed()
            .filter(
                text -> {
                  String[] parts = text.split("\n", 2);
                  List<String> words = List.of((parts[1] + " foam 18").split(" "));
                  return drills.words(words, 0) != words.size() - 2
                      || !drills.find(parts[1]).orElseThrow().id().equals(parts[0]);
                })
            .toList();

    assertThat(lost).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"Call the spot, foam 18", "DI EL LUGAR, espuma 18", "call the spot, ''"})
  void a_drill_of_several_words_stands_on_its_line_or_behind_the_player(
      String name, String settings) throws Unusable {
    club.with("logs/a.txt", "2027-03-08", name + " " + settings, "ana 55", "ben + -");
    club.with("logs/b.txt", "2027-03-09", "ana " + name + " 55");

    ClubRecord record = Intake.read(club.folder(), WHOLE);

    assertThat(record.tosses()).extracting(Toss::drill).containsExactly("zone-call", "zone-call");
    assertThat(record.tallies()).extracting(Tally::drill).containsExactly("zone-call");
    assertThat(record.problems()).isEmpty();
  }
}
