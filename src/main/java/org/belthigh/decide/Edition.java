package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.catalogue.RuleBook;

/**
 * A fact for the rules of the pack {@code arm}: an edition of a rule book. Public only because the
 * rules are built as a model of their own.
 *
 * @param key no other edition has it; numbers of a club's own make an edition of its own
 * @param books the book that it is an edition of
 * @param rank 0 for the edition that is asked for, more for older ones
 * @param name who publishes it, for people; the club for its own stricter numbers
 * @param title the edition, for people
 * @param from first day in force; long past where the copy is undated
 * @param to last day in force; far off while it is
 * @param open whether it has no confirmed number at all
 * @param advisesAgainstBoth whether it advises against pitching and catching on one day
 * @param source id of the source that its limits are shown with
 */
public record Edition(
    String key,
    String books,
    int rank,
    String name,
    String title,
    LocalDate from,
    LocalDate to,
    RuleBook.AgeBasis basis,
    boolean open,
    RuleBook.SameDay sameDay,
    boolean advisesAgainstBoth,
    RuleBook.LegalCount leagueCount,
    String source) {
  /** Whether it is the one that was asked for. */
  public boolean named() {
    return rank == 0;
  }

  /** The age in whole years that {@code reckoning} goes by, of a player born on {@code born}. */
  public int age(Reckoning reckoning, LocalDate born, LocalDate day) {
    return (reckoning == Reckoning.OTHER_AGE ? basis.other() : basis).age(born, day);
  }
}
