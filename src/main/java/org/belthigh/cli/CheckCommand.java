package org.belthigh.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.files.Folder;
import org.belthigh.files.Node;
import org.belthigh.files.Yaml;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code belthigh check}: every fault of a file or folder. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Looks for faults in a club folder, a curriculum, a rule book or a plan.",
    footer = {
      "",
      "Examples:",
      "  belthigh check demo-players",
      "  belthigh check demo-players --faults target/faults.csv",
      "  belthigh check demo-players/logs/u10-march.csv",
      "  belthigh check my-curriculum.yaml",
      "  belthigh check target/demo",
      "  belthigh check target/demo --club demo-players",
      "",
      "A plan alone is checked as far as that goes; with --club also against the calendar, the",
      "days of birth, other sport, outings and health reports of its club folder."
    })
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private FaultList list;

  @Parameters(
      index = "0",
      paramLabel = "PATH",
      description =
          "A club folder or a file of it, a curriculum, a rule book, or a plan (plan.json or its"
              + " folder).")
  private Path path;

  @Option(
      names = "--club",
      paramLabel = "CLUB",
      description = "The club folder that a plan was made from.")
  private Path club;

  @Override
  public Integer call() {
    List<Problem> problems = problems();
    FaultList.print(problems, spec.commandLine().getErr());
    list.write(problems);
    long faults = problems.stream().filter(Problem::isFault).count();
    spec.commandLine()
        .getOut()
        .println(
            path + ": " + (faults == 0 ? "no faults" : FaultList.count(faults, "fault", "faults")));
    return faults == 0 ? Belthigh.OK : Belthigh.SET_ASIDE;
  }

  private List<Problem> problems() {
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    if (Files.isDirectory(path) && Files.exists(path.resolve("club.yaml"))) {
      return ofClub(path, catalogue);
    }
    Path file = Files.isDirectory(path) ? path.resolve("plan.json") : path;
    if (!Files.isRegularFile(file)) {
      throw new NothingDone(
          path
              + ": there is no club.yaml, no plan.json and no such file; one of them is needed.\n"
              + "Maybe the path was mistyped.");
    }
    String shown = file.toString().replace('\\', '/');
    Optional<Path> folder = clubOf(file);
    if (folder.isPresent()) {
      return ofClub(folder.get(), catalogue).stream()
          .filter(p -> (p.origin().file() + " sheet ").startsWith(shown + " sheet "))
          .toList();
    }
    List<Problem> problems = new ArrayList<>();
    Path parent = file.getParent() == null ? Path.of("") : file.getParent();
    String name = file.getFileName().toString();
    Folder.of(parent)
        .with(name, file)
        .plain(name, problems::add)
        .map(plain -> ofText(shown, plain.text(), catalogue))
        .ifPresent(problems::addAll);
    return problems;
  }

  private List<Problem> ofClub(Path folder, Catalogue catalogue) {
    try {
      return Intake.read(folder, catalogue).problems();
    } catch (Unusable e) {
      list.write(e.problems());
      throw new NothingDone(e.problems());
    }
  }

  /** The club folder of which {@code file} is a part: one of its tables, or a log. */
  private static Optional<Path> clubOf(Path file) {
    Path folder = file.getParent() == null ? Path.of("") : file.getParent();
    boolean log = folder.endsWith("logs");
    if (log) {
      folder = folder.getParent() == null ? Path.of("") : folder.getParent();
    }
    boolean table = log || Intake.reads(file.getFileName().toString());
    return Optional.of(folder).filter(f -> table && Files.exists(f.resolve("club.yaml")));
  }

  private List<Problem> ofText(String file, String text, Catalogue catalogue) {
    return file.endsWith(".json")
        ? plan(file, text, catalogue)
        : CatalogueLoader.check(file, text, catalogue);
  }

  private List<Problem> plan(String file, String text, Catalogue catalogue) {
    if (club == null) {
      refuseOwn(file, text, catalogue);
    }
    Catalogue known = club == null ? catalogue : Intake.catalogue(club, catalogue);
    Audit audit = new Audit(known);
    Optional<ClubRecord> record =
        Optional.ofNullable(club).map(c -> new ClubReading(c, known, false).record());
    List<Problem> problems =
        new ArrayList<>(
            record.map(r -> audit.beside(file, text, r)).orElseGet(() -> audit.alone(file, text)));
    if (Files.isDirectory(path)) {
      problems.addAll(audit.papers(file, text, new PaperFolder(path), record));
    }
    return problems;
  }

  /** A plan by a curriculum of a club's own is no plan that can be checked without the club. */
  private static void refuseOwn(String file, String text, Catalogue catalogue) {
    List<String> ids = new ArrayList<>();
    Yaml.read(file, text, new ArrayList<>())
        .filter(Node.Entries.class::isInstance)
        .map(node -> ((Node.Entries) node).values().get("curriculum"))
        .filter(Node.Scalar.class::isInstance)
        .ifPresent(node -> ids.add(((Node.Scalar) node).text().split(" ", 2)[0]));
    ids.removeAll(catalogue.curricula().keySet());
    if (!ids.isEmpty()) {
      throw new NothingDone(
          file
              + ": the plan is by the curriculum '"
              + ids.get(0)
              + "', which does not travel with the program.\n"
              + "Maybe it is the club's own; then add --club and the club folder.");
    }
  }
}
