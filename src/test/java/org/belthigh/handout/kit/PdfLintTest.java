package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class PdfLintTest {
  @ParameterizedTest
  @EnumSource(Paper.class)
  void every_block_is_clean_on_every_paper(Paper paper) {
    for (Style style : Style.values()) {
      assertThat(PdfLint.faults(Samples.pdf(Samples.everyBlock(paper, style, Samples.ENGLISH))))
          .isEmpty();
      assertThat(PdfLint.faults(Samples.pdf(Samples.everyBlock(paper, style, Samples.SPANISH))))
          .isEmpty();
    }
  }

  static Stream<Integer> rows() {
    return Stream.of(0, 1, 30, 130);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_table_of_any_length_is_clean(int rows) {
    assertThat(PdfLint.faults(Samples.pdf(Samples.longTable(Paper.LETTER_LYING, rows)))).isEmpty();
    assertThat(PdfLint.faults(Samples.pdf(Samples.longTable(Paper.A4, rows)))).isEmpty();
  }

  @Test
  void a_packet_is_clean() {
    assertThat(PdfLint.faults(Samples.packet())).isEmpty();
  }

  @Test
  void lint_sees_text_that_stands_over_text() {
    // given: a flow whose space between two lines is taken back by a piece of no height
    Section section =
        Section.of(
            Paper.LETTER,
            Style.READER,
            Samples.WORDS,
            "Overlap",
            flow -> flow.add(new Stacked("first line", 0)).add(new Stacked("second line", 14)));
    // then
    assertThat(PdfLint.faults(Samples.pdf(section)))
        .containsExactly("\"second line\" over \"first line\"");
  }

  /** A block that says that it is lower than it is. */
  private record Stacked(String text, double height) implements Block {
    @Override
    public java.util.List<Piece> pieces(Tag parent, double width, Setting setting) {
      return Paragraph.body(Text.of(text), setting.style()).pieces(parent, width, setting).stream()
          .map(piece -> piece.redrawn(height, piece.drawing()).spaced(0, 0))
          .toList();
    }

    @Override
    public Extent extent(Setting setting) {
      return Extent.NONE;
    }
  }
}
