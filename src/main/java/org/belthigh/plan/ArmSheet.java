package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.model.Coded;
import org.belthigh.model.Phrase;

/**
 * Who may pitch and catch on each day of a week, as known on the day the sheet is made for.
 *
 * @param days the week's dates
 * @param events what the calendar has on each of those days, one entry per day
 * @param rows players who pitch or catch
 * @param tables the rule books in pocket size
 * @param cautions who comes first, and what to do when more was thrown
 */
public record ArmSheet(
    List<LocalDate> days,
    List<Optional<Phrase>> events,
    List<Row> rows,
    List<PocketTable> tables,
    List<Phrase> cautions) {
  public ArmSheet {
    days = List.copyOf(days);
    events = List.copyOf(events);
    rows = List.copyOf(rows);
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
  }

  /** One player. {@code cells} has one entry per day. */
  public record Row(
      Label who,
      boolean pitches,
      boolean catches,
      List<Cell> cells,
      Optional<LocalDate> knownTo,
      Phrase note) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** One player's day. {@code pitches} is the most for that day, 0 unless the answer is may. */
  public record Cell(Answer answer, int pitches, boolean mayCatch) {}

  /** Whether a player may pitch. */
  public enum Answer implements Coded {
    MAY,
    NO,
    ASK
  }

  /**
   * A rule book for one age, to recompute by hand.
   *
   * @param weeklyMax most pitches in any seven days; empty where neither book nor club says
   * @param ages the ages it is for
   * @param source rule book, edition and who publishes it
   */
  public record PocketTable(
      Phrase ages, int dailyMax, OptionalInt weeklyMax, List<RestLine> rest, Phrase source) {
    public PocketTable {
      rest = List.copyOf(rest);
    }
  }

  /** So many pitches, so many days of rest. {@code to} is empty for no upper end. */
  public record RestLine(int from, OptionalInt to, int days) {}
}
