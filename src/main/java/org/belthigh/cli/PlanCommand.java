package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.belthigh.audit.Audit;
import org.belthigh.files.Output;
import org.belthigh.files.Unwritable;
import org.belthigh.handout.Handouts;
import org.belthigh.handout.Preview;
import org.belthigh.handout.Print;
import org.belthigh.history.History;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Coded;
import org.belthigh.model.Problem;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
      "  belthigh plan my-club --out to-show --redact"
    })
final class PlanCommand implements Callable<Integer> {
  private static final int USUAL_WEEKS = 6;

  @Mixin private ClubOptions club;
  @Mixin private FaultList faults;
  @Spec private CommandSpec spec;

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

  @Override
  public Integer call() throws IOException {
    refuseOddOptions();
    Set<Print> wanted = wanted();
    Books.refuseUnknown(spec, club.catalogue(), books);
    ClubRecord record = heldTo(club.read());
    refuseUnknownGroups(record);
    PlanRequest request =
        new PlanRequest(
            from == null ? club.today() : from,
            weeks,
            groups,
            club.named(record, players),
            Optional.ofNullable(paper),
            Optional.ofNullable(lang),
            wanted.contains(Print.SEASON));
    List<Problem> problems = new ArrayList<>(record.problems());
    try (Output output = Output.into(out);
        Output diary = diary(problems)) {
      if (!plan(request, record, wanted, problems, output, diary)) {
        return Belthigh.OUR_FAULT;
      }
    }
    // after the folders are given back: the list may go into one of them
    faults.write(problems);
    return ClubOptions.report(problems, spec.commandLine().getErr());
  }

  /** Whether the plan was printed. */
  private boolean plan(
      PlanRequest request,
      ClubRecord record,
      Set<Print> wanted,
      List<Problem> problems,
      Output output,
      Output diary)
      throws IOException {
    Words words = club.words();
    History history = noHistory ? History.none() : club.history(request.from(), problems::add);
    Plan plan = new Planner(club.catalogue()).plan(record, request, history);
    PrintWriter err = spec.commandLine().getErr();
    String json = Json.text(PlanJson.of(plan, words));
    if (fails(json, record, err)) {
      return false;
    }
    output.put("plan.json", json.getBytes(StandardCharsets.UTF_8));
    handouts(words).print(plan, wanted, (path, pdf) -> put(output, path, pdf, err));
    output.commit();
    say(err, output.files() + " files written to " + out);
    if (diary != null) {
      keep(plan, diary).ifPresent(problems::add);
    }
    return true;
  }

  private Handouts handouts(Words words) {
    Handouts handouts = new Handouts(words);
    return large ? handouts.large() : handouts;
  }

  /** The folder by its own rule books and by those that the command line adds. */
  private ClubRecord heldTo(ClubRecord record) {
    Set<String> all = new LinkedHashSet<>(record.club().ruleBooks());
    all.addAll(books);
    return record.by(List.copyOf(all));
  }

  /**
   * The club folder, held for this run so that no other changes it meanwhile; null where nothing is
   * to be kept, or the folder cannot be written to, which loses the look back only.
   *
   * @throws Unwritable if another run is writing there
   */
  private Output diary(List<Problem> problems) {
    if (noHistory || club.redact()) {
      return null;
    }
    try {
      return Output.into(club.folder());
    } catch (Unwritable e) {
      if (e.inUse()) {
        throw e;
      }
      problems.add(notKept(e));
      return null;
    }
  }

  private static Optional<Problem> keep(Plan plan, Output diary) throws IOException {
    try {
      History.keep(diary, plan.handedOut());
      return Optional.empty();
    } catch (Unwritable e) {
      return Optional.of(notKept(e));
    }
  }

  private static Problem notKept(Unwritable why) {
    return Problem.warning(
        why.problem().origin(),
        "",
        "what was handed out could not be kept: " + why.problem().found(),
        "the next plan looks back at what is kept in history",
        why.problem().maybe());
  }

  /** Whether the second pair of eyes finds a limit that is not kept; then no page is printed. */
  private boolean fails(String json, ClubRecord record, PrintWriter err) {
    List<Problem> broken =
        new Audit(club.catalogue()).beside(out.resolve("plan.json").toString(), json, record);
    broken.forEach(p -> err.println(p.text()));
    if (!broken.isEmpty()) {
      err.println("Nothing was printed: this is a fault of belthigh, not of your files.");
      err.println("Please report it with the lines above.");
    }
    return !broken.isEmpty();
  }

  private void put(Output output, String path, byte[] pdf, PrintWriter err) {
    output.put(path, pdf);
    if (preview) {
      output.put(path.replaceFirst("\\.pdf$", ".png"), Preview.png(pdf));
    }
    if (Terminal.watched()) {
      err.print("\r" + output.files() + " files ");
      err.flush();
    }
  }

  /** Progress and summary are for people who watch; a pipe gets neither. */
  private static void say(PrintWriter err, String line) {
    if (Terminal.watched()) {
      err.println("\r" + line);
    }
  }

  private void refuseOddOptions() {
    if (weeks < 1 || weeks > PlanRequest.MOST_WEEKS) {
      refuse("--weeks must be 1 to " + PlanRequest.MOST_WEEKS + ", not " + weeks);
    }
    if (paper != null && !List.of("letter", "a4").contains(paper)) {
      refuse("--paper must be letter or a4, not '" + paper + "'");
    }
    if (lang != null && !Words.LANGUAGES.contains(lang)) {
      refuse("--lang must be one of " + Words.LANGUAGES + ", not '" + lang + "'");
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

  private void refuseUnknownGroups(ClubRecord record) {
    List<String> known = record.club().groups().stream().map(Club.Group::id).toList();
    for (String group : groups) {
      if (!known.contains(group)) {
        throw new NothingDone(
            "group '"
                + group
                + "' is not in club.yaml; the groups there are "
                + String.join(", ", known)
                + ".\nMaybe the name was given in place of the id.");
      }
    }
  }
}
