package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.files.Blanks;
import org.belthigh.intake.ShortMarks.Word;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.Feed;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * A practice log as it is typed fastest: a line for the day, a line for each drill, below it a line
 * for each player. The form is in {@code docs/typing.md}.
 */
final class ShortLog {
  private static final int LONGEST_LINE = 2_000;

  /** Settings whose words are known in other languages too. */
  private static final List<String> OTHER_LANGUAGES = List.of("feed", "ball", "place");

  private static final String DAY_ALLOWED = "a day must be written as 2027-03-08";

  private final String file;
  private final Bearings.Drills drills;
  private final Club club;
  private final NameBook<RosterRow> names;
  private final Dates dates;
  private final ShortMarks marks;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Player> guests = new LinkedHashMap<>();

  /** What the day's line says, and the drill's line after it, by column. */
  private final Map<String, Word> day = new HashMap<>();

  private final Map<String, Word> drill = new HashMap<>();

  /** The first words of the lines above the first day. */
  private final List<List<Word>> above = new ArrayList<>();

  private State state = State.NOT_BEGUN;

  /** Whether a day and a drill have been read, or what was meant as one and cannot be told. */
  private enum State {
    NOT_BEGUN,
    READING,
    DAY_LOST,
    DRILL_LOST
  }

  ShortLog(
      String file,
      Bearings.Drills drills,
      Club club,
      List<RosterRow> players,
      Optional<Dates.Order> order) {
    this.file = file;
    this.drills = drills;
    this.club = club;
    this.names = new NameBook<>(players);
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

  /** Takes the whole text in; one in which no day stands is no log, which is told. */
  void read(String text) {
    int number = 0;
    for (String line : (Iterable<String>) text.lines()::iterator) {
      number++;
      if (isSound(line, number)) {
        ShortWords words = ShortWords.of(line, file, number, drills);
        aboutNote(words);
        if (!words.words().isEmpty()) {
          line(words.words(), line);
        }
      }
    }
    if (state == State.NOT_BEGUN && !above.isEmpty()) {
      problems.add(
          notRead("the text does not begin with a day, so it is not read", "a note of your own"));
    }
  }

  private void line(List<Word> words, String line) {
    Optional<Day> begun = begun(words);
    if (begun.isPresent()) {
      if (state == State.NOT_BEGUN && !above.isEmpty()) {
        problems.add(notRead("what stands above the first day is not read", "a heading"));
      }
      day(begun.get(), line);
    } else if (state == State.NOT_BEGUN) {
      above.add(words);
    } else if (state != State.DAY_LOST) {
      underDay(words, line);
    }
  }

  /** A day, and the other words of its line. */
  private record Day(Word word, boolean whole, List<Word> others) {}

  /** The day that a line begins: at its front, or anywhere with its four digits of the year. */
  private Optional<Day> begun(List<Word> words) {
    if (isGuest(words)) {
      return Optional.empty();
    }
    Word front = words.get(0);
    boolean letters = front.text().chars().anyMatch(Character::isLetter);
    boolean aName = letters && isPlayer(front.text());
    Optional<DayWords> first = DayWords.first(words, aName);
    if (first.isPresent()) {
      return Optional.of(
          new Day(
              front.with(first.get().text()),
              first.get().whole(),
              words.subList(first.get().end(), words.size())));
    }
    for (int at = 1; at < words.size() && !words.get(at).small().equals("by"); at++) {
      Optional<DayWords> later = DayWords.at(words, at);
      if (later.isPresent()) {
        List<Word> others = new ArrayList<>(words.subList(0, at));
        others.addAll(words.subList(later.get().end(), words.size()));
        return Optional.of(new Day(words.get(at).with(later.get().text()), true, others));
      }
    }
    return Optional.empty();
  }

  /**
   * Begins a day; below one that cannot be told nothing is read, so that no toss gets another day.
   */
  private void day(Day begun, String line) {
    day.clear();
    drill.clear();
    Word first = begun.word();
    Optional<LocalDate> date = begun.whole() ? dates.parse(first.text()) : Optional.empty();
    state = date.isPresent() ? State.READING : State.DAY_LOST;
    if (date.isPresent()) {
      day.put("date", first.with(date.get().toString()));
      settings(begun.others(), line, day);
    } else {
      lost(begun);
    }
  }

  private void lost(Day begun) {
    Word first = begun.word();
    if (!begun.whole()) {
      refuse(
          first.origin(),
          "'" + first.text() + "' is no whole day, so nothing below it is read",
          DAY_ALLOWED,
          "Maybe the year is missing.");
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
        DAY_ALLOWED,
        meanings.size() > 1
            ? "Add a line to club.yaml: dates: month-first, or dates: day-first if the day comes"
                + " first."
            : "Maybe a digit was mistyped.");
  }

  /** Text without a day above it: a log that lacks it where a drill or tosses stand in it. */
  private Problem notRead(String found, String note) {
    Origin first = above.get(0).get(0).origin();
    String allowed = "a practice log must begin with a line such as 2027-03-08 u10";
    return above.stream().anyMatch(this::looksLikeLog)
        ? Problem.fault(first, "", found, allowed, "Add the day above this line.")
        : Problem.warning(first, "", found, allowed, "Maybe it is " + note + "; then leave it.");
  }

  private boolean looksLikeLog(List<Word> words) {
    return isGuest(words)
        || drills.words(ShortWords.texts(words), 0) > 0
        || (words.size() > 1
            && isPlayer(words.get(0).text())
            && ShortMarks.isMark(words.get(words.size() - 1)));
  }

  private boolean isPlayer(String text) {
    return !names.called(text).isEmpty();
  }

  private void aboutNote(ShortWords words) {
    if (words.noteLooksMeant(drills, this::isPlayer)) {
      problems.add(
          Problem.warning(
              words.note().get(0).origin(),
              "",
              "what stands behind # looks like tosses or a day, and is a note that is not read",
              "a note begins with #; a shirt number stands right behind it, as #7",
              "Maybe take the # out, or write the note in words."));
    }
  }

  private boolean isSound(String line, int number) {
    Origin whole = Origin.of(file, number);
    if (line.length() > LONGEST_LINE) {
      refuse(
          whole,
          "the line is longer than " + LONGEST_LINE + " characters",
          "a line must be one player and drill",
          "Maybe this is not a practice log.");
      return false;
    }
    int hidden = Blanks.hidden(line);
    if (hidden >= 0) {
      refuse(
          whole,
          String.format(Locale.ROOT, "the hidden character U+%04X stands here", hidden),
          "a line must hold only what can be seen",
          "Maybe type the line anew.");
      return false;
    }
    return true;
  }

  private static boolean isGuest(List<Word> words) {
    return words.get(0).small().equals("guest");
  }

  private void underDay(List<Word> words, String line) {
    int ofDrill = drills.words(ShortWords.texts(words), 0);
    if (isGuest(words)) {
      guest(words);
    } else if (ofDrill > 0) {
      state = State.READING;
      drill.clear();
      drill.put("drill", joined(words.subList(0, ofDrill)));
      settings(words.subList(ofDrill, words.size()), line, drill);
    } else if (isMistypedDrill(words)) {
      state = State.DRILL_LOST;
      Word first = words.get(0);
      refuse(
          first.origin(),
          "'" + first.text() + "' is no drill, so nothing is read until the next drill",
          "a drill must be the id or the name of one of the curriculum",
          "Maybe " + drills.near(first.text()).orElseThrow() + ".");
    } else if (state == State.READING) {
      player(words);
    }
  }

  /** Whether the line is no player's, and its first word nearly that of a drill. */
  private boolean isMistypedDrill(List<Word> words) {
    String first = words.get(0).text();
    boolean aloneOrSettings =
        words.stream().skip(1).noneMatch(w -> column(w.small()).isEmpty() && isToss(w));
    return aloneOrSettings
        && !isPlayer(first)
        && !guests.containsKey("guest-" + Vocabulary.plain(first, '-'))
        && drills.near(first).isPresent();
  }

  private static boolean isToss(Word word) {
    return ShortMarks.isMark(word);
  }

  private static Word joined(List<Word> words) {
    return words.get(0).with(String.join(" ", ShortWords.texts(words)));
  }

  /** Words each of which says what it is about by itself; two that say the same thing are told. */
  private void settings(List<Word> words, String line, Map<String, Word> cells) {
    Map<String, Word> said = new HashMap<>();
    for (int i = 0; i < words.size(); i++) {
      Word word = words.get(i);
      if (word.small().equals("by") && i + 1 < words.size()) {
        cells.put("by", word.with(Blanks.strip(after(word, line))));
        return;
      }
      Optional<String> column = column(word.small());
      column.map(c -> said.putIfAbsent(c, word)).ifPresent(first -> twice(first, word));
      column.ifPresent(c -> cells.putIfAbsent(c, word));
      if (column.isEmpty()) {
        refuse(
            word.origin(),
            "'" + word.text() + "' is not known here",
            "this line must hold a group, a ball, a feed, a place, feet, or by and a name",
            Cells.maybe(word.text(), settingWords(), "it belongs on a line of its own"));
      }
    }
  }

  private void twice(Word first, Word word) {
    refuse(
        word.origin(),
        "'" + first.text() + "' and '" + word.text() + "' say the same thing; the first is kept",
        "a line must say each thing once",
        "Maybe one of them belongs to another line.");
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
        : OTHER_LANGUAGES.stream().filter(c -> Vocabulary.word(c, word).isPresent()).findFirst();
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

  /** A name, a drill if its line does not stand above, and tosses. */
  private void player(List<Word> words) {
    int named = 1;
    while (named < words.size() && isOfName(words, named)) {
      named++;
    }
    int ofDrill = drills.words(ShortWords.texts(words), named);
    if (ofDrill == 0 && named < words.size()) {
      // no toss stands before a drill: José 7 zone-call 45
      ofDrill = drills.words(ShortWords.texts(words), named + 1);
      named += ofDrill > 0 ? 1 : 0;
    }
    Map<String, Word> cells = new HashMap<>(day);
    cells.putAll(drill);
    if (ofDrill > 0) {
      cells.put("drill", joined(words.subList(named, named + ofDrill)));
    }
    if (!cells.containsKey("drill")) {
      refuse(
          words.get(0).origin(),
          "'" + words.get(0).text() + "' stands where no drill is named before",
          "a line with a drill must stand above its players, or the drill behind the player",
          drills.near(words.get(0).text()).map(d -> "Maybe " + d + ".").orElse("Add the drill."));
      return;
    }
    int from = named + ofDrill;
    boolean either =
        ofDrill == 0
            && from < words.size()
            && ShortWords.isName(words.get(0))
            && !ShortWords.isNumber(words.get(named - 1))
            && isTag(words.get(from));
    LineName name =
        new LineName(
            words.subList(0, named), either ? Optional.of(words.get(from)) : Optional.empty());
    marks.add(
        new ShortMarks.Line(
            cells,
            Optional.of(name),
            drills.find(cells.get("drill").text()),
            words.subList(either ? from + 1 : from, words.size())));
  }

  private boolean isOfName(List<Word> words, int at) {
    return ShortWords.isNumber(words.get(at))
        || (ShortWords.isName(words.get(at))
            && !ShortMarks.isMark(words.get(at))
            && drills.words(ShortWords.texts(words), at) == 0);
  }

  /** Whether a word may be a shirt number or a last name as well as a toss. */
  private static boolean isTag(Word word) {
    String text = word.text();
    return text.chars().allMatch(Character::isLetter) || text.chars().allMatch(Character::isDigit);
  }

  private void guest(List<Word> words) {
    LocalDate on = LocalDate.parse(day.get("date").text());
    Optional<Player> guest =
        new GuestLine(club, dates)
            .read(words, on, Optional.ofNullable(day.get("group")).map(Word::text));
    guest.ifPresent(g -> guests.putIfAbsent(g.id(), g));
    if (guest.isEmpty()) {
      refuse(
          words.get(0).origin(),
          "this line does not say who the guest is",
          "it must be guest, the first name, the day of birth or the age, L, R or S, and perhaps the"
              + " shirt number",
          "Maybe guest Sam 10 R 44.");
    }
  }

  private void refuse(Origin origin, String found, String allowed, String maybe) {
    problems.add(Problem.fault(origin, "", found, allowed, maybe));
  }
}
