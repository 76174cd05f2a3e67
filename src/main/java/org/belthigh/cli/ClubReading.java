package org.belthigh.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Problem;
import org.belthigh.privacy.Redaction;

/** A club folder as one command reads it: as it is, or made fit for showing to others. */
final class ClubReading {
  private final Path folder;
  private final Catalogue catalogue;
  private final boolean redact;
  private Redaction redaction;

  /** The last record as it really is. */
  private ClubRecord real;

  ClubReading(Path folder, Catalogue catalogue, boolean redact) {
    this.folder = folder;
    this.catalogue = catalogue;
    this.redact = redact;
  }

  /** The folder, read. @throws NothingDone if it cannot be used at all */
  ClubRecord record() {
    return record(() -> Intake.read(folder, catalogue));
  }

  /** The folder with another calendar. @throws NothingDone if it cannot be used at all */
  ClubRecord record(Path calendar) {
    return record(() -> Intake.read(folder, calendar, catalogue));
  }

  @FunctionalInterface
  private interface Reader {
    ClubRecord read() throws Unusable;
  }

  private ClubRecord record(Reader reader) {
    try {
      real = reader.read();
      if (!redact) {
        return real;
      }
      redaction = Redaction.of(real);
      return redaction.record();
    } catch (Unusable e) {
      throw new NothingDone(e.problems());
    }
  }

  /** What was handed out before {@code from}; only after {@link #record()}. */
  History history(LocalDate from, Consumer<Problem> problems) {
    History history = History.before(folder, from, problems);
    return redact ? redaction.history(history) : history;
  }

  /**
   * The ids of the players that the command line names, as they stand in the record that was read
   * last.
   *
   * @throws NothingDone if one is not in the roster, or more than one can be meant
   */
  Set<String> named(Collection<String> players) {
    return players.stream()
        .map(player -> Players.named(real, player))
        .map(id -> redact ? redaction.id(id) : id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
