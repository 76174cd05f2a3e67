package org.belthigh.model;

/** The room that a family has at home. */
public enum Space implements Coded {
  /** Grass or the like, with room all around. */
  YARD,
  /** A driveway or a patio. */
  DRIVEWAY,
  /** Indoors: soft foam, and nobody swings a bat. */
  HALLWAY
}
