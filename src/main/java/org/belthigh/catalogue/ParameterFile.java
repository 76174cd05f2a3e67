package org.belthigh.catalogue;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.belthigh.files.Fields;
import org.belthigh.model.AgeBand;

/** Reads {@code rules/parameters/*.yaml}: dated, sourced, bounded numbers. */
final class ParameterFile {
  private static final double ANY = 1_000_000;

  private final Places places;
  private final Set<String> units;

  /**
   * @param units the closed list of {@code rules/units.yaml}
   */
  ParameterFile(Places places, Set<String> units) {
    this.places = places;
    this.units = units;
  }

  List<Parameter> read(Fields file) {
    return file.each("parameters", this::parameter);
  }

  private Parameter parameter(Fields f) {
    String id = f.text("id");
    places.note("parameter", id, f);
    double[] bounds = bounds(f);
    List<Parameter.Dated> values = f.each("values", v -> dated(v, bounds));
    refuseDisorder(f, values);
    return new Parameter(
        id,
        f.text("description"),
        unit(f),
        bounds[0],
        bounds[1],
        Status.of(f),
        f.date("checked_on"),
        values);
  }

  private String unit(Fields f) {
    String unit = f.text("unit");
    if (!units.contains(unit)) {
      f.refuse(
          "unit",
          "'" + unit + "' is not a unit",
          "unit must be one of " + String.join(", ", units),
          "Choose one of these, or add it to rules/units.yaml.");
    }
    return unit;
  }

  private static double[] bounds(Fields f) {
    List<String> texts = f.texts("bounds");
    try {
      if (texts.size() == 2) {
        double least = Double.parseDouble(texts.get(0));
        double most = Double.parseDouble(texts.get(1));
        if (least < most) {
          return new double[] {least, most};
        }
      }
    } catch (NumberFormatException e) {
      // said below
    }
    f.refuse(
        "bounds",
        texts + " is no such range",
        "bounds must be two numbers, the lower first",
        "Write it as [0.5, 1.0].");
    return new double[] {-ANY, ANY};
  }

  private static Parameter.Dated dated(Fields f, double[] bounds) {
    return new Parameter.Dated(
        f.date("from"),
        byAge(f, bounds),
        f.text("source"),
        f.word("evidence", Evidence.class),
        f.optionalText("reasoning").orElse(""));
  }

  private static Map<AgeBand, Double> byAge(Fields f, double[] bounds) {
    if (f.has("by_age") == f.has("value")) {
      f.refuse(
          "value",
          f.has("value") ? "value and by_age stand together" : "there is neither value nor by_age",
          "give one value for all ages, or by_age with one for each age band",
          "Write value: … or by_age: {\"7-8\": …, … \"17-18\": …}.");
      return Map.of();
    }
    Map<AgeBand, Double> values = new EnumMap<>(AgeBand.class);
    if (f.has("value")) {
      double value = f.number("value", bounds[0], bounds[1]);
      for (AgeBand band : AgeBand.values()) {
        values.put(band, value);
      }
      return values;
    }
    Optional<Map<AgeBand, Double>> read =
        f.inside(
            "by_age",
            ages -> {
              for (AgeBand band : AgeBand.values()) {
                values.put(band, ages.number(band.id(), bounds[0], bounds[1]));
              }
              return values;
            });
    return read.orElse(Map.of());
  }

  private static void refuseDisorder(Fields f, List<Parameter.Dated> values) {
    for (int i = 1; i < values.size(); i++) {
      LocalDate before = values.get(i - 1).from();
      LocalDate from = values.get(i).from();
      if (!from.isAfter(before)) {
        f.refuse(
            "values",
            "a value from " + from + " follows one from " + before,
            "values stand oldest first, and no two begin on one day",
            "Give each value its own day.");
      }
    }
  }
}
