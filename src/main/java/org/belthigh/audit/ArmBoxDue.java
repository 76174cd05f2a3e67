package org.belthigh.audit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Unread;
import org.belthigh.model.Phrase;

/**
 * What the arm box of a card says of a child whom no complaint stops, as known on the first day.
 */
final class ArmBoxDue {
  static final String NO = "arm.no";

  private final Given given;
  private final LocalDate from;

  ArmBoxDue(Given given) {
    this.given = given;
    this.from = given.plan().from();
  }

  /**
   * The lines, first what is known of pitching.
   *
   * @param saysNo whether the card says that there is no pitching for now. Where a book has no row
   *     yet for the child's age, that is right even if the birthday comes within the days looked at
   */
  List<Phrase> of(Given.Child child, boolean saysNo) {
    List<Phrase> lines = new ArrayList<>();
    if (!child.player().pitches()) {
      return List.of(Phrase.of("arm.not-a-pitcher"));
    }
    List<Outing> outings =
        given.record().outings().stream().filter(o -> o.player().equals(child.id())).toList();
    PitchBars bars = new PitchBars(given, child.player().born(), outings);
    boolean softball = given.record().club().group(child.player().group()).softball();
    boolean lost = lost(child);
    boolean never = softball || lost || (saysNo && bars.lacksRow(from));
    Optional<LocalDate> free = never ? Optional.empty() : bars.free(from);
    if (softball || lost || silent(child, outings)) {
      lines.add(Phrase.of(free.isPresent() ? "arm.ask" : NO));
    } else if (free.equals(Optional.of(from))) {
      int most = bars.on(from).most();
      lines.add(Phrase.of("arm.may", "date", from, "pitches", most));
    } else {
      lines.add(free.map(day -> Phrase.of("arm.from", "date", day)).orElse(Phrase.of(NO)));
      free.ifPresent(day -> lines.add(Phrase.of("arm.rest")));
    }
    lines.add(Phrase.of("arm.anywhere"));
    return lines;
  }

  private boolean silent(Given.Child child, List<Outing> outings) {
    int ask = given.limits().whole("ask-after-days", child.player().ageOn(from));
    return outings.stream()
        .map(Outing::date)
        .max(LocalDate::compareTo)
        .filter(last -> ChronoUnit.DAYS.between(last, from) <= ask)
        .isEmpty();
  }

  /** A lost report of either kind bars until it is put right. */
  private boolean lost(Given.Child child) {
    return given.record().unread().stream()
        .filter(u -> u.what() == Unread.What.OUTING || u.what() == Unread.What.WELLNESS)
        .anyMatch(u -> u.concerns(child.id()));
  }
}
