package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Drill;
import org.belthigh.decide.Hold;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.model.Ball;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Side;

/** The coach's sheet for one practice, and the blank sheets to log it on. */
final class PracticeSheets {
  private static final int YOUNGEST = 7;

  private final ClubRecord record;
  private final List<Hold> holds;
  private final Map<String, Label> labels;
  private final Told told;
  private final Doses doses;
  private final Function<LocalDate, List<Phrase>> notes;
  private final Function<LocalDate, List<Label>> askFirst;
  private final HeatBoxes heat;
  private final TossLists lists;
  private final OtherWays otherWays;

  PracticeSheets(
      ClubRecord record,
      Told told,
      List<Hold> holds,
      List<Label> labels,
      Doses doses,
      HeatBoxes heat,
      OtherWays otherWays,
      TossLists lists,
      Function<LocalDate, List<Phrase>> notes,
      Function<LocalDate, List<Label>> askFirst) {
    this.askFirst = askFirst;
    this.heat = heat;
    this.lists = lists;
    this.record = record;
    this.doses = doses;
    this.notes = notes;
    this.holds = holds;
    this.labels =
        labels.stream()
            .collect(Collectors.toMap(Label::id, l -> l, (a, b) -> a, LinkedHashMap::new));
    this.told = told;
    this.otherWays = otherWays;
  }

  /** The sheet of one practice. */
  PracticeSheet sheet(Planner.Practice practice) {
    LocalDate day = practice.event().date();
    Circuit.Layout layout = practice.layout();
    List<Label> notToday = held(day, h -> h.kind() == Hold.Kind.EVERYTHING);
    List<Label> noSwinging = without(held(day, Hold::stopsSwinging), notToday);
    List<Label> noThrowing = without(held(day, Hold::stopsThrowing), notToday);
    Optional<Circuit.Layout> alone = otherWays.alone(practice);
    Optional<OtherWays.Sheltered> rain = otherWays.rain(practice);
    Map<String, Drill> drills = new LinkedHashMap<>(drills(layout));
    alone.ifPresent(l -> drills(l).forEach(drills::putIfAbsent));
    rain.ifPresent(r -> drills(r.layout()).forEach(drills::putIfAbsent));
    Map<List<Circuit.Entrant>, String> letters = letters(layout);
    List<PracticeSheet.Squad> squads = squads(letters);
    List<PracticeSheet.Station> stations = stations(layout, practice.place());
    List<List<Gear>> uses = new ArrayList<>(List.of(atOnce(layout, practice.place())));
    alone.ifPresent(l -> uses.add(atOnce(l, practice.place())));
    rain.ifPresent(r -> uses.add(atOnce(r.layout(), Place.CAGE)));
    return new PracticeSheet(
        day,
        venue(practice).map(Club.Venue::name).orElse(practice.event().place()),
        practice.event().start(),
        practice.event().minutes(),
        practice.event().hittingMinutes(),
        practice.adults(),
        notes.apply(day),
        doses.batRingFeet(),
        practice.place(),
        safety(stations),
        squads,
        stations,
        rotations(day, layout, practice.place(), letters, noSwinging),
        drills.values().stream().map(d -> told.of(d, practice.place(), age())).toList(),
        cues(layout),
        noThrowing,
        without(noThrowing, held(day, h -> h.stopsThrowing() && h.cause().isPresent())),
        without(without(askFirst.apply(day), noThrowing), notToday),
        noSwinging,
        fewerSwings(layout),
        notToday,
        resting(squads, noSwinging, notToday),
        oneAdult(practice, alone, letters, noSwinging),
        rain(practice, rain, letters, noSwinging),
        List.of(Phrase.of("practice.late"), Phrase.of("practice.guest")),
        List.of(Phrase.of("practice.lightning"), Phrase.of("practice.heat")),
        heat.box(labels.values().stream().mapToInt(Label::age).min().orElse(YOUNGEST)),
        emergency(practice),
        most(uses));
  }

  /** Whose arm or week allows fewer swings than the circuit has. */
  private List<PracticeSheet.Fewer> fewerSwings(Circuit.Layout layout) {
    return layout.posts().stream()
        .flatMap(p -> p.squad().stream())
        .distinct()
        .filter(e -> e.swingsLeft() < layout.of(e).stream().mapToInt(Circuit.Post::swings).sum())
        .sorted(Comparator.comparing(e -> e.player().id()))
        .map(e -> new PracticeSheet.Fewer(labels.get(e.player().id()), e.swingsLeft()))
        .toList();
  }

