package org.belthigh.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.belthigh.catalogue.Growth;
import org.belthigh.intake.Player;
import org.belthigh.model.Phrase;
import org.belthigh.model.Row;

/**
 * Heights of the strike zone's rows for one child, in centimetres above the ground.
 *
 * <p>Hollow of the knee to armpit, in the batting stance, cut in three equal rows; the shares of
 * stature are estimates (source: {@code drillis-1966}, each about ±0.015), so a measured child is
 * better served. A child whose height the roster does not say gets the median for age (source:
 * {@code cdc-2000}), of both sexes together where the sex is not said.
 */
final class Body {
  private static final double KNEE_HOLLOW = 0.270 * 0.97;
  private static final double ARMPIT = 0.750 * 0.80;

  private static final Map<String, Double> LANDMARKS =
      new TreeMap<>(
          Map.of(
              "belt", 0.60, "chest", 0.72, "chin", 0.87, "eyes", 0.936, "head", 1.0, "over", 1.1));

  private Body() {}

  /** Standing height in centimetres, given or estimated. */
  static double stature(Player player, Growth growth, LocalDate on) {
    return player
        .heightCm()
        .orElseGet(() -> growth.median(player.sex(), ChronoUnit.MONTHS.between(player.born(), on)));
  }

  /** Height of the middle of a row, metres: where a toss or a tee should have the ball. */
  static double middleMetres(Row row, double statureCm) {
    List<Double> rows = rows(statureCm);
    return (rows.get(row.ordinal()) + rows.get(row.ordinal() + 1)) / 200;
  }

  /** Height of the middle of the belt row, metres. */
  static double beltMetres(double statureCm) {
    return middleMetres(Row.BELT, statureCm);
  }

  /**
   * How high a point is, in words of the hitter's standing body: belt, chest, chin, eyes, head, or
   * over it. Shares of stature: {@code drillis-1966}; belt and chest are estimates of ours.
   *
   * @param metres above the ground
   */
  static Phrase reach(double metres, double statureCm) {
    double share = 100 * metres / statureCm;
    String word =
        LANDMARKS.entrySet().stream()
            .min(Comparator.comparingDouble(mark -> Math.abs(mark.getValue() - share)))
            .orElseThrow()
            .getKey();
    return Phrase.of("reach." + word);
  }

  /** Bottom of the low row, of the belt row, of the high row, and the top. */
  static List<Double> rows(double statureCm) {
    double bottom = KNEE_HOLLOW * statureCm;
    double row = (ARMPIT * statureCm - bottom) / 3;
    return List.of(bottom, bottom + row, bottom + 2 * row, bottom + 3 * row);
  }
}
