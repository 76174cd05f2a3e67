package org.belthigh.docs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.HeatTable;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.RuleEntry;
import org.belthigh.catalogue.RuleText;

/** {@code rules.md}: every rule, and every rule book with its numbers. */
final class RulesPage {
  private static final Map<RuleBook.AgeBasis, String> AGE =
      Map.of(
          RuleBook.AgeBasis.ACTUAL, "calendar age on the day of pitching",
          RuleBook.AgeBasis.LEAGUE_AGE,
              "league age: on 31 August of the year (30 April until 2017)",
          RuleBook.AgeBasis.DIVISION, "division, taken from the calendar age",
          RuleBook.AgeBasis.HIGH_SCHOOL, "school grade, taken from the calendar age");
  private static final Map<RuleBook.SameDay, String> SAME_DAY =
      Map.of(
          RuleBook.SameDay.UNSAID, "nothing was read",
          RuleBook.SameDay.ALLOWED, "allowed within the daily maximum",
          RuleBook.SameDay.SHOULD_NOT, "should not",
          RuleBook.SameDay.NOT_ALLOWED, "not allowed");
  private static final Map<RuleBook.LegalCount, String> LAST_BATTER =
      Map.of(
          RuleBook.LegalCount.EVERY_PITCH, "every pitch counts",
          RuleBook.LegalCount.TO_LAST_BATTER,
              "the league counts up to the first pitch to the last batter; shown beside the true total",
          RuleBook.LegalCount.BOOKED_AT_MAXIMUM,
              "the league books no more than the daily maximum; shown beside the true total");

  private static final String WBGT = "wet-bulb globe temperature, from a meter on the field";
  private static final String INDEX = "heat index, from temperature and humidity, in the shade";

  private final Catalogue catalogue;

