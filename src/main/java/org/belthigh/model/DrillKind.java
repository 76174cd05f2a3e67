package org.belthigh.model;

/** How the log rows of a drill are counted. */
public enum DrillKind implements Coded {
  ZONE_CALL,
  COUNTDOWN,
  FIELD_CALL,
  NONE
}
