package org.belthigh.intake;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.files.Blanks;
import org.belthigh.intake.ShortMarks.Word;
import org.belthigh.model.Ball;
import org.belthigh.model.Bats;
import org.belthigh.model.Coded;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * A practice log as it is typed fastest: a line for the day, a line for each drill, below it a line
 * for each player. The form is in {@code docs/typing.md}.
 */
final class ShortLog {
  private static final int LONGEST_LINE = 2_000;
  private static final int YOUNGEST = 5;
  private static final int OLDEST = 19;

  private final String file;
  private final Bearings.Drills drills;
  private final Club club;
  private final Dates dates;
  private final ShortMarks marks;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Player> guests = new LinkedHashMap<>();

  /** What the day's line says, and the drill's line after it, by column. */
  private final Map<String, Word> day = new HashMap<>();

  private final Map<String, Word> drill = new HashMap<>();
  private State state = State.NOT_BEGUN;

  /** Whether a day has been read, or one that cannot be told. */
  private enum State {
    NOT_BEGUN,
    READING,
    LOST
  }

  ShortLog(String file, Bearings.Drills drills, Club club, Optional<Dates.Order> order) {
    this.file = file;
    this.drills = drills;
    this.club = club;
    this.dates = Dates.of(List.of(), order);
    this.marks = new ShortMarks(file, List.of());
  }

  /** What was written out. */
  ShortMarks marks() {
    return marks;
  }

  /** The guests who are introduced, by id. */
  Map<String, Player> guests() {
    return guests;
  }

  /** Lines that could not be read. */
  List<Problem> problems() {
    return problems;
  }

  /** Takes the whole text in; one that does not begin with a day is no log, which is told. */
  void read(String text) {
    int number = 0;
    for (String line : (Iterable<String>) text.lines()::iterator) {
      number++;
      List<Word> words = words(line, number);
      if (!words.isEmpty() && isDay(words.get(0))) {
        day(words, line);
      } else if (!words.isEmpty() && state == State.NOT_BEGUN) {
        problems.add(noLog(words.get(0)));
        return;
      } else if (!words.isEmpty() && state == State.READING) {
        line(words, line);
      }
    }
  }

  /** Whether a word is meant as a day: digits with signs between them. */
  private static boolean isDay(Word word) {
    String text = word.text();
    return Character.isDigit(text.charAt(0))
        && text.length() >= 6
        && text.matches("[\\d./-]*[./-][\\d./-]*");
  }

  /**
   * Begins a day; below one that cannot be told nothing is read, so that no toss gets another day.
   */
  private void day(List<Word> words, String line) {
    day.clear();
    drill.clear();
    Word first = words.get(0);
    Optional<LocalDate> date = dates.parse(first.text());
    state = date.isPresent() ? State.READING : State.LOST;
    if (date.isPresent()) {
      day.put("date", first.with(date.get().toString()));
      settings(words, line, day);
      return;
    }
    List<LocalDate> meanings = Dates.meanings(first.text());
    refuse(
        first.origin(),
        "'"
            + first.text()
            + (meanings.size() > 1
                ? "' can mean " + meanings.get(0) + " or " + meanings.get(1)
                : "' is no day of the calendar")
            + ", so nothing below it is read",
        "a day must be written as 2027-03-08",
        meanings.size() > 1
            ? "Does the month come first? Then write dates: month-first in club.yaml, else dates:"
                + " day-first."
            : "Maybe a digit was mistyped.");
  }

  /** Text before any day: a log that lacks it where it begins with a drill, else some note. */
  private Problem noLog(Word first) {
    String found = "the text does not begin with a day, so it is not read";
    String allowed = "a practice log must begin with a line such as 2027-03-08 u10";
    return drills.find(first.text()).isPresent()
        ? Problem.fault(first.origin(), "", found, allowed, "Add the day above this line.")
        : Problem.warning(
            first.origin(), "", found, allowed, "Maybe it is a note of your own; then leave it.");
  }

  private List<Word> words(String line, int number) {
    Origin whole = Origin.of(file, number);
    if (line.length() > LONGEST_LINE) {
      refuse(
          whole,
          "the line is longer than " + LONGEST_LINE + " characters",
          "a line must be one player and drill",
          "Maybe this is not a practice log.");
      return List.of();
    }
    int hidden = Blanks.hidden(line);
    if (hidden >= 0) {
      refuse(
          whole,
          String.format(Locale.ROOT, "the hidden character U+%04X stands here", hidden),
          "a line must hold only what can be seen",
          "Maybe type the line anew.");
      return List.of();
    }
    return split(line, number);
  }

  private List<Word> split(String line, int number) {
    List<Word> words = new ArrayList<>();
    int from = -1;
    for (int at = 0; at <= line.length(); at++) {
      boolean blank = at == line.length() || Blanks.strip(line.substring(at, at + 1)).isEmpty();
      if (!blank && from < 0) {
        from = at;
      } else if (blank && from >= 0) {
        words.add(new Word(line.substring(from, at), new Origin(file, number, from + 1)));
        from = -1;
      }
      if (from == at && line.charAt(at) == '#') {
        return words;
      }
    }
    return words;
  }

  private void line(List<Word> words, String line) {
    Word first = words.get(0);
    if (first.small().equals("guest")) {
      guest(words);
    } else if (drills.find(first.text()).isPresent()) {
      drill.clear();
      drill.put("drill", first);
      settings(words, line, drill);
    } else {
      player(words);
    }
  }

