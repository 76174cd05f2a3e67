package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.LocalText;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The prints of a whole plan, as the command writes them. */
class HandoutsTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Words WORDS = words();
  private static final Pattern PAGE_OF = Pattern.compile("(?:page|página) (\\d+) (?:of|de) (\\d+)");

  /** Words that say what is the matter with a child; "hurts" stands in cautions for everybody. */
  private static final Pattern MEDICAL =
      Pattern.compile(
          "concussion|injur|\\bsore|\\bsick|illness|blister|physician|therapist|\\bpain\\b"
              + "|conmoción|lesión|dolor|enferm|ampolla|fisioterapeuta",
          Pattern.CASE_INSENSITIVE);

  @TempDir private Path folder;

  private static Words words() {
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    CATALOGUE.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    return Words.load(reasons);
  }

  /** Everything that can be printed of a club; the packet binds all but the clipboard's cards. */
  private static Map<String, byte[]> print(Path club, String paper, String language) {
    try {
      ClubRecord record = Intake.read(club, CATALOGUE);
      Plan plan =
          new Planner(CATALOGUE)
              .plan(
                  record,
                  new PlanRequest(
                          MONDAY, 2, Set.of(), Set.of(), Optional.of(paper), Optional.of(language))
                      .withSeasonReports());
      Map<String, byte[]> prints = new TreeMap<>();
      new Handouts(WORDS).print(plan, EnumSet.allOf(Print.class), prints::put);
      return prints;
    } catch (Unusable e) {
      throw new IllegalStateException(e);
    }
  }

  private static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Stream<Arguments> papers_and_languages() {
    return Stream.of("letter", "a4")
        .flatMap(paper -> Stream.of("en", "es").map(language -> Arguments.of(paper, language)));
  }

  @Test
  void one_thread_and_many_plan_and_print_the_same_bytes_in_the_same_order() throws Exception {
    List<String> alone = printed(1);

    assertThat(alone).hasSizeGreaterThan(40);
    assertThat(printed(4)).isEqualTo(alone);
  }

  /** Path and digest of each print as it is handed over, from so many threads. */
  private static List<String> printed(int threads) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(
              () -> {
                Plan plan = SamplePlans.demo(1, Set.of(), Set.of(), "letter", Optional.empty());
                List<String> prints = new ArrayList<>();
                new Handouts(WORDS)
                    .print(plan, (path, pdf) -> prints.add(path + " " + digest(pdf)));
                return prints;
              })
          .get();
    } finally {
      pool.shutdown();
    }
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers_and_languages")
  void every_print_of_the_demo_follows_both_standards(String paper, String language) {
    Map<String, byte[]> prints = print(Path.of("demo-players"), paper, language);

    // the packets hold every print; of the single documents one of each kind
    for (String path :
        List.of(
            "u10/packet.pdf",
            "u14/packet.pdf",
            "u10/overview.pdf",
            "u10/practice-2027-04-06.pdf",
            "u10/tosses-2027-04-06.pdf",
            "u10/clipboard.pdf",
            "u14/clipboard.pdf",
            "u10/own-log/p12-2027-04-05.pdf",
            "u10/season/p12-2027-04-05.pdf",
            "u10/cards/p12-week-2027-04-05.pdf",
            "u10/cards/p10-week-2027-04-05.pdf")) {
      byte[] pdf = prints.get(path);
      assertThat(pdf).as(path).isNotNull();
      assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).as(path).isEmpty();
      assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).as(path).isEmpty();
      if (!path.endsWith("packet.pdf")) {
        assertThat(PdfLint.faults(pdf)).as(path).isEmpty();
      }
    }
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers_and_languages")
  void sheets_keep_to_the_pages_they_are_promised(String paper, String language) {
    Map<String, byte[]> prints = print(Path.of("demo-players"), paper, language);

    assertPagesAsPromised(prints);
  }

  /**
   * A card and a home sheet have one page, a practice sheet two at the most, an overview of
   * fourteen players seven.
   */
  private static void assertPagesAsPromised(Map<String, byte[]> prints) {
    prints.forEach(
        (path, pdf) -> {
          Matcher page = PAGE_OF.matcher(text(pdf));
          int most =
              path.contains("/cards/")
                  ? 1
                  : path.contains("/practice-") ? 2 : path.endsWith("/overview.pdf") ? 7 : 999;
          int seen = 0;
          while (page.find()) {
            seen++;
            assertThat(Integer.parseInt(page.group(2))).as(path).isLessThanOrEqualTo(most);
          }
          assertThat(seen).as("pages of %s", path).isPositive();
        });
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers_and_languages")
  void a_tournament_a_hallway_and_a_long_name_fit_and_follow_both_standards(
      String paper, String language) throws IOException {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Two Rivers
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """);
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,number,group,pitches,catches,home_space,home_gear
        a1,Maximiliano-Alejandro Ezequiel,2017-01-05,S,33,u10,yes,yes,hallway,foam
        a2,Bo,2017-02-05,L,2,u10,yes,no,yard,plastic
        """);
    Files.writeString(
        folder.resolve("calendar.csv"),
        """
        date,group,kind,start,minutes,adults
        2027-04-06,u10,practice,17:30,90,2
        2027-04-10,u10,tournament,09:00,240,2
        2027-04-11,u10,tournament,09:00,240,2
        2027-04-13,u10,evaluation,17:30,90,2
        """);
    Files.writeString(
        folder.resolve("throws.csv"), "date,player,pitches\n2027-04-03,a1,20\n2027-04-04,a2,31\n");

    Map<String, byte[]> prints = print(folder, paper, language);

    assertPagesAsPromised(prints);
    assertThat(prints).containsKey("u10/evaluation.pdf");
    assertThat(text(prints.get("u10/packet.pdf")))
        .contains(language.equals("es") ? "juego por juego" : "game by game");
    assertFollowsBothStandards(prints);
  }

  private static void assertFollowsBothStandards(Map<String, byte[]> prints) {
    prints.forEach(
        (path, pdf) -> {
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).as(path).isEmpty();
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).as(path).isEmpty();
        });
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers_and_languages")
  void no_last_name_and_no_cause_where_others_see_it(String paper, String language)
      throws Exception {
    Map<String, byte[]> prints = print(Path.of("demo-players"), paper, language);
    List<String> lastNames =
        Intake.read(Path.of("demo-players"), CATALOGUE).players().stream()
            .flatMap(p -> p.lastName().stream())
            .toList();

    prints.forEach(
        (path, pdf) -> {
          String said = text(pdf);
          lastNames.forEach(name -> assertThat(said).as(path).doesNotContain(name));
          if (!path.contains("/cards/")) {
            assertThat(MEDICAL.matcher(said).results().map(r -> r.group()).toList())
                .as(path)
                .isEmpty();
          }
        });
    assertThat(text(prints.get("u14/packet.pdf")))
        .as("the packet says that there is a hold, and not why")
        .contains(language.equals("es") ? "Por ahora sin lanzar." : "No throwing for now.");
    assertThat(text(prints.get("u14/cards/p23-week-2027-04-05.pdf")))
        .as("the family's own card may say the cause")
        .containsIgnoringCase(language.equals("es") ? "brazo" : "sore arm");
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers_and_languages")
  void two_files_are_enough_for_every_print(String paper, String language) throws IOException {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Two Files
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u8, name: Under 8, age: [7, 8]}
          - {id: u16, name: Under 16, age: [15, 16]}
        """);
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group
        a1,Ada,2019-01-05,R,u8
        a2,Maximiliano-Alejandro-Ferdinando de la Santísima Trinidad,2019-02-05,L,u8
        b1,Bo,2011-02-05,S,u16
        """);

    Map<String, byte[]> prints = print(folder, paper, language);

    assertThat(prints)
        .containsKeys(
            "u8/packet.pdf",
            "u8/overview.pdf",
            "u8/practice-2027-04-06.pdf",
            "u8/cards/a2-week-2027-04-05.pdf",
            "u16/packet.pdf");
    assertFollowsBothStandards(prints);
    assertThat(text(prints.get("u8/cards/a1-week-2027-04-05.pdf")).toLowerCase(Locale.ROOT))
        .contains(
            language.equals("es")
                ? List.of("ada", "la meta de esta semana", "qué hacer", "brazo y descanso")
                : List.of("ada", "this week's aim", "what to do", "arm and rest"));
  }

  @Test
  void an_arm_box_says_up_to_which_day_outings_are_known() {
    Map<String, byte[]> prints = print(Path.of("demo-players"), "letter", "en");

    assertThat(text(prints.get("u10/cards/p03-week-2027-04-05.pdf")))
        .contains("We know what you threw up to Saturday, April 3")
        .contains("You may pitch again on Wednesday, April 7");
  }
}
