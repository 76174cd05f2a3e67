package org.belthigh.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.files.Csv;
import org.belthigh.files.Folder;
import org.belthigh.files.PlainText;
import org.belthigh.files.Table;
import org.belthigh.files.Workbook;
import org.belthigh.files.Yaml;
import org.belthigh.files.YamlTable;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** One reading of one club folder, file by file. */
final class FolderReading {
  private static final List<String> NAMES =
      List.of("roster", "calendar", "throws", "wellness", "other", "coach");
  private static final List<String> FORMS = List.of(".csv", ".xlsx", ".yaml", ".yml");
  private static final List<String> UNREAD_FORMS = List.of(".xls", ".ods", ".numbers");

  /** One workbook may hold all tables, a sheet each; its logs are these. */
  private static final String WORKBOOK = "workbook.xlsx";

  private static final List<String> LOG_SHEETS = List.of("log", "logs", "tally", "tallies");

  private static final List<String> LOG_COLUMNS =
      Stream.of(TossRows.COLUMNS, TallyRows.COLUMNS, ShortMarks.COLUMNS)
          .flatMap(columns -> Sheet.of(columns, cells -> Optional.empty()).columns().stream())
          .toList();
  private static final Sheet<Void> WIDE = Sheet.of(ShortMarks.COLUMNS, cells -> Optional.empty());

  private final Folder folder;
  private final Catalogue catalogue;
  private final List<Problem> problems = new ArrayList<>();
  private Optional<Dates.Order> dates = Optional.empty();

  /** The practice logs in short form, by the name that messages use. */
  private final Map<String, ShortLog> shortLogs = new LinkedHashMap<>();

  private Bearings.Drills drills;
  private Optional<Workbook> book = Optional.empty();
  private boolean bookRead;

  FolderReading(Folder folder, Catalogue catalogue) {
    this.folder = folder;
    this.catalogue = catalogue;
  }

  /** Whether a file of that name in the folder is read. */
  static boolean reads(String name) {
    return name.equals("club.yaml")
        || name.equals(WORKBOOK)
        || NAMES.stream().anyMatch(n -> FORMS.stream().anyMatch(form -> name.equals(n + form)));
  }

  ClubRecord read() throws Unusable {
    Club club = club();
    Bearings bearings = bearings(club);
    lookForOtherFiles();
    Logs logs = logs(bearings);
    CalendarRows calendar = new CalendarRows(bearings);
    OtherRows others = new OtherRows(bearings);
    SafetyRows safety = new SafetyRows(bearings);
    List<Event> events = sheet("calendar", Sheet.of(CalendarRows.COLUMNS, calendar::row));
    List<Outing> outings =
        safely("throws", SafetyRows.OUTING_COLUMNS, safety::outing, safety, Unread.What.OUTING);
    List<Wellness> wellness =
        safely(
            "wellness",
            SafetyRows.WELLNESS_COLUMNS,
            safety::wellness,
            safety,
            Unread.What.WELLNESS);
    List<OtherSport> sports = sheet("other", Sheet.of(OtherRows.SPORT_COLUMNS, others::sport));
    List<Placement> placements =
        sheet("coach", Sheet.of(OtherRows.PLACEMENT_COLUMNS, others::placement));
    List<Toss> tosses = logs.tosses();
    List<Tally> tallies = logs.tallies(problems);
    problems.addAll(logs.remarks());
    problems.addAll(OpenComplaints.remarks(wellness));
    return new ClubRecord(
        club,
        List.copyOf(bearings.players().values()),
        sorted(events, Event::date, Event::origin),
        tosses,
        tallies,
        sorted(outings, Outing::date, Outing::origin),
        sorted(wellness, Wellness::date, Wellness::origin),
        sorted(sports, OtherSport::date, OtherSport::origin),
        sorted(placements, Placement::date, Placement::origin),
        safety.unread(),
        problems.stream().sorted().distinct().toList());
  }

  private static <T, D extends Comparable<? super D>> List<T> sorted(
      List<T> rows, Function<T, D> date, Function<T, Origin> origin) {
    return rows.stream().sorted(Comparator.comparing(date).thenComparing(origin)).toList();
  }

  private Unusable unusable(String file, String found, String allowed, String maybe) {
    problems.add(Problem.fault(Origin.of(file), "", found, allowed, maybe));
    return new Unusable(problems);
  }

  private Club club() throws Unusable {
    if (!folder.readable()) {
      throw unusable(
          folder.shown(),
          "there is no such folder, or it cannot be read",
          "a club folder must be there",
          "Maybe the path was mistyped.");
    }
    if (!folder.has("club.yaml")) {
      throw unusable(
          folder.shown("club.yaml"),
          "the file is missing",
          "a club folder must hold club.yaml and roster.csv",
          "Maybe another folder is meant.");
    }
    ClubFile file = new ClubFile(catalogue);
    Club club =
        folder
            .plain("club.yaml", problems::add)
            .flatMap(plain -> Yaml.read(folder.shown("club.yaml"), plain.text(), problems))
            .flatMap(node -> file.read(node, problems))
            .orElseThrow(() -> new Unusable(problems));
    dates = file.dates();
    return club;
  }

