package org.belthigh.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.files.Folder;
import org.belthigh.files.Node;
import org.belthigh.files.PlainText;
import org.belthigh.files.Table;
import org.belthigh.files.Yaml;
import org.belthigh.model.Origin;
import org.belthigh.model.Printable;
import org.belthigh.model.Problem;

/** One reading of one club folder, file by file. */
final class FolderReading {
  private static final List<String> LOG_COLUMNS =
      Stream.of(TossRows.COLUMNS, TallyRows.COLUMNS, ShortMarks.COLUMNS)
          .flatMap(columns -> Sheet.of(columns, cells -> Optional.empty()).columns().stream())
          .toList();
  private static final Sheet<Void> WIDE = Sheet.of(ShortMarks.COLUMNS, cells -> Optional.empty());

  private final Folder folder;
  private final Catalogue catalogue;
  private Optional<Curriculum> own = Optional.empty();
  private final List<Problem> problems = new ArrayList<>();
  private Optional<Dates.Order> dates = Optional.empty();

  /** The practice logs in short form, by the name that messages use. */
  private final Map<String, ShortLog> shortLogs = new LinkedHashMap<>();

  private final ClubTables tables;
  private Bearings.Drills drills;

  /** The children who cannot be told apart, and the row of the roster that makes the doubt. */
  private Map<String, Origin> doubtful = Map.of();

  FolderReading(Folder folder, Catalogue catalogue) {
    this.folder = folder;
    this.catalogue = catalogue;
    this.tables = new ClubTables(folder, problems);
  }

