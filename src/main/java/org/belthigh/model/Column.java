package org.belthigh.model;

/** The widths of the strike zone, from next to the hitter outwards. */
public enum Column implements Coded {
  IN,
  MIDDLE,
  AWAY
}