  private Bearings bearings(Club club) throws Unusable {
    RosterRows roster = new RosterRows(club);
    List<Table> tables = tables("roster");
    if (tables.isEmpty() && FORMS.stream().noneMatch(form -> folder.has("roster" + form))) {
      lookForOtherForms("roster");
      throw unusable(
          folder.shown("roster.csv"),
          "the file is missing",
          "a club folder must hold club.yaml and roster.csv",
          "Maybe the roster has another name.");
    }
    Map<String, Player> players =
        RosterRows.byId(sheet(tables, Sheet.of(RosterRows.COLUMNS, roster::row)));
    if (players.isEmpty()) {
      throw unusable(
          folder.shown("roster.csv"),
          "there is no usable player",
          "a roster must hold at least one",
          "Correct the rows that are named, or add one.");
    }
    Curriculum curriculum = catalogue.curricula().get(club.curriculum());
    drills = new Bearings.Drills(curriculum);
    readShortLogs(club);
    addGuests(players);
    return new Bearings(
        club, curriculum, drills, players, roster.setAside(), roster.setAsideNames());
  }

  private void lookForOtherFiles() {
    NAMES.forEach(this::lookForOtherForms);
    List<String> read = NAMES.stream().map(n -> n + ".csv").toList();
    for (String name : folder.names("")) {
      String lower = name.toLowerCase(Locale.ROOT);
      boolean book = lower.endsWith(".xlsx") && !name.equals(WORKBOOK);
      boolean known = read.contains(name) || read.contains(name.replace(".xlsx", ".csv"));
      if ((lower.endsWith(".csv") || book) && !known) {
        problems.add(
            Problem.warning(
                Origin.of(folder.shown(name)),
                "",
                "no file of this name is read",
                "files are " + String.join(", ", read) + " and logs/*.csv",
                Cells.maybe(name, read, "it belongs in logs")));
      }
    }
  }

  private void lookForOtherForms(String name) {
    for (String form : UNREAD_FORMS) {
      if (folder.has(name + form)) {
        problems.add(otherForm(name + form));
      }
    }
  }

  private Problem otherForm(String name) {
    return Problem.fault(
        Origin.of(folder.shown(name)),
        "",
        "files of this form are not read",
        "it must be CSV, XLSX or YAML",
        "Save it as \"CSV UTF-8\".");
  }

  private Logs logs(Bearings bearings) {
    Logs logs = new Logs();
    for (String name : folder.names("logs")) {
      String lower = name.toLowerCase(Locale.ROOT);
      if (shortLogs.containsKey(folder.shown(name))) {
        marks(shortLogs.get(folder.shown(name)).marks(), logs, bearings);
      } else if (FORMS.stream().anyMatch(lower::endsWith)) {
        logTables(name).forEach(table -> log(table, logs, bearings));
      } else if (UNREAD_FORMS.stream().anyMatch(lower::endsWith)) {
        problems.add(otherForm(name));
      }
    }
    for (String sheet : LOG_SHEETS) {
      sheetOfWorkbook(sheet).ifPresent(table -> log(table, logs, bearings));
    }
    return logs;
  }

  /**
   * The tables of a log file: those sheets of a workbook that are named as logs, else its first.
   */
  private List<Table> logTables(String name) {
    if (!name.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      return table(name).stream().toList();
    }
    return workbook(name)
        .map(
            book -> {
              List<String> sheets = LOG_SHEETS.stream().filter(book.sheets()::contains).toList();
              return (sheets.isEmpty() ? List.of("log") : sheets)
                  .stream()
                      .flatMap(sheet -> book.table(sheet, sheets.isEmpty(), problems::add).stream())
                      .toList();
            })
        .orElse(List.of());
  }

  private void log(Table raw, Logs logs, Bearings bearings) {
    Table table = Reading.named(raw, LOG_COLUMNS);
    if (table.has("tosses") && !table.has("zone")) {
      Table wide = Reading.of(raw, WIDE, dates).table();
      if (wide.expect(WIDE.required(), WIDE.optional(), this::aboutHeader)) {
        marks(ShortMarks.of(wide, drills), logs, bearings);
      }
    } else {
      rows(raw, logs.sheet(isTally(table), bearings));
    }
  }

  private void marks(ShortMarks marks, Logs logs, Bearings bearings) {
    marks.write(bearings::id);
    problems.addAll(marks.problems());
    rows(marks.tosses(), logs.sheet(false, bearings));
    rows(marks.tallies(), logs.sheet(true, bearings));
  }

