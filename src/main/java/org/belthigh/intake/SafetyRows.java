package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.belthigh.catalogue.WhoEnds;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** Reads outings and health reports, and remembers those that it could not read. */
final class SafetyRows {
  static final String OUTING_COLUMNS =
      "date* player* pitches* kind before_last_batter innings innings_caught team game";
  static final String WELLNESS_COLUMNS = "date* player* kind* clears by note";

  private static final int MOST_PITCHES = 200;
  private static final int MOST_INNINGS = 20;

  private final Bearings bearings;
  private final WhoEnds whoEnds;
  private final List<Unread> unread = new ArrayList<>();

  /**
   * @param whoEnds for the remark on a clearance that ends nothing
   */
  SafetyRows(Bearings bearings, WhoEnds whoEnds) {
    this.bearings = bearings;
    this.whoEnds = whoEnds;
  }

  /** What could not be read, in the order of reading. */
  List<Unread> unread() {
    return unread;
  }

  /** Notes that a whole file, or its end, could not be read: it may be about anyone. */
  Problem lost(Unread.What what, String file) {
    unread.add(new Unread(what, Optional.empty(), Optional.empty(), Origin.of(file)));
    return Problem.fault(
            Origin.of(file),
            "",
            "not every row could be read",
            "each report counts; until then ask before anyone "
                + (what == Unread.What.OUTING ? "throws" : "plays"),
            "Correct what else is said of this file.")
        .asConsequence();
  }

  Optional<Outing> outing(Cells cells) {
    cells.untilThen("ask before the player throws");
    Optional<LocalDate> date = bearings.outingDay(cells);
    Optional<Player> player = bearings.player(cells);
    OptionalInt pitches = pitches(cells);
    Optional<Outing.Kind> kind = cells.word("kind", Outing.Kind.class);
    OptionalInt before = beforeLastBatter(cells, pitches);
    refuseBrokenOff(cells);
    OptionalDouble innings = innings(cells);
    OptionalInt caught = cells.whole("innings_caught", 0, MOST_INNINGS);
    if (!cells.sound()) {
      note(Unread.What.OUTING, cells);
      noteCut(Unread.What.OUTING, cells);
      return Optional.empty();
    }
    compareRoster(cells, player.orElseThrow(), pitches.getAsInt());
    return Optional.of(
        new Outing(
            date.orElseThrow(),
            player.orElseThrow().id(),
            pitches.getAsInt(),
            kind.orElse(Outing.Kind.GAME),
            before,
            innings,
            caught,
            cells.text("team"),
            cells.text("game"),
            cells.origin()));
  }

  /** A 7 at the end of a file may be what is left of a 75. */
  private static void refuseBrokenOff(Cells cells) {
    if (cells.breaksOff()) {
      cells.fault(
          "pitches",
          "the file breaks off in this row, so the last number may be cut",
          "the last row must have all its cells, or a line end",
          "Maybe the file was not copied to its end; compare the row, then save it again.");
    }
  }

  private static OptionalInt pitches(Cells cells) {
    return cells.needWhole("pitches", 0, MOST_PITCHES);
  }

  private static OptionalInt beforeLastBatter(Cells cells, OptionalInt pitches) {
    OptionalInt before = cells.whole("before_last_batter", 0, MOST_PITCHES);
    if (before.isPresent() && pitches.isPresent() && before.getAsInt() > pitches.getAsInt()) {
      cells.fault(
          "before_last_batter",
          before.getAsInt()
              + " pitches before the last batter of "
              + pitches.getAsInt()
              + " in all",
          "before_last_batter must be at most pitches",
          "Maybe the two are swapped.");
    }
    return before;
  }

  /** Innings with thirds as .1 and .2. */
  private static OptionalDouble innings(Cells cells) {
    OptionalDouble innings = cells.number("innings", 0, MOST_INNINGS);
    if (innings.isPresent() && !thirds(innings.getAsDouble())) {
      cells.fault(
          "innings",
          cells.text("innings") + " is no number of innings",
          "thirds of an inning must be written .1 and .2",
          "Maybe " + (int) innings.getAsDouble() + ".");
    }
    return innings;
  }

  private static boolean thirds(double innings) {
    long tenths = Math.round(innings * 10);
    return Math.abs(innings * 10 - tenths) < 1e-6 && tenths % 10 <= 2;
  }

  private static void compareRoster(Cells cells, Player player, int pitches) {
    if (pitches > 0 && !player.pitches()) {
      cells.remarkOnce(
          "pitches " + player.id(),
          rows ->
              Problem.warning(
                  cells.origin("player"),
                  "player",
                  player.id() + " pitches in " + Notes.rows(rows),
                  "the roster does not say that the player pitches",
                  "Maybe pitches should be yes in the roster."));
    }
  }

