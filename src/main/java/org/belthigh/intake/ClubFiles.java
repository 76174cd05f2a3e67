package org.belthigh.intake;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.files.Nearest;
import org.belthigh.files.Table;

/**
 * What the names of files in a club folder say: which table a file is, and which others may hold a
 * table on which safety rests. Capitals make no difference.
 */
final class ClubFiles {
  /** The tables of a club. */
  static final List<String> TABLES =
      List.of("roster", "calendar", "throws", "wellness", "other", "coach");

  /** One workbook may hold all tables, a sheet each. */
  static final String WORKBOOK = "workbook";

  /** How a table is written down. */
  enum Form {
    /** Rows of text. */
    TEXT(".csv", ".tsv", ".csv.txt", ".tsv.txt", ".txt"),
    /** A workbook. */
    BOOK(".xlsx", ".xlsm"),
    /** A list of groups of keys. */
    LIST(".yaml", ".yml");

    private final String endings;

    Form(String... endings) {
      this.endings = String.join(" ", endings);
    }

    private List<String> endings() {
      return List.of(endings.split(" "));
    }

    /** The form that the ending of a name says. */
    static Optional<Form> of(String name) {
      String lower = lower(name);
      for (Form form : values()) {
        if (form.endings().stream().anyMatch(lower::endsWith)) {
          return Optional.of(form);
        }
      }
      return Optional.empty();
    }
  }

  /** The tables on which safety rests. */
  enum Kind {
    /** The children. */
    ROSTER("roster", RosterRows.COLUMNS),
    /** Their throwing. */
    OUTINGS("throws", SafetyRows.OUTING_COLUMNS),
    /** Their health. */
    HEALTH("wellness", SafetyRows.WELLNESS_COLUMNS);

    private final String table;
    private final String columns;

    Kind(String table, String columns) {
      this.table = table;
      this.columns = columns;
    }

    /** The name of the table. */
    String table() {
      return table;
    }

    /** Its columns. */
    List<String> columns() {
      return sheet().columns();
    }

    /** Whether a table has the columns that it must have. */
    boolean fits(Table raw) {
      Table table = Reading.named(raw, columns());
      return sheet().required().stream().allMatch(table::has);
    }

    private Sheet<Void> sheet() {
      return Sheet.of(columns, cells -> Optional.empty());
    }

    /** What is lost where such a table is not read. */
    List<Unread.What> lost() {
      return switch (this) {
        case ROSTER -> List.of();
        case OUTINGS -> List.of(Unread.What.OUTING);
        case HEALTH -> List.of(Unread.What.WELLNESS);
      };
    }
  }

  /** Forms of a table that are not read. */
  private static final List<String> UNREAD_FORMS =
      List.of(".xls", ".ods", ".numbers", ".xlsb", ".xltx", ".fods", ".gsheet");

  /** What is looked at and not read as rows: prints, pictures, films. */
  private static final List<String> PICTURES =
      List.of(
          ".pdf", ".png", ".jpg", ".jpeg", ".heic", ".gif", ".webp", ".tif", ".tiff", ".bmp",
          ".svg", ".mp4", ".mov");

  private static final List<String> NOTES = List.of(".txt", ".md");

  /** Parts of a name after which a file may hold such a table. */
  private static final Map<String, Set<Kind>> PARTS =
      Map.of(
          "throw", Set.of(Kind.OUTINGS),
          "wellness", Set.of(Kind.HEALTH),
          "health", Set.of(Kind.HEALTH),
          "roster", Set.of(Kind.ROSTER),
          "workbook", EnumSet.of(Kind.OUTINGS, Kind.HEALTH));

  /** The same where only the name can tell, since the file is of no form that is read. */
  private static final Map<String, Set<Kind>> LOOSE_PARTS =
      Map.of(
          "pitch", Set.of(Kind.OUTINGS),
          "outing", Set.of(Kind.OUTINGS),
          "lanzam", Set.of(Kind.OUTINGS),
          "injur", Set.of(Kind.HEALTH),
          "lesion", Set.of(Kind.HEALTH),
          "salud", Set.of(Kind.HEALTH));

