package org.belthigh.model;

/** Where a day's work is done; {@link #REST} where there is none. */
public enum Place implements Coded {
  FIELD,
  CAGE,
  HOME,
  REST
}
