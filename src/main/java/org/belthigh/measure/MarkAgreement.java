package org.belthigh.measure;

import java.util.OptionalDouble;
import org.belthigh.model.Share;

/**
 * How far two people who marked the same tosses agree.
 *
 * @param zone where the ball went, of ten answers
 * @param swing whether the hitter swung
 * @param hard whether it was hit hard, of tosses that both saw swung at
 */
public record MarkAgreement(Agreed zone, Agreed swing, Agreed hard) {
  /**
   * One mark.
   *
   * @param same tosses marked alike, of those marked twice
   * @param kappa Cohen's kappa, -1 to 1; empty where nothing was marked twice or chance agreement
   *     is 1. Source: Cohen 1960
   */
  public record Agreed(Share same, OptionalDouble kappa) {}

  /** Tosses that two people marked. */
  public int tosses() {
    return zone.same().seen();
  }
}