  ClubRecord read() throws Unusable {
    Club club = club();
    Bearings bearings = bearings(club);
    Logs logs = logs(bearings);
    CalendarRows calendar = new CalendarRows(bearings);
    OtherRows others = new OtherRows(bearings);
    SafetyRows safety = new SafetyRows(bearings, catalogue.whoEnds());
    safety.doubtful(doubtful);
    bearings.healthInLogs().forEach(safety::inLog);
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
    tables.lookThrough(safety);
    problems.addAll(logs.remarks());
    problems.addAll(UpsideDown.remarks(tosses));
    problems.addAll(OpenComplaints.remarks(wellness, catalogue.whoEnds()));
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
        problems.stream().sorted(Causes.FIRST).distinct().toList());
  }

  private static <T, D extends Comparable<? super D>> List<T> sorted(
      List<T> rows, Function<T, D> date, Function<T, Origin> origin) {
    return rows.stream().sorted(Comparator.comparing(date).thenComparing(origin)).toList();
  }

  private Unusable unusable(String file, String found, String allowed, String maybe) {
    problems.add(Problem.fault(Origin.of(file), "", found, allowed, maybe).asConsequence());
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
    Node node =
        folder
            .plain("club.yaml", problems::add)
            .map(this::tellUnprintable)
            .flatMap(plain -> Yaml.read(folder.shown("club.yaml"), plain.text(), problems))
            .orElseThrow(() -> new Unusable(problems));
    OwnCurriculum.file(node).ifPresent(tables::knows);
    own = OwnCurriculum.of(folder, node, catalogue, problems);
    ClubFile file = new ClubFile(catalogue, own.map(Curriculum::id));
    Club club = file.read(node, problems).orElseThrow(() -> new Unusable(problems));
    dates = file.dates();
    return club;
  }

  /** Points out the first line of the club's file of which sheets cannot show all. */
  private PlainText tellUnprintable(PlainText plain) {
    int number = 0;
    for (String line : (Iterable<String>) plain.text().lines()::iterator) {
      number++;
      if (!Printable.all(line.replaceFirst("(^|\\s)#.*", ""))) {
        problems.add(Unprintable.told(Origin.of(folder.shown("club.yaml"), number), "", 1));
        return plain;
      }
    }
    return plain;
  }

  private Bearings bearings(Club club) throws Unusable {
    RosterRows roster = new RosterRows(club);
    List<ClubTables.Source> sources = tables.of("roster");
    if (sources.isEmpty()) {
      tables.tellOtherForms("roster");
      throw unusable(
          folder.shown("roster.csv"),
          "the file is missing",
          "a club folder must hold club.yaml and roster.csv",
          "Maybe the roster has another name.");
    }
    Map<String, Player> players =
        RosterRows.byId(
            sheet(Samples.leftOut(sources, problems), Sheet.of(RosterRows.COLUMNS, roster::row)));
    if (players.isEmpty()) {
      throw nobody(roster);
    }
    RosterDoubts doubts = new RosterDoubts(roster.rows());
    problems.addAll(doubts.problems());
    doubtful = doubts.children();
    Curriculum curriculum = own.orElseGet(() -> catalogue.curricula().get(club.curriculum()));
    drills = new Bearings.Drills(curriculum);
    readShortLogs(club, roster.used());
    addGuests(players);
    return new Bearings(
        club, curriculum, drills, players, roster.setAside(), roster.used(), roster.absent());
  }

  /** A roster without players; where no row was read, only why. */
  private Unusable nobody(RosterRows roster) {
    return roster.rows().isEmpty() && problems.stream().anyMatch(Problem::isFault)
        ? new Unusable(problems)
        : unusable(
            folder.shown("roster.csv"),
            "there is no usable player",
            "a roster must hold at least one",
            "Correct the rows that are named, or add one.");
  }

  private Logs logs(Bearings bearings) {
    Logs logs = new Logs();
    tables.logs(
        name -> marks(shortLogs.get(folder.shown(name)).marks(), logs, bearings),
        table -> log(table, logs, bearings));
    return logs;
  }

  private void log(Table raw, Logs logs, Bearings bearings) {
    if (isTitled(raw)) {
      return;
    }
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
    marks.write(bearings::called);
    problems.addAll(marks.problems());
    rows(marks.tosses(), logs.sheet(false, bearings));
    rows(marks.tallies(), logs.sheet(true, bearings));
  }

  /** Reads the practice logs in short form; they come first, for they may bring guests. */
  private void readShortLogs(Club club, List<RosterRow> players) {
    for (String name : tables.shortLogs()) {
      ShortLog log = new ShortLog(folder.shown(name), drills, club, players, dates);
      folder.plain(name, problems::add).ifPresent(plain -> log.read(plain.text()));
      problems.addAll(log.problems());
      shortLogs.put(folder.shown(name), log);
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

  private <T> List<T> sheet(String name, Sheet<T> sheet) {
    return sheet(tables.of(name), sheet);
  }

  private <T> List<T> sheet(List<ClubTables.Source> sources, Sheet<T> sheet) {
    List<T> all = new ArrayList<>();
    sources.stream()
        .flatMap(source -> source.table().stream())
        .forEach(table -> rows(table, sheet).ifPresent(all::addAll));
    return all;
  }

  /** Reads a table on which safety rests: where rows of it are lost, {@code safety} is told. */
  private <T> List<T> safely(
      String name,
      String columns,
      Function<Cells, Optional<T>> row,
      SafetyRows safety,
      Unread.What what) {
    List<T> all = new ArrayList<>();
    for (ClubTables.Source source : tables.of(name)) {
      Optional<Table> table = source.table();
      Optional<List<T>> rows = table.flatMap(t -> rows(t, Sheet.of(columns, row)));
      rows.ifPresent(all::addAll);
      if (rows.isEmpty() || isCut(table.orElseThrow(), columns)) {
        problems.add(safety.lost(what, source.shown()));
      }
    }
    return all;
  }

  /** Whether the file ends inside a quoted cell or its header, or a row ran into the header. */
  private static boolean isCut(Table raw, String columns) {
    List<String> known = Sheet.of(columns, cells -> Optional.empty()).columns();
    List<String> unknown =
        Reading.named(raw, known).columns().stream().filter(c -> !known.contains(c)).toList();
    boolean inHeader = raw.endsInHeader() && !unknown.isEmpty();
    boolean swallowed = unknown.stream().anyMatch(c -> Dates.LIKE_DAY.matcher(c).find());
    return inHeader || swallowed || !raw.complete();
  }

  /** An unknown column is a remark, unless it would set a limit. */
  private void aboutHeader(Problem problem) {
    problems.add(
        !problem.isFault() && new LimitKeys(catalogue).names(problem.subject())
            ? LimitKeys.fault(problem.origin(), problem.subject())
            : problem);
  }

  /** Whether a title stands above the header, of which is then told. */
  private boolean isTitled(Table raw) {
    Optional<Table> beneath = Title.beneath(raw);
    beneath.ifPresent(table -> problems.add(Title.above(raw, table)));
    return beneath.isPresent();
  }

  /** The usable rows; empty where a required column is missing. */
  private <T> Optional<List<T>> rows(Table raw, Sheet<T> sheet) {
    if (isTitled(raw)) {
      return Optional.empty();
    }
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
      cells.tellUnprintable(columns);
      sheet.row().apply(cells).ifPresent(rows::add);
    }
    problems.addAll(notes.all());
    reading.remark().filter(r -> !shortLogs.containsKey(raw.file())).ifPresent(problems::add);
    return Optional.of(rows);
  }
}
