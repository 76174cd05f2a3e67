package org.belthigh.catalogue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.model.AgeBand;

/**
 * A dated, sourced, bounded number of ours or of a publisher's.
 *
 * @param unit from the closed list: share, count, days, minutes, swings, years, feet, inches, nats
 * @param least smallest value allowed
 * @param most largest value allowed
 * @param values oldest first; the value on a day is the newest {@code from} not after it
 */
public record Parameter(
    String id,
    String description,
    String unit,
    double least,
    double most,
    String status,
    LocalDate checkedOn,
    List<Dated> values) {

  public Parameter {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("Parameter " + id + " has no value");
    }
  }

  /**
   * One value and where it comes from.
   *
   * @param byAge one value for every age band, all alike where age does not matter
   */
  public record Dated(
      LocalDate from,
      Map<AgeBand, Double> byAge,
      String source,
      Evidence evidence,
      String reasoning) {
    public Dated {
      byAge = Map.copyOf(byAge);
    }

    /** The value for {@code band}. */
    public double at(AgeBand band) {
      return byAge.get(band);
    }
  }

  /**
   * The value in force on {@code day}.
   *
   * @throws IllegalArgumentException if the parameter has no value yet on that day
   */
  public Dated on(LocalDate day) {
    return ifAny(day)
        .orElseThrow(
            () -> new IllegalArgumentException("Parameter " + id + " has no value on " + day));
  }

  /** The value in force on {@code day}; empty where there is none yet. */
  public Optional<Dated> ifAny(LocalDate day) {
    return values.stream().filter(value -> !value.from().isAfter(day)).reduce((a, b) -> b);
  }
}
