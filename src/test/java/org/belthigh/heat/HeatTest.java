package org.belthigh.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.HeatTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The heat index against the chart of NWS Tulsa (s33) and the page of NWS/WPC (s32); the tables of
 * ACSM 2007 (s27), GHSA (s28), the regions (s56) and KSHSAA (s31) at, below and beyond each edge.
 */
class HeatTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final HeatCheck CHECK = new HeatCheck(CATALOGUE, LocalDate.of(2027, 6, 1));

  private static HeatCheck.Who who(int age, int region, int days, boolean sun) {
    return new HeatCheck.Who(
        OptionalInt.of(age), OptionalInt.of(region), OptionalInt.of(days), sun);
  }

  private static final HeatCheck.Who NOT_TOLD =
      new HeatCheck.Who(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), false);

  private static HeatTable.Row row(List<HeatCheck.Answer> answers, String table) {
    return answers.stream().filter(a -> a.table().id().equals(table)).findFirst().get().row();
  }

  /** Printed cells of s33; the chart shows the regression without adjustments. */
  @ParameterizedTest
  @CsvSource({
    "80, 40, 80", "82, 75, 88", "84, 60, 88", "86, 90, 105", "88, 75, 103", "90, 40, 91",
    "90, 60, 100", "90, 70, 106", "92, 55, 101", "94, 50, 103", "96, 65, 121", "100, 40, 109",
    "100, 60, 129", "104, 40, 119", "110, 40, 136"
  })
  void the_regression_gives_the_printed_chart(double t, double rh, long chart) {
    assertThat(Math.round(HeatIndex.regression(t, rh))).isEqualTo(chart);
  }

  /** Derived from s32: worked by hand with the adjustments. */
  @ParameterizedTest
  @CsvSource({
    "82, 95, 93.97, 92.97",
    "80, 100, 89.29, 87.19",
    "95, 10, 89.45, 90.20",
    "100, 10, 94.12, 94.75"
  })
  void very_dry_and_very_damp_air_are_adjusted(double t, double rh, double with, double without) {
    assertThat(HeatIndex.of(t, rh)).isCloseTo(with, within(0.005));
    assertThat(HeatIndex.regression(t, rh)).isCloseTo(without, within(0.005));
  }

  /** Derived from s32: the simple formula below 80. */
  @ParameterizedTest
  @CsvSource({"75, 50, 74.55", "70, 40, 68.58"})
  void below_eighty_the_simple_formula_holds(double t, double rh, double simple) {
    assertThat(HeatIndex.of(t, rh)).isCloseTo(simple, within(0.005));
  }

  @Test
  void the_adjustments_begin_and_end_where_the_page_says() {
    assertThat(HeatIndex.adjusted(95, 13)).isEqualTo(HeatIndex.regression(95, 13));
    assertThat(HeatIndex.adjusted(95, 12.9)).isLessThan(HeatIndex.regression(95, 12.9));
    assertThat(HeatIndex.adjusted(113, 5)).isEqualTo(HeatIndex.regression(113, 5));
    assertThat(HeatIndex.adjusted(82, 85)).isEqualTo(HeatIndex.regression(82, 85));
    assertThat(HeatIndex.adjusted(82, 86)).isGreaterThan(HeatIndex.regression(82, 86));
    assertThat(HeatIndex.adjusted(88, 95)).isEqualTo(HeatIndex.regression(88, 95));
  }

  /** s27: used to the heat, 90.0 is played and 90.1 is not; not used to it, 86.0 and 86.1. */
  @ParameterizedTest
  @CsvSource({
    "85.9, false, false", "86.0, false, false", "86.01, true, false", "86.1, true, false",
    "90.0, true, false", "90.01, true, true", "90.1, true, true", "95, true, true"
  })
  void acsm_cancels_above_86_for_newcomers_and_above_90_for_all(
      double wbgt, boolean newcomers, boolean all) {
    assertThat(row(CHECK.wbgt(wbgt, who(15, 3, 13, false)), "wbgt-acsm-2007").cancel())
        .isEqualTo(newcomers);
    assertThat(row(CHECK.wbgt(wbgt, who(15, 3, 14, false)), "wbgt-acsm-2007").cancel())
        .isEqualTo(all);
  }

  /** s28: rows begin at 82, 87, 90 and above 92. */
  @ParameterizedTest
  @CsvSource({
    "81.9, 3, 3, 0, true, false",
    "82.0, 3, 4, 0, true, false",
    "86.9, 3, 4, 0, true, false",
    "86.95, 4, 4, 120, true, false",
    "87.0, 4, 4, 120, true, false",
    "89.9, 4, 4, 120, true, false",
    "90.0, 0, 0, 60, false, false",
    "92.0, 0, 0, 60, false, false",
    "92.01, 0, 0, 0, true, true",
    "99, 0, 0, 0, true, true"
  })
  void ghsa_asks_for_breaks_minutes_and_no_helmets(
      double wbgt, int breaks, int each, int most, boolean gear, boolean cancel) {
    HeatTable.Row row = row(CHECK.wbgt(wbgt, who(15, 3, 30, false)), "wbgt-ghsa");
    assertThat(row.breaks()).isEqualTo(breaks);
    assertThat(row.breakMinutes()).isEqualTo(each);
    assertThat(row.mostMinutes().orElse(0)).isEqualTo(most);
    assertThat(row.gear()).isEqualTo(gear);
    assertThat(row.cancel()).isEqualTo(cancel);
  }

  /** s56: cancel above 86.2, 89.9 and 92.0. */
  @ParameterizedTest
  @CsvSource({
    "1, 86.2, false",
    "1, 86.21, true",
    "2, 89.9, false",
    "2, 90.0, true",
    "3, 92.0, false",
    "3, 92.1, true"
  })
  void each_region_cancels_above_its_own_value(int region, double wbgt, boolean cancel) {
    List<HeatCheck.Answer> answers = CHECK.wbgt(wbgt, who(15, region, 30, false));
    assertThat(row(answers, "wbgt-region-" + region).cancel()).isEqualTo(cancel);
    assertThat(answers).hasSize(3);
  }

  @Test
  void an_unknown_region_is_the_strictest() {
    assertThat(CHECK.wbgt(86.5, NOT_TOLD))
        .extracting(a -> a.table().id())
        .containsExactly("wbgt-acsm-2007", "wbgt-ghsa", "wbgt-region-1");
    assertThat(HeatCheck.strictest(CHECK.wbgt(86.5, NOT_TOLD)).row().cancel()).isTrue();
  }

  /** The example of the reference: at 91 ACSM cancels and GHSA allows an hour. */
  @Test
  void where_tables_differ_the_strictest_is_taken() {
    List<HeatCheck.Answer> answers = CHECK.wbgt(91, who(16, 3, 30, false));
    assertThat(row(answers, "wbgt-ghsa").mostMinutes()).hasValue(60);
    assertThat(HeatCheck.strictest(answers).table().id()).isEqualTo("wbgt-acsm-2007");
  }

  /** s31: rows begin at 80, 90, 103 and 124; a border takes the stricter row. */
  @ParameterizedTest
  @CsvSource({
    "79.9, 0, true, false",
    "80, 12, true, false",
    "89.9, 12, true, false",
    "90, 16, true, false",
    "102.9, 16, true, false",
    "103, 20, false, false",
    "123.9, 20, false, false",
    "124, 0, true, true"
  })
  void kshsaa_rows_begin_at_their_borders(double index, int rest, boolean gear, boolean cancel) {
    HeatTable.Row row = CATALOGUE.heatTables().get("kshsaa-heat-index").row(index, false, 0);
    assertThat(Math.max(row.restAnHour(), row.breaks() * row.breakMinutes())).isEqualTo(rest);
    assertThat(row.gear()).isEqualTo(gear);
    assertThat(row.cancel()).isEqualTo(cancel);
  }

  @Test
  void sun_age_and_newcomers_each_take_one_row_harsher() {
    int table = CHECK.heatIndex(90, 40, who(15, 1, 20, false)).get(0).row().mostMinutes().orElse(0);
    assertThat(table).isEqualTo(120);
    for (HeatCheck.Who harsher :
        List.of(who(15, 1, 20, true), who(12, 1, 20, false), who(15, 1, 13, false), NOT_TOLD)) {
      HeatCheck.Answer answer = CHECK.heatIndex(90, 40, harsher).get(0);
      assertThat(answer.harsher()).isTrue();
      assertThat(answer.row().mostMinutes()).hasValue(60);
      assertThat(answer.row().gear()).isFalse();
    }
  }

  @Test
  void under_13_nobody_practises_from_a_heat_index_of_103() {
    assertThat(CHECK.heatIndex(88, 75, who(12, 1, 20, false)).get(0).row().cancel()).isTrue();
    assertThat(CHECK.heatIndex(88, 75, who(13, 1, 20, false)).get(0).row().cancel()).isFalse();
  }

  @Test
  void a_heat_index_is_looked_up_in_no_wet_bulb_table_and_the_old_tables_are_not_there() {
    assertThat(CHECK.heatIndex(95, 50, NOT_TOLD))
        .allMatch(a -> a.table().reading() == HeatTable.Reading.HEAT_INDEX);
    assertThat(CATALOGUE.heatTables()).doesNotContainKey("wbgt-aap-2000");
  }

  private static List<Double> borders(HeatTable.Reading reading, HeatCheck.Who who) {
    return CHECK.bands(reading, who).stream().map(HeatCheck.Band::from).toList();
  }

  @Test
  void bands_end_with_the_first_that_stops_all_practice() {
    double any = Double.NEGATIVE_INFINITY;

    assertThat(borders(HeatTable.Reading.WBGT, NOT_TOLD)).containsExactly(any, 82.0, 86.1);
    assertThat(borders(HeatTable.Reading.WBGT, who(15, 1, 20, false)))
        .containsExactly(any, 82.0, 86.1, 86.3);
    assertThat(borders(HeatTable.Reading.WBGT, who(15, 2, 20, false)))
        .containsExactly(any, 82.0, 86.1, 87.0, 90.0);
    assertThat(borders(HeatTable.Reading.HEAT_INDEX, NOT_TOLD))
        .containsExactly(any, 80.0, 90.0, 103.0);
    assertThat(borders(HeatTable.Reading.HEAT_INDEX, who(15, 1, 20, false)))
        .containsExactly(any, 80.0, 90.0, 103.0, 124.0);
  }

  @Test
  void each_band_says_what_a_reading_in_it_would() {
    for (HeatCheck.Who who : List.of(NOT_TOLD, who(15, 3, 20, false), who(15, 2, 3, true))) {
      for (HeatCheck.Band band : CHECK.bands(HeatTable.Reading.WBGT, who)) {
        assertThat(band.answers().stream().map(HeatCheck.Answer::row).toList())
            .isEqualTo(
                CHECK.wbgt(Math.max(band.from(), 60), who).stream()
                    .map(HeatCheck.Answer::row)
                    .toList());
        assertThat(band.answers()).allMatch(a -> a.table().reading() == HeatTable.Reading.WBGT);
      }
    }
  }

  /** s32: the adjustments hold from 80 on, that degree with it. */
  @Test
  void at_eighty_the_adjustments_hold_already() {
    assertThat(HeatIndex.adjusted(80, 5)).isLessThan(HeatIndex.regression(80, 5));
    assertThat(HeatIndex.adjusted(80, 90)).isGreaterThan(HeatIndex.regression(80, 90));
  }

  /** s32: the simple formula holds while its mean with the temperature is below 80. */
  @Test
  void at_a_mean_of_eighty_the_regression_holds() {
    assertThat((HeatIndex.simple(80.2, 40) + 80.2) / 2).isEqualTo(80);
    assertThat(HeatIndex.of(80.2, 40)).isEqualTo(HeatIndex.regression(80.2, 40));
  }

  @ParameterizedTest
  @CsvSource({"0, 32", "100, 212", "30, 86", "-40, -40"})
  void celsius_becomes_fahrenheit(double celsius, double fahrenheit) {
    assertThat(HeatIndex.fahrenheit(celsius)).isCloseTo(fahrenheit, within(1e-9));
  }

  @Test
  void at_exactly_103_the_young_go_home_already() {
    List<HeatCheck.Answer> answers = CHECK.heatIndex(87, 80, who(12, 1, 20, false));

    assertThat(answers.get(0).degrees()).isEqualTo(103.0);
    assertThat(answers.get(0).row().cancel()).isTrue();
  }

  @Test
  void every_border_of_every_table_begins_a_band() {
    assertThat(borders(HeatTable.Reading.WBGT, who(15, 3, 20, false)))
        .contains(82.0, 87.0, 90.0, 90.1);
  }
}
