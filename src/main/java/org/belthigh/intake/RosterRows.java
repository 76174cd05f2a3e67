package org.belthigh.intake;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.model.Bats;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Printable;
import org.belthigh.model.Problem;
import org.belthigh.model.Space;

/** Reads the roster, and remembers whom it had to set aside. */
final class RosterRows {
  static final String COLUMNS =
      "id* first_name* last_name born* bats* throws number group* pitches catches sex height_cm"
          + " language home_days needs guest home_space home_gear";

  /** Ids name files, so they hold nothing that a path could be made of. */
  static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}_-]{0,39}");

  static final String ID_ALLOWED = "letters, digits, - and _, at most 40";

  private static final List<String> GEAR = List.of("plastic", "foam", "tee", "net", "none");
  private static final int YOUNGEST = 5;
  private static final int OLDEST = 19;
  private static final int MOST_OFF_GROUP = 1;

  private final Club club;
  private final Map<String, RosterRow> read = new HashMap<>();
  private final Map<String, Origin> setAside = new LinkedHashMap<>();
  private final List<RosterRow> rows = new ArrayList<>();

  /** The rows of one roster whose ids stand in another, by the two files. */
  private final Map<String, List<RosterRow>> twice = new HashMap<>();

  RosterRows(Club club) {
    this.club = club;
  }

  /** Where players stand whose row could not be used, by id. */
  Map<String, Origin> setAside() {
    return setAside;
  }

  /** Every row, in the order of reading. */
  List<RosterRow> rows() {
    return rows;
  }

  /** The rows of the players. */
  List<RosterRow> used() {
    return rows.stream().filter(RosterRow::used).toList();
  }

  /** The rows of those who have no plan; not a second row of a child who has one. */
  List<RosterRow> absent() {
    Map<String, RosterRow> used =
        rows.stream()
            .filter(RosterRow::used)
            .collect(Collectors.toMap(RosterRow::key, row -> row, (a, b) -> a));
    return rows.stream()
        .filter(row -> !row.used())
        .filter(row -> !used.containsKey(row.key()) || !used.get(row.key()).sameChild(row))
        .toList();
  }

  Optional<Player> row(Cells cells) {
    Optional<String> id = id(cells);
    Optional<Player> player = player(cells, id.orElse(""));
    RosterRow row = RosterRow.of(cells, club, player.isPresent());
    rows.add(row);
    if (row.used()) {
      read.put(row.key(), row);
      setAside.remove(row.id());
    } else if (!row.id().isEmpty() && !read.containsKey(row.key())) {
      setAside.putIfAbsent(row.id(), cells.origin());
    }
    return player;
  }

  private Optional<String> id(Cells cells) {
    String id = cells.needText("id", ID_ALLOWED);
    if (!id.isEmpty() && !ID.matcher(id).matches()) {
      cells.fault(
          "id", "'" + id + "' cannot name a file", "id must be " + ID_ALLOWED, "Maybe p01.");
    } else {
      refuseAgain(cells, RosterRow.of(cells, club, false));
    }
    return cells.sound() ? Optional.of(id) : Optional.empty();
  }

  private void refuseAgain(Cells cells, RosterRow row) {
    RosterRow before = read.get(row.key());
    if (before != null && !before.origin().file().equals(row.origin().file())) {
      String files = before.origin().file() + "\n" + row.origin().file();
      List<RosterRow> both = twice.computeIfAbsent(files, f -> new ArrayList<>());
      both.add(row);
      cells.faultOnce(files, rows -> rosterTwice(both, before.origin().file()));
    } else if (before != null) {
      cells.fault(
          "id",
          "'"
              + row.id()
              + "' stands already on line "
              + before.origin().line()
              + ", so this row has no plan",
          "each id must stand once, capitals or not"
              + (before.sameChild(row) ? "" : "; until then ask before " + before.id() + " plays"),
          "Maybe the row was copied and its id not changed.");
    }
  }

  /** One question for two rosters, however many children stand in both. */
  private Problem rosterTwice(List<RosterRow> both, String first) {
    List<String> others =
        both.stream()
            .filter(row -> !read.get(row.key()).sameChild(row))
            .map(row -> read.get(row.key()).id())
            .toList();
    return Problem.fault(
        both.get(0).origin(),
        "id",
        "there are two rosters: "
            + Notes.rows(both.size())
            + " of this one "
            + (both.size() == 1 ? "has an id that stands" : "have ids that stand")
            + " in "
            + first
            + " already, whose rows are kept",
        "each id must stand once, capitals or not"
            + (others.isEmpty()
                ? ""
                : "; they name other children, so until then ask before "
                    + Cells.oneOf(others)
                    + (others.size() == 1 ? " plays" : " play")),
        "Which of the two is right? Empty or delete the other.");
  }

  private Optional<Player> player(Cells cells, String id) {
    String firstName = cells.needText("first_name", "the name the child is called by");
    Optional<LocalDate> born = born(cells);
    Optional<Bats> bats = bats(cells);
    Optional<Club.Group> group = group(cells);
    if (!cells.sound()) {
      return Optional.empty();
    }
    group.ifPresent(g -> compareAge(cells, g, born.orElseThrow()));
    Cells spare = cells.forgiving();
    return Optional.of(
        new Player(
            id,
            shown(cells, id, firstName),
            filled(cells, "last_name").filter(Printable::all),
            born.orElseThrow(),
            bats.orElseThrow(),
            spare.parsed("throws", "L or R", List.of(), Sides::parse),
            spare.whole("number", 0, 999),
            group.orElseThrow().id(),
            // empty is no "no"; what cannot be read keeps the arm off the mound
            spare.yesNo("pitches").orElse(!cells.has("pitches")),
            spare.yesNo("catches").orElse(false),
            sex(spare),
            spare.number("height_cm", 60, 230),
            language(spare),
            homeDays(spare),
            filled(cells, "needs"),
            spare.yesNo("guest").orElse(false),
            home(spare)));
  }

  /** What sheets call the child: the first name; where they cannot show it, the id. */
  private String shown(Cells cells, String id, String firstName) {
    if (Printable.all(firstName)) {
      return firstName;
    }
    String shown = Printable.all(id) ? id : "Player " + (rows.size() + 1);
    cells.remarkOnce(
        "name " + id, count -> Unprintable.name(cells.origin("first_name"), id, shown));
    return shown;
  }

  private static Optional<String> filled(Cells cells, String column) {
    return Optional.of(cells.text(column)).filter(text -> !text.isEmpty());
  }

  private Optional<LocalDate> born(Cells cells) {
    Optional<LocalDate> born = cells.date("born");
    if (born.isEmpty()) {
      return born;
    }
    int age = Period.between(born.get(), club.seasonFirst()).getYears();
    if (age < YOUNGEST || age > OLDEST) {
      cells.fault(
          "born",
          "the day makes the player " + age + " on " + club.seasonFirst(),
          "a player must be " + YOUNGEST + " to " + OLDEST + " when the season begins",
          "Maybe the year was mistyped.");
      return Optional.empty();
    }
    return born;
  }

  private static Optional<Bats> bats(Cells cells) {
    cells.need("bats", "L, R or S");
    return cells.parsed("bats", "L, R or S", List.of(), Sides::parseBats);
  }

  private Optional<Club.Group> group(Cells cells) {
    List<String> ids = club.groups().stream().map(Club.Group::id).toList();
    String allowed = "a group of club.yaml: " + Cells.oneOf(ids);
    cells.need("group", allowed);
    return cells.parsed("group", allowed, ids, club::groupCalled);
  }

  /** A year off is usual, for calendar age and league age differ; more is worth a look. */
  private void compareAge(Cells cells, Club.Group group, LocalDate born) {
    int age = Period.between(born, club.seasonFirst()).getYears();
    if (age < group.ageFrom() - MOST_OFF_GROUP || age > group.ageTo() + MOST_OFF_GROUP) {
      cells.warning(
          "group",
          "the player is " + age + " on " + club.seasonFirst() + " and in " + group.name(),
          group.id() + " is for ages " + group.ageFrom() + " to " + group.ageTo(),
          "Maybe the group or the year of birth was mistyped.");
    }
  }

  private static Optional<String> sex(Cells cells) {
    return cells.parsed(
        "sex",
        "F or M",
        List.of(),
        text -> Optional.of(text.toUpperCase(Locale.ROOT)).filter(Set.of("F", "M")::contains));
  }

  private String language(Cells cells) {
    return cells
        .parsed("language", Cells.oneOf(ClubFile.LANGUAGES), List.of(), ClubFile::language)
        .orElse(club.languages().get(0));
  }

  private static Set<DayOfWeek> homeDays(Cells cells) {
    return cells
        .parsed("home_days", "days such as mon wed sun", List.of(), RosterRows::days)
        .orElse(Set.of());
  }

  private static Home home(Cells cells) {
    return new Home(
        cells.word("home_space", Space.class).orElse(Home.USUAL.space()),
        cells
            .parsed("home_gear", "of plastic foam tee net, or none", GEAR, RosterRows::gear)
            .orElse(Home.USUAL.gear()));
  }

  private static Optional<Set<Home.Gear>> gear(String text) {
    Set<Home.Gear> gear = EnumSet.noneOf(Home.Gear.class);
    for (String word : text.toLowerCase(Locale.ROOT).split("[\\s,;/]+", -1)) {
      Optional<Home.Gear> one = Coded.find(Home.Gear.class, word);
      if (one.isEmpty() && !word.isEmpty() && !word.equals("none")) {
        return Optional.empty();
      }
      one.ifPresent(gear::add);
    }
    return Optional.of(gear);
  }

  private static Optional<Set<DayOfWeek>> days(String text) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    List<String> words =
        Stream.of(text.toUpperCase(Locale.ROOT).split("[\\s,;/-]+", -1))
            .filter(w -> !w.isEmpty())
            .toList();
    for (String word : words) {
      Optional<DayOfWeek> day =
          Stream.of(DayOfWeek.values())
              .filter(d -> word.length() >= 3 && d.name().startsWith(word))
              .findFirst();
      if (day.isEmpty()) {
        return Optional.empty();
      }
      days.add(day.get());
    }
    return Optional.of(days);
  }

  /** The players by id, in the order they were read. */
  static Map<String, Player> byId(List<Player> players) {
    return players.stream()
        .collect(Collectors.toMap(Player::id, p -> p, (a, b) -> a, LinkedHashMap::new));
  }
}