  private Optional<Club.Venue> venue(Planner.Practice practice) {
    return record.club().places().stream()
        .filter(v -> v.id().equals(practice.event().place()))
        .findFirst();
  }

  private List<Label> held(LocalDate day, Predicate<Hold> what) {
    return labels.values().stream()
        .filter(
            l ->
                holds.stream()
                    .anyMatch(h -> h.player().equals(l.id()) && what.test(h) && h.holds(day)))
        .toList();
  }

  private static List<Label> without(List<Label> labels, List<Label> others) {
    return labels.stream().filter(l -> !others.contains(l)).toList();
  }

  /** Who neither hits nor helps nor is held. */
  private List<Label> resting(
      List<PracticeSheet.Squad> squads, List<Label> noSwinging, List<Label> notToday) {
    Set<Label> busy = new HashSet<>(noSwinging);
    busy.addAll(notToday);
    squads.forEach(s -> busy.addAll(s.players()));
    return labels.values().stream().filter(l -> !busy.contains(l)).toList();
  }

  /** A letter for each squad, by the station it starts at. */
  private static Map<List<Circuit.Entrant>, String> letters(Circuit.Layout layout) {
    Map<List<Circuit.Entrant>, String> letters = new LinkedHashMap<>();
    layout.posts().stream()
        .sorted(
            Comparator.comparingInt(Circuit.Post::rotation).thenComparingInt(Circuit.Post::station))
        .map(Circuit.Post::squad)
        .forEach(s -> letters.putIfAbsent(s, Character.toString('A' + letters.size())));
    return letters;
  }

  private List<PracticeSheet.Squad> squads(Map<List<Circuit.Entrant>, String> letters) {
    return letters.entrySet().stream()
        .map(
            e ->
                new PracticeSheet.Squad(
                    e.getValue(),
                    inOrder(e.getKey()).stream().map(p -> labels.get(p.player().id())).toList()))
        .toList();
  }

  /** A squad in hitting order: who has the same cue stands together. */
  private static List<Circuit.Entrant> inOrder(List<Circuit.Entrant> squad) {
    List<LocalText> cues = squad.stream().map(PracticeSheets::cue).toList();
    return squad.stream().sorted(Comparator.comparingInt(e -> cues.indexOf(cue(e)))).toList();
  }

  private static LocalText cue(Circuit.Entrant entrant) {
    return Focus.cue(entrant.focus().get(0));
  }

  private static Map<String, Drill> drills(Circuit.Layout layout) {
    Map<String, Drill> drills = new LinkedHashMap<>();
    layout.posts().stream()
        .sorted(
            Comparator.comparingInt(Circuit.Post::station).thenComparingInt(Circuit.Post::rotation))
        .flatMap(p -> p.drill().stream())
        .forEach(d -> drills.putIfAbsent(d.id(), d));
    return drills;
  }

  private List<PracticeSheet.Station> stations(Circuit.Layout layout, Place place) {
    List<PracticeSheet.Station> stations = new ArrayList<>();
    for (int s = 1; s <= layout.stations(); s++) {
      int number = s;
      List<Circuit.Post> posts =
          layout.posts().stream().filter(p -> p.station() == number).toList();
      List<Drill> here = posts.stream().flatMap(p -> p.drill().stream()).toList();
      boolean adult = s <= layout.adultStations();
      stations.add(
          new PracticeSheet.Station(
              s,
              here.stream().anyMatch(Drill::swing),
              nearest(here),
              most(here.stream().map(d -> told.of(d, place, age()).gear()).toList()),
              here.isEmpty(),
              adult ? Optional.of(Phrase.of("adult", "number", s)) : Optional.empty()));
    }
    return stations;
  }

  /** Feet from the nearest of those who toss to a bat; 0 where nobody does. */
  private int nearest(List<Drill> drills) {
    int youngest = labels.values().stream().mapToInt(Label::age).min().orElse(YOUNGEST);
    return drills.stream()
        .filter(Drill::swing)
        .mapToInt(d -> Told.feet(d, youngest))
        .filter(feet -> feet > 0)
        .min()
        .orElse(0);
  }

  private int age() {
    return labels.values().stream().mapToInt(Label::age).max().orElse(10);
  }

  /** Of each thing the most that any of {@code uses} has. */
  private static List<Gear> most(List<List<Gear>> uses) {
    Map<String, Gear> most = new LinkedHashMap<>();
    uses.stream()
        .flatMap(List::stream)
        .forEach(g -> most.merge(g.id(), g, (a, b) -> a.count() < b.count() ? b : a));
    return List.copyOf(most.values());
  }

