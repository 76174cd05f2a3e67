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
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.files.Csv;
import org.belthigh.intake.Headings;
import org.belthigh.intake.Samples;

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

  private static final String YAML =
      """
      # What this club is. What stands behind a # is for people, and is not read.
      # docs/schemas/club.schema.json helps an editor to complete and check this file.
      name: {name}
      paper: {paper}                       # letter | a4
      languages: [en, es]                 # of the sheets; the first is the club's own

      # The pitch-count book that your league plays by; a list where several apply. Known books:
      {books}
      rule_book: pitch-smart-2018

      season: {first: "{first}", last: "{last}"}

      # Who practises together; ages in whole years, the lower first. Rows of the roster name the id.
      groups:
        - {id: u10, name: Under 10, age: [9, 10]}
      #  - {id: u12, name: Under 12, age: [11, 12]}
      #  - {id: s12, name: Softball 12, age: [11, 12], sport: softball}

      # All of this may be left out. Take the # away and put your own in.
      # tossers: 2                        # grown-ups who toss at a practice that does not say
      # equipment: {tees: 2, nets: 1, screens: 1}
      # places:
      #   - {id: park, name: Main park, kind: field, address: 5 Park Road, aed: by the shed, stations: 3}
      #   - {id: cage, name: The cage, kind: cage}
      # emergency: {call: "911", who: the head coach, note: gate code on the clipboard}

      # Stricter than the book, never looser:
      # stricter:
      #   daily_max: [{ages: [9, 10], pitches: 60}]
      """;

  private static final String READ_ME =
      """
      YOUR CLUB FOLDER

      club.yaml       what the club is; open it with any text editor
      *.csv, logs/    tables; open them with a spreadsheet, save them as "CSV UTF-8"
      workbook.xlsx   the same tables as sheets of one workbook, with lists to choose from

      Use the tables or the workbook, whichever you like better, or both. Empty ones are left alone.

      1. Take the two sample players out of roster.csv and put your own in.
      2. Put your practices and games into calendar.csv.
      3. belthigh check FOLDER says what is to be put right.
      4. belthigh plan FOLDER --out next-week prints the week.

      After a practice, type a row for each toss into logs/log.csv, or a row for each drill into
      logs/tallies.csv. Several files in logs/ are fine, of any name.

      Spots: high  7 8 9
             belt  4 5 6
             low   1 2 3    1, 4 and 7 are next to the hitter, right- or left-handed.
      Drills go by the id or the name that log sheets print: zone-call, countdown, field-call.

      These are children: keep the folder where only those who need it can read it.
      belthigh forget FOLDER ID takes one child out again.

      The columns. Those with a * must be filled in.
      """;

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
   * @param from first day of the season
   */
  public Map<String, byte[]> files(String name, String paper, LocalDate from) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("club.yaml", utf8(yaml(name, paper, from)));
    files.put("roster.csv", csv("roster", roster(from)));
    files.put("calendar.csv", csv("calendar", calendar(from)));
    files.put("logs/log.csv", csv("log", List.of()));
    files.put("logs/tallies.csv", csv("tally", List.of()));
    for (String table : List.of("throws", "wellness", "other", "coach")) {
      files.put(table + ".csv", csv(table, List.of()));
    }
    files.put("workbook.xlsx", new ClubWorkbook().bytes());
    files.put("READ-ME.txt", utf8(readMe()));
    return files;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private String yaml(String name, String paper, LocalDate from) {
    return YAML.replace("{name}", quoted(name))
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

  private static List<Map<String, String>> roster(LocalDate from) {
    return List.of(
        child(Samples.CHILDREN.get(0), from.minusYears(9).minusMonths(5), "R", "yes"),
        child(Samples.CHILDREN.get(1), from.minusYears(10).minusMonths(2), "L", "no"));
  }

  private static Map<String, String> child(
      Samples.Child child, LocalDate born, String bats, String pitches) {
    return Map.of(
        "id",
        child.id(),
        "first_name",
        child.firstName(),
        "last_name",
        child.lastName(),
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
        "en");
  }

  private static List<Map<String, String>> calendar(LocalDate from) {
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
                "note", "sample"));
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

  private static String readMe() {
    Explained explained = new Explained();
    StringBuilder text = new StringBuilder(READ_ME);
    for (String table : TABLES) {
      text.append('\n').append(file(table)).append('\n');
      for (String column : Headings.of(table)) {
        String star = Headings.required(table).contains(column) ? "*" : "";
        text.append(String.format("  %-20s%s%n", column + star, explained.of(table, column)));
      }
    }
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  private static String file(String table) {
    return switch (table) {
      case "log" -> "logs/log.csv, a row for each toss (sheet log)";
      case "tally" -> "logs/tallies.csv, a row for each drill (sheet tally)";
      default -> table + ".csv (sheet " + table + ")";
    };
  }
}
