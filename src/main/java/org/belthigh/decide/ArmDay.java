package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.Stricter;

/**
 * A fact for the rules of the pack {@code arm}: all that one rule book has to know about one player
 * on one day. Every sum and every look into a table is done; the rules only compare.
 *
 * <p>Public only because the rules are built as a model of their own. Where a book has no such
 * limit, the limit is {@link #NONE}, which no count reaches.
 *
 * @param day the day that is asked about
 * @param book who publishes the rule book, for people; the club for its own stricter numbers
 * @param edition the edition in force on the day, for people
 * @param otherEdition whether that is another edition than the one that was asked for
 * @param source id of the source that limits are shown with
 * @param pitcher whether the roster lets the player pitch
 * @param inForce whether any edition's own dates cover the day
 * @param open whether the book has no confirmed number at all
 * @param table whether the book has a row for the player's age
 * @param rest what the earlier outing that rules longest asks for
 * @param inARow pitching days in a row that end on the day before
 * @param mostInARow the book's limit of such days
 * @param thrown pitches already counted on the day
 * @param dailyMax the book's limit for the day
 * @param week pitches of the seven days that end on the day
 * @param appearances appearances in the days that the book counts, which end on the day
 * @param innings thirds of an inning pitched in the twelve months that end on the day
 * @param sameDay what the book says of a second game on the day
 * @param caught innings caught on the day
 * @param caughtBar caught in so many innings, no pitching
 * @param thrownBar so many pitches thrown, no catching
 * @param returnBar caught, then so many pitches thrown, no return to catcher
 * @param avoidCatching whether the book advises pitchers against catching
 * @param held whether a stop on throwing is in force
 * @param unreadable whether an outing of the player could not be read
 */
public record ArmDay(
    String player,
    String name,
    String book,
    String edition,
    boolean otherEdition,
    String source,
    Reckoning reckoning,
    LocalDate day,
    int age,
    boolean pitcher,
    boolean softball,
    boolean inForce,
    boolean open,
    boolean table,
    Rest rest,
    int inARow,
    int mostInARow,
    int thrown,
    int dailyMax,
    Count week,
    Count appearances,
    Count innings,
    RuleBook.SameDay sameDay,
    int caught,
    int caughtBar,
    int thrownBar,
    int returnBar,
    boolean avoidCatching,
    boolean held,
    boolean unreadable) {
  /** Stands for a limit that the book does not have. */
  public static final int NONE = Integer.MAX_VALUE;

  /**
   * Rest owed after an outing.
   *
   * @param outing the day of pitching
   * @param days full calendar days of rest
   * @param over first day after them
   * @param printed false where the book prints no confirmed row for so many pitches at that age,
   *     and a stricter one stands in
   */
  public record Rest(LocalDate outing, int pitches, int days, LocalDate over, boolean printed) {
    static final Rest NOT_OWED = new Rest(LocalDate.MIN, 0, 0, LocalDate.MIN, true);

    static Rest after(LocalDate outing, int pitches, int days, boolean printed) {
      return new Rest(outing, pitches, days, outing.plusDays(days + 1L), printed);
    }
  }

  /**
   * So many of at most so many, in a stretch of days that ends on the day.
   *
   * @param unwritten outings of that stretch of which the number was not written down
   */
  public record Count(int so, int most, int unwritten) {
    static final Count NO_LIMIT = new Count(0, NONE, 0);

    boolean full() {
      return so >= most;
    }
  }

  /** First day on which rest is over; long past where none is owed. */
  public LocalDate restOver() {
    return rest.over();
  }

  /** Whether the rest owed is that of a confirmed row for the age and the pitches. */
  public boolean restPrinted() {
    return rest.printed();
  }

  /** Whether any inning was caught on the day. */
  public boolean caughtAny() {
    return caught > 0;
  }

  /** Whether any pitch was thrown on the day. */
  public boolean threw() {
    return thrown > 0;
  }

  /** Whether the player caught on the day, and the book advises catchers against pitching. */
  public boolean pitchingAdvisedAgainst() {
    return avoidCatching && caughtAny();
  }

  /** Whether the player threw on the day, and the book advises pitchers against catching. */
  public boolean catchingAdvisedAgainst() {
    return avoidCatching && threw();
  }

  /** Whether the book says anything about catching. */
  public boolean catcherRules() {
    return thrownBar != NONE;
  }

  /** Whether the player threw on the day and the book bars a second game. */
  public boolean secondGameBarredNow() {
    return threw() && sameDay == RuleBook.SameDay.NOT_ALLOWED;
  }

  /** Whether the book allows a second game on one day in so many words. */
  public boolean secondGameAllowed() {
    return sameDay == RuleBook.SameDay.ALLOWED;
  }

  /** Whether the pitches of seven days are used up. */
  public boolean weekFull() {
    return week.full();
  }

  /** Whether one more appearance would be too many. */
  public boolean appearancesFull() {
    return appearances.full();
  }

  /** Whether the innings of twelve months are used up. */
  public boolean inningsFull() {
    return innings.full();
  }

  /** Whether innings are counted, and those of some outings were not written down. */
  public boolean inningsUnsure() {
    return innings.so() > 0 && innings.most() != NONE && innings.unwritten() > 0;
  }

  /** First day on which no rest is owed any more, the day itself at the earliest. */
  LocalDate restOwedTo() {
    return rest.over().isAfter(day) ? rest.over() : day;
  }

  /** Whether this is the club's own stricter number, not the book's. */
  boolean ofTheClub() {
    return source.equals(Stricter.SOURCE);
  }

  /** What the day still allows, if nothing else stands in the way. */
  int left() {
    return Math.max(0, Math.min(dailyMax - thrown, week.most() - week.so()));
  }
}
