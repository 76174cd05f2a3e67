package org.belthigh.plan;

import org.belthigh.model.Coded;
import org.belthigh.model.Phrase;

/** Why a practice has no hitting for one player who may swing, as it was decided that day. */
enum Idle implements Coded {
  /** The hours of sport in seven days. */
  SITS_OUT,
  /** The days without sport in seven days. */
  NO_FREE_DAY,
  /** Our own limit of days with hitting. */
  HITTING_DAYS,
  /** Our own limits of swings. */
  SWINGS_USED,
  /** A first week back has a share of the swings, and of a short practice that is none. */
  LIGHT_SHARE,
  /** Nothing can be done in those minutes, with those grown-ups and that gear. */
  NOTHING_FITS,
  /** The calendar has no minutes for it. */
  NO_MINUTES;

  /** What the child's day says. */
  Phrase day() {
    return Phrase.of("day." + id());
  }

  /** What the overview says, which also tells what to do. */
  String ahead() {
    return this == SITS_OUT ? "ahead.full" : "ahead." + id();
  }
}
