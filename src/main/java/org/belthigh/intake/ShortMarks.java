package org.belthigh.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.catalogue.Drill;
import org.belthigh.files.Table;
import org.belthigh.model.DrillKind;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.belthigh.model.Side;

/**
 * Short marks of one file, written out: tables with a toss a row and with a tally a row, each cell
 * with the place of the word it comes from. Who reads those rows checks them as any other log.
 */
final class ShortMarks {
  private static final List<String> TOSS = columns(TossRows.COLUMNS);

  /** The sheet that holds short marks. */
  static final String COLUMNS =
      "date* player* drill* tosses* round bats ball feed feet place by group";

  private static final List<String> TALLY = columns(TallyRows.COLUMNS);
  private static final Map<String, MeasureKind> MEASURES =
      Map.of(
          "call", MeasureKind.ZONE_RECOGNITION,
          "take", MeasureKind.MIDDLE_TAKE,
          "chase", MeasureKind.BALL_SWING,
          "count", MeasureKind.COUNTDOWN,
          "hard", MeasureKind.HARD_HIT,
          "sent", MeasureKind.FIELD_CALL);
  private static final Map<String, Side> SIDES = sides();
  private static final int LONGEST_WORD = 12;

  /** A toss that nobody marked. */
  private static final String UNMARKED = "?";

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final Written tosses;
  private final Written tallies;
  private final List<Line> lines = new ArrayList<>();
  private final List<LineName.Doubt> doubts = new ArrayList<>();
  private final Map<String, Integer> rounds = new HashMap<>();

  /** A word and where it stands. */
  record Word(String text, Origin origin) {
    /** The word in small letters, as all are read. */
    String small() {
      return text.toLowerCase(Locale.ROOT);
    }

    Word with(String other) {
      return new Word(other, origin);
    }
  }

  /**
   * A line: its words, and what holds for all of them, by column.
   *
   * @param name who is meant; empty where a cell of its own says so
   * @param drill empty where the drill is not known
   */
  record Line(
      Map<String, Word> cells, Optional<LineName> name, Optional<Drill> drill, List<Word> words) {}

  /** Rows in the making, and where their words stand. */
  private static final class Written implements Table.Places {
    private final List<String> columns;
    private final List<String> form;
    private final List<Table.Line> lines = new ArrayList<>();
    private final List<Map<String, Word>> words = new ArrayList<>();
    private final List<Origin> origins = new ArrayList<>();

    Written(List<String> columns, List<String> form) {
      this.columns = columns;
      this.form = form;
    }

    void add(Map<String, Word> cells, Origin origin) {
      List<String> texts =
          columns.stream().map(c -> cells.containsKey(c) ? cells.get(c).text() : "").toList();
      lines.add(new Table.Line(lines.size() + 1, texts));
      words.add(cells);
      origins.add(origin);
    }

    @Override
    public List<String> form() {
      return form;
    }

    @Override
    public Origin row(int line) {
      return origins.get(line - 1);
    }

    @Override
    public Origin cell(int line, int index) {
      Word word = words.get(line - 1).get(columns.get(index));
      return word == null ? row(line) : word.origin();
    }

    Table table(String file) {
      Map<String, Integer> index = new LinkedHashMap<>();
      columns.forEach(c -> index.put(c, index.size()));
      return new Table(file, this, 0, index, columns.size(), lines, true);
    }
  }

  ShortMarks(String file, List<String> form) {
    this.file = file;
    this.tosses = new Written(TOSS, form);
    this.tallies = new Written(TALLY, List.of());
  }

  /**
   * The marks of a sheet with a player and drill a row and its tosses in one cell.
   *
   * @param sheet with the columns of {@link #COLUMNS} under their names
   */
  static ShortMarks of(Table sheet, Bearings.Drills drills) {
    ShortMarks marks = new ShortMarks(sheet.file(), sheet.form());
    for (Table.Row row : sheet.rows()) {
      row.fault().ifPresent(marks.problems::add);
      if (row.fault().isEmpty()) {
        Map<String, Word> cells = new HashMap<>();
        TOSS.stream()
            .filter(c -> !row.get(c).isEmpty())
            .forEach(c -> cells.put(c, new Word(row.get(c), row.origin(c))));
        List<Word> words =
            Stream.of(row.get("tosses").split("\\s+", -1))
                .filter(w -> !w.isEmpty())
                .map(w -> new Word(w, row.origin("tosses")))
                .toList();
        marks.add(new Line(cells, Optional.empty(), drills.find(row.get("drill")), words));
      }
    }
    return marks;
  }

