package org.belthigh.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.files.Nearest;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * What rows are checked against.
 *
 * @param players by id, in roster order
 * @param setAside where players stand whose roster row could not be used
 */
record Bearings(
    Club club, Curriculum curriculum, Map<String, Player> players, Map<String, Origin> setAside) {

  /** The player whom the row names; a fault where there is none. */
  Optional<Player> player(Cells cells) {
    if (!cells.need("player", "a player's id of the roster")) {
      return Optional.empty();
    }
    String id = cells.text("player");
    if (setAside.containsKey(id)) {
      cells.faultOnce("set-aside " + id, rows -> withoutPlayer(cells.origin("player"), id, rows));
      return Optional.empty();
    }
    Optional<Player> player = Optional.ofNullable(players.get(id));
    if (player.isEmpty()) {
      cells.fault(
          "player",
          "'" + id + "' is not in the roster",
          "player must be an id of the roster",
          nearest(id)
              .map(p -> "Maybe " + p.id() + ".")
              .orElse("Maybe the player is missing from the roster."));
    }
    return player;
  }

  private Optional<Player> nearest(String id) {
    return Nearest.to(id, players.keySet()).map(players::get);
  }

  /** The player of that id alone where there is one, else all whose ids it resembles. */
  List<String> similar(String id) {
    if (players.containsKey(id) || setAside.containsKey(id)) {
      return List.of(id);
    }
    return players.keySet().stream()
        .filter(known -> Nearest.to(id, List.of(known)).isPresent())
        .toList();
  }

  private Problem withoutPlayer(Origin origin, String id, int rows) {
    return Problem.fault(
        origin,
        "player",
        id + " was set aside in the roster, so " + Notes.rows(rows) + " here cannot be used",
        "player must be an id of a usable roster row",
        "Correct " + setAside.get(id) + " first.");
  }

  /** The day of the row; a fault where it cannot be or lies too far from the season. */
  Optional<LocalDate> day(Cells cells) {
    Optional<LocalDate> day = cells.date("date");
    if (day.isPresent() && !inReach(day.get())) {
      cells.fault(
          "date",
          day.get() + " is more than a year outside the season",
          "date must be from " + earliest() + " to " + latest(),
          "Maybe the year was mistyped.");
      return Optional.empty();
    }
    return day;
  }

  /** Whether {@code day} is at most a year outside the season. */
  boolean inReach(LocalDate day) {
    return !day.isBefore(earliest()) && !day.isAfter(latest());
  }

  private LocalDate earliest() {
    return club.seasonFirst().minusYears(1);
  }

  private LocalDate latest() {
    return club.seasonLast().plusYears(1);
  }

  /** The drill of the row; a fault where the curriculum has none of that id. */
  Optional<Drill> drill(Cells cells) {
    String allowed = "a drill of the curriculum " + curriculum.id();
    if (!cells.need("drill", allowed)) {
      return Optional.empty();
    }
    String id = cells.text("drill").toLowerCase(Locale.ROOT);
    Optional<Drill> drill = Optional.ofNullable(curriculum.drills().get(id));
    if (drill.isEmpty()) {
      cells.fault(
          "drill",
          "'" + cells.text("drill") + "' is not known",
          "drill must be " + allowed,
          Nearest.to(id, curriculum.drills().keySet())
              .map(near -> "Maybe " + near + ".")
              .orElse("Maybe zone-call, countdown or field-call."));
    }
    return drill;
  }
}
