package org.belthigh.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.LocalText;
import org.belthigh.model.Problem;
import org.belthigh.words.Words;
import picocli.CommandLine.Parameters;

/** What every command on a club folder begins with: catalogue, words and the folder itself. */
final class ClubOptions {
  private final Clock clock;

  @Parameters(index = "0", paramLabel = "CLUB", description = "The club folder.")
  private Path club;

  private Catalogue catalogue;

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

  /** The catalogue in the jar. */
  Catalogue catalogue() {
    if (catalogue == null) {
      catalogue = CatalogueLoader.load().orThrow();
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
    return read(club, catalogue());
  }

  /** Any club folder, read. @throws NothingDone if it cannot be used at all */
  static ClubRecord read(Path folder, Catalogue catalogue) {
    try {
      return Intake.read(folder, catalogue);
    } catch (Unusable e) {
      throw new NothingDone(e.problems());
    }
  }

  /** Says what is wrong in the input, and how much was set aside. */
  static int report(List<Problem> problems, PrintWriter err) {
    FaultList.print(problems, err);
    long faults = problems.stream().filter(Problem::isFault).count();
    long remarks = problems.size() - faults;
    if (!problems.isEmpty()) {
      err.println(
          FaultList.count(faults, "thing was", "things were")
              + " set aside, "
              + FaultList.count(remarks, "remark", "remarks")
              + "; all the rest was used.");
    }
    return faults == 0 ? Belthigh.OK : Belthigh.SET_ASIDE;
  }
}