  /** What all stations of a timetable need at one time. */
  private List<Gear> atOnce(Circuit.Layout layout, Place place) {
    Map<Integer, Map<String, Gear>> byRotation = new TreeMap<>();
    for (Circuit.Post post : layout.posts()) {
      Map<String, Gear> used =
          byRotation.computeIfAbsent(post.rotation(), r -> new LinkedHashMap<>());
      post.drill().stream()
          .flatMap(d -> told.of(d, place, age()).gear().stream())
          .forEach(g -> used.merge(g.id(), g, (a, b) -> a.times(a.count() + b.count())));
    }
    return most(byRotation.values().stream().map(m -> List.copyOf(m.values())).toList());
  }

  /** What holds for all stations. */
  private List<Phrase> safety(List<PracticeSheet.Station> stations) {
    List<Phrase> lines = new ArrayList<>();
    lines.add(Phrase.of("practice.safety.adult"));
    if (stations.stream().anyMatch(PracticeSheet.Station::swings)) {
      List<PracticeSheet.Station> near =
          stations.stream().filter(s -> s.feet() > 0 && s.feet() < doses.batRingFeet()).toList();
      String who = near.isEmpty() ? "alone" : "near";
      lines.add(
          Phrase.of("practice.safety.ring." + who, "ring", Say.distance(doses.batRingFeet())));
    }
    return lines;
  }

  private List<PracticeSheet.Rotation> rotations(
      LocalDate day,
      Circuit.Layout layout,
      Place place,
      Map<List<Circuit.Entrant>, String> letters,
      List<Label> noSwinging) {
    Map<Integer, List<Circuit.Post>> byRotation = new TreeMap<>();
    layout
        .posts()
        .forEach(p -> byRotation.computeIfAbsent(p.rotation(), k -> new ArrayList<>()).add(p));
    List<PracticeSheet.Rotation> rotations = new ArrayList<>();
    byRotation.forEach(
        (number, posts) ->
            rotations.add(
                new PracticeSheet.Rotation(
                    number,
                    (number - 1) * (layout.rotationMinutes() + layout.change()),
                    layout.rotationMinutes(),
                    posts.stream()
                        .map(p -> post(day, p, letters.get(p.squad()), layout, place, noSwinging))
                        .toList())));
    return rotations;
  }

  private PracticeSheet.Post post(
      LocalDate day,
      Circuit.Post post,
      String squad,
      Circuit.Layout layout,
      Place place,
      List<Label> noSwinging) {
    boolean first = post.station() == 1;
    long bats =
        layout.posts().stream()
            .filter(p -> p.squad().equals(post.squad()))
            .filter(p -> p.rotation() < post.rotation() && p.swings() > 0)
            .count();
    boolean left = bats % 2 == 1;
    return new PracticeSheet.Post(
        post.station(),
        squad,
        post.drill().map(Drill::id).orElse(""),
        inOrder(post.squad()).stream()
            .map(e -> hitter(day, post, e, side(e.player(), left)))
            .toList(),
        post.reps(),
        post.swings(),
        writes(post, layout, place),
        first ? noSwinging : List.of());
  }

  private PracticeSheet.Hitter hitter(
      LocalDate day, Circuit.Post post, Circuit.Entrant entrant, Side side) {
    List<Phrase> tosses =
        post.drill()
            .filter(TossLists::aimed)
            .map(drill -> tosses(day, post, drill, entrant, side))
            .orElse(List.of());
    return new PracticeSheet.Hitter(labels.get(entrant.player().id()), side, tosses);
  }

  private List<Phrase> tosses(
      LocalDate day, Circuit.Post post, Drill drill, Circuit.Entrant entrant, Side side) {
    SkillDecision decision = entrant.decision(drill.skill());
    Grain grain = HomeWork.grain(decision);
    return lists
        .station(entrant.player(), day, drill, decision, post.reps(), post.rotation(), side)
        .stream()
        .map(toss -> toss.target(grain))
        .toList();
  }

  /** A switch hitter takes turns: right first, left at the next station with a bat. */
  private static Side side(Player player, boolean left) {
    return player.bats().side().orElse(left ? Side.LEFT : Side.RIGHT);
  }

