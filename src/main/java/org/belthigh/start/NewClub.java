package org.belthigh.start;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.files.Csv;
import org.belthigh.intake.Headings;
import org.belthigh.intake.Samples;
import org.belthigh.model.Skill;

/**
 * The files of a new club: two sample children and two practices a week, so that it can be planned
 * at once, every table with its headings, a page that explains them, and the workbook. Two clubs
 * begun on the same day are the same to the byte.
 */
public final class NewClub {
  /** Weeks of a usual season, and those of which the calendar shows samples. */
  private static final int SEASON_WEEKS = 12;

  private static final int SAMPLE_WEEKS = 4;

  private static final List<String> TABLES =
      List.of("roster", "calendar", "log", "tally", "throws", "wellness", "other", "coach");

  private final Catalogue catalogue;

  /** A maker of clubs that know the rule books of {@code catalogue}. */
  public NewClub(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The files by their path in the club folder.
   *
   * @param name what the club is called
   * @param paper {@code letter} or {@code a4}
   * @param language the club's first language
   * @param from first day of the season
   */
  public Map<String, byte[]> files(String name, String paper, Language language, LocalDate from) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("club.yaml", utf8(yaml(name, paper, language, from)));
    files.put("roster.csv", csv("roster", roster(language, from)));
    files.put("calendar.csv", csv("calendar", calendar(language, from)));
    files.put("logs/log.csv", csv("log", List.of()));
    files.put("logs/tallies.csv", csv("tally", List.of()));
    for (String table : List.of("throws", "wellness", "other", "coach")) {
      files.put(table + ".csv", csv(table, List.of()));
    }
    files.put("workbook.xlsx", new ClubWorkbook(language.explained()).bytes());
    files.put(language.readMe(), utf8(readMe(language)));
    return files;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private String yaml(String name, String paper, Language language, LocalDate from) {
    return language
        .text("club.yaml")
        .replace("{name}", quoted(name))
        .replace("{paper}", paper)
        .replace("{first}", from.toString())
        .replace("{last}", from.plusWeeks(SEASON_WEEKS).minusDays(1).toString())
        .replace("{books}", books());
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private String books() {
    return catalogue.ruleBooks().keySet().stream()
        .map(id -> "#   " + id)
        .collect(Collectors.joining("\n"));
  }

  private static List<Map<String, String>> roster(Language language, LocalDate from) {
    return List.of(
        child(Samples.CHILDREN.get(0), language, from.minusYears(9).minusMonths(5), "R", "yes"),
        child(Samples.CHILDREN.get(1), language, from.minusYears(10).minusMonths(2), "L", "no"));
  }

  private static Map<String, String> child(
      Samples.Child child, Language language, LocalDate born, String bats, String pitches) {
    return Map.of(
        "id",
        child.id(),
        "first_name",
        child.firstName(),
        "last_name",
        language.either(Samples.LAST_NAMES.get(0), Samples.LAST_NAMES.get(1)),
        "born",
        born.toString(),
        "bats",
        bats,
        "throws",
        "R",
        "number",
        child.number(),
        "group",
        "u10",
        "pitches",
        pitches,
        "language",
        language.id());
  }

  private static List<Map<String, String>> calendar(Language language, LocalDate from) {
    List<Map<String, String>> rows = new ArrayList<>();
    Set<DayOfWeek> days = Set.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY);
    LocalDate monday = from.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    for (LocalDate day = monday;
        day.isBefore(monday.plusWeeks(SAMPLE_WEEKS));
        day = day.plusDays(1)) {
      if (days.contains(day.getDayOfWeek()) && !day.isBefore(from)) {
        rows.add(
            Map.of(
                "date", day.toString(),
                "group", "u10",
                "kind", "practice",
                "start", "17:30",
                "minutes", "90",
                "adults", "2",
                "place", "field",
                "note", language.either("sample", "muestra")));
      }
    }
    return rows;
  }

  private static byte[] csv(String table, List<Map<String, String>> rows) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(Headings.of(table));
    rows.forEach(
        row -> lines.add(Headings.of(table).stream().map(c -> row.getOrDefault(c, "")).toList()));
    return utf8(Csv.text(lines));
  }

  private String readMe(Language language) {
    Explained explained = language.explained();
    StringBuilder text = new StringBuilder(language.text("READ-ME.txt"));
    for (String table : TABLES) {
      text.append('\n').append(file(table, language)).append('\n');
      for (String column : Headings.of(table)) {
        String star = Headings.required(table).contains(column) ? "*" : "";
        text.append(String.format("  %-20s%s%n", column + star, explained.of(table, column)));
      }
    }
    text.append('\n')
        .append(
            language.either(
                "The drills that a log may name, by id or by name, in any language.",
                "Los ejercicios que un registro puede nombrar, por id o por nombre, en cualquier idioma."))
        .append('\n');
    catalogue.curricula().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(curriculum -> drills(curriculum.getValue(), language.id(), text));
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  /** The drills of each ladder, in the order of the curriculum. */
  private static void drills(Curriculum curriculum, String language, StringBuilder text) {
    for (Skill skill : new TreeSet<>(curriculum.ladders().keySet())) {
      text.append('\n').append(curriculum.ladders().get(skill).name().in(language)).append('\n');
      for (Drill drill : curriculum.drills(skill)) {
        text.append(String.format("  %-20s%s%n", drill.id(), drill.name().in(language)));
      }
    }
  }

  private static String file(String table, Language language) {
    String sheet = language.either("sheet", "hoja");
    return switch (table) {
      case "log" ->
          "logs/log.csv, "
              + language.either("a row for each toss", "una fila por lanzamiento")
              + " ("
              + sheet
              + " log)";
      case "tally" ->
          "logs/tallies.csv, "
              + language.either("a row for each drill", "una fila por ejercicio")
              + " ("
              + sheet
              + " tally)";
      default -> table + ".csv (" + sheet + " " + table + ")";
    };
  }
}
