package org.belthigh.plan;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Side;

/**
 * One coach, one practice.
 *
 * @param place where, in words
 * @param minutes the whole practice
 * @param hittingMinutes of it
 * @param notes what the coach must know about the day itself; empty where nothing
 * @param ringFeet nobody else inside this ring around a swinging bat
 * @param ground a field or a cage
 * @param safety what holds for all stations; each drill has more
 * @param squads players who stay together, in the order of the stations they start at
 * @param stations the places where something happens, numbered from 1
 * @param rotations the timetable
 * @param drills every drill of the timetables, explained once: those of the usual one first
 * @param cues one per player
 * @param noThrowing who must not throw
 * @param armRests those of them who only rest between outings
 * @param askFirst pitchers of whom too long nothing was heard
 * @param noSwinging who must not swing
 * @param fewerSwings who stops earlier than the others, since the day allows no more
 * @param notToday who does nothing that day
 * @param resting who has no hitting work that day, so that the week leaves enough rest
 * @param oneAdult the same practice with one grown-up
 * @param rain the same practice when it rains
 * @param guests what to do with a guest or a latecomer
 * @param weather heat and lightning, each with its source
 * @param heat what heat means for the practice, by the published tables
 * @param emergency place, address, whom to call, where the AED is
 * @param gear what to bring: the most of each that are in use at one time, in any of the ways
 */
