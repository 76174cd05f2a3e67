package org.belthigh.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.files.Fields;
import org.belthigh.model.Coded;

/** Reads and checks one rule book: {@code rules/books/*.yaml}, or a file of the user's. */
final class RuleBookFile {
  private static final int OLDEST = 99;
  private static final int MOST_PITCHES = 300;
  private static final int MOST_A_WEEK = 700;
  private static final int MOST_DAYS = 30;

  private RuleBookFile() {}

  /** How sure we are of a row. */
  private enum Row implements Coded {
    CONFIRMED,
    FROM_MEMORY
  }

  static RuleBook read(Fields f, Places places) {
    String id = f.text("id");
    places.note("rule book", id, f);
    RuleBook.Status status = f.word("status", RuleBook.Status.class);
    List<RuleBook.Band> bands = f.each("bands", RuleBookFile::band);
    refuseAgeGaps(f, bands, status);
    refuseFalseStatus(f, bands, status);
    return new RuleBook(
        id,
        f.optionalText("series"),
        f.text("organisation"),
        f.text("title"),
        f.text("edition"),
        f.optionalDate("effective_from"),
        f.optionalDate("effective_to"),
        f.word("age", RuleBook.AgeBasis.class),
        f.texts("sources"),
        status,
        bands,
        f.optionalWhole("consecutive_days", 1, MOST_DAYS),
        f.inside("appearances", RuleBookFile::appearances),
        f.optionalWord("same_day", RuleBook.SameDay.class).orElse(RuleBook.SameDay.UNSAID),
        f.inside("catcher", RuleBookFile::catcher),
        f.flag("avoid_catching", false),
        f.optionalWord("finish_the_batter", RuleBook.LegalCount.class)
            .orElse(RuleBook.LegalCount.EVERY_PITCH),
        f.each("years", RuleBookFile::year),
        f.each("limits", RuleBookFile::limit),
        f.texts("notes"));
  }

  private static RuleBook.Limit limit(Fields f) {
    int[] ages = ages(f, 0);
    return new RuleBook.Limit(
        f.text("what"),
        ages[0],
        ages[1],
        f.optionalWhole("days", 1, MOST_DAYS).orElse(1),
        f.whole("most", 0, MOST_A_WEEK),
        f.text("source"));
  }

  private static RuleBook.Appearances appearances(Fields f) {
    return new RuleBook.Appearances(f.whole("most", 1, 20), f.whole("days", 2, MOST_DAYS));
  }

  private static RuleBook.Year year(Fields f) {
    int[] ages = ages(f, 0);
    return new RuleBook.Year(
        ages[0],
        ages[1],
        f.optionalWhole("innings", 1, 300),
        f.whole("months_off", 0, 11),
        f.whole("months_in_a_row", 0, 11),
        f.text("source"));
  }

  private static RuleBook.CatcherRules catcher(Fields f) {
    int[] older =
        ages(f, "return_ages_older", 1, "the first and the last age of the higher figure");
    return new RuleBook.CatcherRules(
        f.whole("pitches_that_bar_catching", 1, MOST_PITCHES),
        f.whole("innings_that_bar_pitching", 1, 20),
        f.whole("return_pitches", 1, MOST_PITCHES),
        f.whole("return_pitches_older", 1, MOST_PITCHES),
        older[0],
        older[1],
        f.text("source"));
  }

  private static RuleBook.Band band(Fields f) {
    int[] ages = ages(f, 1);
    int dailyMax = f.whole("daily_max", 1, MOST_PITCHES);
    OptionalInt weeklyMax = f.optionalWhole("weekly_max", 1, MOST_A_WEEK);
    List<RuleBook.RestRow> rest = f.each("rest", RuleBookFile::row);
    refusePitchGaps(f, rest, dailyMax);
    return new RuleBook.Band(ages[0], ages[1], dailyMax, weeklyMax, confirmed(f, rest));
  }

  /** The rows, each that is from memory with the days of the next one that is confirmed. */
  private static List<RuleBook.RestRow> confirmed(Fields f, List<RuleBook.RestRow> printed) {
    List<RuleBook.RestRow> rows = new ArrayList<>(printed);
    for (int i = rows.size() - 1; i >= 0; i--) {
      RuleBook.RestRow row = rows.get(i);
      if (!row.confirmed() && i == rows.size() - 1) {
        f.refuse(
            "rest",
            "the last row is from memory",
            "a row that is from memory is read as the next one, so the last one must be confirmed",
            "Leave the band out until a source is found.");
      } else if (!row.confirmed()) {
        rows.set(i, new RuleBook.RestRow(row.from(), row.to(), rows.get(i + 1).days(), false));
      }
    }
    return rows;
  }

