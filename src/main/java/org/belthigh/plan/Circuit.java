package org.belthigh.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Player;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;
import org.belthigh.plan.practice.Arrangement;
import org.belthigh.plan.practice.Effort;
import org.belthigh.plan.practice.Hitter;
import org.belthigh.plan.practice.Need;
import org.belthigh.plan.practice.Objective;
import org.belthigh.plan.practice.Practice;
import org.belthigh.plan.practice.Search;
import org.belthigh.plan.practice.Task;

/**
 * One practice as a circuit: squads go round the stations, so that everybody has the same number of
 * visits and swings, every swing has a grown-up beside it, and no line is longer than two.
 *
 * <p>This class knows people, places and minutes: how many stations and rotations there are, and
 * what each drill is to each player. Who goes with whom, and which squad does what, is decided in
 * {@link org.belthigh.plan.practice} by one objective.
 */
final class Circuit {
  /** Share of the hitting time that stays fill; the rest is for setting up. */
  private static final double NEARLY_FULL = 0.8;

  /** Stations without a grown-up that one practice has at the most. */
  private static final int MOST_WATCHED = 3;

  private final DrillChoice choice;
  private final Doses doses;
  private final Effort effort;

  Circuit(DrillChoice choice, Doses doses, Effort effort) {
    this.choice = choice;
    this.doses = doses;
    this.effort = effort;
  }

  /**
   * Who takes part, and what they need.
   *
   * @param focus the two skills of the week, the more pressing one first
   * @param all the decisions of all skills
   * @param used how often the player has had each drill so far
   * @param bores drills that the player has had too often running
   * @param swingsLeft most swings the load allows on that day
   */
  record Entrant(
      Player player,
      int age,
      List<SkillDecision> focus,
      List<SkillDecision> all,
      Map<String, Integer> used,
      Predicate<Drill> bores,
      int swingsLeft) {
    Entrant {
      focus = List.copyOf(focus);
      all = List.copyOf(all);
    }

    /** The same with so many swings left at the most. */
    Entrant withSwings(int most) {
      return new Entrant(player, age, focus, all, used, bores, most);
    }

    SkillDecision decision(Skill skill) {
      return all.stream().filter(d -> d.skill() == skill).findFirst().orElseThrow();
    }

    private boolean works(Skill skill) {
      return focus.stream().anyMatch(d -> d.skill() == skill);
    }

    /** By the player alone: a practice has each once, and who hits is looked for often. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Entrant entrant && entrant.player.id().equals(player.id());
    }

    @Override
    public int hashCode() {
      return player.id().hashCode();
    }

    /** Sorts players of like need side by side: skill, then step, of both skills of the week. */
    private String alike() {
      return focus.stream()
          .map(d -> d.skill().ordinal() + "." + d.workOn().rung())
          .collect(Collectors.joining(" "));
    }
  }

  /**
   * Who is where, when, doing what.
   *
   * @param station 1 and up; stations up to {@code adults} have a grown-up
   * @param drill empty where the squad fetches balls and writes
   * @param swings of each who has that many left
   */
  record Post(
      int rotation, int station, List<Entrant> squad, Optional<Drill> drill, int reps, int swings) {
    Optional<Skill> skill() {
      return drill.map(Drill::skill);
    }
  }

  /**
   * A practice that is laid out.
   *
   * @param stations how many there are
   * @param adultStations how many of them have a grown-up; they come first
   * @param rotationMinutes how long each stay is
   * @param change minutes between two stays
   */
  record Layout(
      int stations,
      int adultStations,
      int rotations,
      int rotationMinutes,
      int change,
      List<Post> posts) {
    Layout {
      posts = List.copyOf(posts);
    }

    /** All who take part. */
    List<Entrant> entrants() {
      return posts.stream()
          .filter(p -> p.rotation() == 1)
          .flatMap(p -> p.squad().stream())
          .toList();
    }

    /** Where a player's squad starts, from 0. */
    int squad(Entrant entrant) {
      return of(entrant).get(0).station() - 1;
    }

    /** Swings that everybody has who has as many left: those of the squad that has fewest. */
    int swings() {
      return entrants().stream()
          .mapToInt(e -> of(e).stream().mapToInt(Post::swings).sum())
          .min()
          .orElse(0);
    }

    /** The posts of one player, first rotation first. */
    List<Post> of(Entrant entrant) {
      return posts.stream()
          .filter(p -> p.squad().contains(entrant))
          .sorted(Comparator.comparingInt(Post::rotation))
          .toList();
    }
  }

