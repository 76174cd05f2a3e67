package org.belthigh.plan;

import java.util.List;
import org.belthigh.model.Grain;
import org.belthigh.model.Side;

/**
 * The strike zone to scale from the hitter's height.
 *
 * @param grain how finely the child works
 * @param side where the hitter stands
 * @param lookFor answers of that grain to look for this week, such as {@code belt} or {@code
 *     low-away}; may be empty
 * @param heightsCm bottom of the low row, bottom of the belt row, bottom of the high row, top of
 *     the high row; centimetres above the ground, in the batting stance
 * @param estimated whether the height was estimated from age, since the roster does not say it
 * @param bat whether the hitter holds one: never on a sheet without a swing
 */
public record SpotPicture(
    Grain grain,
    Side side,
    List<String> lookFor,
    List<Double> heightsCm,
    boolean estimated,
    boolean bat) {
  public SpotPicture {
    lookFor = List.copyOf(lookFor);
    heightsCm = List.copyOf(heightsCm);
    if (heightsCm.size() != 4) {
      throw new IllegalArgumentException("Four heights are needed, not " + heightsCm);
    }
  }
}
