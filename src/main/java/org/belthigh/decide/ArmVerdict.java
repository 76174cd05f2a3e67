package org.belthigh.decide;

/**
 * What a rule of the pack {@code arm} concluded about one day under one book. Public only because
 * the rules are built as a model of their own.
 */
public record ArmVerdict(String rule, Effect effect, ArmDay about) implements Verdict {
  /** What follows. */
  public enum Effect {
    NO_PITCHING,
    MAY_PITCH,
    NO_CATCHING,
    NOTE
  }
}