  /** Reads the practice logs in short form; they come first, for they may bring guests. */
  private void readShortLogs(Club club) {
    for (String name : folder.names("logs")) {
      if (name.toLowerCase(Locale.ROOT).endsWith(".txt")) {
        ShortLog log = new ShortLog(folder.shown(name), drills, club, dates);
        folder.plain(name, problems::add).ifPresent(plain -> log.read(plain.text()));
        problems.addAll(log.problems());
        shortLogs.put(folder.shown(name), log);
      }
    }
  }

  /** Adds the guests whom no roster row stands for already. */
  private void addGuests(Map<String, Player> players) {
    for (ShortLog log : shortLogs.values()) {
      for (Player guest : log.guests().values()) {
        boolean known =
            players.values().stream()
                .anyMatch(
                    p ->
                        p.group().equals(guest.group())
                            && p.firstName().equalsIgnoreCase(guest.firstName()));
        if (!known) {
          players.put(guest.id(), guest);
        }
      }
    }
  }

  private static boolean isTally(Table table) {
    return table.has("measure") || (table.has("made") && table.has("of"));
  }

  private Optional<Table> table(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".xlsx")) {
      String sheet = lower.substring(lower.lastIndexOf('/') + 1, lower.length() - ".xlsx".length());
      return workbook(name).flatMap(book -> book.table(sheet, true, problems::add));
    }
    Optional<PlainText> plain = folder.plain(name, problems::add);
    return lower.endsWith(".csv")
        ? plain.flatMap(text -> Csv.parse(text, folder.shown(name), problems::add))
        : plain.flatMap(text -> YamlTable.parse(text.text(), folder.shown(name), problems));
  }

  private Optional<Workbook> workbook(String name) {
    return folder
        .bytes(name, problems::add)
        .flatMap(bytes -> Workbook.parse(bytes, folder.shown(name), problems::add));
  }

  private Optional<Table> sheetOfWorkbook(String sheet) {
    if (!bookRead && folder.has(WORKBOOK)) {
      book = workbook(WORKBOOK);
    }
    bookRead = true;
    return book.flatMap(b -> b.table(sheet, false, problems::add));
  }

  /** Every table of that name, whatever its form: all of them count. */
  private List<Table> tables(String name) {
    return Stream.concat(
            FORMS.stream()
                .map(form -> name + form)
                .filter(folder::has)
                .flatMap(file -> table(file).stream()),
            sheetOfWorkbook(name).stream())
        .toList();
  }

  private <T> List<T> sheet(String name, Sheet<T> sheet) {
    return sheet(tables(name), sheet);
  }

  private <T> List<T> sheet(List<Table> tables, Sheet<T> sheet) {
    List<T> all = new ArrayList<>();
    tables.forEach(table -> rows(table, sheet).ifPresent(all::addAll));
    return all;
  }

  /** Reads a table on which safety rests: where rows of it are lost, {@code safety} is told. */
  private <T> List<T> safely(
      String name,
      String columns,
      Function<Cells, Optional<T>> row,
      SafetyRows safety,
      Unread.What what) {
    List<Table> tables = tables(name);
    long files = FORMS.stream().filter(form -> folder.has(name + form)).count();
    boolean bookLost = folder.has(WORKBOOK) && book.isEmpty();
    boolean lost =
        bookLost
            || UNREAD_FORMS.stream().anyMatch(form -> folder.has(name + form))
            || tables.stream().filter(t -> !t.file().contains(WORKBOOK)).count() < files;
    List<T> all = new ArrayList<>();
    for (Table table : tables) {
      Optional<List<T>> rows = rows(table, Sheet.of(columns, row));
      rows.ifPresent(all::addAll);
      lost |= rows.isEmpty() || !table.complete();
    }
    if (lost) {
      problems.add(safety.lost(what, folder.shown(bookLost ? WORKBOOK : fileOf(name))));
    }
    return all;
  }

  private String fileOf(String name) {
    return FORMS.stream().map(f -> name + f).filter(folder::has).findFirst().orElse(name + ".csv");
  }

  /** An unknown column is a remark, unless it would set a limit. */
  private void aboutHeader(Problem problem) {
    problems.add(
        !problem.isFault() && new LimitKeys(catalogue).names(problem.subject())
            ? LimitKeys.fault(problem.origin(), problem.subject())
            : problem);
  }

  /** The usable rows; empty where a required column is missing. */
  private <T> Optional<List<T>> rows(Table raw, Sheet<T> sheet) {
    Reading reading = Reading.of(raw, sheet, dates);
    Table table = reading.table();
    if (!table.expect(sheet.required(), sheet.optional(), this::aboutHeader)) {
      return Optional.empty();
    }
    Notes notes = new Notes();
    List<T> rows = new ArrayList<>();
    List<String> columns = sheet.columns();
    for (Table.Row row : table.rows()) {
      Cells cells = Cells.of(row, notes, reading);
      cells.refuseHidden(columns);
      sheet.row().apply(cells).ifPresent(rows::add);
    }
    problems.addAll(notes.all());
    reading.remark().filter(r -> !shortLogs.containsKey(raw.file())).ifPresent(problems::add);
    return Optional.of(rows);
  }
}
