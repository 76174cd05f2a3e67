package org.belthigh.catalogue;

import java.util.List;
import java.util.regex.Pattern;
import org.belthigh.files.Fields;

/** Reads {@code rules/<pack>/rules.yaml}: what stands beside each DRL rule. */
final class RuleEntryFile {
  private static final Pattern ID = Pattern.compile("[A-Z]{3,4}-[0-9]{3}");

  private final Places places;
  private final String pack;

  RuleEntryFile(Places places, String pack) {
    this.places = places;
    this.pack = pack;
  }

  List<RuleEntry> read(Fields file) {
    return file.each("rules", this::entry);
  }

  private RuleEntry entry(Fields f) {
    String id = f.text("id");
    places.note("rule", id, f);
    if (!ID.matcher(id).matches()) {
      f.refuse(
          "id",
          "'" + id + "' is no rule id",
          "a rule id is three or four capitals, a hyphen and three digits",
          "Write it as ARM-001.");
    }
    return new RuleEntry(
        id,
        pack,
        f.text("title"),
        Status.of(f),
        f.date("from"),
        f.texts("reads"),
        f.localText("reason"),
        f.text("source"));
  }
}
