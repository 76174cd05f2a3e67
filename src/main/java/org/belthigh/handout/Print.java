package org.belthigh.handout;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.belthigh.model.Coded;

/** What can be printed; {@link #PACKET} binds the others of an age group into one document. */
public enum Print implements Coded {
  OVERVIEW,
  PRACTICE,
  ARM,
  EMERGENCY,
  GUIDE,
  CARD,
  HOME,
  SEASON,
  EVALUATION,
  LOG,
  PACKET;

  /** What is printed where nothing else is said: the week, and what hangs on the wall. */
  public static Set<Print> usual() {
    return Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(SEASON, EVALUATION)));
  }
}
