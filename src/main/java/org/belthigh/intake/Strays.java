package org.belthigh.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.files.Table;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Files and sheets that were found and are not read. One that may hold outings, health reports or
 * children is a fault, and what it may hold counts as lost; unless every row of it stands in a
 * table that is read.
 */
final class Strays {
  private static final Set<String> OF_OUTINGS =
      Set.of("pitches", "before_last_batter", "innings", "innings_caught");
  private static final Set<String> OF_HEALTH = Set.of("kind", "clears");

  /** A file or sheet, what its name alone lets it hold, and whether it has been told already. */
  private record Stray(
      String shown, Set<ClubFiles.Kind> byName, Optional<Table> table, boolean told) {}

  private final Map<ClubFiles.Kind, Map<Map<String, String>, Integer>> read =
      new EnumMap<>(ClubFiles.Kind.class);
  private final List<Stray> strays = new ArrayList<>();

  /** Notes a table that is read. */
  void read(ClubFiles.Kind kind, Table table) {
    Map<Map<String, String>, Integer> rows = read.computeIfAbsent(kind, k -> new HashMap<>());
    rows(table, kind).forEach((row, times) -> rows.merge(row, times, Integer::sum));
  }

  /** Notes a file or sheet that is not read; without a table, where none could be made of it. */
  void found(String shown, Set<ClubFiles.Kind> byName, Optional<Table> table) {
    strays.add(new Stray(shown, byName, table, false));
  }

  /** Notes a file of which has been told that it is not read. */
  void told(String shown, Set<ClubFiles.Kind> byName) {
    strays.add(new Stray(shown, byName, Optional.empty(), true));
  }

  /** What a table holds by its header; empty for one on which safety does not rest. */
  static Optional<ClubFiles.Kind> byHeader(Table whole) {
    Table raw = Title.beneath(whole).orElse(whole);
    Table roster = Reading.named(raw, ClubFiles.Kind.ROSTER.columns());
    if (roster.has("born") && (roster.has("id") || roster.has("first_name"))) {
      return Optional.of(ClubFiles.Kind.ROSTER);
    }
    if (raw.columns().stream().anyMatch(Strays::isComplaint)) {
      return Optional.of(ClubFiles.Kind.HEALTH);
    }
    if (!Reading.named(raw, List.of("player")).has("player") || raw.has("drill")) {
      return Optional.empty();
    }
    Table outings = Reading.named(raw, ClubFiles.Kind.OUTINGS.columns());
    if (OF_OUTINGS.stream().anyMatch(outings::has)) {
      return Optional.of(ClubFiles.Kind.OUTINGS);
    }
    Table health = Reading.named(raw, ClubFiles.Kind.HEALTH.columns());
    return OF_HEALTH.stream().anyMatch(health::has)
        ? Optional.of(ClubFiles.Kind.HEALTH)
        : Optional.empty();
  }

  /** Whether a report stands where the header should. */
  private static boolean isComplaint(String heading) {
    return Coded.find(Wellness.Kind.class, heading).filter(Wellness.Kind::holds).isPresent();
  }

  /** What is to be told of all of them; {@code safety} is told what is lost. */
  List<Problem> problems(SafetyRows safety) {
    return strays.stream().flatMap(stray -> problems(stray, safety).stream()).toList();
  }

  private List<Problem> problems(Stray stray, SafetyRows safety) {
    Optional<ClubFiles.Kind> header = stray.table().flatMap(Strays::byHeader);
    if (header.isPresent() && isCopy(stray.table().get(), header.get())) {
      return List.of(copy(stray.shown(), header.get()));
    }
    Set<ClubFiles.Kind> kinds = header.map(Set::of).orElse(stray.byName());
    List<Problem> problems = new ArrayList<>();
    if (!stray.told()) {
      problems.add(kinds.isEmpty() ? unread(stray.shown()) : missed(stray.shown(), kinds));
    }
    Stream.of(ClubFiles.Kind.values())
        .filter(kinds::contains)
        .flatMap(kind -> kind.lost().stream())
        .forEach(what -> problems.add(safety.lost(what, stray.shown())));
    return problems;
  }

  private boolean isCopy(Table table, ClubFiles.Kind kind) {
    Map<Map<String, String>, Integer> known = read.getOrDefault(kind, Map.of());
    return table.complete()
        && kind.fits(table)
        && rows(table, kind).entrySet().stream()
            .allMatch(row -> known.getOrDefault(row.getKey(), 0) >= row.getValue());
  }

  /** How often each row stands in a table: its cells by column, as they are written. */
  private static Map<Map<String, String>, Integer> rows(Table raw, ClubFiles.Kind kind) {
    Table table = Reading.named(raw, kind.columns());
    Map<Map<String, String>, Integer> rows = new HashMap<>();
    for (Table.Row row : table.rows()) {
      Map<String, String> cells = new TreeMap<>();
      table.columns().stream()
          .filter(column -> !row.get(column).isEmpty())
          .forEach(column -> cells.put(column, row.get(column)));
      row.fault().ifPresent(fault -> cells.put("", row.origin().toString()));
      rows.merge(cells, 1, Integer::sum);
    }
    return rows;
  }

  private static Problem unread(String shown) {
    return Problem.warning(
        Origin.of(shown),
        "",
        "this is not read",
        "tables are "
            + ClubFiles.TABLES.stream().map(t -> t + ".csv").collect(Collectors.joining(", "))
            + " and logs/*.csv",
        "Maybe it belongs in logs, or it is a note of your own; then leave it.");
  }

  private static Problem copy(String shown, ClubFiles.Kind kind) {
    return Problem.warning(
        Origin.of(shown),
        "",
        "this is not read; each of its rows stands in " + kind.table() + " already",
        "each table should stand in the folder once",
        "Maybe it is a copy; then move it out of the folder.");
  }

  private static Problem missed(String shown, Set<ClubFiles.Kind> kinds) {
    List<String> tables = kinds.stream().sorted().map(ClubFiles.Kind::table).toList();
    return Problem.fault(
        Origin.of(shown),
        "",
        "this was found and not read, and may hold rows of " + String.join(" or ", tables),
        tables.stream().map(t -> t + ".csv").collect(Collectors.joining(" and "))
            + ", the same as .xlsx or .yaml, or the sheet of that name in workbook.xlsx are read",
        "Maybe put its rows into "
            + String.join(" or ", tables.stream().map(t -> t + ".csv").toList())
            + "; if it is an old copy, move it out of the folder.");
  }
}
