package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.HeatTable;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.heat.HeatCheck;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Phrase;

/**
 * The heat tables as a practice sheet has them: for the youngest of the group, for players who may
 * be new to the heat, and for region 1, since a club folder names none.
 */
final class HeatBoxes {
  private static final double TENTH = 0.1;

  private final Catalogue catalogue;
  private final LocalDate on;

  /** The tables in force on {@code on}. */
  HeatBoxes(Catalogue catalogue, LocalDate on) {
    this.catalogue = catalogue;
    this.on = on;
  }

  /** The box for players of whom the youngest is {@code age}. */
  HeatBox box(int age) {
    HeatCheck check = new HeatCheck(catalogue, on);
    HeatCheck.Who who =
        new HeatCheck.Who(OptionalInt.of(age), OptionalInt.empty(), OptionalInt.empty(), false);
    List<HeatCheck.Band> meter = check.bands(HeatTable.Reading.WBGT, who);
    List<HeatCheck.Band> index = check.bands(HeatTable.Reading.HEAT_INDEX, who);
    return new HeatBox(
        lines(meter),
        lines(index),
        Phrase.of("heat.shade", "adds", number("heat-sun-adds"), "table", indexTable()),
        notes(who));
  }

  private List<Phrase> notes(HeatCheck.Who who) {
    return List.of(
        Phrase.of("heat.taken", "days", number("heat-used-to-after")),
        who.young()
            ? Phrase.of("heat.sure.young", "from", number("heat-young-cancel"))
            : Phrase.of("heat.sure"));
  }

  private String indexTable() {
    return catalogue.heatTables().values().stream()
        .filter(t -> t.reading() == HeatTable.Reading.HEAT_INDEX)
        .map(HeatTable::shortName)
        .collect(Collectors.joining(", "));
  }

  private int number(String id) {
    return (int) catalogue.parameter(id).on(on).at(AgeBand.AGE_9_10);
  }

  private static List<HeatBox.Line> lines(List<HeatCheck.Band> bands) {
    List<HeatBox.Line> lines = new ArrayList<>();
    for (int i = 0; i < bands.size(); i++) {
      HeatCheck.Band band = bands.get(i);
      HeatCheck.Answer strictest = HeatCheck.strictest(band.answers());
      lines.add(
          new HeatBox.Line(
              i + 1 < bands.size()
                  ? reading(band.from(), bands.get(i + 1).from())
                  : Phrase.of("heat.from", "from", band.from()),
              band.answers().size() > 1 ? says(strictest) : what(strictest.row()),
              band.answers().stream()
                  .filter(a -> !what(a.row()).equals(what(strictest.row())))
                  .filter(HeatBoxes::speaks)
                  .map(HeatBoxes::says)
                  .toList()));
    }
    return lines;
  }

  private static Phrase reading(double from, double next) {
    double to = next - TENTH;
    return from == Double.NEGATIVE_INFINITY
        ? Phrase.of("heat.to", "to", to)
        : Phrase.of("heat.between", "from", from, "to", to);
  }

  /** A table that asks for no change, or of which only the last row was read, is silent there. */
  private static boolean speaks(HeatCheck.Answer answer) {
    return answer.row().cancel()
        || (answer.table().status() == RuleBook.Status.CONFIRMED
            && !what(answer.row()).equals(Phrase.of("heat.usual")));
  }

  private static Phrase says(HeatCheck.Answer answer) {
    return Phrase.of("heat.says", "what", what(answer.row()), "table", answer.table().shortName());
  }

  private static Phrase what(HeatTable.Row row) {
    if (row.cancel()) {
      return Phrase.of("heat.cancel");
    }
    List<Phrase> parts = new ArrayList<>();
    if (row.breaks() > 0) {
      parts.add(Phrase.of("heat.breaks", "breaks", row.breaks(), "minutes", row.breakMinutes()));
    }
    if (row.restAnHour() > 0) {
      parts.add(Phrase.of("heat.rest", "minutes", row.restAnHour()));
    }
    row.mostMinutes().ifPresent(m -> parts.add(Phrase.of("heat.most", "minutes", m)));
    if (!row.gear()) {
      parts.add(Phrase.of("heat.gear"));
    }
    return parts.isEmpty() ? Phrase.of("heat.usual") : Phrase.of("heat.parts", "parts", parts);
  }
}