public record PracticeSheet(
    LocalDate date,
    String place,
    Optional<LocalTime> start,
    int minutes,
    int hittingMinutes,
    int adults,
    List<Phrase> notes,
    int ringFeet,
    Place ground,
    List<Phrase> safety,
    List<Squad> squads,
    List<Station> stations,
    List<Rotation> rotations,
    List<DrillText> drills,
    List<PlayerCue> cues,
    List<Label> noThrowing,
    List<Label> armRests,
    List<Label> askFirst,
    List<Label> noSwinging,
    List<Fewer> fewerSwings,
    List<Label> notToday,
    List<Label> resting,
    OtherWay oneAdult,
    OtherWay rain,
    List<Phrase> guests,
    List<Phrase> weather,
    HeatBox heat,
    List<Phrase> emergency,
    List<Gear> gear) {
  public PracticeSheet {
    squads = List.copyOf(squads);
    stations = List.copyOf(stations);
    rotations = List.copyOf(rotations);
    drills = List.copyOf(drills);
    cues = List.copyOf(cues);
    noThrowing = List.copyOf(noThrowing);
    armRests = List.copyOf(armRests);
    safety = List.copyOf(safety);
    askFirst = List.copyOf(askFirst);
    noSwinging = List.copyOf(noSwinging);
    fewerSwings = List.copyOf(fewerSwings);
    notToday = List.copyOf(notToday);
    resting = List.copyOf(resting);
    guests = List.copyOf(guests);
    weather = List.copyOf(weather);
    emergency = List.copyOf(emergency);
    gear = List.copyOf(gear);
  }

  /** What to bring, in words. */
  public List<Phrase> equipment() {
    return gear.stream().map(Gear::says).toList();
  }

  /** All that is said for safety: what holds for all stations, what each drill adds, weather. */
  public List<Phrase> cautions() {
    return Stream.of(
            safety.stream(),
            drills.stream().flatMap(d -> d.safety().stream()),
            weather.stream(),
            heat.cautions().stream())
        .flatMap(lines -> lines)
        .distinct()
        .toList();
  }

  /** Whether a person tosses anywhere, so that there are lists to toss by. */
  public boolean tossed() {
    return rotations.stream()
        .flatMap(r -> r.posts().stream())
        .flatMap(p -> p.hitters().stream())
        .anyMatch(h -> !h.tosses().isEmpty());
  }

  /** The drills of the usual timetable, and not those of another way alone. */
  public List<DrillText> usualDrills() {
    return drills.stream().filter(d -> has(rotations, d)).toList();
  }

  /** The other ways that have a timetable of their own. */
  public List<OtherWay> otherWays() {
    return Stream.of(oneAdult, rain).filter(w -> !w.rotations().isEmpty()).toList();
  }

  /** The drills of the other ways. */
  public List<DrillText> otherDrills() {
    return drills.stream()
        .filter(d -> otherWays().stream().anyMatch(w -> has(w.rotations(), d)))
        .toList();
  }

  private static boolean has(List<Rotation> rotations, DrillText drill) {
    return rotations.stream()
        .flatMap(r -> r.posts().stream())
        .anyMatch(p -> drill.id().equals(p.drill()));
  }

  /** The ring around a swinging bat, as a distance. */
  public Phrase ring() {
    return Say.distance(ringFeet);
  }

  /**
   * Players who go round the stations together.
   *
   * @param letter how the timetable names them, {@code A} and on
   */
  public record Squad(String letter, List<Label> players) {
    public Squad {
      players = List.copyOf(players);
    }
  }

  /**
   * Where something happens.
   *
   * @param swings whether bats swing here, so that a ring is marked and an adult stays
   * @param feet nearest that a person tosses to a bat there; 0 where nobody does
   * @param needs what must be there, the most that any round uses
   * @param fields whether those who are there do nothing but field or write, in every round
   * @param adult who tosses, such as "Adult 1"; empty where nobody tosses
   */
  public record Station(
      int number,
      boolean swings,
      int feet,
      List<Gear> needs,
      boolean fields,
      Optional<Phrase> adult) {
    public Station {
      needs = List.copyOf(needs);
    }

    /** Whether who tosses stands behind a screen, at least in one of the rounds. */
    public boolean screen() {
      return needs.stream().anyMatch(g -> g.id().equals(Gear.SCREEN));
    }
  }

  /** Minutes {@code from} to {@code from + minutes} of the hitting time. */
  public record Rotation(int number, int from, int minutes, List<Post> posts) {
    public Rotation {
      posts = List.copyOf(posts);
    }
  }

  /**
   * Who is at one station during one rotation.
   *
   * @param squad letter of the squad that the hitters are
   * @param drill id of one of the sheet's drills; empty where the squad fields and writes
   * @param hitters in hitting order, with the side they bat
   * @param tossesEach each hitter's
   * @param writes how the writing is shared among those who wait
   * @param helpers players who may not swing and have another task here
   */
  public record Post(
      int station,
      String squad,
      String drill,
      List<Hitter> hitters,
      int tossesEach,
      int swingsEach,
      Phrase writes,
      List<Label> helpers) {
    public Post {
      hitters = List.copyOf(hitters);
      helpers = List.copyOf(helpers);
    }
  }

  /**
   * A player and the side of the plate.
   *
   * @param tosses where to toss to, in order; empty where nobody tosses
   */
  public record Hitter(Label who, Side side, List<Phrase> tosses) {
    public Hitter {
      tosses = List.copyOf(tosses);
    }
  }

  /**
   * One player's cue.
   *
   * @param needs what the coach should know; empty where nothing
   */
  public record PlayerCue(Label who, LocalText cue, Optional<String> needs) {}

  /** The swings of each hitter in {@code timetable}, by player id; nobody has more than allowed. */
  public Map<String, Integer> swings(List<Rotation> timetable) {
    Map<String, Integer> swings = new TreeMap<>();
    timetable.stream()
        .flatMap(r -> r.posts().stream())
        .forEach(
            p ->
                p.hitters().forEach(h -> swings.merge(h.who().id(), p.swingsEach(), Integer::sum)));
    fewerSwings.forEach(
        f -> swings.computeIfPresent(f.who().id(), (id, n) -> Math.min(n, f.swings())));
    return swings;
  }

  /** Most swings of a player who has fewer than the group. */
  public record Fewer(Label who, int swings) {}

  /**
   * The same practice when things go otherwise.
   *
   * @param says what to do, or that nothing changes
   * @param place where it is then
   * @param adults grown-ups who toss
   * @param squads empty where they are those of the sheet
   * @param stations empty where there is no timetable of its own
   * @param rotations the timetable; empty where there is none of its own
   */
  public record OtherWay(
      List<Phrase> says,
      Place place,
      int adults,
      List<Squad> squads,
      List<Station> stations,
      List<Rotation> rotations) {
    public OtherWay {
      says = List.copyOf(says);
      squads = List.copyOf(squads);
      stations = List.copyOf(stations);
      rotations = List.copyOf(rotations);
    }

    /** Words are all there is to it. */
    static OtherWay said(Phrase phrase, Place place, int adults) {
      return new OtherWay(List.of(phrase), place, adults, List.of(), List.of(), List.of());
    }
  }
}
