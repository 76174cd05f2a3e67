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
 * @param tournament the week's tournament days game by game; empty in a week without one
 */
public record ArmSheet(
    List<LocalDate> days,
    List<Optional<Phrase>> events,
    List<Row> rows,
    List<PocketTable> tables,
    List<Phrase> cautions,
    List<GameDay> tournament) {
  public ArmSheet {
    days = List.copyOf(days);
    events = List.copyOf(events);
    rows = List.copyOf(rows);
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
    tournament = List.copyOf(tournament);
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

  /**
   * A tournament day, to be written on from game to game.
   *
   * @param cautions what counts on a day with several games
   * @param pitchers who may pitch on it, or did already; nobody else does
   */
  public record GameDay(LocalDate day, List<Phrase> cautions, List<Pitcher> pitchers) {
    public GameDay {
      cautions = List.copyOf(cautions);
      pitchers = List.copyOf(pitchers);
    }
  }

  /**
   * One pitcher's tournament day.
   *
   * @param cell what is left of the day after the games that are known
   * @param knownTo last day of which anything was reported; empty for never
   * @param games the lines to write on, those already reported filled in
   */
  public record Pitcher(Label who, Cell cell, Optional<LocalDate> knownTo, List<Game> games) {
    public Pitcher {
      games = List.copyOf(games);
    }

    /** Pitches already reported for the day. */
    public int reported() {
      return games.stream().flatMapToInt(g -> g.pitches().stream()).sum();
    }
  }

  /**
   * A line for one game.
   *
   * @param name as the log has it, or a number from 1; empty where it is to be written in
   * @param pitches what was reported; empty where nothing was, which is not zero
   */
  public record Game(String name, OptionalInt pitches) {}

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