  /**
   * Lays out a practice.
   *
   * @param entrants players who may swing
   * @param adults grown-ups who toss, at least 1
   * @param venueStations how many stations with a bat the place can hold
   * @param minutes hitting minutes
   * @param share part of the usual tosses that the day has, above 0 and at most 1
   */
  Layout lay(
      List<Entrant> entrants,
      Place place,
      int adults,
      int venueStations,
      int minutes,
      double share) {
    return anew(
        entrants, tossed(entrants, adults, venueStations), minutes, new Terms(place, share));
  }

  /**
   * The same practice with other grown-ups or in another place. The squads stay as they are where
   * the minutes hold a round of all stations, and nothing is explained anew but what needs no
   * grown-up. Nobody has more swings.
   *
   * @param usual what was planned
   * @param place where it is now
   * @param adults grown-ups who toss, at least 1
   * @param venueStations how many stations with a bat that place can hold
   */
  Layout again(
      Layout usual, Place place, int adults, int venueStations, int minutes, double share) {
    List<Entrant> entrants = usual.entrants();
    Terms terms = new Terms(place, share, usual.swings(), known(usual, place));
    int tossed = Math.min(usual.stations(), tossed(entrants, adults, venueStations));
    Frame frame = frame(usual.stations(), tossed, minutes, youngest(entrants));
    boolean round = tossed == usual.stations() || frame.rotations() >= usual.stations();
    return round
        ? laid(entrants, frame, terms, Optional.of(usual))
        : anew(entrants, tossed, minutes, terms);
  }

  /** What the coach has explained already, and what needs no grown-up; all where nothing fits. */
  private Predicate<Drill> known(Layout usual, Place place) {
    Set<String> explained =
        usual.posts().stream()
            .flatMap(p -> p.drill().stream())
            .filter(d -> d.adults() > 0 && choice.fits(d, place, true))
            .map(Drill::id)
            .collect(Collectors.toSet());
    return d -> explained.isEmpty() || d.adults() == 0 || explained.contains(d.id());
  }

  private static int youngest(List<Entrant> entrants) {
    return entrants.stream().mapToInt(Entrant::age).min().orElse(10);
  }

  /** One who hits and one who writes: a station for a child alone waits for another day. */
  private static int tossed(List<Entrant> entrants, int adults, int venueStations) {
    return Math.max(1, Math.min(Math.min(adults, venueStations), entrants.size() / 2));
  }

  private Layout anew(List<Entrant> entrants, int tossed, int minutes, Terms terms) {
    int youngest = youngest(entrants);
    int stations = stations(entrants.size(), tossed, youngest, minutes);
    return laid(entrants, frame(stations, tossed, minutes, youngest), terms, Optional.empty());
  }

  /**
   * How stations and minutes are divided.
   *
   * @param tossed stations with a grown-up
   * @param stay minutes at a station
   * @param change minutes between two stays
   */
  private record Frame(int stations, int tossed, int rotations, int stay, int change) {}

  /**
   * What holds for all who take part.
   *
   * @param share part of the usual tosses
   * @param swingsMost of each in all
   * @param open drills that come into question
   */
  private record Terms(Place place, double share, int swingsMost, Predicate<Drill> open) {
    Terms(Place place, double share) {
      this(place, share, Integer.MAX_VALUE, d -> true);
    }
  }

  private Frame frame(int stations, int tossed, int minutes, int youngest) {
    int change = stations > 1 ? doses.changeMinutes(youngest) : 0;
    int rotations = rotations(minutes, stations, tossed, change, youngest);
    int stay = Math.max(1, Math.min(doses.stationMinutes(youngest), minutes / rotations - change));
    return new Frame(stations, tossed, rotations, stay, change);
  }

