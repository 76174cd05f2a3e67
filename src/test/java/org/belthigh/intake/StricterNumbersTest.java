package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Stricter;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers of a club's own; the broken ones lie in {@code bad/club.yaml}. */
class StricterNumbersTest {
  @TempDir private Path temp;

  private Stricter read(String... lines) throws IOException, Unusable {
    TestClub club = TestClub.in(temp);
    List<String> file = new java.util.ArrayList<>(TestClub.CLUB);
    file.addAll(List.of(lines));
    club.with("club.yaml", file);
    return Intake.read(club.folder(), TestCatalogue.small()).club().stricter();
  }

  @Test
  void a_club_that_says_nothing_has_none() throws IOException, Unusable {
    assertThat(read().isNone()).isTrue();
  }

  @Test
  void numbers_up_to_the_books_own_are_kept() throws IOException, Unusable {
    Stricter stricter =
        read(
            "stricter:",
            "  daily_max: [{ages: [9, 10], pitches: 75}, {ages: [11, 12], pitches: 60}]",
            "  weekly_max: [{ages: [9, 12], pitches: 150}]",
            "  rest_days_add: 1",
            "  days_in_a_row: 2");

    assertThat(stricter.dailyMax())
        .containsExactly(new Stricter.Limit(9, 10, 75), new Stricter.Limit(11, 12, 60));
    assertThat(stricter.weeklyMax()).containsExactly(new Stricter.Limit(9, 12, 150));
    assertThat(stricter.restDaysAdded()).isEqualTo(1);
    assertThat(stricter.daysInARow()).hasValue(2);
  }

  @Test
  void a_looser_number_is_left_out_and_the_stricter_ones_beside_it_are_kept()
      throws IOException, Unusable {
    Stricter stricter =
        read(
            "stricter:",
            "  daily_max: [{ages: [9, 10], pitches: 76}, {ages: [11, 12], pitches: 60}]",
            "  weekly_max: [{ages: [9, 12], pitches: 151}]",
            "  rest_days_add: -1",
            "  days_in_a_row: 3");

    assertThat(stricter.dailyMax()).containsExactly(new Stricter.Limit(11, 12, 60));
    assertThat(stricter.weeklyMax()).isEmpty();
    assertThat(stricter.restDaysAdded()).isZero();
    assertThat(stricter.daysInARow()).isEmpty();
  }

  @Test
  void ages_without_a_table_have_nothing_to_loosen() throws IOException, Unusable {
    Stricter stricter = read("stricter: {daily_max: [{ages: [13, 14], pitches: 200}]}");

    assertThat(stricter.dailyMax()).containsExactly(new Stricter.Limit(13, 14, 200));
  }

  @Test
  void a_book_without_a_confirmed_number_is_warned_of() throws IOException, Unusable {
    TestClub club = TestClub.in(temp);
    List<String> lines =
        TestClub.CLUB.stream().map(l -> l.replace("pitch-smart-2018", "wbsc-youth")).toList();
    club.with("club.yaml", lines);

    ClubRecord read = Intake.read(club.folder(), CatalogueLoader.load().orThrow());

    assertThat(read.problems())
        .extracting(Problem::text)
        .anyMatch(t -> t.contains("no number of 'wbsc-youth' is confirmed"));
    assertThat(read.problems()).noneMatch(Problem::isFault);
  }
}
