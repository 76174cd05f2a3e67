package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.files.Output;
import org.belthigh.lab.Cell;
import org.belthigh.lab.Lab;
import org.belthigh.lab.LabReport;
import org.belthigh.lab.Trial;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Coded;
import org.belthigh.model.Skill;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code belthigh lab}: how often decisions are wrong, measured on simulated seasons. */
@Command(
    name = "lab",
    mixinStandardHelpOptions = true,
    description = "Judges simulated seasons of hitters whose true skill is known.",
    footer = {
      "",
      "Examples:",
      "  belthigh lab --seasons 1000 --skill see --age 9-10",
      "  belthigh lab --seasons 10000 --out docs"
    })
final class LabCommand implements Callable<Integer> {
  private static final int USUAL_SEASONS = 1000;
  private static final long USUAL_SEED = 20270301L;
  private static final int BAR = 30;

  @Spec private CommandSpec spec;

  @Option(
      names = "--seasons",
      paramLabel = "N",
      description = "Seasons a row at floor and mark; 1000. Other rows get a tenth.")
  private int seasons = USUAL_SEASONS;

  @Option(names = "--seed", paramLabel = "S", description = "Seed of the simulation.")
  private long seed = USUAL_SEED;

  @Option(names = "--skill", paramLabel = "ID", description = "Only see, choose, drive or send.")
  private String skill;

  @Option(names = "--age", paramLabel = "BAND", description = "Only this band, such as 9-10.")
  private String age;

  @Option(
      names = "--curriculum",
      paramLabel = "FILE",
      description = "A curriculum of your own, in place of ours.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write lab.md and its charts there; standard output unless said.")
  private Path out;

  @Override
  public Integer call() throws IOException {
    if (seasons < 1) {
      throw new ParameterException(spec.commandLine(), "--seasons must be 1 or more");
    }
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    Lab lab = new Lab(catalogue, curriculum(catalogue));
    List<Trial> trials = new ArrayList<>();
    List<String> notJudged = new ArrayList<>();
    for (Skill one : chosen(skill, Skill.class, "--skill")) {
      for (AgeBand band : chosen(age, AgeBand.class, "--age")) {
        if (lab.judged(one, band)) {
          trials.addAll(Trial.of(one, band, seasons));
        } else {
          notJudged.add(one.id() + " " + band.id());
        }
      }
    }
    write(run(lab, trials), notJudged);
    return Belthigh.OK;
  }

  private List<Cell> run(Lab lab, List<Trial> trials) {
    List<Cell> cells = new ArrayList<>();
    long all = trials.stream().mapToLong(Trial::seasons).sum();
    long done = 0;
    for (Trial trial : trials) {
      show(done, all, trial.skill().id() + " " + trial.band().id());
      cells.add(lab.run(trial, seed));
      done += trial.seasons();
    }
    show(done, all, "done");
    return cells;
  }

  /** A bar on standard error, when somebody watches. */
  private void show(long done, long all, String what) {
    if (Terminal.watched() && all > 0) {
      int full = (int) (BAR * done / all);
      PrintWriter err = spec.commandLine().getErr();
      String bar = "#".repeat(full) + ".".repeat(BAR - full);
      err.print("\r[" + bar + "] " + done + " of " + all + " seasons, " + what + "          ");
      err.print(done == all ? "\n" : "");
      err.flush();
    }
  }

  private Curriculum curriculum(Catalogue catalogue) throws IOException {
    if (file == null) {
      return catalogue.curricula().values().iterator().next();
    }
    var read =
        CatalogueLoader.curriculum(
            file.toString(), Files.readString(file, StandardCharsets.UTF_8), catalogue);
    return read.value().orElseThrow(() -> new NothingDone(read.problems()));
  }

  private <E extends Enum<E> & Coded> List<E> chosen(String word, Class<E> type, String option) {
    if (word == null) {
      return Arrays.asList(type.getEnumConstants());
    }
    Optional<E> found = Coded.find(type, word);
    return List.of(
        found.orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    option + " must be one of " + Coded.words(type) + ", not '" + word + "'")));
  }

  private void write(List<Cell> cells, List<String> notJudged) throws IOException {
    if (cells.isEmpty()) {
      spec.commandLine().getOut().println("Nobody is judged there: " + notJudged.get(0));
      return;
    }
    if (out == null) {
      spec.commandLine().getOut().print(LabReport.page(cells, notJudged, command()));
      return;
    }
    try (Output output = Output.ofPages(out)) {
      LabReport.files(cells, notJudged, command())
          .forEach((path, text) -> output.put(path, text.getBytes(StandardCharsets.UTF_8)));
      output.commit();
    }
  }

  /** What gives the same page again. */
  private String command() {
    List<String> words = new ArrayList<>(List.of("belthigh lab --seasons " + seasons));
    words.add("--seed " + seed);
    Optional.ofNullable(file).ifPresent(f -> words.add("--curriculum " + f));
    Optional.ofNullable(skill).ifPresent(s -> words.add("--skill " + s));
    Optional.ofNullable(age).ifPresent(a -> words.add("--age " + a));
    return String.join(" ", words);
  }
}
