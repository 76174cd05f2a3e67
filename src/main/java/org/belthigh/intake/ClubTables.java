package org.belthigh.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.files.Csv;
import org.belthigh.files.Folder;
import org.belthigh.files.Table;
import org.belthigh.files.Workbook;
import org.belthigh.files.YamlTable;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * The tables of a club folder, whatever their form. What stands in the folder beside them is looked
 * through once, so that nothing in it is passed over in silence.
 */
final class ClubTables {
  /** The sheets of a workbook that are logs. */
  private static final List<String> LOG_SHEETS = List.of("log", "logs", "tally", "tallies");

  /** The lists behind the drop-downs of a new club's workbook. */
  private static final String WORDS = "words";

  private static final String LOGS = "logs";
  private static final String HISTORY = "history";

  /** How far folders within other folders are looked into, and at how many files of each. */
  private static final int DEEPEST = 3;

  private static final int MOST_ASIDE = 1000;

  /**
   * A file or sheet that holds a table.
   *
   * @param shown how messages name it
   * @param table empty where it cannot be read, which has been told
   */
  record Source(String shown, Optional<Table> table) {}

  private final Folder folder;
  private final List<Problem> problems;
  private final Strays strays = new Strays();
  private final Set<String> known = new HashSet<>();
  private Optional<Map<String, Optional<Workbook>>> books = Optional.empty();

  ClubTables(Folder folder, List<Problem> problems) {
    this.folder = folder;
    this.problems = problems;
  }

  /** Notes a file that is read elsewhere. */
  void knows(String file) {
    known.add(file);
  }

  private List<String> entries() {
    return folder.entries("").orElse(List.of());
  }

  /** Every table of that name, whatever its form: all of them count. */
  List<Source> of(String table) {
    List<Source> sources = new ArrayList<>();
    for (String file : files(table)) {
      if (ClubFiles.Form.of(file).orElseThrow() == ClubFiles.Form.BOOK) {
        sources.add(ofBook(file, table));
      } else if (!isNote(file, table)) {
        sources.add(new Source(folder.shown(file), text(file, problems::add)));
      }
    }
    sheets(table).forEach(sources::add);
    Optional<ClubFiles.Kind> kind = ClubFiles.kind(table);
    List<Table> misplaced =
        sources.stream()
            .flatMap(source -> source.table().stream())
            .filter(t -> isMisplaced(t, kind))
            .toList();
    misplaced.forEach(t -> strays.found(t.file(), Set.of(), Optional.of(t)));
    sources.stream()
        .flatMap(source -> source.table().stream())
        .forEach(t -> kind.filter(k -> k.fits(t)).ifPresent(k -> strays.read(k, t)));
    return sources.stream()
        .filter(source -> kind.isPresent() || source.table().filter(misplaced::contains).isEmpty())
        .toList();
  }

  /** Whether safety rests on a table that stands under the name of another. */
  private static boolean isMisplaced(Table table, Optional<ClubFiles.Kind> expected) {
    Optional<ClubFiles.Kind> holds = Strays.byHeader(table);
    return holds.isPresent()
        && !holds.equals(expected)
        && expected.filter(kind -> kind.fits(table)).isEmpty();
  }

  private List<String> files(String table) {
    String usual = table + ".csv";
    Stream<String> found =
        entries().stream().filter(f -> ClubFiles.table(f).filter(table::equals).isPresent());
    return Stream.concat(found, Stream.of(usual).filter(folder::has))
        .distinct()
        .sorted(
            Comparator.comparing((String f) -> ClubFiles.Form.of(f).orElseThrow())
                .thenComparing(Comparator.naturalOrder()))
        .toList();
  }

  /** Whether a plain text under the name of a table on which no safety rests holds no table. */
  private boolean isNote(String file, String table) {
    return ClubFiles.kind(table).isEmpty()
        && ClubFiles.isNote(file)
        && text(file, problem -> {})
            .filter(t -> Reading.named(t, List.of("date")).has("date"))
            .isEmpty();
  }