  private Phrase writes(Circuit.Post post, Circuit.Layout layout, Place place) {
    String where = place == Place.CAGE ? ".cage" : ".field";
    if (post.drill().isEmpty()) {
      return fielding("writes.fields" + where);
    }
    if (post.station() > layout.adultStations()) {
      boolean watched = post.drill().filter(d -> d.balls().containsValue(Ball.NONE)).isEmpty();
      return Phrase.of((watched ? "writes.watch" : "writes.alone") + where);
    }
    if (post.squad().size() == 1) {
      return Phrase.of("writes.adult");
    }
    boolean out =
        place != Place.CAGE
            && post.swings() > 0
            && post.drill().filter(d -> d.gear().contains(Gear.NET)).isEmpty();
    return out ? fielding("writes.next.fields") : Phrase.of("writes.next" + where);
  }

  /** A line with how far out those stand who field. */
  private Phrase fielding(String key) {
    return Phrase.of(key, "distance", Say.distance(doses.fieldingFeet()));
  }

  private List<PracticeSheet.PlayerCue> cues(Circuit.Layout layout) {
    Map<String, List<SkillDecision>> focus = new LinkedHashMap<>();
    layout
        .posts()
        .forEach(p -> p.squad().forEach(e -> focus.putIfAbsent(e.player().id(), e.focus())));
    return labels.values().stream()
        .filter(l -> focus.containsKey(l.id()))
        .map(
            l ->
                new PracticeSheet.PlayerCue(
                    l, Focus.cue(focus.get(l.id()).get(0)), record.player(l.id()).needs()))
        .toList();
  }

  /** The same practice with one grown-up: one station hits, the others watch, call and field. */
  private PracticeSheet.OtherWay oneAdult(
      Planner.Practice practice,
      Optional<Circuit.Layout> alone,
      Map<List<Circuit.Entrant>, String> letters,
      List<Label> noSwinging) {
    return alone
        .map(
            layout ->
                otherWay(
                    practice,
                    fielding(
                        practice.place() == Place.CAGE
                            ? "one-adult.bats.cage"
                            : "one-adult.bats.field"),
                    practice.place(),
                    1,
                    layout,
                    letters,
                    noSwinging))
        .orElse(PracticeSheet.OtherWay.said(Phrase.of("one-adult.as-is"), practice.place(), 1));
  }

  /** The same practice in rain: in the cage, if there is one. */
  private PracticeSheet.OtherWay rain(
      Planner.Practice practice,
      Optional<OtherWays.Sheltered> rain,
      Map<List<Circuit.Entrant>, String> letters,
      List<Label> noSwinging) {
    String otherwise = practice.place() == Place.CAGE ? "rain.as-is" : "rain.no-roof";
    return rain.map(
            r ->
                otherWay(
                    practice,
                    Phrase.of("rain.cage", "place", r.venue().name()),
                    Place.CAGE,
                    practice.adults(),
                    r.layout(),
                    letters,
                    noSwinging))
        .orElse(
            PracticeSheet.OtherWay.said(Phrase.of(otherwise), practice.place(), practice.adults()));
  }

  private PracticeSheet.OtherWay otherWay(
      Planner.Practice practice,
      Phrase says,
      Place place,
      int adults,
      Circuit.Layout layout,
      Map<List<Circuit.Entrant>, String> usual,
      List<Label> noSwinging) {
    Map<List<Circuit.Entrant>, String> letters = letters(layout);
    boolean same = letters.equals(usual);
    return new PracticeSheet.OtherWay(
        List.of(says),
        place,
        adults,
        same ? List.of() : squads(letters),
        stations(layout, place),
        rotations(practice.event().date(), layout, place, letters, noSwinging));
  }

  private List<Phrase> emergency(Planner.Practice practice) {
    List<Phrase> lines = new ArrayList<>();
    Optional<Club.Emergency> emergency = record.club().emergency();
    lines.add(
        emergency
            .map(e -> Phrase.of("emergency.call", "call", e.call(), "who", e.who()))
            .orElse(Phrase.of("emergency.call.blank")));
    lines.add(
        venue(practice)
            .filter(v -> !v.address().isEmpty())
            .map(v -> Phrase.of("emergency.place", "place", v.name(), "address", v.address()))
            .orElse(Phrase.of("emergency.place.blank")));
    lines.add(
        venue(practice)
            .filter(v -> !v.aed().isEmpty())
            .map(v -> Phrase.of("emergency.aed", "aed", v.aed()))
            .orElse(Phrase.of("emergency.aed.blank")));
    venue(practice)
        .filter(v -> !v.note().isEmpty())
        .ifPresent(v -> lines.add(Phrase.of("emergency.note", "note", v.note())));
    emergency
        .filter(e -> !e.note().isEmpty())
        .ifPresent(e -> lines.add(Phrase.of("emergency.note", "note", e.note())));
    return lines;
  }
}
