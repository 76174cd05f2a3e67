package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.belthigh.handout.SamplePlans.Amount;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.handout.kit.Section;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Toss;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Share;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.plan.SeasonReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The season report: of nothing, of two months, of a long year, and of the demo. */
class SeasonPrintTest {
  private static final LocalDate MAY = LocalDate.of(2027, 5, 5);

  static Stream<Arguments> everything() {
    return SamplePlans.onEverySheet(Amount.values());
  }

  static Stream<Arguments> papers() {
    return Stream.of("letter", "a4")
        .flatMap(paper -> Stream.of("en", "es").map(language -> Arguments.of(paper, language)));
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("everything")
  void a_report_is_clean_and_has_two_pages_at_the_most(
      String paper, String language, Amount amount) {
    PlayerPlan player = SamplePlans.player(language, amount, List.of());
    Section section = section(SamplePlans.of(paper, language, player), player, language);
    byte[] pdf = pdf(section, language);

    assertThat(section.pageCount()).isLessThanOrEqualTo(2);
    assertThat(PdfLint.faults(pdf)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(Conformance.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("papers")
  void reports_of_the_demo_have_two_pages_at_the_most(String paper, String language) {
    Plan plan = demo(paper, language);

    assertThat(plan.players())
        .allSatisfy(p -> assertThat(section(plan, p, language).pageCount()).isLessThanOrEqualTo(2));
  }

  @Test
  void only_what_the_log_has_is_in_it() {
    Plan plan = demo("letter", "en");
    ClubRecord record = record();

    for (PlayerPlan player : plan.players()) {
      List<Toss> own =
          record.tosses().stream().filter(t -> t.player().equals(player.who().id())).toList();
      SeasonReport report = season(player);
      long swings = own.stream().filter(Toss::swing).count();
      assertThat(report.worked().stream().mapToLong(SeasonReport.Worked::tosses).sum())
          .isEqualTo(own.stream().map(Toss::key).distinct().count());
      report.courses().stream()
          .filter(c -> c.what().equals("hard-hits"))
          .forEach(
              c ->
                  assertThat(c.points().stream().mapToLong(p -> p.share().seen()).sum())
                      .isLessThanOrEqualTo(swings));
      report
          .spots()
          .forEach(
              s ->
                  assertThat(seen(s.before()) + seen(s.after()))
                      .isEqualTo(
                          own.stream()
                              .filter(t -> t.side() == s.side())
                              .filter(t -> t.answer(s.grain()).isPresent())
                              .count()));
    }
    assertThat(plan.players()).anyMatch(p -> !season(p).spots().isEmpty());
    assertThat(plan.players()).anyMatch(p -> season(p).courses().size() == 5);
  }

  private static SeasonReport season(PlayerPlan player) {
    return player.season().orElseThrow();
  }

  private static long seen(Map<?, Share> shares) {
    return shares.values().stream().mapToInt(Share::seen).sum();
  }

  @Test
  void a_week_of_which_nobody_wrote_is_not_a_week_of_zero() {
    Plan plan = demo("letter", "en");
    PlayerPlan player = plan.players().get(0);

    assertThat(season(player).weeks().get(0).swings()).isPresent();
    assertThat(season(player).weeks().get(9).swings()).isEmpty();
    assertThat(text(pdf(section(plan, player, "en"), "en")))
        .contains("May 3 – of 200", "That is not zero");
  }

  @Test
  void a_switch_hitter_sees_the_calls_of_each_side() {
    PlayerPlan player = SamplePlans.player("en", Amount.TYPICAL, List.of());
    Plan plan = SamplePlans.of("letter", "en", player);

    assertThat(text(pdf(section(plan, player, "en"), "en")))
        .contains("Left side, before March 16", "Right side, from March 27 on");
  }

  @Test
  void a_plan_has_season_reports_only_where_they_were_asked_for() {
    PlanRequest request =
        new PlanRequest(MAY, 1, Set.of("u10"), Set.of("p01"), Optional.empty(), Optional.empty());
    Plan without = new Planner(SamplePlans.CATALOGUE).plan(record(), request);

    assertThat(without.players().get(0).season()).isEmpty();
    assertThatThrownBy(() -> section(without, without.players().get(0), "en"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("the plan of p01 was made without season reports");
  }

  private static Plan demo(String paper, String language) {
    return new Planner(SamplePlans.CATALOGUE)
        .plan(
            record(),
            new PlanRequest(
                    MAY, 1, Set.of("u10"), Set.of(), Optional.of(paper), Optional.of(language))
                .withSeasonReports());
  }

  private static ClubRecord record() {
    try {
      return Intake.read(Path.of("demo-players"), SamplePlans.CATALOGUE);
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  private static Section section(Plan plan, PlayerPlan player, String language) {
    return SeasonPrint.of(plan, player, new Voice(SamplePlans.WORDS, language), "Example Club");
  }

  private static byte[] pdf(Section section, String language) {
    return Pdf.of(section, "Sample", Locale.forLanguageTag(language), SamplePlans.MONDAY);
  }

  private static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
