package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Table;
import org.belthigh.model.Column;
import org.belthigh.model.Row;
import org.belthigh.model.Spot;

/** The nine spots with their numbers, low ones at the foot, those next to the hitter first. */
final class SpotTable {
  private SpotTable() {}

  static void write(TeamPage page, Table table) {
    Col column = Col.share(1).centred();
    List<String> head = new ArrayList<>(List.of(page.say("evaluation.spot")));
    for (Column one : Column.values()) {
      head.add(page.say("target." + one.id()));
    }
    table.columns(Col.content(), column, column, column).head(head).rowHeaders().boxed();
    List<Row> rows = new ArrayList<>(List.of(Row.values()));
    Collections.reverse(rows);
    for (Row row : rows) {
      List<String> cells = new ArrayList<>(List.of(page.say("target." + row.id())));
      for (Column one : Column.values()) {
        cells.add(Integer.toString(Spot.at(row, one).number()));
      }
      table.row(cells.toArray(String[]::new));
    }
  }
}
