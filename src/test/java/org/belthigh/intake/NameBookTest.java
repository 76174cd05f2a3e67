package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who fits a text, form by form. A child that fits wrongly gets another's report, and one that does
 * not fit loses its own, so both ways are listed.
 */
class NameBookTest {
  private record Kid(String id, String firstName, Optional<String> lastName, OptionalInt number)
      implements Named {}

  private static Kid kid(String id, String first, String last, int number) {
    return new Kid(
        id,
        first,
        Optional.of(last).filter(l -> !l.isEmpty()),
        number < 0 ? OptionalInt.empty() : OptionalInt.of(number));
  }

  private static final List<Kid> KIDS =
      List.of(
          kid("p01", "José", "Núñez García", 7),
          kid("p02", "Ana", "Ortega", 12),
          kid("p03", "Ana", "Olsen", 4),
          kid("p04", "María José", "de la Cruz", 21),
          kid("p05", "Bo", "", -1),
          kid("33", "Kit", "Lund", 9));

  private final NameBook<Kid> book = new NameBook<>(KIDS);

  private static String ids(List<Kid> kids) {
    return String.join(" ", kids.stream().map(Kid::id).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "p01; p01",
        "007; p01",
        "0; ''",
        "33; 33",
        "033; 33",
        "José; p01",
        "María José; p04",
        "Maria; p04",
        "Cruz; p04",
        "Garcia; p01",
        "Bo; p05",
        "Bo p05; p05",
        "p05 Bo; p05",
        "Ana; p02 p03",
        "Ana O; p02 p03",
        "Ana Or; p02",
        "Ana Ortega; p02",
        "Ortega Ana; p02",
        "Ortega, Ana; p02",
        "Ana Ortegas; ''",
        "Ana rtega; ''",
        "Ana O 12; p02",
        "Ana 12; p02",
        "Ana 012; p02",
        "Ana 4; p03",
        "Ana 1; ''",
        "Ana 2; ''",
        "Ana O 2; ''",
        "Ana X 12; ''",
        "12 Ana; p02",
        "012 Ana; p02",
        "12 Ana O; p02",
        "12 Ana X; ''",
        "12 Ortega; p02",
        "12 O; ''",
        "12 Bo; ''",
        "12 12; ''",
        "Ana 12 p02; p02",
        "Ana p02 12; p02",
        "Ana O 12 p02; p02",
        "Ana X 12 p02; ''",
        "Ana 4 p02; ''",
        "Ana O 4 p02; ''",
        "Ortega 12; p02",
        "Ortega A 12; p02",
        "Ortega X 12; ''",
        "José M; ''",
        "José G; p01",
        "José García; p01",
        "José N 7; p01",
        "José J; ''",
        "María C; p04",
        "21 María C; p04",
        "21 María José C; p04",
        "21 María José X; ''",
        "Kit 33; 33",
        "33 Kit L; 33",
        "Kit 9; 33",
        "Kit 9 33; 33",
        "Kit 34; ''",
        "Wilhelmina; ''",
      })
  void who_is_called_so(String text, String ids) {
    assertThat(ids(book.called(text))).isEqualTo(ids);
  }

  @Test
  void a_whole_name_goes_before_a_part_of_one() {
    NameBook<Kid> two = new NameBook<>(List.of(kid("a", "Lee Ann", "", 1), kid("b", "Ann", "", 2)));

    assertThat(ids(two.called("Ann"))).isEqualTo("b");
    assertThat(ids(two.called("Lee"))).isEqualTo("a");
    assertThat(ids(two.called("Ann 1"))).isEqualTo("a");
  }

  @Test
  void nothing_calls_nobody() {
    assertThat(book.called("")).isEmpty();
    assertThat(book.called(" - ")).isEmpty();
    assertThat(book.beginningWith("")).isEmpty();
    assertThat(book.similar("")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Wilhelmina; ''",
        "Ana X; p02 p03",
        "Jos; p01",
        "Ortegb; p02",
        "Olsen Ana; p02 p03",
        "p99; ''",
        "p0l; p01 p02 p03 p04 p05",
        "Ana 21; p02 p03 p04",
        "Nunez Garcia Jose; p01 p04",
        "Nunes Garcia Jose; p01 p04",
        "Cruz X; p04"
      })
  void whom_a_text_resembles(String text, String ids) {
    assertThat(String.join(" ", book.similar(text))).isEqualTo(ids);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Jos; p01",
        "nun; p01",
        "p0; p01 p02 p03 p04 p05",
        "Ana; p02 p03",
        "Ana Ol; p03",
        "Olsen A; p03",
        "María José d; p04",
        "3; 33",
        "9; 33",
        "1; p02",
        "osé; ''"
      })
  void whose_name_begins_so(String text, String ids) {
    assertThat(String.join(" ", book.beginningWith(text))).isEqualTo(ids);
  }

  @Test
  void the_nearest_name_is_found_where_it_is_near() {
    assertThat(ids(book.nearest("Ortegs"))).isEqualTo("p02");
    assertThat(book.nearest("Wilhelmina")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"007,7", "0,0", "000,0", "Núñez,nunez", "'Ortega, Ana',ana-ortega", "a1,a1"})
  void names_are_compared_without_case_accents_and_zeros(String text, String plain) {
    assertThat(NameBook.plain(text)).isEqualTo(plain);
  }
}
