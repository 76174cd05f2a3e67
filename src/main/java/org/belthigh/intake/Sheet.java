package org.belthigh.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One kind of CSV file: its columns and how a row of it is read.
 *
 * @param row gives nothing, having noted why, for a row that cannot be used
 */
record Sheet<T>(List<String> required, List<String> optional, Function<Cells, Optional<T>> row) {

  /** A sheet from the columns as the documentation lists them: {@code date* player* kind}. */
  static <T> Sheet<T> of(String columns, Function<Cells, Optional<T>> row) {
    List<String> names = List.of(columns.split(" ", -1));
    Stream<String> starred = names.stream().filter(n -> n.endsWith("*"));
    return new Sheet<>(
        starred.map(n -> n.substring(0, n.length() - 1)).toList(),
        names.stream().filter(n -> !n.endsWith("*")).toList(),
        row);
  }

  /** All columns, required and optional. */
  List<String> columns() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }
}
