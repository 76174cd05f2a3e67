package org.belthigh.handout;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.belthigh.model.Coded;

/**
 * What can be printed; {@link #PACKET} binds the others of an age group into one document, but for
 * {@link #CLIPBOARD}, which is the cards again.
 */
public enum Print implements Coded {
  OVERVIEW,
  PRACTICE,
  ARM,
  EMERGENCY,
  GUIDE,
  CARD,
  /** Cards two to a sheet. */
  CLIPBOARD,
  HOME,
  SEASON,
  EVALUATION,
  LOG,
  /** A log sheet for each player. */
  OWN_LOG,
  PACKET;

  /** What is printed where nothing else is said: the week, and what hangs on the wall. */
  public static Set<Print> usual() {
    return Collections.unmodifiableSet(
        EnumSet.complementOf(EnumSet.of(CLIPBOARD, SEASON, EVALUATION, OWN_LOG)));
  }
}
