package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class ConformanceTest {
  static Stream<Arguments> documents() {
    return Stream.of(
        Arguments.of(
            "letter, English",
            Samples.pdf(Samples.everyBlock(Paper.LETTER, Style.READER, Samples.ENGLISH))),
        Arguments.of(
            "A4, Spanish",
            Samples.pdf(Samples.everyBlock(Paper.A4, Style.CLIPBOARD, Samples.SPANISH))),
        Arguments.of("long table", Samples.pdf(Samples.longTable(Paper.A4_LYING, 60))),
        Arguments.of("long text", Samples.pdf(Samples.longText(Paper.LETTER, Samples.SPANISH, 9))),
        Arguments.of(
            "nothing",
            Samples.pdf(Section.of(Paper.A4, Style.READER, Samples.WORDS, "Empty", flow -> {}))),
        Arguments.of("cut rows and boxes", Samples.pdf(Samples.cutRowsAndBoxes(Paper.LETTER))),
        Arguments.of("packet", Samples.packet()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("documents")
  void documents_follow_pdf_ua_1(String name, byte[] pdf) {
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).as(name).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("documents")
  void documents_follow_pdf_a_2a(String name, byte[] pdf) {
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).as(name).isEmpty();
  }
}
