package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.belthigh.handout.PrintedPages;
import org.belthigh.model.Printable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of all scripts: those that the faces have read the right way, the others are told. */
class ScriptsTest {
  @Test
  void what_is_called_printable_is_what_both_faces_have() {
    assertThat(
            IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                .filter(ScriptsTest::isSeen)
                .filter(c -> Printable.has(c) != Face.ALL.stream().allMatch(face -> face.has(c))))
        .isEmpty();
  }

  private static boolean isSeen(int c) {
    int type = Character.getType(c);
    return type != Character.UNASSIGNED
        && type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.PRIVATE_USE
        && !Character.isWhitespace(c)
        && !Character.isSpaceChar(c)
        && !(c >= 0xfe00 && c <= 0xfe0f);
  }

  @ParameterizedTest
  @CsvSource({
    "\u05e0\u05d5\u05e2\u05d4, \u05d4\u05e2\u05d5\u05e0",
    "\u05e0\u05d5\u05e2\u05d4 7, \u05d4\u05e2\u05d5\u05e0 7",
    "'Ana 7, \u05e0\u05d5\u05e2\u05d4 4', 'Ana 7, \u05d4\u05e2\u05d5\u05e0 4'",
    "\u05d0\u05d1 \u05d2\u05d3, \u05d3\u05d2\u00a0\u05d1\u05d0",
    "\u05d0\u05d1 \u05d2. 7, .\u05d2\u00a0\u05d1\u05d0 7",
    "José 7, José 7",
    "\u738b\u5c0f\u660e 7, \u25a1 7",
  })
  void a_name_reads_from_its_own_side(String name, String set) {
    assertThat(Text.of(name).plain()).isEqualTo(set).doesNotContain("?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u05e0\u05d5\u05e2\u05d4 \u00b7 4",
        "\u05e0\u05d5\u05e2\u05d4 4: at home, Wed, April 7",
        "\u05d0\u05d1 \u05d2\u05d3, you swung at 44 of 54",
        "Ana 7, \u05e0\u05d5\u05e2\u05d4 4, \u05d0\u05d1 12",
        "Jos\u00e9 7"
      })
  void a_name_is_read_back_as_it_was_written(String line) throws Exception {
    Section section =
        Section.of(
            Paper.LETTER, Style.READER, Samples.WORDS, "Names", flow -> flow.h1(line).p(line));
    String text = PrintedPages.read(Samples.pdf(section)).pages().get(0).text();

    assertThat(text.replace('\u00a0', ' ').lines().filter(line::equals)).hasSize(2);
  }
}
