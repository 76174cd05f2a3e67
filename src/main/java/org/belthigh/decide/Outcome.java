package org.belthigh.decide;

import org.belthigh.model.Coded;

/** What comes next for a player and a skill. */
public enum Outcome implements Coded {
  MOVE_UP,
  KEEP_GOING,
  FIRM_UP,
  /** Never a blame, and left off the player's card. */
  NOT_SEEN_ENOUGH
}
