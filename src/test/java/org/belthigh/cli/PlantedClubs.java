package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.belthigh.catalogue.Stricter;
import org.belthigh.intake.Club;
import org.belthigh.intake.Event;
import org.belthigh.intake.Home;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Space;

/** Clubs that changed after the plan was made: the plan stays, and is no longer theirs. */
final class PlantedClubs extends KindList {
  PlantedClubs() {
    health();
    thrown();
    roster();
    calendar();
    books();
    equipment();
    rest();
  }

  /** A kind about one child of the plan. */
  private void child(
      String id, String what, String said, Predicate<Spot> fits, ChildChange change) {
    add(
        new Planted(
            id,
            what,
            said,
            (stage, dice) -> {
              List<Spot> spots = children(stage.plan).stream().filter(fits).toList();
              if (spots.isEmpty()) {
                return Optional.empty();
              }
              LocalDate from = LocalDate.parse(stage.plan.path("from").asText());
              int first = dice.nextInt(spots.size());
              for (int i = 0; i < spots.size(); i++) {
                Spot spot = spots.get((first + i) % spots.size());
                ClubEdit edit = new ClubEdit(stage.record);
                change.apply(edit, spot, from);
                if (edit.into(stage)) {
                  return Optional.of(spot.named());
                }
              }
              return Optional.empty();
            }));
  }

  /** How many stations have an adult or a drill with a bat. */
  private static long manned(JsonNode practice) {
    long manned = 0;
    for (JsonNode station : practice.path("stations")) {
      manned += station.path("adults").asInt() > 0 ? 1 : 0;
    }
    return manned;
  }

  /** A kind about one practice of the plan and its event. */
  private void practice(
      String id, String what, String said, Predicate<Spot> fits, Function<Event, List<Event>> to) {
    add(
        new Planted(
            id,
            what,
            said,
            (stage, dice) -> {
              List<Spot> spots = practices(stage.plan).stream().filter(fits).toList();
              if (spots.isEmpty()) {
                return Optional.empty();
              }
              Spot spot = spots.get(dice.nextInt(spots.size()));
              ClubEdit edit = new ClubEdit(stage.record);
              edit.events(e -> of(e, spot) ? to.apply(e) : List.of(e));
              return edit.into(stage) ? Optional.of(spot.named()) : Optional.empty();
            }));
  }

  private static boolean of(Event event, Spot practice) {
    return event.kind() == Event.Kind.PRACTICE
        && event.date().toString().equals(practice.text("date"))
        && event.concerns(practice.text("group"));
  }

  /** A kind about the club; what must be named is found in the plan as it was. */
  private void club(
      String id, String what, String said, Predicate<Spot> fits, UnaryOperator<Club> to) {
    add(
        new Planted(
            id,
            what,
            said,
            (stage, dice) -> {
              Spot root = root(stage.plan).get(0);
              if (!fits.test(root)) {
                return Optional.empty();
              }
              ClubEdit edit = new ClubEdit(stage.record);
              edit.club = to.apply(edit.club);
              return edit.into(stage) ? Optional.of("") : Optional.empty();
            }));
  }

  /** How a club changes about one child. */
  private interface ChildChange {
    void apply(ClubEdit edit, Spot child, LocalDate from);
  }

  private static boolean free(Spot child) {
    return !child.filled("holds");
  }

  private void health() {
    for (Wellness.Kind kind :
        List.of(
            Wellness.Kind.HEAD_INJURY,
            Wellness.Kind.ARM_PAIN,
            Wellness.Kind.BACK_PAIN,
            Wellness.Kind.ILLNESS,
            Wellness.Kind.OTHER_PAIN)) {
      String id = kind.id();
      child(
          "later-" + id,
          "afterwards a child who was free has " + id.replace('-', ' '),
          "hold|" + id,
          PlantedClubs::free,
          (edit, child, from) -> edit.complaint(child.named(), from.minusDays(1), kind));
      child(
          "planned-" + id,
          "a row of " + id.replace('-', ' ') + " dated inside the planned weeks was added",
          "hold|" + id + "|later",
          PlantedClubs::free,
          (edit, child, from) -> edit.complaint(child.named(), from.plusDays(3), kind));
    }
    child(
        "complaint-other",
        "a complaint is of another kind than when it was planned",
        "hold",
        s -> s.node().at("/holds").toString().contains("HLD"),
        (edit, child, from) -> edit.otherComplaint(child.named(), from));
    child(
        "clearance-gone",
        "a clearance was taken back",
        "hold|light|clear",
        PlantedClubs::free,
        (edit, child, from) -> edit.noClearance(child.named(), from));
  }

  /** Whether the plan lets the child pitch or catch on a day, which a lost outing bars. */
  private static boolean throwsOrCatches(Spot child) {
    String arms = child.node().path("arms").toString();
    return arms.contains("\"may-pitch\"") || arms.contains("\"may_catch\":true");
  }

