package org.belthigh.catalogue;

import java.util.List;
import org.belthigh.files.Fields;

/** Reads and checks one heat table: {@code rules/heat/*.yaml}. */
final class HeatTableFile {
  private static final double COLDEST = 50;
  private static final double HOTTEST = 150;
  private static final int REGIONS = 3;

  private HeatTableFile() {}

  static HeatTable read(Fields f, Places places) {
    String id = f.text("id");
    places.note("heat table", id, f);
    List<HeatTable.Row> rows = rows(f, "rows");
    List<HeatTable.Row> newcomers = f.has("newcomers") ? rows(f, "newcomers") : rows;
    return new HeatTable(
        id,
        f.text("short_name"),
        f.text("organisation"),
        f.text("title"),
        f.text("edition"),
        f.texts("sources"),
        f.word("status", RuleBook.Status.class),
        f.word("reading", HeatTable.Reading.class),
        f.optionalWhole("region", 1, REGIONS),
        rows,
        newcomers,
        f.texts("notes"));
  }

  private static List<HeatTable.Row> rows(Fields f, String key) {
    List<HeatTable.Row> rows = f.each(key, HeatTableFile::row);
    boolean first = !rows.isEmpty() && rows.get(0).from() == Double.NEGATIVE_INFINITY;
    boolean rising = true;
    for (int i = 1; i < rows.size(); i++) {
      rising &= rows.get(i).from() > rows.get(i - 1).from();
    }
    if (!first || !rising) {
      f.refuse(
          key,
          "the rows leave a gap or overlap",
          "the first row has no 'from', and each later one begins above the one before",
          "Put the rows in order, the coolest first.");
    } else if (!rows.get(rows.size() - 1).cancel()) {
      f.refuse(
          key,
          "the hottest row does not cancel",
          "above its last limit a table says that nothing is done",
          "Write 'cancel: true' in the last row.");
    }
    return rows;
  }

  private static HeatTable.Row row(Fields f) {
    return new HeatTable.Row(
        f.has("from") ? f.number("from", COLDEST, HOTTEST) : Double.NEGATIVE_INFINITY,
        f.optionalWhole("breaks", 0, 12).orElse(0),
        f.optionalWhole("break_minutes", 0, 30).orElse(0),
        f.optionalWhole("rest_an_hour", 0, 60).orElse(0),
        f.optionalWhole("most_minutes", 0, 300),
        f.flag("gear", true),
        f.flag("cancel", false),
        f.optionalText("note").orElse(""));
  }
}
