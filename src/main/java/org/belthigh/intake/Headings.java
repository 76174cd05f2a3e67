package org.belthigh.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The columns of each table of a club folder, for whoever writes an empty one. */
public final class Headings {
  private static final Map<String, String> COLUMNS =
      Map.of(
          "roster", RosterRows.COLUMNS,
          "calendar", CalendarRows.COLUMNS,
          "log", TossRows.COLUMNS,
          "tally", TallyRows.COLUMNS,
          "throws", SafetyRows.OUTING_COLUMNS,
          "wellness", SafetyRows.WELLNESS_COLUMNS,
          "other", OtherRows.SPORT_COLUMNS,
          "coach", OtherRows.PLACEMENT_COLUMNS);

  private Headings() {}

  /** The names of all tables. */
  static Set<String> tables() {
    return COLUMNS.keySet();
  }

  /**
   * The columns of {@code table}, in the order in which people fill them in.
   *
   * @throws IllegalArgumentException if there is no such table
   */
  public static List<String> of(String table) {
    return words(table).stream().map(c -> c.replace("*", "")).toList();
  }

  /** Those of them that each row must fill in. */
  public static List<String> required(String table) {
    return words(table).stream().filter(c -> c.endsWith("*")).map(c -> c.replace("*", "")).toList();
  }

  private static List<String> words(String table) {
    if (!COLUMNS.containsKey(table)) {
      throw new IllegalArgumentException("'" + table + "' is none of " + COLUMNS.keySet());
    }
    return Arrays.asList(COLUMNS.get(table).split(" ", -1));
  }
}