  private void thrown() {
    child(
        "outing-added",
        "a game of 90 pitches the day before was added",
        "rest|hold|pitch|throw|arm",
        PlantedClubs::free,
        (edit, child, from) -> edit.outing(child.named(), from.minusDays(1), 90));
    child(
        "outing-planned",
        "a game of 90 pitches inside the planned weeks was added",
        "later|rest|hold|pitch|throw|arm",
        PlantedClubs::free,
        (edit, child, from) -> edit.outing(child.named(), from.plusDays(2), 90));
    child(
        "outing-raised",
        "the last outing of a child had 60 pitches more",
        "rest|hold|pitch|throw|arm",
        s -> s.node().path("arms").toString().contains("\"may-pitch\""),
        (edit, child, from) -> edit.raised(child.named(), from, 60));
  }

  private void roster() {
    child(
        "roster-gone",
        "a child left the roster",
        "roster|no such",
        KindList::any,
        (edit, child, from) -> edit.players(child.named(), p -> List.of()));
    add(
        new Planted(
            "roster-new",
            "a child joined the roster",
            "left out|missing",
            (stage, dice) -> {
              ClubEdit edit = new ClubEdit(stage.record);
              String one = children(stage.plan).get(0).named();
              edit.players(one, p -> List.of(p, PlayerEdit.of(p).id("newcomer").get()));
              return edit.into(stage) ? Optional.of("newcomer") : Optional.empty();
            }));
    add(
        new Planted(
            "roster-moved",
            "a child moved to another group",
            "group|roster",
            (stage, dice) -> {
              List<Club.Group> groups = stage.record.club().groups();
              Spot child = children(stage.plan).get(0);
              ClubEdit edit = new ClubEdit(stage.record);
              groups.stream()
                  .map(Club.Group::id)
                  .filter(g -> !g.equals(child.text("group")))
                  .findFirst()
                  .ifPresent(g -> edit.player(child.named(), p -> PlayerEdit.of(p).group(g).get()));
              return edit.into(stage) ? Optional.of(child.named()) : Optional.empty();
            }));
    person("roster-younger", "a child is three years younger by birth", "age", p -> p.younger(3));
    person("roster-older", "a child is three years older by birth", "age", p -> p.younger(-3));
    person("roster-name", "a child has another first name", "label|name", p -> p.name("Zephyr"));
    person("roster-number", "a child has another shirt number", "label|number", p -> p.number(98));
    person(
        "roster-language",
        "a child's sheets are in another language",
        "language",
        PlayerEdit::otherLanguage);
    child(
        "roster-hallway",
        "a child who swings at home has a hallway only",
        "hallway|indoors|space|home",
        PlantedClubs::swingsAtHome,
        (edit, child, from) ->
            edit.player(child.named(), p -> PlayerEdit.of(p).home(Space.HALLWAY).get()));
    child(
        "roster-foam",
        "a family whose child swings at home has foam balls only",
        "plastic|ball|gear",
        PlantedClubs::swingsAtHome,
        (edit, child, from) ->
            edit.player(child.named(), p -> PlayerEdit.of(p).gear(Home.Gear.FOAM).get()));
    child(
        "roster-homedays",
        "a child's family has other home days than those planned",
        "home",
        s -> s.node().path("days").toString().contains("\"place\":\"home\""),
        (edit, child, from) ->
            edit.player(child.named(), p -> PlayerEdit.of(p).days(otherDays(child)).get()));
  }

  private void person(String id, String what, String said, UnaryOperator<PlayerEdit> to) {
    child(
        id,
        what,
        said,
        KindList::any,
        (edit, child, from) -> edit.player(child.named(), p -> to.apply(PlayerEdit.of(p)).get()));
  }

  private static boolean swingsAtHome(Spot child) {
    return homeDays(child).anyMatch(d -> d.path("items").toString().contains("plastic"));
  }

  private static Stream<JsonNode> homeDays(Spot child) {
    return StreamSupport.stream(child.node().path("days").spliterator(), false)
        .filter(d -> d.path("place").asText().equals("home"));
  }

  private static Set<DayOfWeek> otherDays(Spot child) {
    EnumSet<DayOfWeek> days = EnumSet.allOf(DayOfWeek.class);
    homeDays(child)
        .forEach(d -> days.remove(LocalDate.parse(d.path("date").asText()).getDayOfWeek()));
    return days;
  }

