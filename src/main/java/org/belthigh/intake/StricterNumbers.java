package org.belthigh.intake;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.Stricter;
import org.belthigh.files.Fields;
import org.belthigh.model.Problem;

/**
 * Reads the part {@code stricter} of {@code club.yaml}. A number that is looser than one of the
 * club's rule books is a fault and is not used; the others are.
 */
final class StricterNumbers {
  private static final int YOUNGEST = 4;
  private static final int OLDEST = 99;
  private static final int MOST_PITCHES = 700;
  private static final int MOST_DAYS = 30;

  private final List<RuleBook> books;
  private final List<Problem> problems;

  /**
   * @param ids of the club's rule books; those that do not exist are passed over
   * @param problems receives what is not used
   */
  StricterNumbers(Catalogue catalogue, List<String> ids, List<Problem> problems) {
    this.books =
        ids.stream()
            .filter(catalogue.ruleBooks()::containsKey)
            .map(catalogue::ruleBook)
            .flatMap(book -> catalogue.editions(book).stream())
            .toList();
    this.problems = problems;
  }

  Stricter read(Fields club) {
    return club.inside(LimitKeys.STRICTER, this::numbers).orElse(Stricter.NONE);
  }

  private Stricter numbers(Fields f) {
    return new Stricter(
        limits(f, "daily_max", book -> book::dailyMax),
        limits(f, "weekly_max", book -> book::weeklyMax),
        restDaysAdded(f),
        daysInARow(f));
  }

  private List<Stricter.Limit> limits(
      Fields f, String key, Function<RuleBook, IntFunction<OptionalInt>> allowed) {
    return f.each(key, StricterNumbers::limit).stream()
        .filter(limit -> tightens(f, key, limit, allowed))
        .toList();
  }

  private static Stricter.Limit limit(Fields f) {
    int[] ages = f.pair("ages", YOUNGEST, OLDEST).orElse(new int[] {YOUNGEST, OLDEST});
    return new Stricter.Limit(ages[0], ages[1], f.whole("pitches", 1, MOST_PITCHES));
  }

  private boolean tightens(
      Fields f,
      String key,
      Stricter.Limit limit,
      Function<RuleBook, IntFunction<OptionalInt>> allowed) {
    for (RuleBook book : books) {
      OptionalInt age = limit.loosens(allowed.apply(book));
      if (age.isPresent()) {
        int most = allowed.apply(book).apply(age.getAsInt()).getAsInt();
        looser(
            f,
            key,
            limit.pitches() + " pitches at age " + age.getAsInt(),
            "the rules of " + book.organisation() + " allow " + most);
        return false;
      }
    }
    return true;
  }

  private int restDaysAdded(Fields f) {
    int added = f.optionalWhole("rest_days_add", -MOST_DAYS, MOST_DAYS).orElse(0);
    if (added < 0) {
      looser(f, "rest_days_add", added + " days of rest", "rest is only ever added to");
    }
    return Math.max(0, added);
  }

  private OptionalInt daysInARow(Fields f) {
    OptionalInt days = f.optionalWhole("days_in_a_row", 1, MOST_DAYS);
    IntStream allowed = books.stream().flatMapToInt(book -> book.consecutiveDays().stream());
    OptionalInt most = allowed.min();
    if (days.isPresent() && most.isPresent() && days.getAsInt() > most.getAsInt()) {
      looser(
          f,
          "days_in_a_row",
          days.getAsInt() + " pitching days in a row",
          "the rule book allows " + most.getAsInt());
      return OptionalInt.empty();
    }
    return days;
  }

  private void looser(Fields f, String key, String found, String allowed) {
    problems.add(
        Problem.fault(
            f.origin(key),
            key,
            found + " would be looser than the rule book, so it is not used",
            "a club's own number may only be stricter: " + allowed,
            "Maybe another number is meant; else take the line out."));
  }
}