  private static Map<String, Side> sides() {
    Map<String, Side> sides = new HashMap<>();
    List.of("l", "left", "i", "z", "izq", "izquierda", "izquierdo")
        .forEach(word -> sides.put(word, Side.LEFT));
    List.of("r", "right", "d", "der", "derecha", "derecho")
        .forEach(word -> sides.put(word, Side.RIGHT));
    return Map.copyOf(sides);
  }

  private static List<String> columns(String documented) {
    return Sheet.of(documented, cells -> Optional.empty()).columns();
  }

  /**
   * Writes all lines out.
   *
   * @param who gives those whom a name may mean, so that rounds are counted by player
   */
  void write(LineName.Who who) {
    lines.forEach(line -> write(line, who));
    lines.clear();
    for (boolean name : List.of(true, false)) {
      List<LineName.Doubt> alike = doubts.stream().filter(d -> d.name() == name).toList();
      alike.stream().limit(1).map(d -> d.told(alike.size() - 1)).forEach(problems::add);
    }
  }

  /** All tosses, a toss a row. */
  Table tosses() {
    return tosses.table(file);
  }

  /** All tallies, a tally a row. */
  Table tallies() {
    return tallies.table(file);
  }

  /** Words that could not be read. */
  List<Problem> problems() {
    return problems;
  }

  /** Takes a line in. Each further line of a player and drill is a round. */
  void add(Line line) {
    lines.add(line);
  }

  private void write(Line line, LineName.Who who) {
    if (line.name().isEmpty()) {
      write(line.cells(), line.drill(), line.words(), who);
      return;
    }
    Map<String, Word> cells = new HashMap<>(line.cells());
    LineName name = line.name().get();
    int named = name.beforeHealth(who, text(cells, "group"));
    if (named < name.words().size()) {
      List<Word> behind = new ArrayList<>(name.words().subList(named, name.words().size()));
      name.either().ifPresent(behind::add);
      behind.addAll(line.words());
      LineName shorter = new LineName(name.words().subList(0, named), Optional.empty());
      write(new Line(line.cells(), Optional.of(shorter), line.drill(), behind), who);
      return;
    }
    LineName.Resolved resolved = name.resolve(who, text(cells, "group"));
    cells.put("player", resolved.player());
    List<Word> words =
        Stream.concat(
                name.either().filter(w -> !resolved.withEither()).stream(), line.words().stream())
            .toList();
    resolved.doubt().ifPresent(doubts::add);
    if (!write(cells, line.drill(), words, who)) {
      problems.add(noToss(resolved));
    }
  }

  private static Problem noToss(LineName.Resolved name) {
    Word player = name.player();
    String allowed = "a line must be a player and tosses, or a drill, or a note behind #";
    return name.known()
        ? Problem.warning(
            player.origin(),
            "",
            "no toss stands behind '" + player.text() + "'",
            allowed,
            "Maybe the tosses are missing; else take the line out.")
        : Problem.fault(
            player.origin(),
            "",
            "'" + player.text() + "' is no player of the roster, and no toss stands behind it",
            allowed,
            "Maybe it is a note; then write # before it.");
  }

