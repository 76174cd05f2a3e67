package org.belthigh.decide;

/**
 * Whose hands a drill may need. Public only because the rules are built as a model of their own.
 */
public enum Hands {
  /** Who tosses, and stands by wherever a bat is swung. */
  GROWN_UP,
  /** Somebody more, such as who feeds a machine. */
  HELPER
}
