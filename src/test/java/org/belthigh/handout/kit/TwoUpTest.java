package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Two prints to a sheet, each a print of its own. */
class TwoUpTest {
  private static Section half(Paper paper, String name, Consumer<Flow> more) {
    return Section.of(
            paper,
            Style.READER,
            Samples.WORDS,
            name,
            flow -> {
              flow.h1(name).p("See it early.");
              more.accept(flow);
            })
        .footed("Card");
  }

  private static Section half(String name) {
    return half(Paper.LETTER_HALF, name, flow -> {});
  }

  private static byte[] pdf(Section... halves) {
    try (Pdf pdf = Pdf.of("Cards", Samples.ENGLISH, Samples.DAY, "cards")) {
      pdf.addTwoUp("Cards ", List.of(halves));
      return pdf.bytes();
    }
  }

  private static PdfLint.TextLine line(byte[] pdf, String text) {
    return PdfLint.lines(pdf).stream()
        .filter(l -> l.text().contains(text))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(names = {"LETTER_HALF", "A4_HALF"})
  void two_prints_stand_side_by_side_and_follow_both_standards(Paper paper) {
    byte[] pdf =
        pdf(
            half(paper, "Ada", TwoUpTest::everything),
            half(paper, "Bo", TwoUpTest::everything),
            half(paper, "Cy", TwoUpTest::everything));

    assertThat(line(pdf, "Ada").left()).isCloseTo(Paper.MARGIN, within(2.0));
    assertThat(line(pdf, "Bo").left()).isCloseTo(paper.width() + Paper.MARGIN, within(2.0));
    assertThat(line(pdf, "Bo").baseline()).isEqualTo(line(pdf, "Ada").baseline());
    assertThat(line(pdf, "Bo").page()).isZero();
    assertThat(line(pdf, "Cy").page()).isEqualTo(1);
    assertThat(PdfLint.faults(pdf)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
  }

  @Test
  void each_is_read_to_its_end_before_the_next_and_counts_its_own_pages() {
    byte[] pdf = pdf(half("Ada"), half("Bo"));

    assertThat(PdfLint.words(pdf)).isEqualTo("Ada See it early. Bo See it early.");
    assertThat(PdfLint.lines(pdf).stream().filter(l -> l.text().contains("page 1 of 1")))
        .hasSize(2);
  }

  @Test
  void a_print_too_long_for_its_half_goes_on_in_the_next_under_its_heading() {
    byte[] pdf = pdf(half(Paper.LETTER_HALF, "Ada", flow -> flow.checks(boxes())), half("Bo"));

    PdfLint.TextLine heading = line(pdf, "Ada (continued)");
    assertThat(heading.page()).isZero();
    assertThat(heading.left()).isGreaterThan(Paper.LETTER_HALF.width());
    assertThat(line(pdf, "Bo").page()).isEqualTo(1);
    assertThat(PdfLint.faults(pdf)).isEmpty();
  }

  @Test
  void a_picture_on_the_right_says_where_it_is() throws IOException {
    byte[] pdf = pdf(half("Ada"), half(Paper.LETTER_HALF, "Bo", TwoUpTest::everything));

    try (PDDocument document = Loader.loadPDF(pdf)) {
      COSArray box =
          figure(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject())
              .getCOSDictionary(COSName.A)
              .getCOSArray(COSName.BBOX);
      assertThat((double) box.toFloatArray()[0])
          .isCloseTo(Paper.LETTER_HALF.width() + Paper.MARGIN, within(0.1));
    }
  }

  @Test
  void a_sheet_has_a_bookmark_for_each_print_and_one_label() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(half("Ada"), half("Bo"), half("Cy")))) {
      assertThat(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
          .containsExactly("Cards 1", "Cards 2");
      assertThat(document.getDocumentCatalog().getDocumentOutline().children())
          .extracting(item -> item.getTitle())
          .containsExactly("Ada", "Bo", "Cy");
    }
  }

  @Test
  void prints_on_whole_sheets_or_on_two_papers_are_refused() {
    Section whole = half(Paper.LETTER, "Ada", flow -> {});
    Section a4 = half(Paper.A4_HALF, "Bo", flow -> {});

    assertThatThrownBy(() -> pdf(whole, whole)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> pdf(half("Ada"), a4)).isInstanceOf(IllegalArgumentException.class);
  }

  private static void everything(Flow flow) {
    flow.picture(60, 20, "A black block.", pen -> pen.fill(0, 0, 60, 20))
        .checks("Done")
        .hatchedBox("Arm", box -> box.bullets("Rest today."));
  }

  private static List<Text> boxes() {
    return Collections.nCopies(40, Text.of("Tick me."));
  }

  private static COSDictionary figure(COSDictionary element) {
    if ("Figure".equals(element.getNameAsString(COSName.S))) {
      return element;
    }
    for (COSBase kid : PdfLint.kids(element)) {
      if (kid instanceof COSDictionary child && child.getItem(COSName.S) != null) {
        COSDictionary found = figure(child);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }
}