  /** The one sheet of a workbook that is named as a table; the others are strays. */
  private Source ofBook(String file, String table) {
    Optional<Workbook> book = workbook(file, problems::add);
    String sheet = book.map(b -> b.chosen(table, true)).orElse("");
    Set<ClubFiles.Kind> kinds = ClubFiles.kind(table).map(Set::of).orElse(Set.of());
    book.ifPresent(b -> straySheets(b, List.of(sheet), kinds));
    return new Source(folder.shown(file), book.flatMap(b -> b.table(sheet, false, problems::add)));
  }

  /** The sheets of that name in the workbooks of all tables. */
  private List<Source> sheets(String name) {
    List<Source> sources = new ArrayList<>();
    books()
        .forEach(
            (file, book) -> {
              if (book.isEmpty()) {
                sources.add(new Source(folder.shown(file), Optional.empty()));
              } else if (book.get().filled(name)) {
                Optional<Table> table = book.get().table(name, false, problems::add);
                sources.add(new Source(book.get().shown(name), table));
              }
            });
    return sources;
  }

  private Map<String, Optional<Workbook>> books() {
    if (books.isEmpty()) {
      Map<String, Optional<Workbook>> all = new LinkedHashMap<>();
      for (String file : entries()) {
        if (ClubFiles.isWorkbook(file)) {
          all.put(file, workbook(file, problems::add));
        }
      }
      List<String> known = Stream.concat(ClubFiles.TABLES.stream(), LOG_SHEETS.stream()).toList();
      books = Optional.of(all);
      all.values().forEach(book -> book.ifPresent(b -> straySheets(b, known, Set.of())));
    }
    return books.get();
  }

  private void straySheets(Workbook book, List<String> read, Set<ClubFiles.Kind> ofFile) {
    for (String sheet : book.sheets()) {
      if (!read.contains(sheet) && book.filled(sheet)) {
        Optional<Table> table = book.table(sheet, false, problem -> {});
        boolean words = sheet.equals(WORDS) && table.flatMap(Strays::byHeader).isEmpty();
        Set<ClubFiles.Kind> kinds = ClubFiles.byName(sheet);
        boolean named = !kinds.isEmpty() || ClubFiles.TABLES.contains(sheet);
        if (!words) {
          strays.found(book.shown(sheet), named ? kinds : ofFile, table);
        }
      }
    }
  }

  private Optional<Workbook> workbook(String name, Consumer<Problem> told) {
    return folder
        .bytes(name, told)
        .flatMap(bytes -> Workbook.parse(bytes, folder.shown(name), told));
  }

  /**
   * The table in a file of text or in a list. What is called a list and is none may be a table of
   * rows on which safety rests.
   */
  private Optional<Table> text(String name, Consumer<Problem> told) {
    if (ClubFiles.Form.of(name).filter(f -> f == ClubFiles.Form.LIST).isEmpty()) {
      return rows(name, told);
    }
    List<Problem> found = new ArrayList<>();
    Optional<Table> table =
        folder
            .plain(name, told)
            .flatMap(text -> YamlTable.parse(text.text(), folder.shown(name), found));
    found.forEach(told);
    return table.or(
        () -> rows(name, problem -> {}).filter(rows -> Strays.byHeader(rows).isPresent()));
  }

  private Optional<Table> rows(String name, Consumer<Problem> told) {
    return folder.plain(name, told).flatMap(text -> Csv.parse(text, folder.shown(name), told));
  }

  /** The files of practice logs in short form. */
  List<String> shortLogs() {
    return logFiles().stream().filter(this::isShort).toList();
  }

  private boolean isShort(String name) {
    String lower = ClubFiles.lower(name);
    return lower.endsWith(".txt")
        && !lower.endsWith(".csv.txt")
        && !lower.endsWith(".tsv.txt")
        && text(name, problem -> {}).flatMap(Strays::byHeader).isEmpty();
  }

