package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: CDC/NCHS 2000 growth charts, stature for age, published percentiles (US government,
 * public domain); z for the 3rd, 25th, 75th and 97th are normal quantiles.
 */
class GrowthTest {
  private static final Growth GROWTH = CatalogueLoader.load().orThrow().growth();

  private static Growth.Row row(String sex, double months) {
    return GROWTH.rows().stream()
        .filter(r -> r.sex().equals(sex) && r.months() == months)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "M, 60.5, 100.331847, 106.026498, 109.1751441, 112.2997816, 117.831386",
    "M, 120.5, 126.6677753, 134.4008357, 138.8234114, 143.3167691, 151.5294179",
    "M, 144.5, 135.6621289, 144.3276874, 149.3088178, 154.3880792, 163.7185106",
    "M, 192.5, 158.8449655, 168.4805469, 173.6100518, 178.5761676, 187.0940877",
    "M, 216.5, 162.501063, 171.3282079, 176.1850208, 180.9888527, 189.4560086",
    "F, 60.5, 99.35047319, 104.7829358, 107.9566031, 111.2321213, 117.3552032",
    "F, 120.5, 125.9599043, 133.7239135, 138.2111552, 142.8050794, 151.2919534",
    "F, 144.5, 137.4380555, 146.4957662, 151.4865636, 156.4280126, 165.1502647",
    "F, 216.5, 150.9318778, 158.7611821, 163.1307866, 167.4948296, 175.2864101"
  })
  void published_percentiles_are_reproduced(
      String sex, double months, double p3, double p25, double p50, double p75, double p97) {
    Growth.Row row = row(sex, months);

    assertThat(row.at(-1.880793608)).isCloseTo(p3, within(1e-5));
    assertThat(row.at(-0.67448975)).isCloseTo(p25, within(1e-5));
    assertThat(row.at(0)).isCloseTo(p50, within(1e-5));
    assertThat(row.at(1.880793608)).isCloseTo(p97, within(1e-5));
    assertThat(row.at(0.67448975)).isCloseTo(p75, within(1e-5));
  }

  @Test
  void a_stature_has_its_z() {
    assertThat(row("M", 120.5).z(145)).isCloseTo(0.924459, within(1e-6));
    assertThat(row("F", 144.5).z(145)).isCloseTo(-0.875296, within(1e-6));
  }

  @Test
  void a_month_is_served_by_the_row_at_its_half() {
    assertThat(GROWTH.median(Optional.of("M"), 120)).isCloseTo(138.8234114, within(1e-9));
    assertThat(GROWTH.median(Optional.empty(), 120))
        .isCloseTo((138.8234114 + 138.2111552) / 2, within(1e-9));
  }
}