  /** The words after the first, each of which says what it is about by itself. */
  private void settings(List<Word> words, String line, Map<String, Word> cells) {
    for (int i = 1; i < words.size(); i++) {
      Word word = words.get(i);
      if (word.small().equals("by") && i + 1 < words.size()) {
        cells.put("by", word.with(Blanks.strip(after(word, line))));
        return;
      }
      Optional<String> column = column(word.small());
      column.ifPresent(c -> cells.put(c, word));
      if (column.isEmpty()) {
        refuse(
            word.origin(),
            "'" + word.text() + "' is not known here",
            "this line must hold a group, a ball, a feed, a place, feet, or by and a name",
            Cells.maybe(word.text(), settingWords(), "it belongs on a line of its own"));
      }
    }
  }

  private static String after(Word word, String line) {
    String rest = line.substring(word.origin().column() - 1 + word.text().length());
    int comment = rest.indexOf('#');
    return comment < 0 ? rest : rest.substring(0, comment);
  }

  private Optional<String> column(String word) {
    if (club.groups().stream().anyMatch(g -> g.id().equalsIgnoreCase(word))) {
      return Optional.of("group");
    }
    if (Numeral.parse(word).isPresent()) {
      return Optional.of("feet");
    }
    if (Coded.find(Feed.class, word).isPresent()) {
      return Optional.of("feed");
    }
    if (Coded.find(Ball.class, word).isPresent()) {
      return Optional.of("ball");
    }
    return TossRows.PLACES.stream().anyMatch(p -> p.id().equals(word))
        ? Optional.of("place")
        : Optional.empty();
  }

  private List<String> settingWords() {
    return Stream.of(
            club.groups().stream().map(Club.Group::id),
            Stream.of(Feed.values()).map(Coded::id),
            Stream.of(Ball.values()).map(Coded::id),
            TossRows.PLACES.stream().map(Coded::id))
        .flatMap(w -> w)
        .toList();
  }

  private void player(List<Word> words) {
    Map<String, Word> cells = new HashMap<>(day);
    cells.putAll(drill);
    cells.put("player", words.get(0));
    int from = 1;
    if (words.size() > 1 && drills.find(words.get(1).text()).isPresent()) {
      cells.put("drill", words.get(1));
      from = 2;
    }
    if (!cells.containsKey("drill")) {
      refuse(
          words.get(0).origin(),
          "'" + words.get(0).text() + "' stands where no drill is named before",
          "a line with a drill must stand above its players, or the drill behind the player",
          drills.near(words.get(0).text()).map(d -> "Maybe " + d + ".").orElse("Add the drill."));
      return;
    }
    Optional<DrillKind> kind = ShortMarks.kind(drills, cells.get("drill").text());
    marks.add(new ShortMarks.Line(cells, kind, words.subList(from, words.size())));
  }

  /** {@code guest NAME BORN-OR-AGE SIDE [NUMBER]}. */
  private void guest(List<Word> words) {
    Optional<LocalDate> born = words.size() < 4 ? Optional.empty() : born(words.get(2));
    Optional<Bats> bats =
        words.size() < 4 ? Optional.empty() : Sides.understood(words.get(3).text());
    OptionalInt number =
        words.size() == 5
            ? Numeral.parse(words.get(4).text()).filter(Numeral::whole).stream()
                .mapToInt(n -> (int) n.value())
                .filter(n -> n >= 0 && n <= 999)
                .findFirst()
            : OptionalInt.empty();
    String group =
        club.groups().stream()
            .map(Club.Group::id)
            .filter(id -> day.containsKey("group") && id.equalsIgnoreCase(day.get("group").text()))
            .findFirst()
            .orElse(club.groups().get(0).id());
    boolean whole = words.size() == 4 || (words.size() == 5 && number.isPresent());
    boolean named = words.size() > 1 && !plainId(words.get(1)).isEmpty();
    if (!whole || !named || born.isEmpty() || bats.isEmpty()) {
      refuse(
          words.get(0).origin(),
          "this line does not say who the guest is",
          "it must be guest, the first name, the day of birth or the age, L, R or S, and perhaps the"
              + " shirt number",
          "Maybe guest Sam 10 R 44.");
      return;
    }
    Word name = words.get(1);
    String language = club.languages().get(0);
    Player guest =
        guest(plainId(name), name.text(), born.get(), bats.get(), number, group, language);
    guests.putIfAbsent(guest.id(), guest);
  }

  private static String plainId(Word name) {
    return Vocabulary.plain(name.text(), '-');
  }

  private static Player guest(
      String name,
      String shown,
      LocalDate born,
      Bats bats,
      OptionalInt number,
      String group,
      String language) {
    String id = "guest-" + name;
    return new Player(
        id.substring(0, Math.min(40, id.length())),
        shown,
        Optional.empty(),
        born,
        bats,
        Optional.empty(),
        number,
        group,
        false,
        false,
        Optional.empty(),
        OptionalDouble.empty(),
        language,
        Set.of(),
        Optional.empty(),
        true);
  }

  /** A day of birth; an age is taken as just reached, for younger is safer. */
  private Optional<LocalDate> born(Word word) {
    LocalDate on = LocalDate.parse(day.get("date").text());
    Optional<LocalDate> born = dates.parse(word.text());
    Optional<LocalDate> aged =
        Numeral.parse(word.text()).filter(Numeral::whole).map(n -> on.minusYears((long) n.value()));
    return born.or(() -> aged)
        .filter(
            b -> {
              int age = Period.between(b, on).getYears();
              return age >= YOUNGEST && age <= OLDEST;
            });
  }

  private void refuse(Origin origin, String found, String allowed, String maybe) {
    problems.add(Problem.fault(origin, "", found, allowed, maybe));
  }
}
