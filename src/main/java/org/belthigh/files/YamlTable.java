package org.belthigh.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** Reads a list of groups of keys as a table: each group is a row, its keys name the columns. */
public final class YamlTable implements Table.Places {
  private final String file;
  private final List<Node.Entries> groups = new ArrayList<>();
  private final List<String> columns = new ArrayList<>();

  private YamlTable(String file) {
    this.file = file;
  }

  /**
   * The table in {@code text}.
   *
   * @param problems is told what is wrong
   * @return empty where the file as a whole cannot be used
   */
  public static Optional<Table> parse(String text, String file, List<Problem> problems) {
    Optional<Node> root = Yaml.read(file, text, problems);
    if (root.isEmpty()) {
      return Optional.empty();
    }
    YamlTable table = new YamlTable(file);
    boolean list = root.get() instanceof Node.Items;
    List<Node> items = root.get() instanceof Node.Items all ? all.items() : List.of();
    for (Node item : items) {
      if (item instanceof Node.Entries group) {
        table.groups.add(group);
        group.keys().keySet().stream()
            .map(k -> k.toLowerCase(Locale.ROOT))
            .filter(k -> !table.columns.contains(k))
            .forEach(table.columns::add);
      }
    }
    if (!list || table.groups.size() < items.size()) {
      problems.add(
          Problem.fault(
              root.get().origin(),
              "",
              "this is no list of rows",
              "each row must be a group of keys, such as - {id: p01, first_name: Ana}",
              "Maybe a hyphen is missing before a row."));
      return Optional.empty();
    }
    return Optional.of(table.table());
  }

  private Table table() {
    Map<String, Integer> index = new LinkedHashMap<>();
    columns.forEach(c -> index.put(c, index.size()));
    List<Table.Line> lines = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      Node.Entries group = groups.get(i);
      lines.add(
          new Table.Line(
              i + 1,
              columns.stream().map(c -> find(group, c).map(this::cell).orElse("")).toList()));
    }
    return new Table(file, this, 0, index, columns.size(), lines, true);
  }

  private static Optional<Node> find(Node.Entries group, String column) {
    return group.values().entrySet().stream()
        .filter(e -> e.getKey().equalsIgnoreCase(column))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** A list of words is one cell, as {@code mon wed}. */
  private String cell(Node node) {
    if (node instanceof Node.Scalar scalar) {
      return Blanks.strip(scalar.text());
    }
    return node instanceof Node.Items items
        ? items.items().stream().map(this::cell).collect(Collectors.joining(" "))
        : node.shown();
  }

  @Override
  public Origin row(int line) {
    return line < 1 ? Origin.of(file) : groups.get(line - 1).origin();
  }

  @Override
  public Origin cell(int line, int index) {
    if (line < 1) {
      return groups.stream()
          .flatMap(g -> key(g, index).stream())
          .findFirst()
          .orElse(Origin.of(file));
    }
    Node.Entries group = groups.get(line - 1);
    return key(group, index).orElse(group.origin());
  }

  private Optional<Origin> key(Node.Entries group, int index) {
    return group.keys().entrySet().stream()
        .filter(e -> e.getKey().equalsIgnoreCase(columns.get(index)))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
