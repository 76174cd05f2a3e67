package org.belthigh.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.belthigh.model.Coded;

/**
 * A published table of what to change in a practice by heat.
 *
 * @param shortName what it is called where room is short, with its year where one is known
 * @param sources ids of sources of the catalogue
 * @param reading what its degrees are; the two are never compared with each other
 * @param region 1 to 3 for a regional table; empty where it holds anywhere
 * @param rows coolest first, in degrees Fahrenheit; the first has no lower end
 * @param newcomers the rows for players who are not used to the heat; the same where the table
 *     makes no difference
 */
public record HeatTable(
    String id,
    String shortName,
    String organisation,
    String title,
    String edition,
    List<String> sources,
    RuleBook.Status status,
    Reading reading,
    OptionalInt region,
    List<Row> rows,
    List<Row> newcomers,
    List<String> notes) {
  public HeatTable {
    sources = List.copyOf(sources);
    rows = List.copyOf(rows);
    newcomers = List.copyOf(newcomers);
    notes = List.copyOf(notes);
  }

  /** What is measured. */
  public enum Reading implements Coded {
    /** Wet-bulb globe temperature, from an instrument on the field. */
    WBGT,
    /** Heat index, reckoned from temperature and humidity, in the shade. */
    HEAT_INDEX
  }

  /**
   * What one band of degrees asks for.
   *
   * @param from lowest degree, Fahrenheit, itself included; negative infinity in the first row
   * @param breaks rests in each hour; 0 where the table says none
   * @param breakMinutes length of each, in minutes
   * @param restAnHour minutes of rest in each hour; 0 where the table says none
   * @param mostMinutes longest practice; empty where the table has no limit
   * @param gear whether helmets may be worn
   * @param cancel whether nothing is done at all
   * @param note what else it says; empty where nothing
   */
  public record Row(
      double from,
      int breaks,
      int breakMinutes,
      int restAnHour,
      OptionalInt mostMinutes,
      boolean gear,
      boolean cancel,
      String note) {
    /** The laxest first. */
    public static final Comparator<Row> BY_STRICTNESS =
        Comparator.comparing(Row::cancel)
            .thenComparing(r -> !r.gear())
            .thenComparing(r -> -r.mostMinutes().orElse(Integer.MAX_VALUE))
            .thenComparing(r -> Math.max(r.restAnHour(), r.breaks() * r.breakMinutes()));
  }

  /**
   * The row of {@code degrees} Fahrenheit.
   *
   * @param harsher so many rows further down, the last one at the most
   */
  public Row row(double degrees, boolean newcomer, int harsher) {
    List<Row> all = newcomer ? newcomers : rows;
    int index = 0;
    while (index + 1 < all.size() && degrees >= all.get(index + 1).from()) {
      index++;
    }
    return all.get(Math.min(all.size() - 1, index + harsher));
  }
}