  RulesPage(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  String text() {
    Markdown page = new Markdown("Rules");
    page.paragraph(
        "Each rule as it is written, with what it says, what it reads and where it comes from. Numbers"
            + " stand in"
            + " [parameters.md](parameters.md) and in the rule books at the end; sources in"
            + " [sources.md](sources.md).");
    for (String pack :
        new TreeSet<>(catalogue.rules().values().stream().map(RuleEntry::pack).toList())) {
      page.heading(2, "Pack `" + pack + "`");
      catalogue.rules().values().stream()
          .filter(rule -> rule.pack().equals(pack))
          .forEach(rule -> rule(page, rule));
    }
    whoEnds(page);
    page.heading(2, "Rule books");
    page.paragraph(
        "Days of rest are full calendar days; the day of pitching is not one. Each outing is judged"
            + " by the edition in force on its day. Where a club names several books, or numbers of"
            + " its own, the strictest wins.");
    catalogue.ruleBooks().values().forEach(book -> book(page, book));
    page.heading(2, "Heat tables");
    page.paragraph(
        "Degrees are Fahrenheit. A heat index is never looked up in a table of wet-bulb globe"
            + " temperatures. Where tables differ all are shown, the strictest first.");
    catalogue.heatTables().values().forEach(table -> heat(page, table));
    return page.toString();
  }

  /** The table that the rules of holds read. */
  private void whoEnds(Markdown page) {
    page.heading(2, "Who may end what");
    page.paragraph(
        "Whose word ends a complaint of an earlier day. Nobody else's does, and a word of the same"
            + " day never.");
    page.head("Complaint", "Ended by the word of", "Source");
    catalogue
        .whoEnds()
        .rows()
        .forEach((what, row) -> page.row(what, String.join(", ", row.by()), source(row.source())));
  }

  private void rule(Markdown page, RuleEntry rule) {
    page.heading(3, rule.id() + ": " + rule.title());
    List<String> lines = new ArrayList<>();
    lines.add("In words: " + RuleText.of(rule).says());
    lines.add("Tells people: " + rule.reason().in("en"));
    lines.add("Reads: " + rule.reads().stream().map(this::read).collect(Collectors.joining(", ")));
    lines.add("Since " + rule.from() + ", " + rule.status());
    lines.add("Source: " + source(rule.source()));
    lines.add(
        "Cases: [rules/"
            + rule.pack()
            + "/tests/"
            + rule.id()
            + ".yaml](../rules/"
            + rule.pack()
            + "/tests/"
            + rule.id()
            + ".yaml)");
    page.bullets(lines);
    page.code("drools", RuleText.of(rule).drl());
  }

  private String read(String read) {
    Parameter parameter = catalogue.parameters().get(read);
    return parameter == null
        ? "`" + read + "`"
        : "[`" + read + "`](parameters.md#" + read + ") = " + ParametersPage.newest(parameter);
  }

  private String source(String id) {
    return SourcesPage.link(catalogue.source(id));
  }

  private void book(Markdown page, RuleBook book) {
    page.heading(3, "`" + book.id() + "`: " + book.organisation());
    page.bullets(facts(book));
    book.bands().forEach(band -> band(page, band));
    page.bullets(book.notes());
  }

  private List<String> facts(RuleBook book) {
    List<String> facts = new ArrayList<>();
    facts.add(book.title() + ", " + book.edition());
    facts.add("In force: " + inForce(book));
    facts.add("Numbers: " + sure(book.status()));
    facts.add("Age: " + AGE.get(book.ageBasis()));
    facts.add("Days in a row: " + most(book.consecutiveDays()));
    facts.add(
        "Appearances: "
            + book.appearances()
                .map(a -> "at most " + a.most() + " in any " + a.days() + " days")
                .orElse("no rule"));
    facts.add("Second game on a day: " + SAME_DAY.get(book.sameDay()));
    facts.add("Last batter: " + LAST_BATTER.get(book.finishTheBatter()));
    facts.add("Catching: " + catching(book));
    book.years().forEach(year -> facts.add(year(year)));
    facts.add(
        "Sources: " + book.sources().stream().map(this::source).collect(Collectors.joining("; ")));
    return facts;
  }

  private static String inForce(RuleBook book) {
    Optional<String> from = book.effectiveFrom().map(LocalDate::toString);
    Optional<String> to = book.effectiveTo().map(LocalDate::toString);
    return from.isEmpty() && to.isEmpty()
        ? "undated"
        : from.orElse("undated") + " to " + to.orElse("today");
  }

  private static String sure(RuleBook.Status status) {
    return switch (status) {
      case CONFIRMED -> "confirmed, each was seen in a source";
      case PARTLY -> "confirmed but for the rows marked, which are replaced by a stricter row";
      case OPEN -> "none is confirmed, so nobody pitches by this book";
    };
  }

  private static String most(OptionalInt days) {
    return days.isPresent() ? "at most " + days.getAsInt() : "no rule";
  }

  private static String catching(RuleBook book) {
    String rules =
        book.catcher()
            .map(
                c ->
                    c.pitchesThatBarCatching()
                        + " pitches or more, no catching that day; caught in "
                        + c.inningsThatBarPitching()
                        + " innings or more, no pitching that day; caught, then "
                        + c.returnPitches()
                        + " pitches (ages 15 and 16: "
                        + c.returnPitchesOlder()
                        + "), no return to catcher")
            .orElse("no rule");
    return book.avoidCatching()
        ? rules + "; pitching and catching on one day is advised against"
        : rules;
  }

  private String year(RuleBook.Year year) {
    return "Twelve months, ages "
        + year.ageFrom()
        + " to "
        + year.ageTo()
        + ": "
        + (year.innings().isPresent()
            ? "at most " + year.innings().getAsInt() + " innings"
            : "no number of innings")
        + ", "
        + year.monthsOff()
        + " months off, "
        + year.inARow()
        + " of them in a row ("
        + source(year.source())
        + ")";
  }

  private void heat(Markdown page, HeatTable table) {
    page.heading(3, "`" + table.id() + "`: " + table.organisation());
    List<String> facts = new ArrayList<>();
    facts.add(table.title() + ", " + table.edition());
    facts.add("Reading: " + (table.reading() == HeatTable.Reading.WBGT ? WBGT : INDEX));
    if (table.region().isPresent()) {
      facts.add("Only in heat region " + table.region().getAsInt());
    }
    facts.add(
        "Numbers: "
            + (table.status() == RuleBook.Status.CONFIRMED
                ? "confirmed, each was seen in a source"
                : "only the value that stops practice was seen in a source; the rest is left out"));
    facts.add(
        "Sources: " + table.sources().stream().map(this::source).collect(Collectors.joining("; ")));
    page.bullets(facts);
    heatRows(page, "Everybody", table.rows());
    if (!table.newcomers().equals(table.rows())) {
      heatRows(page, "Players who are new to the heat", table.newcomers());
    }
    page.bullets(table.notes());
  }

  private static void heatRows(Markdown page, String who, List<HeatTable.Row> rows) {
    page.paragraph(who + ":");
    page.head("from °F", "breaks", "rest", "at most", "helmets", "and");
    for (HeatTable.Row row : rows) {
      page.row(
          row.from() == Double.NEGATIVE_INFINITY ? "any" : String.valueOf(row.from()),
          row.cancel()
              ? "no practice"
              : row.breaks() > 0
                  ? row.breaks() + " of " + row.breakMinutes() + " min an hour"
                  : "–",
          row.restAnHour() > 0 ? row.restAnHour() + " min an hour" : "–",
          row.mostMinutes().isPresent() ? row.mostMinutes().getAsInt() + " min" : "–",
          row.cancel() ? "–" : row.gear() ? "yes" : "no, so no bats",
          row.note().isEmpty() ? "–" : row.note());
    }
  }

  private static void band(Markdown page, RuleBook.Band band) {
    page.paragraph(
        "Ages "
            + band.ageFrom()
            + " to "
            + band.ageTo()
            + ": at most "
            + band.dailyMax()
            + " pitches a day"
            + (band.weeklyMax().isPresent()
                ? ", " + band.weeklyMax().getAsInt() + " in any 7 days."
                : "."));
    page.head("pitches", "days of rest");
    for (RuleBook.RestRow row : band.rest()) {
      page.row(
          row.to().isPresent()
              ? row.from() + " to " + row.to().getAsInt()
              : row.from() + " or more",
          row.days() + (row.confirmed() ? "" : " (own row not confirmed; that of the next one)"));
    }
  }
}
