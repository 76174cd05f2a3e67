package org.belthigh.heat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.HeatTable;
import org.belthigh.model.AgeBand;

/**
 * What each table says of a reading. What is not known is taken on the careful side: an unknown
 * region as region 1, an unknown age as young, unknown days in the heat as none.
 */
public final class HeatCheck {
  private static final int YOUNG_TO = 12;
  private static final int MILDEST = 1;

  /** A reading in the first row of every table. */
  private static final double COOL = 60;

  private final Catalogue catalogue;
  private final LocalDate on;

  /** Tables and our own numbers come from {@code catalogue}, as they stand on {@code on}. */
  public HeatCheck(Catalogue catalogue, LocalDate on) {
    this.catalogue = catalogue;
    this.on = on;
  }

  /**
   * Who is out there.
   *
   * @param age of the youngest, in whole years; empty where not known
   * @param region 1 to 3; empty where not known
   * @param daysInHeat empty where not known
   * @param sun whether the field lies in the sun
   */
  public record Who(OptionalInt age, OptionalInt region, OptionalInt daysInHeat, boolean sun) {
    /** Whether the youngest is 12 or younger, or may be. */
    public boolean young() {
      return age.orElse(YOUNG_TO) <= YOUNG_TO;
    }
  }

  /**
   * What one table says.
   *
   * @param degrees the reading that was looked up, Fahrenheit, rounded up to a tenth
   * @param harsher whether one row harsher was taken than the reading alone asks for
   */
  public record Answer(HeatTable table, double degrees, HeatTable.Row row, boolean harsher) {}

  /**
   * Readings of which every table says one thing.
   *
   * @param from lowest degree, Fahrenheit; negative infinity in the first band
   * @param answers one per table, in order of id
   */
  public record Band(double from, List<Answer> answers) {
    public Band {
      answers = List.copyOf(answers);
    }

    private List<HeatTable.Row> rows() {
      return answers.stream().map(Answer::row).toList();
    }
  }

  /** Whether the players are not used to the heat, or may not be. */
  public boolean newcomers(Who who) {
    return who.daysInHeat().orElse(0) < number("heat-used-to-after");
  }

  /** What every table for wet-bulb globe readings says, in order of id. */
  public List<Answer> wbgt(double fahrenheit, Who who) {
    double degrees = up(fahrenheit);
    int region = who.region().orElse(MILDEST);
    return tables(HeatTable.Reading.WBGT).stream()
        .filter(t -> t.region().orElse(region) == region)
        .map(t -> new Answer(t, degrees, t.row(degrees, newcomers(who), 0), false))
        .toList();
  }

  /**
   * What every table for the heat index says. One row harsher for young players, in the sun and for
   * newcomers, and no practice for young players from a number on: ours, common practice.
   */
  public List<Answer> heatIndex(double temperature, double humidity, Who who) {
    return heatIndex(up(HeatIndex.of(temperature, humidity)), who);
  }

  private List<Answer> heatIndex(double degrees, Who who) {
    boolean harsher = who.young() || who.sun() || newcomers(who);
    boolean home = who.young() && degrees >= number("heat-young-cancel");
    return tables(HeatTable.Reading.HEAT_INDEX).stream()
        .map(t -> new Answer(t, degrees, row(t, degrees, harsher, home), harsher))
        .toList();
  }

  /**
   * What the tables say of every reading, coolest first: where one answer changes a new band
   * begins. The last band is the first in which a table stops all practice.
   */
  public List<Band> bands(HeatTable.Reading reading, Who who) {
    List<Band> bands = new ArrayList<>();
    for (double from : limits(reading)) {
      double degrees = Math.max(from, COOL);
      List<Answer> answers =
          reading == HeatTable.Reading.WBGT ? wbgt(degrees, who) : heatIndex(degrees, who);
      List<HeatTable.Row> rows = answers.stream().map(Answer::row).toList();
      if (bands.isEmpty() || !bands.get(bands.size() - 1).rows().equals(rows)) {
        bands.add(new Band(from, answers));
      }
      if (strictest(answers).row().cancel()) {
        break;
      }
    }
    return List.copyOf(bands);
  }

  private SortedSet<Double> limits(HeatTable.Reading reading) {
    SortedSet<Double> limits = new TreeSet<>();
    for (HeatTable table : tables(reading)) {
      table.rows().forEach(r -> limits.add(r.from()));
      table.newcomers().forEach(r -> limits.add(r.from()));
    }
    if (reading == HeatTable.Reading.HEAT_INDEX) {
      limits.add(number("heat-young-cancel"));
    }
    return limits;
  }

  private static HeatTable.Row row(HeatTable table, double degrees, boolean harsher, boolean home) {
    return table.row(degrees, false, home ? table.rows().size() : harsher ? 1 : 0);
  }

  /** The strictest of {@code answers}, which is not empty. */
  public static Answer strictest(List<Answer> answers) {
    return answers.stream()
        .max(Comparator.comparing(Answer::row, HeatTable.Row.BY_STRICTNESS))
        .orElseThrow();
  }

  private List<HeatTable> tables(HeatTable.Reading reading) {
    return catalogue.heatTables().values().stream().filter(t -> t.reading() == reading).toList();
  }

  private double number(String id) {
    return catalogue.parameter(id).on(on).at(AgeBand.AGE_9_10);
  }

  /** Up to the next tenth: a reading between two printed values is the hotter one. */
  private static double up(double degrees) {
    return Math.ceil(degrees * 10 - 1e-6) / 10;
  }
}
