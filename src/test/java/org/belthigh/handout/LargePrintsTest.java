package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Every print of the demo in large type, and the pictures of first pages. */
class LargePrintsTest {
  private static final Set<Print> ALONE =
      EnumSet.complementOf(EnumSet.of(Print.PACKET, Print.CLIPBOARD));

  @ParameterizedTest
  @CsvSource({"letter, en", "a4, es"})
  void every_print_is_clean_in_large_type(String paper, String language) {
    Map<String, byte[]> prints = print(plan(paper, language, Set.of("p01", "p12")), ALONE, true);

    assertThat(prints).hasSizeGreaterThan(10);
    prints.forEach(
        (path, pdf) -> {
          assertThat(PdfLint.faults(pdf)).as(path).isEmpty();
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).as(path).isEmpty();
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).as(path).isEmpty();
        });
  }

  /** A packet counts its pages before it is bound. */
  @ParameterizedTest
  @CsvSource({"letter, es", "a4, en"})
  void the_whole_packet_fits_in_large_type(String paper, String language) throws IOException {
    Set<Print> all = EnumSet.complementOf(EnumSet.of(Print.CLIPBOARD));
    byte[] packet = print(plan(paper, language, Set.of()), all, true).get("u10/packet.pdf");

    assertThat(Conformance.faults(packet, PDFAFlavour.PDFUA_1)).isEmpty();
  }

  /** Whose view a picture is stands above it, and not at the foot of the page before. */
  @ParameterizedTest
  @CsvSource({"letter, en, As the hitter sees it.", "a4, es, Como lo ve quien batea."})
  void what_a_picture_shows_is_said_on_its_own_page(String paper, String language, String view)
      throws IOException {
    Map<String, byte[]> prints =
        print(plan(paper, language, Set.of("p08")), EnumSet.of(Print.GUIDE, Print.CARD), true);

    assertThat(prints).hasSize(2);
    for (byte[] pdf : prints.values()) {
      assertThat(pages(pdf))
          .filteredOn(page -> page.contains(view))
          .singleElement()
          .asString()
          .containsPattern("(83|84) cm|33 in");
    }
  }

  private static List<String> pages(byte[] pdf) throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(page);
        text.setEndPage(page);
        pages.add(text.getText(document));
      }
    }
    return pages;
  }

  @Test
  void a_preview_shows_the_first_page_in_grey_at_100_dots_an_inch() throws IOException {
    byte[] card =
        print(plan("letter", "en", Set.of("p01")), Set.of(Print.CARD), false)
            .get("u10/cards/p01-week-2027-04-05.pdf");
    byte[] png = Preview.png(card);
    var image = ImageIO.read(new ByteArrayInputStream(png));

    assertThat(image.getWidth()).isBetween(849, 850);
    assertThat(image.getHeight()).isBetween(1099, 1100);
    assertThat(image.getColorModel().getNumComponents()).isEqualTo(1);
    assertThat(Preview.png(card)).isEqualTo(png);
  }

  private static Map<String, byte[]> print(Plan plan, Set<Print> prints, boolean large) {
    Map<String, byte[]> all = new TreeMap<>();
    Handouts usual = new Handouts(SamplePlans.WORDS);
    (large ? usual.large() : usual).print(plan, prints, all::put);
    return all;
  }

  private static Plan plan(String paper, String language, Set<String> players) {
    return SamplePlans.demo(2, Set.of("u10"), players, paper, Optional.of(language));
  }
}