  private static int[] ages(Fields f, int youngest) {
    return ages(f, "ages", youngest, "the youngest and the oldest age of the band");
  }

  private static int[] ages(Fields f, String key, int youngest, String what) {
    Optional<int[]> ages = f.pair(key, youngest, OLDEST);
    if (ages.isEmpty() && !f.has(key)) {
      f.refuse(
          key, "the key is missing or empty", key + " must be " + what, "Write it as [9, 10].");
    }
    return ages.orElse(new int[] {1, OLDEST});
  }

  private static RuleBook.RestRow row(Fields f) {
    return new RuleBook.RestRow(
        f.whole("from", 1, MOST_PITCHES),
        f.optionalWhole("to", 1, MOST_PITCHES),
        f.whole("days", 0, MOST_DAYS),
        f.optionalWord("status", Row.class).orElse(Row.CONFIRMED) == Row.CONFIRMED);
  }

  private static void refuseFalseStatus(
      Fields f, List<RuleBook.Band> bands, RuleBook.Status status) {
    boolean unsure =
        bands.stream().flatMap(b -> b.rest().stream()).anyMatch(row -> !row.confirmed());
    if (unsure && status == RuleBook.Status.CONFIRMED) {
      f.refuse(
          "status",
          "the book is called confirmed, and a row is from memory",
          "a book with a row from memory is 'partly' confirmed",
          "Write status: partly.");
    }
    if (status == RuleBook.Status.OPEN && !bands.isEmpty()) {
      f.refuse(
          "status",
          "the book is called open, and has numbers",
          "an open book has none, since none is confirmed",
          "Write status: partly, and say of each row how sure it is.");
    }
  }

  private static void refuseAgeGaps(Fields f, List<RuleBook.Band> bands, RuleBook.Status status) {
    if (bands.isEmpty() && status != RuleBook.Status.OPEN) {
      f.refuse(
          "bands",
          "there is no band that can be read",
          "a rule book has at least one age band",
          "Add a band such as {ages: [9, 10], daily_max: 75, rest: […]}.");
    }
    for (int i = 1; i < bands.size(); i++) {
      int due = bands.get(i - 1).ageTo() + 1;
      int from = bands.get(i).ageFrom();
      if (from != due) {
        f.refuse(
            "bands",
            "ages " + bands.get(i - 1).ageTo() + " and " + from + " follow each other",
            "bands stand youngest first, without gap or overlap, so the next begins at " + due,
            "Correct the ages of one of the two bands.");
      }
    }
  }

  private static void refusePitchGaps(Fields f, List<RuleBook.RestRow> rows, int dailyMax) {
    int due = 1;
    for (int i = 0; i < rows.size(); i++) {
      RuleBook.RestRow row = rows.get(i);
      if (row.from() != due) {
        f.refuse(
            "rest",
            "a row begins at " + row.from() + " pitches",
            "rows begin at 1 and go on without gap or overlap, so this one begins at " + due,
            "Correct where the row begins, or where the one before it ends.");
      }
      if (i > 0 && row.days() < rows.get(i - 1).days()) {
        f.refuse(
            "rest",
            row.days() + " days follow " + rows.get(i - 1).days(),
            "more pitches never need less rest",
            "Correct the days of one of the two rows.");
      }
      due = end(f, row, i == rows.size() - 1, dailyMax) + 1;
    }
    if (rows.isEmpty()) {
      f.refuse(
          "rest",
          "there is no row that can be read",
          "a band has at least one row of rest",
          "Add a row such as {from: 1, to: 20, days: 0}.");
    }
  }

  private static int end(Fields f, RuleBook.RestRow row, boolean last, int dailyMax) {
    OptionalInt to = row.to();
    boolean open = to.isEmpty();
    if (!last && (open || to.getAsInt() < row.from())) {
      f.refuse(
          "rest",
          "the row from " + row.from() + " ends " + (open ? "nowhere" : "at " + to.getAsInt()),
          "only the last row may be open, and a row ends where it begins or later",
          "Write the most pitches of the row as 'to'.");
    }
    if (last && !open && to.getAsInt() != dailyMax) {
      f.refuse(
          "rest",
          "the last row ends at " + to.getAsInt(),
          "the last row is open or ends at the most pitches of a day, " + dailyMax,
          "Leave out 'to' in the last row.");
    }
    return to.orElse(MOST_PITCHES);
  }
}
