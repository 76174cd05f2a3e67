package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A row that ran into another, or was cut off with the end of its file, still holds its child. */
class LostRowsTest {
  private static final String HEALTH =
      """
      date,player,kind,clears,by,note
      2027-03-08,p02,symptom-free,,parent,sore
      2027-03-09,p01,head-injury,,,hit by a ball
      """;
  private static final String THROWS =
      """
      date,player,pitches,kind
      2027-03-08,p02,20,game
      2027-03-09,p01,70,game
      """;

  @TempDir Path temp;

  private ClubRecord read(String name, String text) {
    return TestClub.in(temp).withText(name, text).read();
  }

  private boolean holds(String name, String text) {
    ClubRecord record = read(name, text);
    return record.unread().stream().anyMatch(u -> u.concerns("p01"))
        || record.wellness().stream().anyMatch(w -> w.player().equals("p01"))
        || record.outings().stream().anyMatch(o -> o.player().equals("p01"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"wellness.csv", "throws.csv"})
  void a_lost_line_end_loses_nobody(String name) {
    String whole = name.startsWith("w") ? HEALTH : THROWS;
    for (int at = whole.indexOf('\n'); at < whole.length() - 1; at = whole.indexOf('\n', at + 1)) {
      for (String instead : List.of("", ",", " ", ";", "\t")) {
        String text = whole.substring(0, at) + instead + whole.substring(at + 1);
        assertThat(holds(name, text)).as(text).isTrue();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"wellness.csv", "throws.csv"})
  void a_piece_lost_over_a_line_end_loses_nobody(String name) {
    String whole = name.startsWith("w") ? HEALTH : THROWS;
    int end = whole.lastIndexOf("\n", whole.length() - 2);
    for (int before = 1; before < "20,game".length(); before++) {
      for (int after = 1; after < "2027-03-09,".length(); after++) {
        String text = whole.substring(0, end - before) + whole.substring(end + after);
        assertThat(holds(name, text)).as(text).isTrue();
      }
    }
  }

  @Test
  void a_health_report_that_is_cut_in_two_holds_everyone() {
    String head = "date,player,kind,clears,by,note\n2027-03-08,p02,arm-pain,,,sore\n";
    List<String> silent = new ArrayList<>();
    String cut = "2027-03-09,p02,cleared,arm-pain,physician";
    for (int length = 1; length < cut.length(); length++) {
      if (!holds("wellness.csv", head + cut.substring(0, length))) {
        silent.add(cut.substring(0, length));
      }
    }

    assertThat(silent).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'date,player,kind,cle', true",
    "'date,player,kind,clears,by,no', true",
    "'date,player,kind,clears,by,note', false",
    "'date,player,kind\n', false",
    "'date,player,kind,clears,by,note,our remark\n', false",
  })
  void a_header_that_is_cut_holds_everyone(String text, boolean held) {
    assertThat(holds("wellness.csv", text)).isEqualTo(held);
  }

  @ParameterizedTest
  @CsvSource({
    "'2027-03-09,p02,head-injury,,,sore, told Cruz at once', 'p02'",
    "'2027-03-09,p02,head-injury,,,sore, Cruz, too', 'p02 p03'",
    "'2027-03-09,p02,hed,,,sore since 2027-03-01', 'p02'",
  })
  void a_comma_in_a_note_holds_those_who_are_named_alone(String row, String held) {
    ClubRecord record = read("wellness.csv", "date,player,kind,clears,by,note\n" + row + "\n");

    assertThat(record.unread())
        .extracting(u -> u.player().orElse("anyone"))
        .containsOnly(held.split(" "));
  }

  @Test
  void a_file_that_breaks_off_is_told() {
    List<String> said =
        read("wellness.csv", "date,player,kind\n2027-03-08,p02,arm-pa").problems().stream()
            .map(p -> p.text().toLowerCase(Locale.ROOT))
            .toList();

    assertThat(said).anyMatch(m -> m.contains("rows after it may be missing"));
  }
}
