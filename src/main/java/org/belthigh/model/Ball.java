package org.belthigh.model;

/** The ball that is tossed. At home only plastic, foam or none. */
public enum Ball implements Coded {
  PLASTIC,
  FOAM,
  TENNIS,
  BASEBALL,
  SOFTBALL,
  NONE;

  /** Whether a parent may toss it at home. */
  public boolean atHome() {
    return this == PLASTIC || this == FOAM || this == NONE;
  }

  /** Whether the air slows it down much on its way, so that the hitter has more time. */
  public boolean slows() {
    return this == PLASTIC || this == FOAM;
  }
}
