package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;
import org.belthigh.model.Space;

/** Each drill with its own ball, where it may be done, from as far as it says, with an adult. */
final class DrillCheck {
  private static final Set<String> HOME_BALLS = Set.of("plastic", "foam", "none");
  private static final Set<String> HARD_BALLS = Set.of("baseball", "softball");
  private static final Set<Feed> TOSSED = Set.of(Feed.FRONT_TOSS, Feed.OVERHAND, Feed.MACHINE);
  private static final int OLDER = 13;
  private static final String SCREEN = "screen";

  private final Catalogue catalogue;
  private final Limits limits;
  private final Ages ages;
  private final Optional<ClubRecord> record;
  private final Findings findings;

  DrillCheck(
      Catalogue catalogue,
      Limits limits,
      Ages ages,
      Optional<ClubRecord> record,
      Findings findings) {
    this.catalogue = catalogue;
    this.limits = limits;
    this.ages = ages;
    this.record = record;
    this.findings = findings;
  }

  private Optional<Drill> drill(FinishedPlan plan, String id) {
    String curriculum = record.map(r -> r.club().curriculum()).orElse(plan.curriculum());
    return Optional.ofNullable(catalogue.curricula().get(curriculum))
        .map(Curriculum::drills)
        .map(drills -> drills.get(id));
  }

  /** Looks through every drill of a player's days. */
  void check(FinishedPlan plan, FinishedPlan.Person person) {
    for (FinishedPlan.Dated day : person.days()) {
      for (FinishedPlan.Work work : day.items()) {
        String where = person.id() + " " + day.date() + ", " + work.drill();
        if (day.atHome() && !HOME_BALLS.contains(work.ball())) {
          broken(where, "a " + work.ball() + " at home", "at home it is plastic, foam or none");
        }
        if (day.atHome() && indoors(person)) {
          hallway(where, work);
        }
        if (work.minutes() < 1) {
          findings.fault(where, "no minutes for it", "each drill takes a minute or more");
        }
        Optional<Drill> drill = drill(plan, work.drill());
        if (drill.isEmpty()) {
          findings.fault(where, "the curriculum has no such drill", "drills come from it");
        } else {
          Optional<Place> place = Coded.find(Place.class, day.place());
          place.ifPresent(p -> work(where, person, day.date(), p, work, drill.get()));
        }
      }
    }
  }

  /** Whether the family has no room but a hallway. */
  private boolean indoors(FinishedPlan.Person person) {
    return record.stream()
        .flatMap(r -> r.players().stream())
        .anyMatch(p -> p.id().equals(person.id()) && p.home().space() == Space.HALLWAY);
  }

  private void hallway(String where, FinishedPlan.Work work) {
    if (work.swings() > 0) {
      broken(where, work.swings() + " swings in a hallway", "indoors there is no bat");
    }
    if (!work.ball().equals(Ball.FOAM.id()) && !work.ball().equals(Ball.NONE.id())) {
      broken(where, "a " + work.ball() + " ball in a hallway", "indoors it is foam or none");
    }
  }

  private void work(
      String where,
      FinishedPlan.Person person,
      LocalDate day,
      Place place,
      FinishedPlan.Work work,
      Drill drill) {
    if (!drill.at(place)) {
      broken(where, "done at " + place.id(), "the curriculum allows it elsewhere only");
      return;
    }
    Ball ball = drill.balls().get(place);
    boolean swapped =
        ball == Ball.BASEBALL
            && work.ball().equals("softball")
            && record.map(r -> r.club().group(person.group()).softball()).orElse(true);
    boolean softer =
        place == Place.HOME && ball == Ball.PLASTIC && work.ball().equals(Ball.FOAM.id());
    if (!work.ball().equals(ball.id()) && !swapped && !softer) {
      broken(where, "a " + work.ball(), "the ball of this drill there is " + ball.id());
    }
    if (!work.feed().equals(drill.feed().id())) {
      broken(where, "fed by " + work.feed(), "this drill is fed by " + drill.feed().id());
    }
    if (!drill.swing() && work.swings() > 0) {
      broken(where, work.swings() + " swings", "this drill has no bat");
    }
    feet(where, ages.on(person, day), place, work, drill);
    boolean hardTossed = HARD_BALLS.contains(work.ball()) && drill.feed() != Feed.TEE;
    if (hardTossed && !drill.gear().contains(SCREEN)) {
      broken(where, "a hard ball tossed without a screen", "who tosses stands behind a screen");
    }
  }