  private static final Map<String, Set<Kind>> MISTYPED =
      Map.of(
          "throws", Set.of(Kind.OUTINGS),
          "wellness", Set.of(Kind.HEALTH),
          "health", Set.of(Kind.HEALTH),
          "roster", Set.of(Kind.ROSTER),
          "workbook", EnumSet.of(Kind.OUTINGS, Kind.HEALTH));

  private ClubFiles() {}

  /** The table of that name, where safety rests on it. */
  static Optional<Kind> kind(String table) {
    return Stream.of(Kind.values()).filter(kind -> kind.table().equals(table)).findFirst();
  }

  static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** Whether a file of that name is read, or missed where it is not. */
  static boolean concerns(String name) {
    return lower(name).equals("club.yaml")
        || table(name).isPresent()
        || isWorkbook(name)
        || isUnreadForm(name)
        || (!isPicture(name) && !byName(name).isEmpty());
  }

  /** The table that a file of that name is read as. */
  static Optional<String> table(String name) {
    return Form.of(name).map(form -> base(name)).filter(TABLES::contains);
  }

  /** Whether a file of that name is read as the workbook that may hold all tables. */
  static boolean isWorkbook(String name) {
    return Form.of(name).filter(f -> f == Form.BOOK).isPresent() && base(name).equals(WORKBOOK);
  }

  /** Whether the ending says that this is a spreadsheet of a form that is not read. */
  static boolean isUnreadForm(String name) {
    return ends(name, UNREAD_FORMS);
  }

  /** Whether the ending says that this is a print or a picture. */
  static boolean isPicture(String name) {
    return ends(name, PICTURES);
  }

  /** Whether the ending says that this may be a note of somebody's own. */
  static boolean isNote(String name) {
    return ends(name, NOTES) || !name.contains(".");
  }

  /** Whether a note has the name of a table, or that of another file before its own ending. */
  static boolean isDataByName(String name) {
    String bare = lower(name).replaceFirst("\\.(txt|md)$", "");
    boolean data = Form.of(bare).isPresent() || isUnreadForm(bare) || !name.contains(".");
    return data && !byName(name).isEmpty();
  }

  private static boolean ends(String name, List<String> endings) {
    return endings.stream().anyMatch(lower(name)::endsWith);
  }

  /** The name in small letters without all that tells its form: {@code throws}. */
  static String base(String name) {
    String lower = lower(name.substring(name.lastIndexOf('/') + 1));
    int dot = lower.indexOf('.', 1);
    String ending = dot < 0 ? "" : lower.substring(dot);
    boolean form =
        isUnreadForm(ending)
            || List.of(Form.values()).stream().anyMatch(f -> f.endings().contains(ending));
    return form ? lower.substring(0, dot) : lower;
  }

  /** What a file or sheet of that name may hold, on which safety rests. */
  static Set<Kind> byName(String name) {
    String lower = Vocabulary.plain(name, '-');
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    PARTS.forEach((part, of) -> kinds.addAll(lower.contains(part) ? of : Set.of()));
    String letters = base(name).replaceAll("[^\\p{L}]", "");
    if (kinds.isEmpty() && !TABLES.contains(letters)) {
      Nearest.to(letters, MISTYPED.keySet()).ifPresent(near -> kinds.addAll(MISTYPED.get(near)));
    }
    return kinds;
  }

  /** The same of a file that cannot be looked into. */
  static Set<Kind> byLooseName(String name) {
    String lower = Vocabulary.plain(name, '-');
    Set<Kind> kinds = byName(name);
    LOOSE_PARTS.forEach((part, of) -> kinds.addAll(lower.contains(part) ? of : Set.of()));
    return kinds;
  }
}
