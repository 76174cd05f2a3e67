package org.belthigh.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.belthigh.catalogue.Stricter;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.OtherSport;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Origin;
import org.belthigh.model.Skill;

/** A club's record that is changed after planning. */
final class ClubEdit {
  private static final Origin LATER = Origin.of("changed.csv");
  private static final int RAISABLE = 30;
  private static final int DAYS_THAT_COUNT = 3;
  private static final int SPORT_DAYS = 14;

  Club club;
  private final ClubRecord from;
  private final List<Player> players;
  private final List<Event> events;
  private final List<Toss> tosses;
  private final List<Tally> tallies;
  private final List<Outing> outings;
  private final List<Wellness> wellness;
  private final List<OtherSport> sports;
  private final List<Placement> placements;
  private final List<Unread> unread;

  ClubEdit(ClubRecord from) {
    this.from = from;
    club = from.club();
    players = new ArrayList<>(from.players());
    events = new ArrayList<>(from.events());
    tosses = new ArrayList<>(from.tosses());
    tallies = new ArrayList<>(from.tallies());
    outings = new ArrayList<>(from.outings());
    wellness = new ArrayList<>(from.wellness());
    sports = new ArrayList<>(from.otherSports());
    placements = new ArrayList<>(from.placements());
    unread = new ArrayList<>(from.unread());
  }

  /** Gives the stage the changed club; false where nothing changed. */
  boolean into(Planted.Stage stage) {
    ClubRecord changed =
        new ClubRecord(
            club,
            players,
            events,
            tosses,
            tallies,
            outings,
            wellness,
            sports,
            placements,
            unread,
            from.problems());
    stage.record = changed;
    return !changed.equals(from);
  }

  private static <T> void each(List<T> list, Function<T, List<T>> to) {
    List<T> changed = list.stream().flatMap(t -> to.apply(t).stream()).toList();
    list.clear();
    list.addAll(changed);
  }

  void events(Function<Event, List<Event>> to) {
    each(events, to);
  }

  void players(String id, Function<Player, List<Player>> to) {
    each(players, p -> p.id().equals(id) ? to.apply(p) : List.of(p));
  }

  void player(String id, UnaryOperator<Player> to) {
    players(id, p -> List.of(to.apply(p)));
  }

  private static Wellness row(LocalDate day, String player, Wellness.Kind kind) {
    return new Wellness(day, player, kind, Optional.empty(), Optional.empty(), "", LATER);
  }

  void complaint(String player, LocalDate day, Wellness.Kind kind) {
    wellness.add(row(day, player, kind));
  }

  /** Each complaint of the child before that day is a head injury, or where it was one, an arm. */
  void otherComplaint(String player, LocalDate before) {
    each(
        wellness,
        w -> {
          if (!w.player().equals(player) || !w.kind().holds() || !w.date().isBefore(before)) {
            return List.of(w);
          }
          boolean head = w.kind() == Wellness.Kind.HEAD_INJURY;
          return List.of(
              row(w.date(), player, head ? Wellness.Kind.ARM_PAIN : Wellness.Kind.HEAD_INJURY));
        });
  }

  /** Takes the child's clearances back, where a complaint before that day was ended by one. */
  void noClearance(String player, LocalDate before) {
    boolean complained =
        wellness.stream()
            .anyMatch(
                w -> w.player().equals(player) && w.kind().holds() && w.date().isBefore(before));
    if (complained) {
      wellness.removeIf(w -> w.player().equals(player) && !w.kind().holds());
    }
  }

  /** Nobody complained, and nobody threw. */
  void healthy() {
    wellness.clear();
    outings.clear();
  }

  void outing(String player, LocalDate day, int pitches) {
    outings.add(
        new Outing(
            day,
            player,
            pitches,
            Outing.Kind.GAME,
            OptionalInt.empty(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            "",
            "",
            LATER));
  }

  /** More pitches in an outing of the last days that counted few. */
  void raised(String player, LocalDate before, int by) {
    each(
        outings,
        o ->
            o.player().equals(player)
                    && o.kind().counts()
                    && o.pitches() <= RAISABLE
                    && o.date().isBefore(before)
                    && !o.date().isBefore(before.minusDays(DAYS_THAT_COUNT))
                ? List.of(
                    new Outing(
                        o.date(),
                        o.player(),
                        o.pitches() + by,
                        o.kind(),
                        o.beforeLastBatter(),
                        o.innings(),
                        o.inningsCaught(),
                        o.team(),
                        o.game(),
                        o.origin()))
                : List.of(o));
  }

  void sport(String player, LocalDate from) {
    for (int i = -7; i < SPORT_DAYS; i++) {
      sports.add(new OtherSport(from.plusDays(i), player, 2, "swimming", LATER));
    }
  }

  /** Places the child on the other of two steps of driving the ball. */
  void placed(KindList.Spot child, LocalDate day) {
    boolean first = child.node().path("decisions").toString().contains("\"drive-1\"");
    String step = first ? "drive-3" : "drive-1";
    placements.add(
        new Placement(day, child.named(), Skill.DRIVE, step, "coach", "looked again", LATER));
  }

  void unlogged(String player) {
    tosses.removeIf(t -> t.player().equals(player));
    tallies.removeIf(t -> t.player().equals(player));
  }

  void lost(Unread.What what, String player, LocalDate day) {
    unread.add(new Unread(what, Optional.of(player), Optional.of(day), LATER));
  }

  static Club stricter(Club c, Stricter stricter) {
    return club(c, c.name(), c.seasonFirst(), c.seasonLast(), c.equipment(), stricter);
  }

  static Club equipment(Club c, Map<String, Integer> changed) {
    Map<String, Integer> gear = new HashMap<>(c.equipment());
    gear.putAll(changed);
    return club(c, c.name(), c.seasonFirst(), c.seasonLast(), gear, c.stricter());
  }

  static Club season(Club c, LocalDate first, LocalDate last) {
    return club(c, c.name(), first, last, c.equipment(), c.stricter());
  }

  static Club named(Club c, String name) {
    return club(c, name, c.seasonFirst(), c.seasonLast(), c.equipment(), c.stricter());
  }

  private static Club club(
      Club c,
      String name,
      LocalDate first,
      LocalDate last,
      Map<String, Integer> equipment,
      Stricter stricter) {
    return new Club(
        name,
        c.paper(),
        c.languages(),
        c.ruleBooks(),
        first,
        last,
        c.groups(),
        c.curriculum(),
        equipment,
        c.places(),
        c.emergency(),
        stricter);
  }
}