  private Layout laid(List<Entrant> entrants, Frame frame, Terms terms, Optional<Layout> squads) {
    int largest = (entrants.size() + frame.stations() - 1) / frame.stations();
    Visit visit = new Visit(frame.stay(), largest, terms.share());
    List<Entrant> sorted =
        entrants.stream().sorted(Comparator.comparing(e -> e.player().id())).toList();
    List<Drill> drills = drills(sorted, terms);
    Practice practice =
        new Practice(
            sorted.stream().map(e -> hitter(e, drills, terms)).toList(),
            drills.stream().map(d -> task(d, terms.place(), visit)).toList(),
            frame.stations(),
            frame.tossed(),
            frame.rotations(),
            doses.drillsPerPractice(true),
            doses.drillsPerPractice(false),
            choice.stock());
    Arrangement found =
        squads
            .map(s -> Search.best(practice, sorted.stream().mapToInt(s::squad).toArray(), effort))
            .orElseGet(() -> Search.best(practice, effort));
    return new Layout(
        frame.stations(),
        frame.tossed(),
        frame.rotations(),
        frame.stay(),
        frame.change(),
        posts(practice, found, sorted, drills, visit, terms.swingsMost()));
  }

  /**
   * As many stations to watch from as keep squads small, where the minutes allow everybody a round
   * of all of them.
   */
  private int stations(int players, int tossed, int age, int minutes) {
    int wanted = (players + doses.squadMost(age) - 1) / doses.squadMost(age);
    int round = doses.stationMinutesLeast(age) + doses.changeMinutes(age);
    int most = Math.max(tossed + 1, Math.min(tossed + MOST_WATCHED, minutes / round));
    return Math.max(tossed, Math.min(wanted, most));
  }

  /**
   * How often the squads move on: as seldom as stays of the age's length nearly fill the time,
   * since every move costs walking. With a station to watch from it is a whole number of rounds, so
   * that everybody bats equally often.
   */
  private int rotations(int minutes, int stations, int tossed, int change, int age) {
    int step = stations > tossed ? stations : 1;
    int longest = doses.stationMinutes(age) + change;
    int most = Math.max(1, minutes / doses.stationMinutesLeast(age));
    for (int r = step; r <= most; r += step) {
      if (r * longest >= NEARLY_FULL * minutes) {
        return r;
      }
    }
    return Math.max(1, most / step * step);
  }

  /** What anybody who takes part may do there; the most fitting ones where there are too many. */
  private List<Drill> drills(List<Entrant> entrants, Terms terms) {
    Place place = terms.place();
    record Wanted(Drill drill, Need most) {}
    return choice.drills(place).stream()
        .filter(terms.open())
        .filter(d -> terms.swingsMost() > 0 || !d.swing())
        .map(d -> new Wanted(d, mostNeed(entrants, d, place)))
        .filter(w -> w.most() != Need.NOT_YET)
        .sorted(Comparator.comparing(Wanted::most))
        .limit(Practice.MOST_TASKS)
        .map(Wanted::drill)
        .sorted(Comparator.comparing(Drill::id))
        .toList();
  }

  /** What a drill is to whoever needs it most. */
  private Need mostNeed(List<Entrant> entrants, Drill drill, Place place) {
    return entrants.stream()
        .map(e -> need(e, drill, place))
        .min(Comparator.naturalOrder())
        .orElse(Need.NOT_YET);
  }

  /** What a drill is to a player. One that bores is worth less where its step has another. */
  Need need(Entrant entrant, Drill drill, Place place) {
    SkillDecision decision = entrant.decision(drill.skill());
    boolean today = decision.workOn().drills().contains(drill.id());
    if (choice.early(drill, decision.workOn())) {
      return Need.NOT_YET;
    }
    if (!entrant.works(drill.skill())) {
      return Need.OTHER;
    }
    boolean mute = !drill.logged() && choice.logged(decision.workOn(), place);
    if (!today || mute || bores(entrant, decision.workOn(), drill, place)) {
      return Need.EASIER;
    }
    return entrant.focus().get(0).skill() == drill.skill() ? Need.FIRST : Need.SECOND;
  }

  private boolean bores(Entrant entrant, Step step, Drill drill, Place place) {
    return entrant.bores().test(drill) && choice.alternate(step, drill, place);
  }

