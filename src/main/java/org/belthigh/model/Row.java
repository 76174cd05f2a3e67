package org.belthigh.model;

/** The heights of the strike zone, from the bottom. */
public enum Row implements Coded {
  LOW,
  BELT,
  HIGH
}
