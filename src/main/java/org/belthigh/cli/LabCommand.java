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
import org.belthigh.lab.Hitter;
import org.belthigh.lab.Lab;
import org.belthigh.lab.LabReport;
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
  private static final int USUAL_TOSSES = 12;
  private static final int MANY_TOSSES = 24;
  private static final double CARELESS = 0.15;

  /** Rows beside the bounds get a tenth of the seasons. */
  private static final int FEWER = 10;

  @Spec private CommandSpec spec;

  @Option(
      names = "--seasons",
      paramLabel = "N",
      description = "Seasons a row; 1000. Rows beside the bounds get a tenth.")
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
      description = "Write lab.md and lab/errors.svg there; standard output unless said.")
  private Path out;

  @Override
  public Integer call() throws IOException {
    if (seasons < 1) {
      throw new ParameterException(spec.commandLine(), "--seasons must be 1 or more");
    }
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    Lab lab = new Lab(catalogue, curriculum(catalogue));
    List<Cell> cells = new ArrayList<>();
    for (Skill one : chosen(skill, Skill.class, "--skill")) {
      for (AgeBand band : chosen(age, AgeBand.class, "--age")) {
        if (lab.judged(one, band)) {
          cells.addAll(rows(lab, one, band));
        }
      }
    }
    write(cells);
    return Belthigh.OK;
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

  private List<Cell> rows(Lab lab, Skill one, AgeBand band) {
    List<Cell> cells = new ArrayList<>();
    for (Hitter hitter : List.of(Hitter.AT_FLOOR, Hitter.AT_MARK)) {
      cells.add(row(lab, one, band, hitter, seasons, USUAL_TOSSES, 0));
    }
    int fewer = Math.max(1, seasons / FEWER);
    for (Hitter hitter : List.of(Hitter.BETWEEN, Hitter.LEARNING, Hitter.SLUMPING)) {
      cells.add(row(lab, one, band, hitter, fewer, USUAL_TOSSES, 0));
    }
    for (Hitter hitter : List.of(Hitter.AT_FLOOR, Hitter.AT_MARK)) {
      cells.add(row(lab, one, band, hitter, fewer, MANY_TOSSES, 0));
      cells.add(row(lab, one, band, hitter, fewer, USUAL_TOSSES, CARELESS));
    }
    return cells;
  }

  private Cell row(
      Lab lab,
      Skill one,
      AgeBand band,
      Hitter hitter,
      int howMany,
      int tossesADay,
      double careless) {
    if (Terminal.watched()) {
      PrintWriter err = spec.commandLine().getErr();
      err.print("\r" + one.id() + " " + band.id() + " " + hitter.id() + "          ");
      err.flush();
    }
    return lab.run(one, band, hitter, howMany, seed, tossesADay, careless);
  }

  private void write(List<Cell> cells) throws IOException {
    String command = "belthigh lab --seasons " + seasons + " --seed " + seed;
    String page = LabReport.markdown(cells, seasons, seed, command);
    if (out == null) {
      spec.commandLine().getOut().print(page);
      return;
    }
    try (Output output = Output.into(out)) {
      String chart =
          "\n![Wrong decisions over a season, against the bound of 5 %](lab/errors.svg)\n";
      output.put("lab.md", (page + chart).getBytes(StandardCharsets.UTF_8));
      output.put("lab/errors.svg", LabReport.svg(cells).getBytes(StandardCharsets.UTF_8));
      output.commit();
    }
  }
}
