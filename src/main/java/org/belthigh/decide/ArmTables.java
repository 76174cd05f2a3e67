package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.belthigh.catalogue.RuleBook;

/**
 * The rule books of a club as facts for the rules of the pack {@code arm}. Nothing is judged here:
 * each number becomes a {@link Limit} or a {@link RestRow}, and what limits are called stands
 * below.
 */
final class ArmTables {
  static final String DAY = "pitches-in-a-day";
  private static final String WEEK = "pitches-in-a-week";
  private static final String ROW = "days-in-a-row";
  private static final String APPEARANCES = "appearances";
  private static final String INNINGS = "innings-in-a-year";
  private static final String MONTHS = "months-with-throwing";
  private static final String MONTHS_OFF = "months-off-in-a-row";
  private static final String CAUGHT = "innings-caught";
  private static final String THEN_CATCHING = "pitches-then-catching";
  private static final String CATCHING_AGAIN = "pitches-then-catching-again";

  private static final int OLDEST = 99;
  private static final int DAYS_OF_WEEK = 7;
  private static final int MONTHS_OF_YEAR = 12;

  private final List<Object> facts = new ArrayList<>();
  private int longest = 2;
  private int reach = 2;
  private boolean lastBatter;

  /** The facts of {@code books}, which stand in the club's order. */
  ArmTables(List<Editions> books) {
    for (int order = 0; order < books.size(); order++) {
      List<RuleBook> editions = books.get(order).newestFirst();
      for (int rank = 0; rank < editions.size(); rank++) {
        edition(key(order), rank, editions.get(rank));
      }
      lastBatter |=
          editions.stream().anyMatch(b -> b.finishTheBatter() != RuleBook.LegalCount.EVERY_PITCH);
    }
    for (int order = 0; order < books.size(); order++) {
      for (Reckoning reckoning : reckonings()) {
        facts.add(new Reckoned(key(order), order, reckoning));
      }
    }
  }

  private static String key(int order) {
    return "book " + order;
  }

  /** Ways of reckoning; the league's own count only where a book of the club has one. */
  List<Reckoning> reckonings() {
    return lastBatter()
        ? List.of(Reckoning.values())
        : List.of(Reckoning.BOOK, Reckoning.OTHER_AGE);
  }

  /** Whether a book of the club leaves out pitches to the last batter. */
  boolean lastBatter() {
    return lastBatter;
  }

  List<Object> facts() {
    return facts;
  }

  /** Days back from a day that a rule about rest or a few days may look. */
  int longest() {
    return Math.max(longest, reach);
  }

  /** Days on from the last outing on which a count of several days may bar pitching. */
  int reach() {
    return reach;
  }

  private void edition(String books, int rank, RuleBook book) {
    String key = books + " edition " + rank;
    facts.add(
        new Edition(
            key,
            books,
            rank,
            book.organisation(),
            book.edition(),
            book.effectiveFrom().orElse(LocalDate.MIN),
            book.effectiveTo().orElse(LocalDate.MAX),
            book.ageBasis(),
            book.status() == RuleBook.Status.OPEN,
            book.sameDay(),
            book.avoidCatching(),
            book.finishTheBatter(),
            book.sources().stream().findFirst().orElse("")));
    bands(key, book.bands());
    book.consecutiveDays().ifPresent(most -> always(key, ROW, 1, most));
    book.appearances().ifPresent(a -> always(key, APPEARANCES, looksBack(a.days()), a.most()));
    book.catcher().ifPresent(c -> catching(key, c));
    book.years().forEach(y -> year(key, y));
    book.limits()
        .forEach(l -> limit(key, l.what(), l.ageFrom(), l.ageTo(), looksBack(l.days()), l.most()));
    longest = Math.max(longest, book.longestRest() + 1);
  }

  private int looksBack(int days) {
    reach = Math.max(reach, days);
    return days;
  }

  private void always(String key, String what, int days, int most) {
    facts.add(new Limit(key, what, 0, OLDEST, days, most, true));
  }

  private void limit(String key, String what, int ageFrom, int ageTo, int days, int most) {
    facts.add(new Limit(key, what, ageFrom, ageTo, days, most, true));
  }

  /** Rows by age; an age without one may throw nothing. */
  private void bands(String key, List<RuleBook.Band> bands) {
    int next = 0;
    for (RuleBook.Band band : bands) {
      none(key, next, band.ageFrom() - 1);
      limit(key, DAY, band.ageFrom(), band.ageTo(), 1, band.dailyMax());
      band.weeklyMax()
          .ifPresent(
              most ->
                  limit(key, WEEK, band.ageFrom(), band.ageTo(), looksBack(DAYS_OF_WEEK), most));
      band.rest().forEach(row -> rest(key, band, row));
      next = band.ageTo() + 1;
    }
    none(key, next, OLDEST);
  }

  private void none(String key, int ageFrom, int ageTo) {
    if (ageFrom <= ageTo) {
      facts.add(new Limit(key, DAY, ageFrom, ageTo, 1, 0, false));
    }
  }

  private void rest(String key, RuleBook.Band band, RuleBook.RestRow row) {
    facts.add(
        new RestRow(
            key,
            band.ageFrom(),
            band.ageTo(),
            row.from(),
            row.to().orElse(Integer.MAX_VALUE),
            row.days(),
            row.confirmed()));
  }

  private void catching(String key, RuleBook.CatcherRules rules) {
    always(key, CAUGHT, 1, rules.inningsThatBarPitching());
    always(key, THEN_CATCHING, 1, rules.pitchesThatBarCatching());
    limit(key, CATCHING_AGAIN, 0, rules.olderFrom() - 1, 1, rules.returnPitches());
    limit(key, CATCHING_AGAIN, rules.olderFrom(), rules.olderTo(), 1, rules.returnPitchesOlder());
    limit(key, CATCHING_AGAIN, rules.olderTo() + 1, OLDEST, 1, rules.returnPitches());
  }

  private void year(String key, RuleBook.Year year) {
    OptionalInt innings = year.innings();
    if (innings.isPresent()) {
      limit(key, INNINGS, year.ageFrom(), year.ageTo(), 1, innings.getAsInt());
    }
    limit(key, MONTHS, year.ageFrom(), year.ageTo(), 1, MONTHS_OF_YEAR - year.monthsOff());
    limit(key, MONTHS_OFF, year.ageFrom(), year.ageTo(), 1, year.inARow());
  }
}