  /** Everything right in the folders of logs. */
  private List<String> logFiles() {
    return entries().stream()
        .filter(ClubTables::isLogs)
        .filter(folder::isFolder)
        .flatMap(logs -> folder.entries(logs).orElse(List.of()).stream())
        .filter(file -> !folder.isFolder(file))
        .toList();
  }

  private static boolean isLogs(String name) {
    return ClubFiles.lower(name).equals(LOGS);
  }

  /**
   * Hands on the logs, file by file.
   *
   * @param inShortForm takes the name of a file in short form
   * @param table takes each table of the others
   */
  void logs(Consumer<String> inShortForm, Consumer<Table> table) {
    for (String file : logFiles()) {
      if (isShort(file)) {
        inShortForm.accept(file);
      } else {
        ofLog(file).stream().filter(this::isLog).forEach(table);
      }
    }
    LOG_SHEETS.stream()
        .flatMap(sheet -> sheets(sheet).stream())
        .flatMap(source -> source.table().stream())
        .filter(this::isLog)
        .forEach(table);
  }

  private List<Table> ofLog(String file) {
    Optional<ClubFiles.Form> form = ClubFiles.Form.of(file);
    if (form.isEmpty()) {
      lookInto(file);
      return List.of();
    }
    List<Table> tables =
        form.get() == ClubFiles.Form.BOOK
            ? workbook(file, problems::add).map(this::ofLog).orElse(List.of())
            : text(file, problems::add).stream().toList();
    if (tables.isEmpty()) {
      strays.told(folder.shown(file), ClubFiles.byName(file));
    }
    return tables;
  }

  /** Whether a table among the logs is one of them, and not one on which safety rests. */
  private boolean isLog(Table table) {
    boolean log = Strays.byHeader(table).isEmpty();
    if (!log) {
      strays.found(table.file(), Set.of(), Optional.of(table));
    }
    return log;
  }

  /** Those sheets of a log that are named as logs, else its first. */
  private List<Table> ofLog(Workbook book) {
    List<String> named = LOG_SHEETS.stream().filter(book.sheets()::contains).toList();
    List<String> sheets = named.isEmpty() ? List.of(book.chosen(LOGS, true)) : named;
    straySheets(book, sheets, Set.of());
    return sheets.stream()
        .flatMap(sheet -> book.table(sheet, false, problems::add).stream())
        .toList();
  }

  /** Looks through what is no table that is read, after all of those; tells what is lost. */
  void lookThrough(SafetyRows safety) {
    for (String name : entries()) {
      if (isLogs(name)) {
        lookAtLogs(name);
      } else if (folder.isFolder(name)) {
        lookAtFolder(name);
      } else if (!isRead(name)) {
        lookInto(name);
      }
    }
    problems.addAll(strays.problems(safety));
  }

  private boolean isRead(String name) {
    return name.equals("club.yaml")
        || known.contains(name)
        || ClubFiles.table(name).isPresent()
        || ClubFiles.isWorkbook(name);
  }

  private void lookAtLogs(String name) {
    Optional<List<String>> files = folder.entries(name);
    if (files.isEmpty()) {
      problems.add(
          Problem.fault(
              Origin.of(folder.shown(name)),
              "",
              "this is no folder that can be opened, so no log is read",
              "logs must be a folder of logs",
              "Maybe its permissions forbid it, or a file of that name should stand in it."));
    }
    files.orElse(List.of()).stream().filter(folder::isFolder).forEach(this::lookAtFolder);
  }

  /** A folder in which tables may lie; plans and the history are ours. */
  private void lookAtFolder(String name) {
    if (!isOurs(name) && !isRead(name)) {
      strays.found(folder.shown(name), ClubFiles.byName(name), Optional.empty());
      within(name, DEEPEST).limit(MOST_ASIDE).forEach(this::lookAside);
    }
  }

