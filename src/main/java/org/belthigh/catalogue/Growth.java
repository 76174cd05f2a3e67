package org.belthigh.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * Stature for age.
 *
 * <p>Source: {@code cdc-2000}, the 2000 growth charts of CDC/NCHS. A row at half a month serves the
 * whole month around it; rows stand half a year apart and are joined by straight lines.
 *
 * @param rows by sex, then by age
 */
public record Growth(List<Row> rows) {
  public Growth {
    rows = List.copyOf(rows);
  }

  /** One row: Box-Cox power, median in centimetres, coefficient of variation. */
  public record Row(String sex, double months, double l, double m, double s) {
    /** The stature at {@code z} standard deviations, in centimetres. */
    public double at(double z) {
      return Math.abs(l) < 1e-12 ? m * Math.exp(s * z) : m * Math.pow(1 + l * s * z, 1 / l);
    }

    /** How many standard deviations {@code cm} lies from the median. */
    public double z(double cm) {
      return Math.abs(l) < 1e-12 ? Math.log(cm / m) / s : (Math.pow(cm / m, l) - 1) / (l * s);
    }
  }

  /**
   * The median stature in centimetres.
   *
   * @param sex {@code F} or {@code M}; the mean of both where not known
   * @param wholeMonths age in completed months; the nearest end of the table outside it
   */
  public double median(Optional<String> sex, long wholeMonths) {
    if (sex.isEmpty()) {
      return (median(Optional.of("F"), wholeMonths) + median(Optional.of("M"), wholeMonths)) / 2;
    }
    double months = wholeMonths + 0.5;
    Row before = null;
    for (Row row : rows) {
      if (!row.sex().equals(sex.get())) {
        continue;
      }
      if (row.months() >= months) {
        return before == null ? row.m() : between(before, row, months);
      }
      before = row;
    }
    if (before == null) {
      throw new IllegalArgumentException("No growth table for sex " + sex.get());
    }
    return before.m();
  }

  private static double between(Row low, Row high, double months) {
    double share = (months - low.months()) / (high.months() - low.months());
    return low.m() + share * (high.m() - low.m());
  }
}
