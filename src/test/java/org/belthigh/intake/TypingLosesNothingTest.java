package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed is read as it was meant, or told with its line; none of it goes in silence. */
class TypingLosesNothingTest {
  private static final long SEED = 20270308L;

  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
    club.with(
        "roster.csv",
        "id,first_name,last_name,born,bats,number,group",
        "p01,Ana,Ochoa,2017-05-02,R,7,u10",
        "p02,José,Núñez,2017-09-12,L,12,u10",
        "p03,Cruz,López,2016-12-30,S,3,u10",
        "p04,Ana,Bell,2016-12-30,R,4,u10",
        "p05,Julio,Rey,2016-12-30,R,8,u10",
        "p06,Sol,Bas,2016-12-30,R,9,u10",
        "p07,Ben,Bo,2016-12-30,R,10,u10");
  }

  private List<String> read(String... lines) {
    club.with("logs/a.txt", lines);
    return club.read().tosses().stream()
        .map(
            t ->
                t.player()
                    + " "
                    + t.date().toString().substring(5)
                    + " "
                    + t.drill()
                    + " "
                    + (t.zone().strike() ? t.zone().number() : "b")
                    + t.side().letter())
        .toList();
  }

  private List<String> faults() {
    return club.messages().stream().filter(m -> m.startsWith("fault")).toList();
  }

  private List<String> remarks() {
    return club.messages().stream()
        .filter(m -> m.startsWith("warning CLUB/logs/a.txt line"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "#7 55 5h, p01",
    "#12 55 5h, p02",
    "#12: 55 5h, p02",
    "José 55 5h, p02",
    "jose #12 55 5h, p02",
    "José Núñez 55 5h, p02",
    "'Núñez, José 55 5h', p02",
    "Nuñez 55 5h, p02",
    "José N 55 5h, p02",
    "#12 José 55 5h, p02",
    "12 José 55 5h, p02",
    "Ana 7 55 5h, p01",
    "Ana 4 55 5h, p04",
    "Ana O. 55 5h, p01",
    "Ana B. 55 5h, p04",
    "ana bell 55 5h, p04",
    "ana ochoa #7 55 5h, p01",
    "'7, 55, 5h', p01",
    "'7; 55; 5h', p01",
    "p01 55 5h, p01",
    "José 12 zone-call 55 5h, p02",
    "Julio 55 5h, p05",
    "Julio 8 zone-call 55 5h, p05",
  })
  void each_name_as_people_and_sheets_write_it_is_read(String line, String player) {
    assertThat(read("2027-03-08 u10", "zone-call", line))
        .extracting(t -> t.substring(0, t.length() - 1))
        .containsExactly(player + " 03-08 zone-call 5", player + " 03-08 zone-call 5");
    assertThat(club.messages()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "José 12 55, 1, '''12'' behind ''José'' can belong to the name or be a toss, and is read as the"
        + " name'",
    "Julio 8 55, 1, '''8'' behind ''Julio'' can belong'",
    "sol bas 55, 1, is read as the name",
    "Ben b 55, 2, is read as a toss",
    "José N. 12 55, 1, '''12'' behind ''José N.'' can belong'",
    "José 7 55, 2, ''",
    "José 8 55, 2, ''",
  })
  void a_word_that_may_be_a_name_or_a_toss_is_told(String line, int tosses, String told) {
    assertThat(read("2027-03-08 u10", "zone-call", line)).hasSize(tosses);
    assertThat(faults()).isEmpty();
    if (told.isEmpty()) {
      assertThat(remarks()).isEmpty();
    } else {
      assertThat(remarks()).hasSize(1).first().asString().contains("line 3 column ", told);
    }
  }

  @Test
  void lines_that_may_be_read_two_ways_are_told_once_a_file() {
    read("2027-03-08 u10", "zone-call", "José 12 55", "Julio 8 55", "Sol 9 44", "Ana O. 44");

    assertThat(remarks()).hasSize(1).first().asString().contains("line 3", "so in 2 rows below");
  }

  @ParameterizedTest
  @CsvSource({"cruz l 44, L", "cruz r 44, R", "cruz lópez r 44, R", "Cruz L. l 44, L"})
  void the_side_of_a_switch_hitter_is_no_part_of_the_name(String line, String side) {
    assertThat(read("2027-03-08 u10", "zone-call", line))
        .containsExactly("p03 03-08 zone-call 4" + side);
    assertThat(club.messages()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "José Pérez 55 5h",
        "Nobody 55",
        "Then it rained",
        "Ana 55",
        "José",
        "7 take",
        "7 r2",
        "#7 was late",
        "7 was late",
      })
  void what_names_nobody_or_has_no_toss_is_told(String line) {
    boolean note = line.startsWith("#");
    assertThat(read("2027-03-08 u10", "zone-call", line)).isEmpty();
    assertThat(note ? List.of("note") : club.messages()).isNotEmpty();
    assertThat(club.messages()).hasSize(note ? 0 : 1).allMatch(m -> m.contains("line 3 column 1"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "# 7 55 5h",
        "## 7 55 5h",
        "#José 55",
        "7 45 # 55 5h",
        "7 45 #55 5h",
        "7 45 #5h",
        "# 7 zone-call 55",
        "# 2027-03-09 u10",
        "# 9 March 2027"
      })
  void a_note_that_looks_like_tosses_or_a_day_is_told(String line) {
    read("2027-03-08 u10", "zone-call", line);

    assertThat(remarks()).hasSize(1).first().asString().contains("line 3 column", "behind #");
    assertThat(faults()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "# rain at six",
        "# rain at 17",
        "# field 3",
        "7 45 # he was tired",
        "2027-03-08 u10 # field 3",
        "countdown # 12",
        "#"
      })
  void a_note_in_words_is_a_note(String line) {
    read("2027-03-08 u10", "zone-call", "7 55", line);

    assertThat(club.messages()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "8 March 2027",
        "8 March 2027 u10 cage by Coach Kim",
        "8th March 2027",
        "8th of March, 2027",
        "March 8, 2027 u10",
        "March 8th 2027",
        "Mar 8 2027",
        "Mar. 8, 2027",
        "Monday 8 March 2027",
        "Monday, March 8, 2027",
        "Mon 2027-03-08 u10",
        "monday 2027-03-08",
        "Date: 2027-03-08",
        "Fecha: 8 de marzo de 2027",
        "lunes, 8 de marzo de 2027",
        "Lunes 8 de Marzo del 2027 u10",
        "8 mar 27",
        "8-March-2027",
        "8.mar.2027 u10",
        "2027/03/08",
        "u10 2027-03-08",
        "u10 8 March 2027 cage",
      })
  void a_day_as_people_write_it_begins_a_practice(String day) {
    assertThat(read(day, "zone-call", "ana o 55", "", "March 9, 2027", "zone-call", "12 44"))
        .containsExactly("p01 03-08 zone-call 5R", "p02 03-09 zone-call 4L");
    assertThat(club.messages()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "8 March",
        "March 8",
        "Mar 8 u10",
        "8 de marzo",
        "Tuesday",
        "tue u10",
        "martes 9",
        "3/8",
        "8.3.",
        "20270308",
        "30 February 2027",
        "2027-3-99",
        "3/8/2027",
      })
  void no_toss_below_a_day_that_cannot_be_told_gets_another_day(String day) {
    assertThat(
            read(
                "2027-03-01 u10",
                "zone-call",
                "7 11",
                day,
                "7 55",
                "2027-03-09",
                "zone-call",
                "7 44"))
        .containsExactly("p01 03-01 zone-call 1R", "p01 03-09 zone-call 4R");
    assertThat(club.messages())
        .hasSize(1)
        .allMatch(m -> m.contains("line 4 column 1") && m.contains("nothing below it is read"));
  }

  @Test
  void a_child_may_be_called_as_a_month() {
    assertThat(read("2027-03-08 u10", "zone-call", "Julio 4 55", "julio 7 55 44"))
        .hasSize(5)
        .allMatch(t -> t.startsWith("p05 03-08"));
    assertThat(read("Julio 8 2027", "zone-call", "Julio 4")).hasSize(1);
  }

  @Test
  void what_stands_above_the_first_day_is_told() {
    assertThat(read("Our practice", "2027-03-08", "zone-call", "7 55")).hasSize(1);
    assertThat(remarks()).hasSize(1).first().asString().contains("line 1 column 1", "above");

    assertThat(read("zone-call", "7 55", "2027-03-08", "zone-call", "7 55")).hasSize(1);
    assertThat(faults()).hasSize(1).first().asString().contains("line 1 column 1", "above");
  }

  @ParameterizedTest
  @CsvSource({
    "'Practice', 'zone-call', '7 55', fault",
    "'Practice', '', '#7 55 5h', fault",
    "'Practice', '', 'José 55', fault",
    "'Call the spot', '', '7 55', fault",
    "'guest Sam 10 R', '', '', fault",
    "'Bring foam balls', 'and 7 bats', '', warning",
  })
  void a_log_without_a_day_is_a_fault_and_a_note_is_not(
      String one, String two, String three, String weight) {
    assertThat(read(one, two, three)).isEmpty();
    assertThat(club.messages()).hasSize(1).first().asString().startsWith(weight);
  }

  @Test
  void below_a_drill_that_was_mistyped_no_toss_gets_another_drill() {
    assertThat(
            read(
                "2027-03-08", "countdown", "7 5h", "zone-cal foam 18", "7 55", "zone-call", "7 44"))
        .containsExactly("p01 03-08 countdown 5R", "p01 03-08 zone-call 4R");
    assertThat(club.messages()).hasSize(1).first().asString().contains("line 4", "Maybe zone-call");
  }

  @Test
  void two_words_for_one_thing_are_told() {
    read("2027-03-08 u10", "zone-call foam plastic 18 20", "7 55");

    assertThat(faults())
        .hasSize(2)
        .allMatch(m -> m.contains("line 2") && m.contains("the first is kept"));
  }

  @Test
  void the_number_of_a_guest_may_bear_its_sign() {
    club.with("logs/a.txt", "2027-03-08 u10", "guest Sam 10 R #44", "zone-call", "#44 55");

    assertThat(club.read().player("guest-sam").number()).hasValue(44);
    assertThat(club.read().tosses()).hasSize(1);
  }

  /**
   * Lines of random forms: what carries marks is read in full, or a message names its line. Each
   * toss gets the child, day and drill that it was typed for.
   */
  @Test
  void random_practices_lose_no_toss_in_silence() {
    Random random = new Random(SEED);
    List<String> names =
        List.of(
            "7", "#7", "p01", "Ana O.", "Ochoa", "Ana 7", "ana #7", "Ochoa, Ana", "Anna", "Ana P.");
    List<String> days =
        List.of("2027-03-09", "9 March 2027", "Tue 9 March", "9/3/27", "9th March 2027");
    List<String> ends = List.of("", " # tired", " #55", " #5h 44", "# 55", " ,", ";");
    for (int round = 0; round < 300; round++) {
      String name = one(names, random);
      String mark = random.nextBoolean() ? "55" : "5h";
      String end = one(ends, random);
      String line = (random.nextInt(6) == 0 ? "# " : "") + name + " " + mark + end;
      String day = one(days, random);
      List<String> read = read("2027-03-08 u10", "zone-call", day, "countdown", line, "12 5h");
      List<String> told = club.messages();
      String run = String.format(Locale.ROOT, "seed %d round %d: %s / %s", SEED, round, day, line);
      boolean stranger = name.startsWith("Anna") && line.startsWith("# ");
      boolean dayTold = told.stream().anyMatch(m -> m.contains("line 3"));
      boolean lineTold = told.stream().anyMatch(m -> m.contains("line 5"));
      assertThat(read.contains("p02 03-09 countdown 5L")).as(run).isEqualTo(!dayTold);
      assertThat(read).as(run).noneMatch(t -> t.contains("03-08"));
      assertThat(read.contains("p01 03-09 countdown 5R"))
          .as(run)
          .isEqualTo(!dayTold && read.size() == 2);
      assertThat(stranger || dayTold || lineTold || read.size() == 2).as(run).isTrue();
      assertThat(stranger || !line.substring(1).matches(".*#\\s?5.*") || dayTold || lineTold)
          .as(run)
          .isTrue();
    }
  }

  private static String one(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }
}