  private boolean isOurs(String name) {
    return name.equals(HISTORY) || folder.has(name + "/plan.json");
  }

  /** The files in a folder and in those within it. */
  private Stream<String> within(String name, int deeper) {
    return folder.entries(name).orElse(List.of()).stream()
        .flatMap(
            file -> {
              if (!folder.isFolder(file)) {
                return Stream.of(file);
              }
              return deeper > 0 && !isOurs(file) ? within(file, deeper - 1) : Stream.empty();
            });
  }

  /** In a folder that has been told of, only tables on which safety rests are told one by one. */
  private void lookAside(String name) {
    Set<ClubFiles.Kind> kinds = ClubFiles.byName(name.substring(name.lastIndexOf('/') + 1));
    if (ClubFiles.isUnreadForm(name)) {
      lookAside(name, kinds, Optional.empty());
    } else if (ClubFiles.Form.of(name).filter(f -> f == ClubFiles.Form.BOOK).isPresent()) {
      workbook(name, problem -> {})
          .ifPresentOrElse(
              book -> straySheets(book, List.of(), kinds),
              () -> lookAside(name, kinds, Optional.empty()));
    } else if (!ClubFiles.isPicture(name)) {
      lookAside(name, kinds, text(name, problem -> {}).or(() -> rows(name, problem -> {})));
    }
  }

  private void lookAside(String name, Set<ClubFiles.Kind> kinds, Optional<Table> table) {
    if (!kinds.isEmpty() || table.flatMap(Strays::byHeader).isPresent()) {
      strays.found(folder.shown(name), kinds, table);
    }
  }

  private void lookInto(String name) {
    String shown = folder.shown(name);
    if (isCurriculum(name)) {
      problems.add(OwnCurriculum.idle(shown));
    } else if (ClubFiles.isUnreadForm(name)) {
      lookAtForm(name);
    } else if (ClubFiles.Form.of(name).filter(f -> f == ClubFiles.Form.BOOK).isPresent()) {
      lookIntoBook(name);
    } else if (!ClubFiles.isPicture(name)) {
      Optional<Table> table = text(name, problem -> {}).or(() -> rows(name, problem -> {}));
      boolean known = table.flatMap(Strays::byHeader).isPresent();
      Set<ClubFiles.Kind> kinds =
          table.isPresent() ? ClubFiles.byName(name) : ClubFiles.byLooseName(name);
      boolean note = ClubFiles.isNote(name) && !ClubFiles.isDataByName(name);
      if (known || !note) {
        strays.found(shown, kinds, table);
      }
    }
  }

  private boolean isCurriculum(String name) {
    return OwnCurriculum.isFile(name)
        && folder
            .plain(name, problem -> {})
            .filter(plain -> CatalogueLoader.looksLikeOne(plain.text()))
            .isPresent();
  }

  /** In a form that is not read: a fault where it has the name of a table, or lies in the logs. */
  private void lookAtForm(String name) {
    boolean log = name.contains("/");
    if (log || ClubFiles.TABLES.contains(ClubFiles.base(name))) {
      problems.add(otherForm(name));
      strays.told(folder.shown(name), ClubFiles.byLooseName(name));
    } else {
      strays.found(folder.shown(name), ClubFiles.byLooseName(name), Optional.empty());
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

  private void lookIntoBook(String name) {
    Optional<Workbook> book = workbook(name, problem -> {});
    if (book.isEmpty()) {
      strays.found(folder.shown(name), ClubFiles.byLooseName(name), Optional.empty());
    }
    book.ifPresent(b -> straySheets(b, List.of(), ClubFiles.byName(name)));
  }

  /** Whether there is a file of the roster in a form that is not read, of which is then told. */
  void tellOtherForms(String table) {
    entries().stream()
        .filter(ClubFiles::isUnreadForm)
        .filter(name -> ClubFiles.base(name).equals(table))
        .forEach(name -> problems.add(otherForm(name)));
  }
}
