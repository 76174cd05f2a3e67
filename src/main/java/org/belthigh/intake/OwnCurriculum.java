package org.belthigh.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.files.Folder;
import org.belthigh.files.Node;
import org.belthigh.files.Yaml;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** A curriculum of the club's own, in a file of its folder that {@code club.yaml} names. */
final class OwnCurriculum {
  private OwnCurriculum() {}

  /** Whether a text names a file, and not a curriculum that travels with the program. */
  static boolean isFile(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return lower.endsWith(".yaml") || lower.endsWith(".yml");
  }

  /** {@code catalogue}, with the curriculum of the club's own where it has one that passes. */
  static Catalogue with(Folder folder, Catalogue catalogue) {
    List<Problem> ignored = new ArrayList<>();
    return folder
        .plain("club.yaml", ignored::add)
        .flatMap(plain -> Yaml.read(folder.shown("club.yaml"), plain.text(), ignored))
        .flatMap(node -> of(folder, node, catalogue, ignored))
        .map(catalogue::with)
        .orElse(catalogue);
  }

  /**
   * The curriculum that {@code club} names.
   *
   * @param problems is told every fault of its file
   * @return empty where it names none, or one that must not be used
   */
  static Optional<Curriculum> of(
      Folder folder, Node club, Catalogue catalogue, List<Problem> problems) {
    return file(club).flatMap(file -> read(folder, file, catalogue, problems));
  }

  /** The file that {@code club} names; empty where it names none. */
  static Optional<String> file(Node club) {
    return Optional.of(club)
        .filter(Node.Entries.class::isInstance)
        .map(node -> ((Node.Entries) node).values().get("curriculum"))
        .filter(Node.Scalar.class::isInstance)
        .map(node -> ((Node.Scalar) node).text())
        .filter(OwnCurriculum::isFile);
  }

  /** A curriculum or rule book in the folder that nothing names. */
  static Problem idle(String shown) {
    return Problem.warning(
        Origin.of(shown),
        "",
        "this curriculum or rule book is not in use",
        "a curriculum of the club's own must be named in club.yaml",
        "To use it, write curriculum: and the name of the file there; else leave it.");
  }

  private static Optional<Curriculum> read(
      Folder folder, String file, Catalogue catalogue, List<Problem> problems) {
    if (file.contains("/") || file.contains("\\") || !folder.has(file)) {
      return Optional.empty();
    }
    String shown = folder.shown(file);
    return folder
        .plain(file, problems::add)
        .flatMap(
            plain -> {
              var result = CatalogueLoader.curriculum(shown, plain.text(), catalogue);
              problems.addAll(result.problems());
              return result.value();
            })
        .filter(own -> !isTaken(own, catalogue, shown, problems));
  }

  private static boolean isTaken(
      Curriculum own, Catalogue catalogue, String shown, List<Problem> problems) {
    Curriculum known = catalogue.curricula().get(own.id());
    boolean taken = known != null && !known.equals(own);
    if (taken) {
      problems.add(
          Problem.fault(
              Origin.of(shown),
              "id",
              "'" + own.id() + "' is the id of a curriculum that travels with the program",
              "a curriculum of your own must have an id of its own",
              "Maybe put the club's name before it."));
    }
    return taken;
  }
}
