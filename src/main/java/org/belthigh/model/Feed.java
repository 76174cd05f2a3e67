package org.belthigh.model;

/** How the ball comes to the hitter. */
public enum Feed implements Coded {
  TEE,
  FLIP,
  FRONT_TOSS,
  OVERHAND,
  MACHINE,
  NONE
}
