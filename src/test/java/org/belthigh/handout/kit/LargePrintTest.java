package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Large print: type, pictures and room, by the sizes on paper. */
class LargePrintTest {
  private static Section section(Consumer<Flow> content) {
    return Section.of(Paper.LETTER, Style.READER, Samples.WORDS, "Test print", content);
  }

  private static byte[] pdf(Section section) {
    return Pdf.of(section, "Test", Samples.ENGLISH, Samples.DAY);
  }

  private static PdfLint.TextLine line(byte[] pdf, String text) {
    return PdfLint.lines(pdf).stream()
        .filter(l -> l.text().contains(text))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void running_text_has_16_points_and_the_margins_stay() {
    Section usual = section(flow -> flow.h1("Angela").p("See it early."));
    byte[] large = pdf(usual.large());

    assertThat(line(pdf(usual), "See it").size()).isCloseTo(11, within(0.1));
    assertThat(line(large, "See it").size()).isCloseTo(16, within(0.1));
    assertThat(line(large, "See it").left()).isCloseTo(Paper.MARGIN, within(0.5));
    assertThat(PdfLint.faults(large)).isEmpty();
  }

  @Test
  void clipboard_text_has_16_points_too() {
    Section usual =
        Section.of(
            Paper.A4, Style.CLIPBOARD, Samples.WORDS, "Test", flow -> flow.p("Who is where"));

    assertThat(line(pdf(usual.large()), "Who is").size()).isCloseTo(16, within(0.1));
  }

  @Test
  void columns_too_narrow_for_large_words_stand_one_below_the_other() {
    Section usual =
        section(
            flow ->
                flow.columns(
                    columns ->
                        columns
                            .column(
                                1,
                                left ->
                                    left.p(
                                        "An adult stays here the whole time, and watches who comes."))
                            .column(
                                1,
                                right ->
                                    right.p(
                                        "Stop when it gets dark, or when anything hurts or is tired."))));
    byte[] beside = pdf(usual);
    byte[] below = pdf(usual.large());

    assertThat(line(beside, "Stop when").baseline()).isEqualTo(line(beside, "An adult").baseline());
    assertThat(line(below, "Stop when").baseline())
        .isGreaterThan(line(below, "An adult").baseline());
    assertThat(PdfLint.faults(below)).isEmpty();
  }

  @Test
  void a_wide_picture_shrinks_to_the_column_but_never_below_its_usual_size() {
    Section usual =
        section(
            flow ->
                flow.picture(
                    530,
                    100,
                    "A line under a word.",
                    pen -> {
                      pen.line(0, 90, 530, 90, Pen.Stroke.THICK);
                      pen.label(10, 50, Align.LEFT, "plate");
                    }));
    byte[] large = pdf(usual.large());

    assertThat(line(large, "plate").size()).isBetween(11.0, 16.0);
    assertThat(PdfLint.faults(large)).isEmpty();
    assertThatThrownBy(
            () -> pdf(section(flow -> flow.picture(560, 10, "Too wide.", pen -> {})).large()))
        .isInstanceOf(Overflow.class)
        .hasMessageContaining("wider than its column");
  }

  @Test
  void pages_are_counted_in_large_print() {
    Section usual = section(flow -> flow.checks(List.of(lines(30))));

    assertThat(usual.pageCount()).isEqualTo(1);
    assertThat(usual.large().pageCount()).isEqualTo(2);
  }

  private static Text[] lines(int count) {
    Text[] lines = new Text[count];
    Arrays.fill(lines, Text.of("Tick me."));
    return lines;
  }
}
