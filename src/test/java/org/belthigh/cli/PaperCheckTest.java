package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.plan.PlanRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The auditor with the prints before it: sound ones, and damaged ones with their digests renewed.
 */
class PaperCheckTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate FROM = LocalDate.of(2027, 4, 5);
  private static final ClubRecord DEMO =
      new ClubReading(Path.of("demo-players"), CATALOGUE, false).record();
  private static final String CARDS = "u10/cards/";

  /** Printed once: each test damages a copy. */
  private static final PrintedClub SOUND =
      PrintedClub.usual(CATALOGUE, DEMO, request(FROM, null, null));

  @TempDir private Path folder;
  private final PrintedClub demo = SOUND.copy();

  private static PlanRequest request(LocalDate from, String paper, String language) {
    return new PlanRequest(
        from, 1, Set.of(), Set.of(), Optional.ofNullable(paper), Optional.ofNullable(language));
  }

  private static String card(String player) {
    return CARDS + player + "-week-" + FROM + ".pdf";
  }

  @Test
  void sound_prints_are_not_spoken_of() {
    assertThat(demo.said()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"letter, en", "letter, es", "a4, en", "a4, es"})
  void nor_are_those_on_other_paper_and_in_other_words(String paper, String language) {
    assertThat(PrintedClub.usual(CATALOGUE, DEMO, request(FROM, paper, language)).said()).isEmpty();
    assertThat(PrintedClub.large(CATALOGUE, DEMO, request(FROM, paper, language)).said()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 5, 6})
  void nor_are_those_of_made_up_clubs(long seed) {
    ClubRecord record = RandomClub.of(seed, CATALOGUE);
    for (int week = 0; week < 2; week++) {
      LocalDate from = record.club().seasonFirst().plusDays(7L * (3 * week + 1));
      PlanRequest request = request(from, null, seed % 2 == 0 ? "es" : null).withSeasonReports();
      assertThat(PrintedClub.all(CATALOGUE, record, request).said())
          .as("seed " + seed + ", from " + from)
          .isEmpty();
    }
  }

  @Test
  void swapped_cards_are_told_of_both_children() {
    byte[] one = demo.pdfs.get(card("p01"));
    demo.renewed(card("p01"), demo.pdfs.get(card("p10")));
    demo.renewed(card("p10"), one);

    assertThat(demo.said())
        .anySatisfy(s -> assertThat(s).contains(card("p01") + ", p01", "headed"))
        .anySatisfy(s -> assertThat(s).contains(card("p10") + ", p10", "headed"));
  }

  @Test
  void a_sheet_that_was_cut_short_cannot_be_read() {
    byte[] pdf = demo.pdfs.get(card("p02"));
    demo.renewed(card("p02"), Arrays.copyOf(pdf, pdf.length / 3));

    assertThat(demo.said()).anyMatch(s -> s.contains(card("p02") + ", p02"));
  }

  @Test
  void what_is_no_pdf_cannot_be_read_either() {
    demo.renewed("u10/arm.pdf", "not a sheet".getBytes(java.nio.charset.StandardCharsets.UTF_8));

    assertThat(demo.said()).anyMatch(s -> s.contains("u10/arm.pdf") && s.contains("no PDF"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "u10/cards/p04-week-2027-04-05.pdf",
        "u10/emergency.pdf",
        "u10/overview.pdf",
        "u10/arm.pdf",
        "u10/guide.pdf",
        "u10/log.pdf",
        "u10/packet.pdf",
        "u10/practice-2027-04-06.pdf",
        "u14/tosses-2027-04-05.pdf"
      })
  void a_sheet_that_is_gone_is_told_even_where_the_list_forgets_it(String path) {
    demo.pdfs.remove(path);
    assertThat(demo.said()).anyMatch(s -> s.contains(path) && s.contains("not there"));

    demo.gone(path);
    assertThat(demo.said()).anyMatch(s -> s.contains(path) && s.contains("does not list"));
  }

  @Test
  void so_are_all_of_them() {
    demo.pdfs.clear();
    demo.json.putArray("files");

    assertThat(demo.said()).hasSizeGreaterThanOrEqualTo(40);

    demo.json.putArray("prints");
    assertThat(demo.said()).anyMatch(s -> s.contains("nothing was asked for"));
  }

  @Test
  void a_page_that_was_taken_out_is_missed() throws IOException {
    for (String path : List.of(card("p03"), "u10/overview.pdf", "u10/practice-2027-04-06.pdf")) {
      PrintedClub club = SOUND.copy();
      club.renewed(path, edited(club.pdfs.get(path), pdf -> pdf.removePage(1)));

      assertThat(club.said()).anyMatch(s -> s.contains(path));
    }
  }

  @Test
  void a_blank_page_in_the_place_of_a_printed_one_is_seen() throws IOException {
    for (String path :
        List.of(
            card("p01"),
            "u10/arm.pdf",
            "u10/emergency.pdf",
            "u10/guide.pdf",
            "u10/log.pdf",
            "u10/overview.pdf",
            "u10/packet.pdf",
            "u10/practice-2027-04-06.pdf")) {
      byte[] sound = demo.pdfs.get(path);
      demo.renewed(path, edited(sound, pdf -> pdf.getPage(0).setContents(new PDStream(pdf))));
      assertThat(demo.said()).as(path).anyMatch(s -> s.contains(path));
      demo.renewed(path, sound);
    }
  }

  @Test
  void a_card_of_last_week_is_not_that_of_this() {
    PrintedClub before = PrintedClub.usual(CATALOGUE, DEMO, request(FROM.minusDays(7), null, null));
    demo.renewed(card("p05"), before.pdfs.get(CARDS + "p05-week-2027-03-29.pdf"));

    assertThat(demo.said()).anyMatch(s -> s.contains(card("p05") + ", p05"));
  }

  @Test
  void sheets_of_another_group_are_told() {
    for (String sheet : List.of("overview", "arm", "packet", "log", "guide")) {
      PrintedClub club = SOUND.copy();
      club.renewed("u10/" + sheet + ".pdf", club.pdfs.get("u14/" + sheet + ".pdf"));

      assertThat(club.said()).as(sheet).anyMatch(s -> s.contains("u10/" + sheet + ".pdf"));
    }
  }

  @Test
  void the_sheet_of_another_practice_is_told() {
    demo.renewed("u10/practice-2027-04-08.pdf", demo.pdfs.get("u10/practice-2027-04-06.pdf"));

    assertThat(demo.said()).anyMatch(s -> s.contains("practice-2027-04-08.pdf: it is not of"));
  }

  @Test
  void a_digest_that_is_another_is_told() {
    ((ObjectNode) demo.json.withArray("files").get(0)).put("sha256", "0".repeat(64));

    assertThat(demo.said()).singleElement().asString().contains("digest");
  }

  @Test
  void a_sheet_left_over_is_remarked_on() {
    demo.pdfs.put(CARDS + "p01-week-2027-03-29.pdf", demo.pdfs.get(card("p01")));

    assertThat(demo.told()).singleElement().matches(p -> !p.isFault());
    assertThat(demo.said().get(0)).contains("p01-week-2027-03-29.pdf", "did not print it");
  }

  @Test
  void each_caution_of_the_plan_must_stand_on_paper() {
    List<String> paths = new ArrayList<>();
    for (JsonNode player : demo.json.withArray("players")) {
      if (player.path("player").asText().equals("p06")) {
        ((ObjectNode) player.path("cautions")).withArray("card").add("Ask a nurse first.");
        ((ObjectNode) player.path("arms").get(0)).put("answer", "no-pitching");
      }
    }
    ((ObjectNode) demo.json.withArray("practices").get(0)).withArray("cautions").add("No mud.");

    paths.addAll(demo.said());
    assertThat(paths)
        .anyMatch(s -> s.contains("p06") && s.contains("Ask a nurse first."))
        .anyMatch(s -> s.contains("u10/practice-2027-04-06.pdf") && s.contains("No mud."));
  }

  @Test
  void the_command_says_so_and_ends_with_3() throws IOException {
    Path club = Runs.cleanDemo(folder);
    String out = folder + "/out";
    Runs.run("plan", club.toString(), "--out", out, "--from", FROM.toString(), "--no-history");
    Ran sound = Runs.run("check", out, "--club", club.toString());
    assertThat(sound.status()).as(sound.err()).isZero();

    Files.delete(folder.resolve("out").resolve(card("p07")));
    Ran damaged = Runs.run("check", out, "--club", club.toString());
    assertThat(damaged.status()).isEqualTo(3);
    assertThat(damaged.err()).contains(card("p07") + ", p07", "is not there");
    assertThat(Runs.run("check", out).status()).isEqualTo(3);
  }

  @Test
  void a_league_lists_its_prints_too_whatever_the_threads() throws IOException {
    Path club = Runs.cleanDemo(folder.resolve("league"));
    assertThat(club).exists();
    String league = folder + "/league";
    for (String threads : List.of("1", "4")) {
      Runs.run(
          "plan",
          "--league",
          league,
          "--out",
          folder + "/out" + threads,
          "--threads",
          threads,
          "--from",
          FROM.toString(),
          "--no-history");
    }
    Path one = folder.resolve("out1/club/plan.json");
    assertThat(one).hasSameBinaryContentAs(folder.resolve("out4/club/plan.json"));
    try (Stream<Path> files = Files.walk(folder.resolve("out1"))) {
      assertThat(files.filter(f -> f.toString().endsWith(".pdf")).count()).isEqualTo(47);
    }
    assertThat(Runs.run("check", folder + "/out1/club", "--club", club.toString()).status())
        .isZero();
  }

  /** Changes a document. */
  @FunctionalInterface
  private interface Edit {
    void apply(PDDocument pdf) throws IOException;
  }

  private static byte[] edited(byte[] bytes, Edit edit) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      edit.apply(pdf);
      assertThat(pdf.getPages()).allMatch(PDPage.class::isInstance);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      pdf.save(out);
      return out.toByteArray();
    }
  }
}
