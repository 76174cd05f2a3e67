package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.belthigh.handout.SamplePlans.Amount;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.handout.kit.Section;
import org.belthigh.model.Grain;
import org.belthigh.model.Phrase;
import org.belthigh.plan.HomeSheet;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Card and home sheet from plans made by hand: next to nothing to say, and too much. */
class CardAndHomeTest {
  private static final String FOOTER = "Example Club · Under 10 · week of April 5";

  static Stream<Arguments> cards() {
    return papers()
        .flatMap(
            paper ->
                languages()
                    .flatMap(
                        language ->
                            Stream.of(Amount.values())
                                .map(amount -> Arguments.of(paper, language, amount))));
  }

  static Stream<Arguments> sessions() {
    return papers()
        .flatMap(
            paper ->
                languages()
                    .flatMap(
                        language ->
                            Stream.of(Grain.values())
                                .flatMap(
                                    grain ->
                                        Stream.of(0, 12, 18, 24)
                                            .map(n -> Arguments.of(paper, language, grain, n)))));
  }

  private static Stream<String> papers() {
    return Stream.of("letter", "a4");
  }

  private static Stream<String> languages() {
    return Stream.of("en", "es");
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @MethodSource("cards")
  void a_card_is_clean_and_one_page_with_ordinary_content_in_the_family_s_language(
      String paper, String language, Amount amount) {
    Section card = card(paper, language, amount);
    byte[] pdf = pdf(card, language);

    // nine boxes to tick and a note to read first may go on to a second page, in order
    assertThat(card.pageCount()).isLessThanOrEqualTo(amount == Amount.EXTREME ? 2 : 1);
    assertFollowsBothStandards(pdf);
    assertThat(text(pdf))
        .contains(language.equals("es") ? "Brazo y descanso" : "Arm and rest")
        .doesNotContain(language.equals("es") ? "Arm and rest" : "Brazo y descanso");
  }

  @ParameterizedTest(name = "{0} {1} {2}, {3} tosses")
  @MethodSource("sessions")
  void a_home_sheet_is_one_clean_page_at_every_grain(
      String paper, String language, Grain grain, int tosses) {
    for (boolean swing : new boolean[] {true, false}) {
      Section sheet = home(paper, language, SamplePlans.home(grain, tosses, swing));

      assertThat(sheet.pageCount()).isEqualTo(1);
      assertThat(PdfLint.faults(pdf(sheet, language))).isEmpty();
    }
  }

  /** So much to say that what helps is left out to keep the page; large print takes another. */
  @Test
  void large_print_of_a_home_sheet_leaves_nothing_out_to_save_a_page() {
    Voice voice = new Voice(SamplePlans.WORDS, "es");
    String easier = voice.say("home.easier");
    HomeSheet crowded =
        IntStream.rangeClosed(1, 12)
            .mapToObj(CardAndHomeTest::stoppingOften)
            .filter(s -> !flat(pdf(home("letter", "es", s), "es")).contains(easier))
            .findFirst()
            .orElseThrow();
    PlayerPlan player = SamplePlans.player("es", Amount.EXTREME, List.of(crowded));
    Plan plan = SamplePlans.of("letter", "es", player);
    Section large = HomePrint.large(plan, player.who(), crowded, voice, FOOTER);

    assertThat(flat(pdf(large, "es"))).contains(easier);
    assertThat(large.pageCount()).isGreaterThan(1);
    assertThat(PdfLint.faults(pdf(large, "es"))).isEmpty();
  }

  /** The words of a print, however its lines break. */
  private static String flat(byte[] pdf) {
    return text(pdf).replaceAll("\\s+", " ");
  }

  private static HomeSheet stoppingOften(int times) {
    HomeSheet usual = SamplePlans.home(Grain.NINE, 24, true);
    return new HomeSheet(
        usual.date(),
        usual.drill(),
        usual.minutes(),
        usual.checks(),
        usual.ringFeet(),
        usual.clearFeet(),
        usual.eyes(),
        usual.script(),
        usual.answers(),
        usual.picture(),
        usual.howTo(),
        usual.easier(),
        usual.smaller(),
        Collections.nCopies(times, Phrase.of("home.stop.pain")),
        usual.afterwards());
  }

  @Test
  void a_home_sheet_follows_both_standards_with_a_script_and_without() {
    for (String language : List.of("en", "es")) {
      for (int tosses : new int[] {0, 24}) {
        assertFollowsBothStandards(
            pdf(home("letter", language, SamplePlans.home(Grain.NINE, tosses, true)), language));
      }
    }
  }

  @Test
  void a_session_without_swings_says_so_and_draws_no_ring() {
    String still = english(SamplePlans.home(Grain.ROW, 12, false));
    String swung = english(SamplePlans.home(Grain.ROW, 12, true));

    assertThat(still).contains("No swings today", "Who tosses:").doesNotContain("Free ground");
    assertThat(swung).contains("Free ground", "33 feet").doesNotContain("No swings today");
  }

  @Test
  void who_tosses_gets_their_own_view_and_where_nobody_tosses_the_hitter_does() {
    assertThat(english(SamplePlans.home(Grain.NINE, 12, true)))
        .contains("As you see it when you toss")
        .doesNotContain("As the hitter sees it");
    assertThat(english(SamplePlans.home(Grain.NINE, 0, false)))
        .contains("As the hitter sees it")
        .doesNotContain("when you toss", "15 feet");
  }

  @Test
  void a_week_without_work_asks_for_nothing() {
    assertThat(text(pdf(card("letter", "en", Amount.EMPTY), "en")))
        .contains("Rest this week", "Nobody has told us of any throwing")
        .doesNotContain("What to do", "Say to yourself", "What moves me on");
  }

  private static Section card(String paper, String language, Amount amount) {
    PlayerPlan player = SamplePlans.player(language, amount, List.of());
    return CardPrint.of(
        SamplePlans.of(paper, language, player),
        SamplePlans.group(),
        player,
        new Voice(SamplePlans.WORDS, language),
        FOOTER);
  }

  private static Section home(String paper, String language, HomeSheet sheet) {
    PlayerPlan player = SamplePlans.player(language, Amount.EXTREME, List.of(sheet));
    return HomePrint.of(
        SamplePlans.of(paper, language, player),
        player.who(),
        sheet,
        new Voice(SamplePlans.WORDS, language),
        FOOTER);
  }

  private static String english(HomeSheet sheet) {
    return text(pdf(home("letter", "en", sheet), "en"));
  }

  private static byte[] pdf(Section section, String language) {
    return Pdf.of(section, "Sample", Locale.forLanguageTag(language), SamplePlans.MONDAY);
  }

  private static void assertFollowsBothStandards(byte[] pdf) {
    assertThat(PdfLint.faults(pdf)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
  }

  private static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
