package org.belthigh.intake;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.belthigh.intake.Event.Kind;

/** Reads the calendar. */
final class CalendarRows {
  static final String COLUMNS =
      "date* group* kind* start minutes hitting_minutes adults place note";

  private static final String ALL = "all";
  private static final int DAY_MINUTES = 1440;

  private final Bearings bearings;

  CalendarRows(Bearings bearings) {
    this.bearings = bearings;
  }

  Optional<Event> row(Cells cells) {
    Optional<LocalDate> date = bearings.day(cells);
    Optional<String> group = group(cells);
    Optional<Kind> kind = cells.needWord("kind", Kind.class);
    Optional<LocalTime> start = cells.time("start");
    int minutes = cells.whole("minutes", 0, DAY_MINUTES).orElse(0);
    OptionalInt hitting = hitting(cells, minutes);
    OptionalInt adults = cells.whole("adults", 0, 99);
    if (!cells.sound()) {
      return Optional.empty();
    }
    int usual = kind.orElseThrow() == Kind.PRACTICE ? minutes / 2 : 0;
    return Optional.of(
        new Event(
            date.orElseThrow(),
            group.filter(g -> !g.equals(ALL)),
            kind.orElseThrow(),
            start,
            minutes,
            hitting.orElse(usual),
            adults,
            cells.text("place"),
            cells.text("note"),
            cells.origin()));
  }

  private static OptionalInt hitting(Cells cells, int minutes) {
    OptionalInt hitting = cells.whole("hitting_minutes", 0, DAY_MINUTES);
    if (minutes > 0 && hitting.orElse(0) > minutes) {
      cells.fault(
          "hitting_minutes",
          hitting.getAsInt() + " minutes of hitting in an event of " + minutes,
          "hitting_minutes must be at most minutes",
          "Maybe the two are swapped.");
    }
    return hitting;
  }

  private Optional<String> group(Cells cells) {
    List<String> ids =
        Stream.concat(bearings.club().groups().stream().map(Club.Group::id), Stream.of(ALL))
            .toList();
    String allowed = "a group of club.yaml or all: " + Cells.oneOf(ids);
    cells.need("group", allowed);
    return cells.parsed(
        "group",
        allowed,
        ids,
        text ->
            text.toLowerCase(Locale.ROOT).equals(ALL)
                ? Optional.of(ALL)
                : bearings.club().groupCalled(text).map(Club.Group::id));
  }
}
