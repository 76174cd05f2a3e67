package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.files.Output;
import org.belthigh.model.Coded;
import org.belthigh.start.Language;
import org.belthigh.start.NewClub;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code belthigh new}: a club folder to begin with. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Makes a club folder that can be planned at once: files with headings and two sample players,",
      "a workbook with lists to choose from, and a page that explains every column."
    },
    footer = {
      "",
      "Examples:",
      "  belthigh new my-club",
      "  belthigh new my-club --name \"Riverside Youth Baseball\" --from 2027-03-01 --paper a4",
      "  belthigh new mi-club --lang es"
    })
final class NewCommand implements Callable<Integer> {
  private final Clock clock;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "CLUB", description = "The folder to make.")
  private Path club;

  @Option(names = "--name", paramLabel = "NAME", description = "What the club is called.")
  private String name = "My Club";

  @Option(names = "--from", paramLabel = "DATE", description = "First day of the season; today.")
  private LocalDate from;

  @Option(names = "--paper", paramLabel = "letter|a4", description = "Paper; letter.")
  private String paper = "letter";

  @Option(
      names = "--lang",
      paramLabel = "en|es",
      description = "The club's first language, of its page, samples and sheets; en.")
  private String lang = "en";

  NewCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    paper = paper.toLowerCase(Locale.ROOT);
    if (!List.of("letter", "a4").contains(paper)) {
      throw new ParameterException(
          spec.commandLine(), "--paper must be letter or a4, not '" + paper + "'");
    }
    if (name.isBlank()) {
      throw new ParameterException(
          spec.commandLine(), "--name must say what the club is called; it is empty");
    }
    if (club.toString().isBlank()) {
      throw new ParameterException(spec.commandLine(), "CLUB must name a folder; it is empty");
    }
    Language language =
        Coded.find(Language.class, lang)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--lang must be en or es, not '" + lang + "'"));
    refuseFull();
    LocalDate first = from == null ? LocalDate.now(clock) : from;
    Map<String, byte[]> files =
        new NewClub(CatalogueLoader.load().orThrow()).files(name, paper, language, first);
    try (Output output = Output.into(club)) {
      files.forEach(output::put);
      output.commit();
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("Made " + club + ":");
    files.keySet().forEach(file -> out.println("  " + file));
    out.println("Begin with " + language.readMe() + ", or try it as it is:");
    out.println(
        "  belthigh plan " + club + " --out next-week" + (from == null ? "" : " --from " + from));
    return Belthigh.OK;
  }

  /** A folder with something in it is somebody's club already. */
  private void refuseFull() throws IOException {
    if (!Files.exists(club)) {
      return;
    }
    boolean empty = false;
    if (Files.isDirectory(club)) {
      try (Stream<Path> inside = Files.list(club)) {
        // what a run that was cut off left aside is no club
        empty = inside.allMatch(each -> each.endsWith(".belthigh"));
      }
    }
    if (!empty) {
      throw new NothingDone(
          club
              + ": something stands here already; a new club needs a name that is free.\n"
              + "Maybe name another folder, or move that one away.");
    }
  }
}
