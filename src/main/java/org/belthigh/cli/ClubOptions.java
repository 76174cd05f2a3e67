package org.belthigh.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.LaterRow;
import org.belthigh.model.LocalText;
import org.belthigh.model.Problem;
import org.belthigh.words.Words;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command on a club folder begins with: catalogue, words and the folder itself. */
final class ClubOptions {
  /** What {@code --redact} does. */
  static final String REDACT =
      "For showing to others: players are P1, P2, …; no names, notes, shirt numbers or days of"
          + " birth. Nothing is kept in history.";

  private final Clock clock;

  @Parameters(index = "0", paramLabel = "CLUB", description = "The club folder.")
  private Path club;

  @Option(names = "--redact", description = REDACT)
  private boolean redact;

  private Catalogue catalogue;
  private ClubReading reading;

  ClubOptions(Clock clock) {
    this.clock = clock;
  }

  /** Today, where the command line does not say a day. */
  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The folder as it was named. */
  Path folder() {
    return club;
  }

  /**
   * @throws NothingDone if there is no such folder
   */
  void refuseMissing() {
    refuseMissing(club, "a club folder");
  }

  /**
   * @param what what the folder must be, with its article
   * @throws NothingDone if there is no such folder
   */
  static void refuseMissing(Path folder, String what) {
    if (!Files.isDirectory(folder)) {
      throw new NothingDone(
          folder
              + ": there is no such folder; "
              + what
              + " must be there.\n"
              + "Maybe the path was mistyped.");
    }
  }

  /** The catalogue in the jar, with the club's own curriculum where it has one. */
  Catalogue catalogue() {
    if (catalogue == null) {
      catalogue = Intake.catalogue(club, CatalogueLoader.load().orThrow());
    }
    return catalogue;
  }

  /** The words, those of the rules among them. */
  Words words() {
    return words(catalogue());
  }

  static Words words(Catalogue catalogue) {
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    catalogue.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    return Words.load(reasons);
  }

  /** The folder, read. @throws NothingDone if it cannot be used at all */
  ClubRecord read() {
    return reading().record();
  }

  /** The folder with another calendar. @throws NothingDone if it cannot be used at all */
  ClubRecord read(Path calendar) {
    return reading().record(calendar);
  }

  private ClubReading reading() {
    if (reading == null) {
      reading = new ClubReading(club, catalogue(), redact);
    }
    return reading;
  }

  /** What was handed out before {@code from}. */
  History history(LocalDate from, Consumer<Problem> problems) {
    return reading().history(from, problems);
  }

  /**
   * The ids of the players that the command line names, as they stand in the record that was read
   * last.
   *
   * @throws NothingDone if one is not in the roster, or more than one can be meant
   */
  Set<String> named(Collection<String> players) {
    return reading().named(players);
  }

  /** Says what is wrong in the input, and what is dated after {@code day}, which was asked for. */
  static int report(ClubRecord record, LocalDate day, PrintWriter err) {
    List<Problem> problems = new ArrayList<>(record.problems());
    problems.addAll(LaterRow.remarks(record, day));
    return report(problems, err);
  }

  /** Says what is wrong in the input, and how much was set aside. */
  static int report(List<Problem> problems, PrintWriter err) {
    FaultList.print(problems, err);
    long faults = problems.stream().filter(Problem::isFault).count();
    long remarks = problems.size() - faults;
    if (!problems.isEmpty()) {
      err.println(
          faults == 0
              ? "Nothing was set aside; " + FaultList.count(remarks, "remark", "remarks") + "."
              : FaultList.count(faults, "thing was", "things were")
                  + " set aside, "
                  + FaultList.count(remarks, "remark", "remarks")
                  + "; all the rest was used.");
    }
    return faults == 0 ? Belthigh.OK : Belthigh.SET_ASIDE;
  }
}
