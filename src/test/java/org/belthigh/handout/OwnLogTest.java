package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
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
import org.belthigh.model.DrillKind;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The blank log of one player. */
class OwnLogTest {
  static Stream<Arguments> samples() {
    return SamplePlans.onEverySheet(Amount.values());
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @MethodSource("samples")
  void it_is_clean_and_one_page_with_ordinary_content(
      String paper, String language, Amount amount) {
    PlayerPlan player = SamplePlans.player(language, amount, List.of());
    Plan plan = SamplePlans.of(paper, language, player);
    Section log =
        OwnLogPrint.of(plan, player, new Voice(SamplePlans.WORDS, language), "Example Club");
    Locale locale = Locale.forLanguageTag(language);
    byte[] pdf = Pdf.of(log, "Sample", locale, SamplePlans.MONDAY);

    assertThat(log.pageCount() == 1).isEqualTo(amount != Amount.EXTREME);
    assertThat(PdfLint.faults(pdf)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"letter, en", "letter, es", "a4, en", "a4, es"})
  void a_week_of_the_demo_has_one_page_a_player_or_two(String paper, String language) {
    Plan plan = SamplePlans.demo(1, Set.of(), Set.of(), paper, Optional.of(language));
    Voice voice = new Voice(SamplePlans.WORDS, language);

    List<Integer> pages =
        plan.players().stream()
            .map(player -> OwnLogPrint.of(plan, player, voice, "Footer").pageCount())
            .toList();

    assertThat(pages).allMatch(count -> count <= 2);
    assertThat(pages.stream().filter(count -> count == 1))
        .hasSizeGreaterThan(pages.size() * 9 / 10);
  }

  @Test
  void a_drill_of_the_week_has_a_line_for_each_of_its_days_and_says_what_a_mark_means() {
    String says = said("p16");

    assertThat(says)
        .contains(
            "Front toss, hit it hard: 14 boxes Tick: hit it hard. Dash: any other swing. Day",
            "Mon 5 from 13 Wed 7 from 13 Call the spot",
            "Who writes:");
  }

  @Test
  void where_there_is_room_a_drill_that_nobody_planned_can_be_written_down() {
    Plan plan = SamplePlans.demo(1, Set.of("u14"), Set.of(), "letter", Optional.of("en"));

    assertThat(print(plan, EnumSet.of(Print.OWN_LOG)).values())
        .map(PdfLint::words)
        .anyMatch(says -> says.contains("Something else"));
  }

  @Test
  void a_drill_that_is_not_counted_has_no_boxes() {
    Plan plan = SamplePlans.demo(1, Set.of("u14"), Set.of("p16"), "letter", Optional.of("en"));
    List<String> planned =
        plan.players().get(0).days().stream()
            .flatMap(day -> day.items().stream())
            .map(item -> SamplePlans.CATALOGUE.curricula().get("belthigh-2027").drill(item.drill()))
            .filter(drill -> drill.kind() == DrillKind.NONE && !drill.swing())
            .map(drill -> drill.name().in("en"))
            .toList();
    String says = said("p16");

    assertThat(planned).isNotEmpty().noneMatch(says::contains);
  }

  @Test
  void it_is_printed_when_it_is_asked_for_and_bound_then() {
    Plan plan = SamplePlans.demo(1, Set.of("u14"), Set.of("p16"), "letter", Optional.of("en"));
    Map<String, byte[]> prints = print(plan, EnumSet.of(Print.OWN_LOG, Print.PACKET));

    assertThat(prints).containsOnlyKeys("u14/own-log/p16-2027-04-05.pdf", "u14/packet.pdf");
    assertThat(PdfLint.words(prints.get("u14/packet.pdf"))).contains("Who writes:");
    assertThat(Print.usual()).doesNotContain(Print.OWN_LOG);
  }

  private static String said(String player) {
    Plan plan = SamplePlans.demo(1, Set.of("u14"), Set.of(player), "letter", Optional.of("en"));
    return PdfLint.words(
        print(plan, EnumSet.of(Print.OWN_LOG)).get("u14/own-log/" + player + "-2027-04-05.pdf"));
  }

  private static Map<String, byte[]> print(Plan plan, Set<Print> prints) {
    Map<String, byte[]> all = new TreeMap<>();
    new Handouts(SamplePlans.WORDS).print(plan, prints, all::put);
    return all;
  }
}
