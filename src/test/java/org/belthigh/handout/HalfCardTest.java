package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.handout.SamplePlans.Amount;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.handout.kit.Section;
import org.belthigh.model.Phrase;
import org.belthigh.plan.Card;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Cards two to a sheet: as safe as the whole card, on half of its room. */
class HalfCardTest {
  private static final String FOOTER = "Example Club · Under 10 · week of April 5";

  static Stream<Arguments> samples() {
    return SamplePlans.onEverySheet(Amount.values());
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @MethodSource("samples")
  void a_half_card_is_clean_and_ordinary_content_stays_on_its_half(
      String paper, String language, Amount amount) {
    Section half = half(paper, language, amount);

    assertThat(half.pageCount()).isLessThanOrEqualTo(amount == Amount.EXTREME ? 2 : 1);
    assertFollowsBothStandards(twoUp(half, half, half));
  }

  @ParameterizedTest
  @CsvSource({"letter, en", "letter, es", "a4, en", "a4, es"})
  void every_card_of_the_demo_fits_its_half_and_follows_both_standards(
      String paper, String language) {
    Plan plan = SamplePlans.demo(1, Set.of(), Set.of(), paper, Optional.of(language));
    Map<String, byte[]> prints = print(plan, EnumSet.of(Print.CLIPBOARD));

    assertThat(prints).containsOnlyKeys("u10/clipboard.pdf", "u14/clipboard.pdf");
    prints.values().forEach(HalfCardTest::assertFollowsBothStandards);
    plan.players()
        .forEach(
            player ->
                assertThat(half(plan, player, language).pageCount())
                    .as(player.who().id())
                    .isEqualTo(1));
  }

  /** What is said of arm and rest, what stops the player, what is to be done and how much of it. */
  @ParameterizedTest
  @CsvSource({"en", "es"})
  void it_says_all_that_the_card_asks_for_and_forbids(String language) {
    Plan plan = SamplePlans.demo(1, Set.of(), Set.of(), "letter", Optional.of(language));
    Voice voice = new Voice(SamplePlans.WORDS, language);
    Set<String> boxes = new HashSet<>();

    for (PlayerPlan whole : plan.players()) {
      PlayerPlan player = whole.inTheOpen();
      String says = PdfLint.words(twoUp(half(plan, player, language)));
      Card card = player.card();
      Stream.of(
              card.hold().stream(),
              card.arm().lines().stream(),
              Stream.of(card.arm().source(), card.aim()),
              card.week().stream(),
              card.things().stream().map(Card.Thing::goodEnough),
              card.movesOn().stream())
          .flatMap(phrases -> phrases)
          .forEach(phrase -> assertThat(says).contains(spoken(voice, phrase)));
      CardWords words = new CardWords(player, voice);
      card.things().forEach(t -> assertThat(says).contains(words.many(t), words.how(t)));
      card.arm()
          .knownTo()
          .ifPresent(day -> assertThat(says).contains(voice.say("card.known", "day", day)));
      boxes.add(card.hold().isEmpty() + " " + card.arm().knownTo().isPresent());
    }
    assertThat(boxes).as("players with a hold and without, known and not").hasSizeGreaterThan(2);
  }

  @Test
  void it_is_seen_by_others_so_no_cause_of_a_hold_and_no_last_name() {
    Plan plan = SamplePlans.demo(1, Set.of("u14"), Set.of("p23"), "letter", Optional.of("en"));

    assertThat(PdfLint.words(print(plan, EnumSet.of(Print.CLIPBOARD)).get("u14/clipboard.pdf")))
        .contains("No throwing for now.")
        .doesNotContainIgnoringCase("sore");
  }

  @Test
  void the_packet_does_not_hold_the_cards_twice() {
    Plan plan = SamplePlans.demo(1, Set.of("u10"), Set.of("p01"), "letter", Optional.of("en"));
    byte[] with = print(plan, EnumSet.of(Print.PACKET, Print.CLIPBOARD)).get("u10/packet.pdf");
    byte[] without = print(plan, EnumSet.of(Print.PACKET)).get("u10/packet.pdf");

    assertThat(with).isEqualTo(without);
  }

  @Test
  void there_is_no_large_print_of_it() {
    Plan plan = SamplePlans.demo(1, Set.of("u10"), Set.of("p01"), "letter", Optional.of("en"));
    Handouts large = new Handouts(SamplePlans.WORDS).large();

    assertThatThrownBy(() -> large.print(plan, Set.of(Print.CLIPBOARD), (path, pdf) -> {}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static String spoken(Voice voice, Phrase phrase) {
    return voice.say(phrase).strip();
  }

  private static Section half(String paper, String language, Amount amount) {
    PlayerPlan player = SamplePlans.player(language, amount, List.of());
    return half(SamplePlans.of(paper, language, player), player, language);
  }

  private static Section half(Plan plan, PlayerPlan player, String language) {
    Voice voice = new Voice(SamplePlans.WORDS, language);
    return HalfCardPrint.of(plan, SamplePlans.group(), player, voice, FOOTER);
  }

  private static byte[] twoUp(Section... halves) {
    Voice voice = new Voice(SamplePlans.WORDS, "en");
    try (Pdf pdf = Pdf.of("Sample", voice.locale(), SamplePlans.MONDAY, "sample")) {
      pdf.addTwoUp("", List.of(halves));
      return pdf.bytes();
    }
  }

  private static Map<String, byte[]> print(Plan plan, Set<Print> prints) {
    Map<String, byte[]> all = new TreeMap<>();
    new Handouts(SamplePlans.WORDS).print(plan, prints, all::put);
    return all;
  }

  private static void assertFollowsBothStandards(byte[] pdf) {
    assertThat(PdfLint.faults(pdf)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
  }
}
