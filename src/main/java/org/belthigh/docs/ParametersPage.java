package org.belthigh.docs;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Evidence;
import org.belthigh.catalogue.Parameter;
import org.belthigh.model.AgeBand;

/** {@code parameters.md}: every number of ours or of a publisher's, with each value it ever had. */
final class ParametersPage {
  private final Catalogue catalogue;

  ParametersPage(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  String text() {
    Markdown page = new Markdown("Parameters");
    page.paragraph(
        "The value on a day is the newest that does not begin after it. \"Common practice\" means"
            + " that no published number was found and the value is ours.");
    catalogue.parameters().values().forEach(p -> parameter(page, p));
    return page.toString();
  }

  private void parameter(Markdown page, Parameter parameter) {
    page.heading(2, parameter.id());
    page.paragraph(parameter.description());
    page.paragraph(
        "Unit: "
            + parameter.unit()
            + "; from "
            + number(parameter.least())
            + " to "
            + number(parameter.most())
            + "; "
            + parameter.status()
            + "; last checked on "
            + parameter.checkedOn()
            + ".");
    page.head("from", "value", "how sure", "source", "why");
    for (Parameter.Dated value : parameter.values()) {
      page.row(
          value.from().toString(),
          shown(value),
          sure(value.evidence()),
          SourcesPage.link(catalogue.source(value.source())),
          value.reasoning());
    }
  }

  private static String sure(Evidence evidence) {
    return switch (evidence) {
      case PUBLISHED -> "published";
      case MEASURED -> "measured";
      case JUDGEMENT -> "common practice";
    };
  }

  /** The newest value as people read it. */
  static String newest(Parameter parameter) {
    return shown(parameter.values().get(parameter.values().size() - 1));
  }

  private static String shown(Parameter.Dated value) {
    return value.byAge().values().stream().distinct().count() == 1
        ? number(value.at(AgeBand.AGE_7_8))
        : Arrays.stream(AgeBand.values())
            .map(band -> band.id() + ": " + number(value.at(band)))
            .collect(Collectors.joining(", "));
  }

  private static String number(double number) {
    return number == Math.rint(number)
        ? String.format(Locale.ROOT, "%.0f", number)
        : Double.toString(number);
  }
}