  private Hitter hitter(Entrant entrant, List<Drill> drills, Terms terms) {
    return new Hitter(
        entrant.player().id(),
        entrant.alike(),
        entrant.player().bats(),
        AgeBand.of(entrant.age()).ordinal(),
        Math.max(1, Math.min(terms.swingsMost(), entrant.swingsLeft())),
        entrant.focus().stream().map(SkillDecision::skill).collect(Collectors.toSet()),
        drills.stream().map(d -> need(entrant, d, terms.place())).toList(),
        drills.stream().map(d -> entrant.used().getOrDefault(d.id(), 0)).toList());
  }

  private Task task(Drill drill, Place place, Visit visit) {
    boolean adult = drill.adults() > 0;
    boolean hits = drill.skill() != Skill.SEE;
    boolean idle = !drill.swing() || choice.ball(drill, place) == Ball.NONE;
    Set<String> gear = new HashSet<>(drill.gear());
    gear.retainAll(choice.stock().keySet());
    return new Task(
        drill.id(),
        drill.skill(),
        adult,
        drill.swing() ? visit.swings(drill) : 0,
        !adult || (hits && idle),
        gear);
  }

  /**
   * What one stay at a station holds.
   *
   * @param stay minutes
   * @param largest players of the largest squad, who sets the pace for all
   * @param share part of the usual tosses
   */
  private record Visit(int stay, int largest, double share) {
    /** Tosses of each; a light day has fewer where there is a bat. */
    int tosses(Drill drill) {
      int each = (int) (stay * drill.perMinute() / (drill.adults() == 0 ? 1 : largest));
      int usual = Math.max(1, Math.min(each, drill.reps()));
      return drill.swing() ? Math.max(1, (int) (share * usual)) : usual;
    }

    int swings(Drill drill) {
      return Math.max(1, drill.swings() * tosses(drill) / drill.reps());
    }
  }

  private static List<Post> posts(
      Practice practice,
      Arrangement found,
      List<Entrant> sorted,
      List<Drill> drills,
      Visit visit,
      int swingsMost) {
    int common = Math.min(swingsMost, new Objective(practice).common(found));
    List<Post> posts = new ArrayList<>();
    for (int q = 0; q < practice.stations(); q++) {
      List<Entrant> squad = squad(sorted, found, q);
      int[] shares = found.shares(practice, q, common);
      for (int r = 0; r < practice.rotations(); r++) {
        int task = found.posts()[q][r];
        int station = practice.station(q, r) + 1;
        posts.add(
            task == Arrangement.FIELDS
                    || (practice.tasks().get(task).swings() > 0 && shares[r] == 0)
                ? new Post(r + 1, station, squad, Optional.empty(), 0, 0)
                : post(r + 1, station, squad, drills.get(task), shares[r], visit));
      }
    }
    posts.sort(Comparator.comparingInt(Post::rotation).thenComparingInt(Post::station));
    return posts.stream().map(p -> seen(p, posts)).toList();
  }

  /** Who would watch tosses that nobody makes fields and writes. */
  private static Post seen(Post post, List<Post> posts) {
    boolean blind =
        post.drill().filter(Drill::watchesOthers).isPresent()
            && posts.stream()
                .filter(p -> p.rotation() == post.rotation())
                .flatMap(p -> p.drill().stream())
                .noneMatch(Drill::tossed);
    return blind
        ? new Post(post.rotation(), post.station(), post.squad(), Optional.empty(), 0, 0)
        : post;
  }

  private static List<Entrant> squad(List<Entrant> sorted, Arrangement found, int squad) {
    return IntStream.range(0, sorted.size())
        .filter(h -> found.squadOf()[h] == squad)
        .mapToObj(sorted::get)
        .toList();
  }

  /** A squad that has fewer swings than its time would hold has fewer tosses too. */
  private static Post post(
      int rotation, int station, List<Entrant> squad, Drill drill, int swings, Visit visit) {
    int tosses = visit.tosses(drill);
    int reps =
        drill.swing()
            ? Math.min(tosses, (swings * drill.reps() + drill.swings() - 1) / drill.swings())
            : tosses;
    return new Post(rotation, station, squad, Optional.of(drill), Math.max(reps, swings), swings);
  }
}