  /** Writes a line out; whether it holds a toss or a tally, be it a faulty one. */
  private boolean write(
      Map<String, Word> line, Optional<Drill> drill, List<Word> words, LineName.Who who) {
    Map<String, Word> cells = new HashMap<>(line);
    Optional<MeasureKind> measure = drill.flatMap(ShortMarks::usual);
    if (PaperMarks.areSwings(drill, words)) {
      swings(cells, drill.orElseThrow(), words);
      return true;
    }
    PaperMarks ticks = new PaperMarks();
    int toss = 0;
    boolean any = health(cells, words);
    for (Word typed : any ? words.stream().filter(ShortMarks::isMark).toList() : words) {
      Word word = typed.with(bare(typed.text()));
      String text = word.small();
      if (text.length() > LONGEST_WORD) {
        refuse(word);
        any = true;
      } else if (MEASURES.containsKey(text)) {
        measure = Optional.of(MEASURES.get(text));
      } else if (PaperMarks.isTicks(text)) {
        ticks.add(word);
        any = true;
      } else if (side(text).isPresent()) {
        cells.put("bats", word.with(side(text).get().letter()));
      } else if (isRound(text)) {
        cells.put("round", word.with(text.substring(1)));
      } else if (field(text).isPresent()) {
        cells.put("field", word.with(field(text).get()));
      } else if (text.indexOf('/') > 0) {
        tally(word, cells, measure);
        any = true;
      } else {
        cells.computeIfAbsent("round", r -> word.with(nextRound(line, who)));
        toss(word, cells, ++toss);
        any = true;
      }
    }
    drill
        .filter(d -> d.kind() == DrillKind.ZONE_CALL && spotsAlone(words))
        .ifPresent(d -> problems.add(PaperMarks.noCalls(words.get(0), d)));
    ticks.first().ifPresent(first -> ticks(first, cells, drill, ticks));
    return any;
  }

  /** A row for what the line says of health among its tosses; whether it says any. */
  private boolean health(Map<String, Word> line, List<Word> words) {
    List<Word> others = words.stream().filter(word -> !isMark(word)).toList();
    String said = String.join(" ", ShortWords.texts(others));
    boolean health = !others.isEmpty() && HealthWords.in(said);
    if (health) {
      Map<String, Word> cells = new HashMap<>(line);
      cells.put("drill", others.get(0).with(said));
      tosses.add(cells, others.get(0).origin());
    }
    return health;
  }

  /** Whether a line holds spots, one of them a strike, and neither a call nor a swing. */
  private static boolean spotsAlone(List<Word> words) {
    List<ShortToss> tosses =
        words.stream()
            .flatMap(w -> ShortToss.parse(w.with(bare(w.text())).small(), "left").stream())
            .toList();
    return tosses.size() > 1
        && tosses.stream().allMatch(t -> t.called().isEmpty() && !t.swing())
        && tosses.stream().anyMatch(t -> !t.zone().equals("ball"));
  }

  /** Ticks and dashes, as log sheets ask for them, are a tally of what the drill is about. */
  private void ticks(Word first, Map<String, Word> line, Optional<Drill> drill, PaperMarks ticks) {
    Optional<MeasureKind> measure =
        drill.filter(d -> d.kind() != DrillKind.COUNTDOWN).flatMap(ShortMarks::usual);
    if (measure.isPresent()) {
      tally(first, line, measure.get(), ticks.made(), ticks.of());
    } else {
      problems.add(PaperMarks.notCounted(first, drill));
    }
  }

  /** The swings of a countdown, 1 and 2 as its log sheet asks for them, are one round. */
  private void swings(Map<String, Word> line, Drill drill, List<Word> words) {
    int score = PaperMarks.score(words, drill.startCount());
    if (score == 0) {
      problems.add(PaperMarks.unfinished(words.get(0), drill.startCount()));
    } else {
      tally(words.get(0), line, MeasureKind.COUNTDOWN, score, drill.startCount());
    }
  }

  private void tally(Word at, Map<String, Word> line, MeasureKind measure, int made, int of) {
    Map<String, Word> cells = new HashMap<>(line);
    cells.put("measure", at.with(measure.id()));
    cells.put("made", at.with(Integer.toString(made)));
    cells.put("of", at.with(Integer.toString(of)));
    tallies.add(cells, at.origin());
  }

  /** A word without the comma or semicolon that some write between tosses. */
  private static String bare(String text) {
    return text.length() > 1 ? text.replaceAll("[,;]+$", "") : text;
  }

  /**
   * The side on which a hitter stands, by its letter or its word in a language of the sheets; a
   * colon may follow, as people write it.
   */
  static Optional<Side> side(String text) {
    return Optional.ofNullable(SIDES.get(text.replaceFirst(":$", "")));
  }

