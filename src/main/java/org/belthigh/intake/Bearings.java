package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.files.Nearest;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** What rows are checked against. */
final class Bearings {
  /** Cells in which other days and names may stand. */
  private static final List<String> OF_WORDS = List.of("date", "player", "note", "team", "game");

  private final List<Cells> healthInLogs = new ArrayList<>();
  private final Club club;
  private final Curriculum curriculum;
  private final Drills drills;
  private final Map<String, Player> players;
  private final Map<String, Origin> setAside;
  private final NameBook<RosterRow> absent;
  private final Map<String, RosterRow> rows = new HashMap<>();
  private Optional<NameBook<Named>> names = Optional.empty();

  /**
   * What rows are checked against.
   *
   * @param players by id, in roster order
   * @param setAside where players stand whose roster row could not be used
   * @param used the rows of the players, which have their names as they are written
   * @param absent the rows of those who have no plan: nobody else goes by one of their names
   */
  Bearings(
      Club club,
      Curriculum curriculum,
      Drills drills,
      Map<String, Player> players,
      Map<String, Origin> setAside,
      List<RosterRow> used,
      List<RosterRow> absent) {
    this.club = club;
    this.curriculum = curriculum;
    this.drills = drills;
    this.players = players;
    this.setAside = setAside;
    this.absent = new NameBook<>(absent);
    used.forEach(row -> rows.putIfAbsent(row.id(), row));
  }

  Club club() {
    return club;
  }

  Curriculum curriculum() {
    return curriculum;
  }

  Map<String, Player> players() {
    return players;
  }

  /** The player whom the row names; a fault where there is none. */
  Optional<Player> player(Cells cells) {
    if (!cells.need("player", "a player's id of the roster")) {
      return Optional.empty();
    }
    String text = cells.text("player");
    if (setAside.containsKey(text)) {
      cells.faultOnce(
          "set-aside " + text, rows -> withoutPlayer(cells.origin("player"), text, rows));
      return Optional.empty();
    }
    List<Player> called = called(text, cells.text("group"));
    if (!players.containsKey(text) && goesByAbsent(text)) {
      cells.fault(
          "player",
          "'" + text + "' may be a player who was set aside in the roster",
          "player must be an id of a usable roster row",
          "Correct the roster first, or write the id.");
      return Optional.empty();
    }
    if (called.size() == 1) {
      if (!players.containsKey(text)) {
        cells.tell("with players by name or shirt number");
      }
      return Optional.of(called.get(0));
    }
    List<String> ids = called.stream().map(Player::id).toList();
    if (ids.isEmpty()) {
      cells.fault(
          "player",
          "'" + text + "' is not in the roster",
          "player must be an id of the roster",
          nearest(text)
              .map(id -> "Maybe " + id + ".")
              .orElse("Maybe the player is missing from the roster."));
    } else {
      cells.fault(
          "player",
          "'" + text + "' is a name or number of more than one player",
          "player must be an id of the roster where two share a name or a number",
          "Maybe " + Cells.oneOf(ids) + ".");
    }
    return Optional.empty();
  }

  /**
   * The player with that id; without one, all whom the text can mean, those of the group first
   * where one is named.
   */
  List<Player> called(String text, String group) {
    Player byId = players.get(text);
    if (byId != null) {
      return List.of(byId);
    }
    List<Player> all = players(names().called(text));
    List<Player> own =
        all.stream()
            .filter(p -> p.group().equalsIgnoreCase(group) || p.id().equals(NameBook.plain(text)))
            .toList();
    return own.isEmpty() ? all : own;
  }

  /** What each player goes by: as the roster has it, for sheets may call one by the id. */
  private NameBook<Named> names() {
    if (names.isEmpty()) {
      names = Optional.of(new NameBook<>(named(players.values(), rows)));
    }
    return names.get();
  }

  private static List<Named> named(Collection<Player> players, Map<String, RosterRow> rows) {
    return players.stream()
        .map(p -> rows.containsKey(p.id()) ? (Named) rows.get(p.id()) : p)
        .toList();
  }

  private List<Player> players(List<Named> named) {
    return named.stream().map(n -> players.get(n.id())).toList();
  }

  /** The id of the player whose id or name resembles {@code text} most. */
  private Optional<String> nearest(String text) {
    return Nearest.to(text, players.keySet())
        .or(
            () ->
                Optional.of(names().nearest(text))
                    .filter(near -> near.size() == 1)
                    .map(near -> near.get(0).id()));
  }

  /**
   * The ids of all whom the row may be about: of the player or players it names, else of all whom
   * it resembles; of those too whom it would name, had it not been cut off there. None where it may
   * be anyone.
   */
  List<String> meant(Cells cells) {
    String text = cells.text("player");
    if (text.isEmpty() || (!cells.intact() && cells.clearDate("date").isEmpty())) {
      return List.of();
    }
    Set<String> ids = new LinkedHashSet<>();
    if (isSetAside(text)) {
      ids.add(text);
    }
    called(text, cells.text("group")).forEach(p -> ids.add(p.id()));
    if (ids.isEmpty()) {
      ids.addAll(names().similar(text));
    }
    if (cells.endsAt("player")) {
      ids.addAll(names().beginningWith(text));
    }
    List<String> swallowed = swallowed(cells);
    if (swallowed.isEmpty() && swallowsRow(cells)) {
      return List.of();
    }
    ids.addAll(swallowed);
    return List.copyOf(ids);
  }

