package org.belthigh.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.belthigh.catalogue.Growth;
import org.belthigh.intake.Player;

/**
 * Heights of the strike zone's rows for one child, in centimetres above the ground.
 *
 * <p>Hollow of the knee to armpit, in the batting stance, cut in three equal rows; the shares of
 * stature are estimates (source: {@code drillis-contini-1966}, each about ±0.015), so a measured
 * child is better served. A child whose height the roster does not say gets the median for age
 * (source: {@code cdc-2000}), of both sexes together where the sex is not said.
 */
final class Body {
  private static final double KNEE_HOLLOW = 0.270 * 0.97;
  private static final double ARMPIT = 0.750 * 0.80;

  private Body() {}

  /** Standing height in centimetres, given or estimated. */
  static double stature(Player player, Growth growth, LocalDate on) {
    return player
        .heightCm()
        .orElseGet(() -> growth.median(player.sex(), ChronoUnit.MONTHS.between(player.born(), on)));
  }

  /** Bottom of the low row, of the belt row, of the high row, and the top. */
  static List<Double> rows(double statureCm) {
    double bottom = KNEE_HOLLOW * statureCm;
    double row = (ARMPIT * statureCm - bottom) / 3;
    return List.of(bottom, bottom + row, bottom + 2 * row, bottom + 3 * row);
  }
}