  /** Whether a word has the form of a toss, a tally, or another word of a player's line. */
  static boolean isMark(Word word) {
    String text = bare(word.text()).toLowerCase(Locale.ROOT);
    return text.length() <= LONGEST_WORD
        && (MEASURES.containsKey(text)
            || side(text).isPresent()
            || PaperMarks.isTicks(text)
            || isRound(text)
            || field(text).isPresent()
            || text.matches("\\d+/\\d+")
            || text.equals(UNMARKED)
            || ShortToss.parse(text, "left").isPresent());
  }

  private static Optional<MeasureKind> usual(Drill drill) {
    return switch (drill.kind()) {
      case ZONE_CALL -> Optional.of(MeasureKind.ZONE_RECOGNITION);
      case COUNTDOWN -> Optional.of(MeasureKind.COUNTDOWN);
      case FIELD_CALL -> Optional.of(MeasureKind.FIELD_CALL);
      case NONE -> Optional.of(MeasureKind.HARD_HIT).filter(m -> TallyRows.hardHits(drill));
    };
  }

  private static boolean isRound(String text) {
    return text.length() > 1
        && text.charAt(0) == 'r'
        && text.chars().skip(1).allMatch(c -> c >= '0' && c <= '9');
  }

  private static Optional<String> field(String text) {
    return text.endsWith(":")
        ? Optional.ofNullable(ShortToss.FIELDS.get(text.substring(0, text.length() - 1)))
        : Optional.empty();
  }

  private String nextRound(Map<String, Word> cells, LineName.Who who) {
    String name = text(cells, "player");
    List<Player> called = who.called(name, text(cells, "group"));
    String player = called.size() == 1 ? called.get(0).id() : name;
    String visit = text(cells, "date") + "\n" + player + "\n" + text(cells, "drill");
    return Integer.toString(rounds.merge(visit, 1, Integer::sum));
  }

  private static String text(Map<String, Word> cells, String column) {
    return cells.containsKey(column) ? cells.get(column).text() : "";
  }

  private void toss(Word word, Map<String, Word> line, int number) {
    if (word.text().equals(UNMARKED)) {
      return;
    }
    Optional<ShortToss> toss = ShortToss.parse(word.small(), text(line, "field"));
    if (toss.isEmpty()) {
      refuse(word);
      return;
    }
    Map<String, Word> cells = new HashMap<>(line);
    cells.put("toss", word.with(Integer.toString(number)));
    cells.put("zone", word.with(toss.get().zone()));
    cells.put("near", word.with(toss.get().near() ? "yes" : ""));
    cells.put("called", word.with(toss.get().called()));
    cells.put("swing", word.with(toss.get().swing() ? "yes" : "no"));
    cells.put("hit", word.with(toss.get().hit()));
    cells.put("went", word.with(toss.get().went()));
    tosses.add(cells, word.origin());
  }

  private void tally(Word word, Map<String, Word> line, Optional<MeasureKind> measure) {
    String[] parts = word.text().split("/", -1);
    if (parts.length != 2 || measure.isEmpty()) {
      problems.add(
          Problem.fault(
              word.origin(),
              "",
              "'" + word.text() + "' is no tally here",
              "a tally must be made/of, such as call 7/10, take 1/4, chase 1/3, hard 5/8,"
                  + " count 10/12 or sent 3/8",
              "Maybe the word before it is missing."));
      return;
    }
    Map<String, Word> cells = new HashMap<>(line);
    cells.put("measure", word.with(measure.get().id()));
    cells.put("made", word.with(parts[0]));
    cells.put("of", word.with(parts[1]));
    tallies.add(cells, word.origin());
  }

  private void refuse(Word word) {
    String shown = word.text().length() > LONGEST_WORD ? "a word" : "'" + word.text() + "'";
    problems.add(
        Problem.fault(
            word.origin(),
            "",
            shown + " is no toss",
            ShortToss.ALLOWED,
            PaperMarks.isBackwards(word.small())
                ? "Maybe 5n for spot 5 without a call, or -5 for a wrong call on spot 5."
                : "Maybe 5h for a hard hit on spot 5, or 45 for spot 4 that was called 5."));
  }
}
