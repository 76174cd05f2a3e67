package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A log whose calls fit only with high and low changed places is asked about. */
class UpsideDownTest {
  @TempDir private Path temp;

  /** Tosses at the low and high row in turn, each called as {@code calls} has it, by turns. */
  private List<String> said(int tosses, String... calls) {
    List<String> lines = new ArrayList<>(List.of(TestClub.TOSSES));
    for (int i = 0; i < tosses; i++) {
      boolean low = i % 2 == 0;
      String called =
          switch (calls[i / 2 % calls.length]) {
            case "right" -> low ? "low" : "high";
            case "turned" -> low ? "8" : "2";
            default -> "belt";
          };
      lines.add(
          "2027-03-08,p01,zone-call,1," + (i + 1) + ",," + (low ? 1 : 9) + "," + called + ",no,");
    }
    return TestClub.in(temp).with("logs/a.csv", lines).messages();
  }

  @ParameterizedTest
  @CsvSource({
    "12, turned, true",
    "11, turned, false",
    "24, turned turned turned right, true",
    "24, turned turned turned belt, true",
    "24, turned turned belt belt, false",
    "24, turned turned right right, false",
    "24, turned belt right, false",
    "24, right, false",
    "24, belt, false"
  })
  void three_quarters_at_the_other_end_are_asked_about(int tosses, String calls, boolean asked) {
    assertThat(said(tosses, calls.split(" ")).isEmpty()).isEqualTo(!asked);
  }

  @Test
  void it_says_how_many_and_which_row_is_low() {
    assertThat(said(12, "turned"))
        .containsExactly(
            "warning CLUB/logs/a.csv, called: 12 of 12 calls of high and low tosses would be right"
                + " upside down, and 0 are right as they stand; spots 1 2 3 are the low row, 4 5 6"
                + " the belt, 7 8 9 the high row.\nMaybe 1 was taken for the top row; then change"
                + " the spots, or ask who wrote it.");
  }
}
