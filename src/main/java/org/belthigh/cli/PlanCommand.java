package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.handout.Handouts;
import org.belthigh.handout.Print;
import org.belthigh.model.Coded;
import org.belthigh.plan.PlanRequest;
import org.belthigh.words.Words;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code belthigh plan}: the main job. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans the weeks ahead and prints cards, practice sheets, arm sheets, overview.",
    footer = {
      "",
      "Examples:",
      "  belthigh plan demo-players --out target/demo --from 2027-04-05",
      "  belthigh plan my-club --out next-week --group u10 --paper a4 --lang es",
      "  belthigh plan my-club --out next-week --book little-league-reg-vi",
      "  belthigh plan my-club --out to-show --redact",
      "  belthigh plan --league my-clubs --out next-week"
    })
final class PlanCommand implements Callable<Integer> {
  private static final int USUAL_WEEKS = 6;
  private static final int MOST_THREADS = 64;

  private final Clock clock;

  @ArgGroup(multiplicity = "1")
  private Where where;

  @Mixin private FaultList faults;
  @Spec private CommandSpec spec;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "With --league: clubs at a time, 1 to 64; one for each core unless said.")
  private Integer threads;

  @Option(names = "--redact", description = ClubOptions.REDACT)
  private boolean redact;

  @Option(names = "--out", required = true, paramLabel = "DIR", description = "Where to write.")
  private Path out;

  @Option(names = "--from", paramLabel = "DATE", description = "First day to plan; today.")
  private LocalDate from;

  @Option(
      names = "--weeks",
      paramLabel = "N",
      description = "How many weeks, 1 to 16; 6 unless said.")
  private int weeks = USUAL_WEEKS;

  @Option(names = "--group", paramLabel = "ID", description = "Only this group; may be repeated.")
  private Set<String> groups = new LinkedHashSet<>();

  @Option(names = "--player", paramLabel = "ID", description = "Only this player; may be repeated.")
  private Set<String> players = new LinkedHashSet<>();

  @Option(
      names = "--book",
      paramLabel = "ID",
      description =
          "Hold this plan to another rule book too, as for a tournament; may be repeated. The club's"
              + " own stay in force, and the strictest wins.")
  private Set<String> books = new LinkedHashSet<>();

  @Option(names = "--paper", paramLabel = "letter|a4", description = "Paper; the club's own.")
  private String paper;

  @Option(
      names = "--lang",
      paramLabel = "en|es",
      description = "Language of every sheet; the club's and each family's own.")
  private String lang;

  @Option(
      names = "--prints",
      paramLabel = "NAMES",
      split = ",",
      description =
          "What to print, with commas between: overview, practice, arm, emergency, guide, card,"
              + " clipboard (cards two to a sheet), home, season, evaluation, log, own-log (one for"
              + " each player), packet. All but clipboard, season, evaluation and own-log unless said.")
  private List<String> prints = List.of();

  @Option(names = "--large", description = "Large print: running text at 16 pt, on more pages.")
  private boolean large;

  @Option(
      names = "--preview",
      description = "Beside each PDF a picture (PNG) of its first page, to look before printing.")
  private boolean preview;

  @Option(
      names = "--no-history",
      description = "Neither look back at what was handed out before, nor keep this plan.")
  private boolean noHistory;

  /** One club or many. */
  private static final class Where {
    @Parameters(index = "0", paramLabel = "CLUB", description = "The club folder.")
    private Path club;

    @Option(
        names = "--league",
        paramLabel = "DIR",
        description =
            "In place of CLUB: every club folder in DIR, each into a folder of its name. A club that"
                + " is finished with the same files and options is left as it is, so a run that was"
                + " stopped goes on where it was.")
    private Path league;
  }

  PlanCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    refuseOddOptions();
    Set<Print> wanted = wanted();
    ClubPlanning.warm();
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    Books.refuseUnknown(spec, catalogue, books);
    ClubPlanning planning = new ClubPlanning(catalogue, order(wanted));
    return where.league == null ? club(planning) : league(planning);
  }

  private PlanOrder order(Set<Print> wanted) {
    return new PlanOrder(
        from == null ? LocalDate.now(clock) : from,
        weeks,
        groups,
        players,
        books,
        Optional.ofNullable(paper),
        Optional.ofNullable(lang),
        wanted,
        large,
        preview,
        !noHistory,
        redact);
  }

  private int club(ClubPlanning planning) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Progress progress = new Progress(err);
    ClubPlanning.Planned planned =
        planning.plan(
            where.club,
            out,
            progress,
            notice -> {
              err.println(notice);
              err.flush();
            });
    progress.end(planned.printed() ? " files written to " + out : " files drawn");
    if (planned.printed()) {
      // the folders are given back by now: the list may go into one of them
      faults.write(planned.problems());
    }
    return planned.tell(err);
  }

  private int league(ClubPlanning planning) throws IOException {
    int atATime = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    return new League(where.league, out, planning)
        .plan(Math.min(atATime, MOST_THREADS), spec.commandLine().getErr());
  }

  /** Counts files for people who watch; a pipe gets nothing. */
  private static final class Progress implements Handouts.Tray {
    private final PrintWriter err;
    private int files;

    Progress(PrintWriter err) {
      this.err = err;
    }

    @Override
    public void take(String path, byte[] bytes) {
      files++;
      if (Terminal.watched()) {
        err.print("\r" + files + " files ");
        err.flush();
      }
    }

    void end(String what) {
      if (Terminal.watched()) {
        err.println("\r" + files + what);
      }
    }
  }

  private void refuseOddOptions() {
    refuseOddLeague();
    paper = paper == null ? null : paper.toLowerCase(Locale.ROOT);
    lang = lang == null ? null : lang.toLowerCase(Locale.ROOT);
    if (weeks < 1 || weeks > PlanRequest.MOST_WEEKS) {
      refuse("--weeks must be 1 to " + PlanRequest.MOST_WEEKS + ", not " + weeks);
    }
    refuseOddOut();
    if (paper != null && !List.of("letter", "a4").contains(paper)) {
      refuse("--paper must be letter or a4, not '" + paper + "'");
    }
    if (lang != null && !Words.LANGUAGES.contains(lang)) {
      refuse("--lang must be one of " + Words.LANGUAGES + ", not '" + lang + "'");
    }
  }

  private void refuseOddOut() {
    if (out.toString().isBlank()) {
      refuse("--out must name a folder to write to; it is empty.\nMaybe --out next-week.");
    }
    if (where.club != null && real(out).equals(real(where.club))) {
      refuse(
          "--out must not be the club folder itself: sheets and lists of people are kept apart.\n"
              + "Maybe --out next-week.");
    }
  }

  /** The folder that a name leads to, by links too. */
  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      return path.toAbsolutePath().normalize();
    }
  }

  private void refuseOddLeague() {
    if (threads != null && (threads < 1 || threads > MOST_THREADS)) {
      refuse("--threads must be 1 to " + MOST_THREADS + ", not " + threads);
    }
    if (where.league == null) {
      if (threads != null) {
        refuse("--threads goes with --league");
      }
      return;
    }
    if (faults.wanted()) {
      refuse("--faults goes with one club, not with --league");
    }
    Path clubs = where.league.toAbsolutePath().normalize();
    if (out.toAbsolutePath().normalize().startsWith(clubs)) {
      refuse("--out must lie outside of --league, or it would be taken for a club");
    }
  }

  /** The prints that were asked for; the usual ones where none were. */
  private Set<Print> wanted() {
    Set<Print> wanted = EnumSet.noneOf(Print.class);
    for (String name : prints) {
      Optional<Print> print = Coded.find(Print.class, name);
      if (print.isEmpty()) {
        refuse("--prints must name any of " + Coded.words(Print.class) + ", not '" + name + "'");
      }
      wanted.add(print.get());
    }
    if (large && wanted.contains(Print.CLIPBOARD)) {
      refuse(
          "--large cannot print clipboard: half a sheet has no room for large type.\n"
              + "Maybe --prints card, which has a sheet for each player.");
    }
    return wanted.isEmpty() ? Print.usual() : wanted;
  }

  private void refuse(String message) {
    throw new ParameterException(spec.commandLine(), message);
  }
}
