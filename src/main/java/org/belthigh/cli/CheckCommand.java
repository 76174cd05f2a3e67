package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.Problem;
import picocli.CommandLine.Command;
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
      "  belthigh check my-curriculum.yaml",
      "  belthigh check target/demo",
      "  belthigh check target/demo --club demo-players",
      "",
      "A plan alone is checked as far as that goes; with --club also against the calendar, the",
      "days of birth, other sport, outings and health reports of its club folder."
    })
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "PATH",
      description =
          "A club folder, a curriculum, a rule book, or a plan (plan.json or its folder).")
  private Path path;

  @Option(
      names = "--club",
      paramLabel = "CLUB",
      description = "The club folder that a plan was made from.")
  private Path club;

  @Override
  public Integer call() throws IOException {
    List<Problem> problems = problems();
    PrintWriter err = spec.commandLine().getErr();
    problems.forEach(p -> err.println(p.text()));
    long faults = problems.stream().filter(Problem::isFault).count();
    spec.commandLine()
        .getOut()
        .println(
            path
                + ": "
                + (faults == 0 ? "no faults" : faults == 1 ? "1 fault" : faults + " faults"));
    return faults == 0 ? Belthigh.OK : Belthigh.SET_ASIDE;
  }

  private List<Problem> problems() throws IOException {
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    if (Files.isDirectory(path) && Files.exists(path.resolve("club.yaml"))) {
      return ClubOptions.read(path, catalogue).problems();
    }
    Path plan = Files.isDirectory(path) ? path.resolve("plan.json") : path;
    if (!Files.isRegularFile(plan)) {
      throw new NothingDone(
          path
              + ": there is no club.yaml, no plan.json and no such file; one of them is needed.\n"
              + "Maybe the path was mistyped.");
    }
    String text = Files.readString(plan, StandardCharsets.UTF_8);
    return plan.toString().endsWith(".json")
        ? plan(plan.toString(), text, catalogue)
        : CatalogueLoader.check(plan.toString(), text, catalogue);
  }

  private List<Problem> plan(String file, String text, Catalogue catalogue) {
    Audit audit = new Audit(catalogue);
    return club == null
        ? audit.alone(file, text)
        : audit.beside(file, text, ClubOptions.read(club, catalogue));
  }
}
