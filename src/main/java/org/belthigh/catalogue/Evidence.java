package org.belthigh.catalogue;

import org.belthigh.model.Coded;

/** How sure we are of a number. Sheets print "common practice" for {@link #JUDGEMENT}. */
public enum Evidence implements Coded {
  PUBLISHED,
  MEASURED,
  JUDGEMENT
}