  Optional<Wellness> wellness(Cells cells) {
    cells.untilThen("ask before the player plays");
    Optional<LocalDate> date = bearings.day(cells);
    Optional<Player> player = bearings.player(cells);
    Optional<Wellness.Kind> kind = cells.needWord("kind", Wellness.Kind.class);
    Optional<Wellness.Kind> clears = cells.word("clears", complaints());
    Optional<Wellness.Role> by = cells.word("by", Wellness.Role.class);
    if (kind.filter(k -> k == Wellness.Kind.CLEARED).isPresent()) {
      cells.need("clears", "the kind that ends");
      cells.need("by", "who said so");
    }
    if (!cells.sound()) {
      if (kind.map(Wellness.Kind::holds).orElse(true)) {
        note(Unread.What.WELLNESS, cells);
      } else {
        noteSwallowed(Unread.What.WELLNESS, cells);
      }
      noteCut(Unread.What.WELLNESS, cells);
      return Optional.empty();
    }
    checkRole(cells, kind.orElseThrow(), clears, by);
    return Optional.of(
        new Wellness(
            date.orElseThrow(),
            player.orElseThrow().id(),
            kind.orElseThrow(),
            clears,
            by,
            cells.text("note"),
            cells.origin()));
  }

  private static List<Wellness.Kind> complaints() {
    return Arrays.stream(Wellness.Kind.values()).filter(Wellness.Kind::holds).toList();
  }

  private void checkRole(
      Cells cells, Wellness.Kind kind, Optional<Wellness.Kind> clears, Optional<Wellness.Role> by) {
    if (kind != Wellness.Kind.CLEARED
        || whoEnds.ends(clears.orElseThrow().id(), by.orElseThrow().id())) {
      return;
    }
    List<String> roles =
        Arrays.stream(Wellness.Role.values())
            .map(Wellness.Role::id)
            .filter(role -> whoEnds.ends(clears.get().id(), role))
            .toList();
    cells.warning(
        "by",
        by.get().id() + " cannot end " + clears.get().id() + ", so the hold stays",
        "by must be " + Cells.oneOf(roles),
        "Maybe someone else said it; then write who.");
  }

  /** Keeps what a log says of somebody's health until it stands where it belongs. */
  void inLog(Cells cells) {
    note(Unread.What.WELLNESS, cells);
  }

  /** Keeps a row for all whom it may be about. */
  private void note(Unread.What what, Cells cells) {
    Predicate<LocalDate> possible =
        what == Unread.What.OUTING ? bearings::inReachOfOutings : bearings::inReach;
    Optional<LocalDate> date = cells.clearDate("date").filter(possible);
    note(what, bearings.meant(cells), date, cells.origin());
  }

  /** Keeps what may have run into a row that matters to nobody itself. */
  private void noteSwallowed(Unread.What what, Cells cells) {
    List<String> about = bearings.swallowed(cells);
    if (!about.isEmpty() || bearings.swallowsRow(cells)) {
      note(what, about, Optional.empty(), cells.origin());
    }
  }

  /** Where the file breaks off inside a row, rows after it may be lost: of anyone. */
  private void noteCut(Unread.What what, Cells cells) {
    if (cells.endsFile() && isCut(cells.lastColumn(), cells)) {
      cells.fault(
          cells.lastColumn(),
          "the file breaks off in this row, so rows after it may be missing",
          "the last row must have all its cells, or a line end",
          "Maybe the file was not copied to its end; compare it, then save it again.");
      note(what, List.of(), Optional.empty(), cells.origin());
    }
  }

  /** Whether the last cell that is written is the beginning of a word, or of a row. */
  private static boolean isCut(String last, Cells cells) {
    String text = Vocabulary.plain(cells.text(last), '-');
    return switch (last) {
      case "date", "player", "clears" -> true;
      case "kind" ->
          begins(Outing.Kind.class, text)
              || begins(Wellness.Kind.class, text)
              || text.equals(Wellness.Kind.CLEARED.id());
      case "by" -> begins(Wellness.Role.class, text);
      default -> false;
    };
  }

  private static <E extends Enum<E> & Coded> boolean begins(Class<E> words, String text) {
    return Arrays.stream(words.getEnumConstants())
        .map(Coded::id)
        .anyMatch(word -> word.startsWith(text) && !word.equals(text));
  }

  private void note(Unread.What what, List<String> about, Optional<LocalDate> date, Origin origin) {
    if (about.isEmpty()) {
      unread.add(new Unread(what, Optional.empty(), date, origin));
    }
    about.forEach(id -> unread.add(new Unread(what, Optional.of(id), date, origin)));
  }

  /** Keeps those children "ask first" of whom it cannot be told which rows are theirs. */
  void doubtful(Map<String, Origin> children) {
    for (Unread.What what : Unread.What.values()) {
      children.forEach((id, origin) -> note(what, List.of(id), Optional.empty(), origin));
    }
  }
}