  private void feet(String where, int age, Place place, FinishedPlan.Work work, Drill drill) {
    int told = drill.feet().getOrDefault(AgeBand.of(age), 0);
    int before = drill.feet().getOrDefault(AgeBand.of(age - 1), 0);
    boolean birthdayUnknown = record.isEmpty() && work.feet() == before;
    // at home one may stand back a little, so that the ball does not drop steeply
    int most =
        place == Place.HOME && told > 0
            ? Math.max(told, limits.whole("yard-toss-feet", age))
            : told;
    if ((work.feet() < told || work.feet() > most) && !birthdayUnknown) {
      broken(where, "tossed from " + work.feet() + " ft", "at age " + age + " from " + told);
    }
    boolean screened = place != Place.HOME && drill.gear().contains(SCREEN);
    int least = limits.whole("unscreened-toss-feet", age);
    boolean older = age >= OLDER && !birthdayUnknown;
    if (older && TOSSED.contains(drill.feed()) && !screened && work.feet() < least) {
      broken(
          where,
          "tossed from " + work.feet() + " ft without a screen",
          "at 13 and older from " + least + " ft or more");
    }
  }

  /** Looks through the stations of a practice, as it is planned and in its other ways. */
  void check(FinishedPlan plan, FinishedPlan.Practice practice) {
    String where = practice.group() + " " + practice.date();
    int bats = bats(plan, where, practice.stations());
    record.ifPresent(r -> adults(r, practice, bats));
    practice.ways().forEach(way -> way(plan, practice, where + ", " + way.name(), way));
  }

  /** Stations with bats, each of which needs an adult. */
  private int bats(FinishedPlan plan, String where, List<FinishedPlan.Station> stations) {
    int bats = 0;
    for (FinishedPlan.Station station : stations) {
      boolean swings =
          station.drills().stream().anyMatch(d -> drill(plan, d).filter(Drill::swing).isPresent());
      bats += swings ? 1 : 0;
      if (swings && !station.adult()) {
        broken(
            where + ", station " + station.number(),
            "bats without an adult",
            "each station with a bat has an adult");
      }
    }
    return bats;
  }

  /** Another way asks for no more than the plan's own days, which all limits are held against. */
  private void way(
      FinishedPlan plan, FinishedPlan.Practice practice, String where, FinishedPlan.Way way) {
    int bats = bats(plan, where, way.stations());
    if (bats > way.adults()) {
      tooFew(where, bats, way.adults());
    }
    Coded.find(Place.class, way.place()).ifPresent(place -> allowed(plan, where, place, way));
    for (FinishedPlan.Person person : plan.players()) {
      int swings = way.swings().getOrDefault(person.id(), 0);
      int planned =
          person.days().stream()
              .filter(d -> d.date().equals(practice.date()) && !d.atHome())
              .mapToInt(FinishedPlan.Dated::allSwings)
              .sum();
      if (swings > planned) {
        broken(
            where + ", " + person.id(), swings + " swings", "at most the " + planned + " planned");
      }
    }
  }

  private void allowed(FinishedPlan plan, String where, Place place, FinishedPlan.Way way) {
    way.stations().stream()
        .flatMap(s -> s.drills().stream())
        .distinct()
        .filter(d -> drill(plan, d).filter(found -> !found.at(place)).isPresent())
        .forEach(
            d ->
                broken(
                    where + ", " + d,
                    "done at " + place.id(),
                    "the curriculum allows it elsewhere only"));
  }

  private void adults(ClubRecord club, FinishedPlan.Practice practice, int stations) {
    int tossers =
        club.club().groups().stream()
            .filter(g -> g.id().equals(practice.group()))
            .mapToInt(Club.Group::tossers)
            .findFirst()
            .orElse(0);
    club.events().stream()
        .filter(e -> e.date().equals(practice.date()) && e.concerns(practice.group()))
        .mapToInt(e -> e.adults().orElse(tossers))
        .max()
        .ifPresent(
            adults -> {
              if (stations > adults) {
                tooFew(practice.group() + " " + practice.date(), stations, adults);
              }
            });
  }

  private void tooFew(String where, int stations, int adults) {
    broken(
        where,
        stations + " stations with bats and " + adults + " adults",
        "each station with a bat has an adult");
  }

  private void broken(String where, String found, String limit) {
    findings.broken(where, found, limit, "ours, common practice");
  }
}
