package org.belthigh.model;

/** The four skills that progress, in the order in which sheets name them. */
public enum Skill implements Coded {
  /** Call the spot of a toss. */
  SEE,
  /** Swing at the right ones. */
  CHOOSE,
  /** Hit it hard. */
  DRIVE,
  /** Hit it where you called. */
  SEND
}