  private void calendar() {
    practice(
        "calendar-gone",
        "a practice was taken out of the calendar",
        "calendar|no practice|event",
        KindList::any,
        e -> List.of());
    practice(
        "calendar-game",
        "a practice became a game",
        "game|calendar|practice",
        KindList::any,
        e -> List.of(EventEdit.of(e).kind(Event.Kind.GAME).get()));
    practice(
        "calendar-break",
        "a break was put on a practice",
        "break|calendar|practice",
        KindList::any,
        e -> List.of(EventEdit.of(e).kind(Event.Kind.BREAK).get()));
    practice(
        "calendar-hitting",
        "a practice has five hitting minutes only",
        "minute",
        s -> s.number("hitting_minutes") > 20 && s.filled("stations"),
        e -> List.of(EventEdit.of(e).hitting(5).get()));
    practice(
        "calendar-minutes",
        "a practice is longer by half an hour",
        "minute",
        s -> s.number("minutes") > 0,
        e -> List.of(EventEdit.of(e).minutes(e.minutes() + 30).get()));
    practice(
        "calendar-adults",
        "a practice has one adult only",
        "adult|grown",
        s -> s.number("adults") > 1,
        e -> List.of(e.withAdults(1)));
    practice(
        "calendar-cage",
        "a practice moved from the field into the cage",
        "place|cage|field",
        s -> s.is("place", "field"),
        e -> List.of(EventEdit.of(e).place("cage").get()));
    practice(
        "calendar-start",
        "a practice begins at another hour",
        "start|begin|hour|[0-9][0-9]:",
        s -> s.node().hasNonNull("start"),
        e -> List.of(EventEdit.of(e).start(LocalTime.of(6, 5)).get()));
  }

  private void books() {
    club(
        "books-more",
        "the club plays by another rule book too",
        "rule_?.?book",
        KindList::any,
        c -> {
          List<String> more = new ArrayList<>(c.ruleBooks());
          more.add(more.contains("pitch-smart-2018") ? "pony-2018" : "pitch-smart-2018");
          return c.by(more);
        });
    club(
        "stricter-rest",
        "the club adds three days of rest to each rule book",
        "hold on|rest",
        s -> s.node().toString().contains("\"rule\":\"ARM-004\""),
        c -> ClubEdit.stricter(c, new Stricter(List.of(), List.of(), 3, OptionalInt.empty())));
    club(
        "stricter-daily",
        "the club allows twenty pitches a day at most",
        "pitch",
        s -> mayPitch(s, 21),
        c ->
            ClubEdit.stricter(
                c,
                new Stricter(
                    List.of(new Stricter.Limit(5, 20, 20)), List.of(), 0, OptionalInt.empty())));
  }

  private static boolean mayPitch(Spot root, int atLeast) {
    return of(KindList::children, "arms").in(root.node()).stream()
        .anyMatch(a -> a.is("answer", "may-pitch") && a.number("pitches_left") >= atLeast);
  }

  private void equipment() {
    gear("screens", "screen", s -> used(s, "\"screen\":true"));
    gear("tees", "tee", s -> used(s, "\"what\":\"tee\""));
    gear("machines", "machine", s -> used(s, "\"what\":\"machine\""));
    gear("nets", "net", s -> used(s, "\"what\":\"net\""));
    club(
        "stations-fewer",
        "the places have room for one station only",
        "station",
        s -> practices(s.node()).stream().anyMatch(p -> manned(p.node()) > 1),
        c -> c.withStations(1));
  }

  private void gear(String thing, String said, Predicate<Spot> fits) {
    club(
        "equipment-" + thing,
        "the club has no " + thing + " any more",
        said,
        fits,
        c -> ClubEdit.equipment(c, Map.of(thing, 0)));
  }

  private static boolean used(Spot root, String text) {
    return stations(root.node()).stream().anyMatch(s -> s.node().toString().contains(text));
  }

  private void rest() {
    child(
        "sport-added",
        "a child plays another sport each day of the planned weeks",
        "sport|hours|free day",
        s -> homeDays(s).findAny().isPresent(),
        (edit, child, from) -> edit.sport(child.named(), from));
    child(
        "placed",
        "a coach placed a child on another step the day before",
        "step|drive",
        KindList::any,
        (edit, child, from) -> edit.placed(child, from.minusDays(1)));
    child(
        "logs-gone",
        "what was logged of a child is gone",
        "seen|decision|because|settles|last",
        s -> s.node().path("decisions").toString().matches(".*\"seen\":[1-9].*"),
        (edit, child, from) -> edit.unlogged(child.named()));
    child(
        "lost-health",
        "a health row of a child can no longer be read",
        "hold|ask|read|health",
        PlantedClubs::free,
        (edit, child, from) -> edit.lost(Unread.What.WELLNESS, child.named(), from.minusDays(2)));
    child(
        "lost-outing",
        "an outing of a child can no longer be read",
        "lost",
        PlantedClubs::throwsOrCatches,
        (edit, child, from) -> edit.lost(Unread.What.OUTING, child.named(), from.minusDays(2)));
    child(
        "season-over",
        "the season ended before the planned weeks, and the calendar with it",
        "season",
        s -> s.node().path("days").toString().contains("\"drill\""),
        (edit, child, from) -> {
          LocalDate last = from.minusDays(8);
          edit.club = ClubEdit.season(edit.club, last.minusDays(100), last);
          edit.events(e -> e.date().isAfter(last) ? List.of() : List.of(e));
        });
    club(
        "club-renamed",
        "the club has another name",
        "club",
        KindList::any,
        c -> ClubEdit.named(c, "Elsewhere"));
  }
}
