package org.belthigh.audit;

import java.time.LocalDate;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.Source;
import org.belthigh.model.AgeBand;

/** The published numbers and our own, as they stand on the first day of the plan. */
final class Limits {
  private static final String OURS = "common-practice";

  private final Catalogue catalogue;
  private final LocalDate on;

  Limits(Catalogue catalogue, LocalDate on) {
    this.catalogue = catalogue;
    this.on = on;
  }

  private Parameter.Dated dated(String id) {
    return catalogue.parameter(id).on(on);
  }

  /** The number at {@code age} in whole years. */
  double at(String id, int age) {
    return dated(id).at(AgeBand.of(age));
  }

  /** The same as a whole number. */
  int whole(String id, int age) {
    return (int) at(id, age);
  }

  /** Who says so, and when. */
  String source(String id) {
    return name(dated(id).source());
  }

  /** The source with that id as a message names it. */
  String name(String sourceId) {
    Source source = catalogue.source(sourceId);
    return source.sureness().equals(OURS) ? "ours, common practice" : source.shortName();
  }

  /** The same as plans name it. */
  String plainName(String sourceId) {
    return catalogue.source(sourceId).shortName();
  }
}
