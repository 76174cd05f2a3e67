package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: all that one rule book has to know about one player
 * on one day. Every sum and every look into a table is done; the rules only compare.
 *
 * <p>Public only because the rules are built as a model of their own. Where a book has no such
 * limit, the limit is {@link #NONE}, which no count reaches.
 *
 * @param day the day that is asked about
 * @param book who publishes the rule book, for people
 * @param pitcher whether the roster lets the player pitch
 * @param inForce whether the book's own dates cover the day
 * @param table whether the book has a row for the player's age
 * @param rest what the earlier outing that rules longest asks for
 * @param inARow pitching days in a row that end on the day before
 * @param mostInARow the book's limit of such days
 * @param thrown pitches already counted on the day
 * @param dailyMax the book's limit for the day
 * @param caught innings caught on the day
 * @param caughtBar caught in so many innings, no pitching
 * @param thrownBar so many pitches thrown, no catching
 * @param returnBar caught, then so many pitches thrown, no return to catcher
 * @param held whether a stop on throwing is in force
 * @param unreadable whether an outing of the player could not be read
 */
public record ArmDay(
    String player,
    String name,
    String book,
    String bookId,
    Reckoning reckoning,
    LocalDate day,
    int age,
    boolean pitcher,
    boolean softball,
    boolean inForce,
    boolean table,
    Rest rest,
    int inARow,
    int mostInARow,
    int thrown,
    int dailyMax,
    int caught,
    int caughtBar,
    int thrownBar,
    int returnBar,
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
   */
  public record Rest(LocalDate outing, int pitches, int days, LocalDate over) {
    static final Rest NOT_OWED = new Rest(LocalDate.MIN, 0, 0, LocalDate.MIN);

    static Rest after(LocalDate outing, int pitches, int days) {
      return new Rest(outing, pitches, days, outing.plusDays(days + 1L));
    }
  }

  /** First day on which rest is over; long past where none is owed. */
  public LocalDate restOver() {
    return rest.over();
  }

  /** Whether any inning was caught on the day. */
  public boolean caughtAny() {
    return caught > 0;
  }

  /** Whether any pitch was thrown on the day. */
  public boolean threw() {
    return thrown > 0;
  }

  /** Whether the book says anything about catching. */
  public boolean catcherRules() {
    return thrownBar != NONE;
  }

  /** What the day still allows, if nothing else stands in the way. */
  int left() {
    return Math.max(0, dailyMax - thrown);
  }
}
