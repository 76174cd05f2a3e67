package org.belthigh.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.belthigh.files.Table;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * The sample players of a new club. Once other children stand in a roster they are left out of it,
 * so that no child is planned who is not there and no id of theirs stands in a real child's way.
 */
public final class Samples {
  /** The sample players, as a new club has them. */
  public static final List<Child> CHILDREN =
      List.of(new Child("p01", "Sam", "Sample", "7"), new Child("p02", "Alex", "Sample", "8"));

  /**
   * Who a sample player is.
   *
   * @param number the shirt's
   */
  public record Child(String id, String firstName, String lastName, String number) {}

  private Samples() {}

  /**
   * The sources of a roster without the sample players in them, where others stand in one; what is
   * left out is told.
   */
  static List<ClubTables.Source> leftOut(List<ClubTables.Source> sources, List<Problem> problems) {
    boolean others =
        sources.stream()
            .flatMap(source -> source.table().stream())
            .map(Samples::named)
            .anyMatch(t -> t.rows().stream().anyMatch(row -> !isSample(row::get)));
    return others ? sources.stream().map(s -> without(s, problems)).toList() : sources;
  }

  private static Table named(Table raw) {
    return Reading.named(raw, ClubFiles.Kind.ROSTER.columns());
  }

  private static boolean isSample(Function<String, String> cell) {
    return CHILDREN.stream()
        .anyMatch(
            c ->
                c.id().equals(cell.apply("id"))
                    && c.firstName().equals(cell.apply("first_name"))
                    && c.lastName().equals(cell.apply("last_name"))
                    && c.number().equals(cell.apply("number")));
  }

  private static ClubTables.Source without(ClubTables.Source source, List<Problem> problems) {
    Optional<Table> table = source.table().map(Samples::named);
    List<Origin> samples = new ArrayList<>();
    Set<Integer> lines = new HashSet<>();
    for (int i = 0; table.isPresent() && i < table.get().rows().size(); i++) {
      Table.Row row = table.get().rows().get(i);
      if (isSample(row::get)) {
        samples.add(row.origin());
        lines.add(table.get().lines().get(i).number());
      }
    }
    if (samples.isEmpty()) {
      return source;
    }
    problems.add(told(samples));
    return new ClubTables.Source(
        source.shown(), source.table().map(t -> t.only(line -> !lines.contains(line.number()))));
  }

  private static Problem told(List<Origin> samples) {
    boolean one = samples.size() == 1;
    return Problem.warning(
        samples.get(0),
        "",
        (one ? "a sample player" : "the sample players")
            + " of a new club still "
            + (one ? "stands" : "stand")
            + " here beside your own, and "
            + (one ? "is" : "are")
            + " left out",
        "a roster should hold your own players alone",
        "Delete "
            + Notes.rows(samples.size())
            + " from here on: the sample "
            + (one ? "player." : "players."));
  }
}
