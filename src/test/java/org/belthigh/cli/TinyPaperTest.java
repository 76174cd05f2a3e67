package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.belthigh.plan.PlanRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The prints of a club of four against its plan, one thing wrong a test. {@code PaperCheckTest}
 * does the like with the demo; this one is quick, so that mutants of the check can be tried with
 * it.
 */
class TinyPaperTest {
  private static final List<String> TEAM =
      List.of(
          "u10/overview.pdf", "u10/arm.pdf", "u10/emergency.pdf", "u10/practice-2027-04-06.pdf");

  /** The same club with the sheets of the grown-ups in Spanish. */
  private static final class Spanish {
    private static final PrintedClub PRINTED =
        PrintedClub.usual(
            TinyClub.CATALOGUE,
            TinyClub.record(),
            new PlanRequest(
                TinyClub.FROM, 2, Set.of(), Set.of(), Optional.empty(), Optional.of("es")));
  }

  private final PrintedClub club = TinyClub.printed();

  private List<String> of(String path) {
    return club.said().stream().filter(s -> s.contains(path)).toList();
  }

  private static String card(String player) {
    return "u10/cards/" + player + "-week-2027-04-05.pdf";
  }

  private ObjectNode file(String path) {
    for (JsonNode file : club.json.path("files")) {
      if (file.path("path").asText().equals(path)) {
        return (ObjectNode) file;
      }
    }
    throw new AssertionError(path);
  }

  private byte[] without(String path, int page) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(club.pdfs.get(path))) {
      pdf.removePage(page);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      pdf.save(out);
      return out.toByteArray();
    }
  }

  @Test
  void sound_prints_are_not_spoken_of() {
    assertThat(club.said()).isEmpty();
  }

  @Test
  void a_sheet_that_is_no_pdf_is_told_with_its_child() {
    club.renewed(card("a1"), "no sheet".getBytes(StandardCharsets.UTF_8));
    club.renewed("u10/arm.pdf", new byte[0]);

    assertThat(of(card("a1"))).singleElement().asString().contains(card("a1") + ", a1", "no PDF");
    assertThat(of("u10/arm.pdf")).isNotEmpty();
  }

  @Test
  void a_sheet_about_nobody_of_the_plan_is_told() {
    file(card("a1")).put("player", "zz");

    assertThat(of(card("a1"))).anyMatch(s -> s.contains("the plan has no such player"));
  }

  @Test
  void swapped_cards_are_told_of_both() {
    byte[] ada = club.pdfs.get(card("a1"));
    club.renewed(card("a1"), club.pdfs.get(card("d1")));
    club.renewed(card("d1"), ada);

    assertThat(of(card("a1"))).isNotEmpty();
    assertThat(of(card("d1"))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"overview", "arm", "emergency", "practice-2027-04-06"})
  void one_sheet_of_the_grown_ups_in_another_language_is_told_and_it_alone(String sheet) {
    String path = "u10/" + sheet + ".pdf";
    club.renewed(path, Spanish.PRINTED.pdfs.get(path));

    assertThat(club.said())
        .filteredOn(s -> s.contains("the sheets of the grown-ups are in one language"))
        .singleElement()
        .asString()
        .contains(path, "its language is 'es'", "[en, es]");
  }

  @Test
  void half_in_one_language_and_half_in_the_other_is_told_of_all() {
    List<String> grown =
        club.pdfs.keySet().stream()
            .filter(p -> p.matches("u10/(overview|arm|emergency|practice.*|log|tosses.*)\\.pdf"))
            .toList();
    int half = grown.size() / 2;
    for (String path : grown.subList(0, half)) {
      club.renewed(path, Spanish.PRINTED.pdfs.get(path));
    }
    if (grown.size() % 2 == 1) {
      club.gone(grown.get(half));
    }

    assertThat(club.said())
        .filteredOn(s -> s.contains("the sheets of the grown-ups are in one language"))
        .hasSize(2 * half);
  }

  @ParameterizedTest
  @ValueSource(strings = {"overview", "arm", "emergency", "practice-2027-04-06"})
  void a_sheet_in_the_place_of_another_is_told(String sheet) {
    String path = "u10/" + sheet + ".pdf";
    club.renewed(path, club.pdfs.get("u10/guide.pdf"));

    assertThat(of(path)).isNotEmpty();
  }

  @Test
  void the_sheet_of_another_practice_is_told() {
    club.renewed("u10/practice-2027-04-08.pdf", club.pdfs.get("u10/practice-2027-04-06.pdf"));

    assertThat(of("practice-2027-04-08.pdf")).anyMatch(s -> s.contains("it is not of"));
    assertThat(of("practice-2027-04-06.pdf")).isEmpty();
  }

  @Test
  void a_packet_that_lacks_a_page_is_told_of_which_sheet() throws IOException {
    String packet = "u10/packet.pdf";
    int pages;
    try (PDDocument pdf = Loader.loadPDF(club.pdfs.get(packet))) {
      pages = pdf.getNumberOfPages();
    }
    assertThat(pages).isGreaterThan(4);
    byte[] whole = club.pdfs.get(packet);
    club.renewed(packet, without(packet, 0));
    assertThat(of(packet)).as("what is in it").anyMatch(s -> s.contains("it says Packet or"));

    club.pdfs.put(packet, whole);
    club.renewed(packet, without(packet, 1));
    assertThat(of(packet)).anyMatch(s -> s.contains("it lacks a page of u10/overview.pdf"));
  }

  @Test
  void a_packet_or_guide_of_nothing_is_told() throws IOException {
    for (String sheet : List.of("u10/packet.pdf", "u10/guide.pdf")) {
      PrintedClub damaged = club.copy();
      damaged.renewed(sheet, club.pdfs.get(card("a1")));
      assertThat(damaged.said()).as(sheet).anyMatch(s -> s.contains(sheet));
    }
  }

  @Test
  void each_sheet_of_the_group_is_missed_where_it_is_gone() {
    for (String path : TEAM) {
      PrintedClub damaged = club.copy();
      damaged.pdfs.remove(path);
      assertThat(damaged.said()).as(path).anyMatch(s -> s.contains(path));
    }
  }

  @Test
  void a_childs_own_sheet_has_its_label() {
    file("u10/log.pdf").put("player", "a1");
    assertThat(of("does not stand on it")).isEmpty();

    for (JsonNode player : club.json.path("players")) {
      if (player.path("player").asText().equals("a1")) {
        ((ObjectNode) player).put("label", "Zed 99");
      }
    }
    assertThat(of("u10/log.pdf, a1")).anyMatch(s -> s.contains("Zed 99 does not stand on it"));
  }
}