  /** The ids of all whose row may have run into this one: who is named in its other cells. */
  List<String> swallowed(Cells cells) {
    return besides(cells)
        .filter(text -> !cells.intact() || text.chars().anyMatch(Character::isLetter))
        .flatMap(text -> called(text, "").stream())
        .map(Player::id)
        .toList();
  }

  /** Whether another row may have run into this one: a day stands where none belongs. */
  boolean swallowsRow(Cells cells) {
    return besides(cells).anyMatch(text -> Dates.LIKE_DAY.matcher(text).matches());
  }

  private static Stream<String> besides(Cells cells) {
    return cells.besides(cells.intact() ? OF_WORDS : List.of("date", "player")).stream();
  }

  /** Whether a child may be meant whose roster row could not be used. */
  private boolean isSetAside(String text) {
    return setAside.containsKey(text) || goesByAbsent(text);
  }

  private boolean goesByAbsent(String text) {
    return !absent.called(text).isEmpty();
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

  /**
   * The day of an outing: a fault where it cannot be, or where it lies outside the season and the
   * twelve months before it.
   */
  Optional<LocalDate> outingDay(Cells cells) {
    Optional<LocalDate> day = day(cells);
    if (day.isPresent() && day.get().isAfter(club.seasonLast())) {
      cells.fault(
          "date",
          day.get() + " lies after the season's last day",
          "the date of an outing must be from " + earliest() + " to " + club.seasonLast(),
          "Maybe the year was mistyped; or the season in club.yaml should last longer.");
      return Optional.empty();
    }
    return day;
  }

  /** Whether {@code day} can be that of an outing. */
  boolean inReachOfOutings(LocalDate day) {
    return inReach(day) && !day.isAfter(club.seasonLast());
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

  /** Rows of logs that speak of somebody's health in the place of a drill. */
  List<Cells> healthInLogs() {
    return List.copyOf(healthInLogs);
  }

  /** The drill of the row; a fault where the curriculum has none of that id. */
  Optional<Drill> drill(Cells cells) {
    String allowed = "a drill of the curriculum " + curriculum.id();
    if (!cells.need("drill", allowed)) {
      return Optional.empty();
    }
    String text = cells.text("drill");
    Optional<Drill> drill = drills.find(text);
    if (drill.isEmpty() && HealthWords.in(text)) {
      healthInLogs.add(cells);
      cells.fault(
          "drill",
          "'" + text + "' speaks of somebody's health",
          "drill must be " + allowed + "; until then ask before the player plays",
          "Write it into wellness.csv, and take it out here.");
    } else if (drill.isEmpty()) {
      cells.fault(
          "drill",
          "'" + text + "' is not known",
          "drill must be " + allowed,
          drills
              .near(text)
              .map(near -> "Maybe " + near + ".")
              .orElse("Maybe zone-call, countdown or field-call."));
    }
    return drill;
  }

  /** The drills of a curriculum by id and, where that is nobody else's, by name. */
  static final class Drills {
    private final Map<String, Drill> byId;
    private final Map<String, Drill> byName = new HashMap<>();

    /** The most words in a name. */
    private final int longest;

    Drills(Curriculum curriculum) {
      this.byId = curriculum.drills();
      Set<String> shared = new HashSet<>();
      for (Drill drill : byId.values()) {
        drill.name().byLanguage().values().stream()
            .map(name -> Vocabulary.plain(name, '-'))
            .distinct()
            .forEach(
                name -> {
                  if (byName.putIfAbsent(name, drill) != null) {
                    shared.add(name);
                  }
                });
      }
      byName.keySet().removeAll(shared);
      longest = byName.keySet().stream().mapToInt(n -> n.split("-", -1).length).max().orElse(1);
    }

    /** How many words from {@code from} on are the id or the name of a drill; 0 where none is. */
    int words(List<String> words, int from) {
      for (int end = Math.min(words.size(), from + longest); end > from; end--) {
        if (find(String.join(" ", words.subList(from, end))).isPresent()) {
          return end - from;
        }
      }
      return 0;
    }

    /** The drill of that id or name. */
    Optional<Drill> find(String text) {
      Drill exact = byId.get(text);
      if (exact != null) {
        return Optional.of(exact);
      }
      String plain = Vocabulary.plain(text, '-');
      return Optional.ofNullable(byId.getOrDefault(plain, byName.get(plain)));
    }

    /** The id of the drill whose id or name resembles {@code text} most. */
    Optional<String> near(String text) {
      String plain = Vocabulary.plain(text, '-');
      return Nearest.to(plain, byId.keySet())
          .or(() -> Nearest.to(plain, byName.keySet()).map(name -> byName.get(name).id()));
    }
  }
}
