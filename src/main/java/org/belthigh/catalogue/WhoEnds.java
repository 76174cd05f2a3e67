package org.belthigh.catalogue;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Whose word ends which complaint: the table of {@code rules/hold/who-ends.yaml}. A complaint that
 * it lacks is ended by nobody.
 *
 * @param rows by the complaint as {@code wellness.csv} writes it
 */
public record WhoEnds(Map<String, Row> rows) {
  /** The word of the family that it is over, beside the roles. */
  public static final String SYMPTOM_FREE = "symptom-free";

  /** A table in which nobody ends anything. */
  public static final WhoEnds NOBODY = new WhoEnds(Map.of());

  public WhoEnds {
    rows = Collections.unmodifiableMap(new TreeMap<>(rows));
  }

  /**
   * Who ends one complaint.
   *
   * @param complaint as {@code wellness.csv} writes it
   * @param by roles as {@code wellness.csv} writes them, and {@link #SYMPTOM_FREE}
   * @param easedBack whether its clearance is followed by days with less
   * @param source id of a source of the catalogue
   */
  public record Row(String complaint, Set<String> by, boolean easedBack, String source) {
    public Row {
      by = Collections.unmodifiableSet(new LinkedHashSet<>(by));
    }
  }

  /** Whether the clearance of that complaint is followed by days with less. */
  public boolean easedBack(String complaint) {
    return rows.containsKey(complaint) && rows.get(complaint).easedBack();
  }

  /** Whether the word of {@code who} ends that complaint. */
  public boolean ends(String complaint, String who) {
    return rows.containsKey(complaint) && rows.get(complaint).by().contains(who);
  }
}
