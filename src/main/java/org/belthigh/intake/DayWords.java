package org.belthigh.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.belthigh.intake.ShortMarks.Word;

/**
 * The day that begins a practice in a typed log, in one word or in several: {@code 2027-03-08},
 * {@code Mon 8 March 2027}, {@code lunes, 8 de marzo de 2027}, {@code Date: 3/8/2027}.
 *
 * @param text the day as {@link Dates} reads it, without the weekday
 * @param end how many words it takes, what stands before it included
 * @param whole false where no year is said, or nothing but a weekday
 */
record DayWords(String text, int end, boolean whole) {
  private static final int MOST_WORDS = 6;
  private static final Pattern WITH_SIGNS = Pattern.compile("[\\d./-]*[./-][\\d./-]*");
  private static final int FEWEST_SIGNS = 6;
  private static final Pattern NO_YEAR = Pattern.compile("\\d{1,2}[./-]\\d{1,2}[./-]?");
  private static final Pattern RUN_TOGETHER = Pattern.compile("(19|20)\\d{6}");
  private static final Pattern LONG_YEAR = Pattern.compile("(^|\\D)(19|20)\\d\\d(\\D|$)");
  private static final Pattern ORDINAL =
      Pattern.compile("(?i)^(\\d{1,2})(st|nd|rd|th|ro|º|°)(,?)$");
  private static final Pattern NUMBER = Pattern.compile("\\d{1,2}\\.?");
  private static final Set<String> BETWEEN = Set.of("of", "the", "del", "el", "de");
  private static final Set<String> BEFORE = Set.of("date", "day", "fecha", "dia");
  private static final Set<String> WEEKDAYS =
      Set.of(
          ("monday mon tuesday tue tues wednesday wed thursday thu thur thurs friday fri saturday"
                  + " sat sunday sun lunes lun martes miercoles mie jueves jue viernes vie sabado sab"
                  + " domingo dom")
              .split(" "));

  /**
   * The day at the beginning of {@code words}; empty where none is meant there.
   *
   * @param aName whether the first word is the name of a child, as April, Domingo and Julio may be:
   *     then only a whole day with its four digits of the year is one
   */
  static Optional<DayWords> first(List<Word> words, boolean aName) {
    int from = 0;
    boolean weekday = false;
    while (from < words.size() && (isWeekday(words.get(from)) || isBefore(words.get(from)))) {
      weekday |= isWeekday(words.get(from));
      from++;
    }
    Optional<DayWords> whole =
        whole(words, from).filter(day -> !aName || LONG_YEAR.matcher(day.text()).find());
    if (whole.isPresent() || aName) {
      return whole;
    }
    int end = unfinished(words, from);
    return end > from || weekday
        ? Optional.of(new DayWords(joined(words, 0, Math.max(end, from)), end, false))
        : Optional.empty();
  }

  /** The day with its four digits of the year that begins at word {@code from}. */
  static Optional<DayWords> at(List<Word> words, int from) {
    return whole(words, from).filter(day -> LONG_YEAR.matcher(day.text()).find());
  }

  private static boolean isWeekday(Word word) {
    return WEEKDAYS.contains(Vocabulary.plain(word.text(), '-'));
  }

  private static boolean isBefore(Word word) {
    return BEFORE.contains(Vocabulary.plain(word.text(), '-'));
  }

  private static Optional<DayWords> whole(List<Word> words, int from) {
    for (int end = from + 1; end <= Math.min(words.size(), from + MOST_WORDS); end++) {
      String text = joined(words, from, end);
      boolean one = end == from + 1;
      boolean signs = one && isWithSigns(text);
      if (signs || ((one || hasMonth(words, from, end)) && isClear(text))) {
        return Optional.of(new DayWords(text, end, true));
      }
    }
    return Optional.empty();
  }

  /** Digits with signs between them, or eight digits on end. */
  private static boolean isWithSigns(String text) {
    boolean digit = !text.isEmpty() && Character.isDigit(text.charAt(0));
    return digit
        && ((text.length() >= FEWEST_SIGNS && WITH_SIGNS.matcher(text).matches())
            || RUN_TOGETHER.matcher(text).matches());
  }

  private static boolean isClear(String text) {
    return Dates.clear().parse(text).isPresent();
  }

  private static boolean hasMonth(List<Word> words, int from, int end) {
    return words.subList(from, end).stream().anyMatch(DayWords::isMonth);
  }

  private static boolean isMonth(Word word) {
    return Dates.isMonth(word.text().replaceAll("[.,]+$", ""));
  }

  /** Where a day ends that lacks its year: {@code 3/8}, {@code 8 March}, {@code Mar 8}. */
  private static int unfinished(List<Word> words, int from) {
    if (from < words.size() && NO_YEAR.matcher(words.get(from).text()).matches()) {
      return from + 1;
    }
    List<Integer> counted = new ArrayList<>();
    for (int at = from; at < words.size() && counted.size() < 2; at++) {
      if (!BETWEEN.contains(words.get(at).small())) {
        counted.add(at);
      }
    }
    boolean two =
        counted.size() == 2
            && counted.stream().anyMatch(i -> isMonth(words.get(i)))
            && counted.stream()
                .anyMatch(i -> NUMBER.matcher(plainNumber(words.get(i).text())).matches());
    return two ? counted.get(1) + 1 : from;
  }

  private static String plainNumber(String text) {
    return ORDINAL.matcher(text).replaceFirst("$1$3").replace(",", "");
  }

  private static String joined(List<Word> words, int from, int end) {
    List<String> texts = new ArrayList<>();
    for (Word word : words.subList(from, end)) {
      if (!BETWEEN.contains(word.small())) {
        texts.add(ORDINAL.matcher(word.text()).replaceFirst("$1$3"));
      }
    }
    return String.join(" ", texts);
  }
}
