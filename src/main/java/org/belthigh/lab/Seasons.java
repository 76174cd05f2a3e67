package org.belthigh.lab;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Toss;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Bats;
import org.belthigh.model.Call;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Hit;
import org.belthigh.model.Origin;
import org.belthigh.model.Place;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;
import org.belthigh.model.Went;

/** Makes the logs of simulated players, one season each. */
final class Seasons {
  private static final Origin ORIGIN = Origin.of("lab");
  private static final double RARELY = 0.01;

  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final AgeBand band;
  private final Step step;
  private final Drill drill;

  Seasons(Catalogue catalogue, Curriculum curriculum, Skill skill, AgeBand band) {
    this.catalogue = catalogue;
    this.curriculum = curriculum;
    this.band = band;
    this.step = curriculum.ladders().get(skill).start(band.from());
    this.drill = drill(skill);
  }

  Step step() {
    return step;
  }

  /** A drill of the step whose tosses are counted as the step counts them. */
  private Drill drill(Skill skill) {
    return step.drills().stream()
        .map(curriculum::drill)
        .filter(d -> d.at(Place.FIELD))
        .filter(
            d ->
                switch (skill) {
                  case SEE -> d.kind() == DrillKind.ZONE_CALL;
                  case CHOOSE, DRIVE -> d.swing();
                  case SEND -> d.kind() == DrillKind.FIELD_CALL;
                })
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("No drill proves step " + step.id()));
  }

  /** The share that is good enough, as the step counts it. */
  double mark(Step.Bar bar) {
    return catalogue.parameter(bar.mark()).on(Scenario.FIRST).at(band);
  }

  /** The share that is too little, as the step counts it. */
  double floor(Step.Bar bar) {
    return catalogue.parameter(bar.floor()).on(Scenario.FIRST).at(band);
  }

  /** The chance of what the bar hopes for: for takes and chases, of not doing it. */
  static double good(Step.Bar bar, double share) {
    boolean fewer = bar.counted() == Step.Counted.TAKES || bar.counted() == Step.Counted.CHASES;
    return fewer ? 1 - share : share;
  }

  /** The true chance of a good toss in that week, kept within 1 to 99 %. */
  double chance(Scenario scenario, Step.Bar bar, int week) {
    double level = scenario.hitter().level(bar.counted(), week, scenario.crossing());
    return chance(bar, floor(bar), mark(bar), level);
  }

  /**
   * The true chance of a good toss, kept within 1 to 99 %.
   *
   * @param floor the share that is too little, as the step counts it
   * @param mark the share that is good enough, likewise
   * @param level 0 for a hitter at the floor, 1 for one at the mark
   */
  static double chance(Step.Bar bar, double floor, double mark, double level) {
    double low = good(bar, floor);
    double high = good(bar, mark);
    return Math.min(1 - RARELY, Math.max(RARELY, low + level * (high - low)));
  }

  /** The shares that a hitter is tried on. */
  List<Step.Bar> tried(Hitter hitter) {
    return step.bars().stream()
        .filter(bar -> hitter.alone().filter(c -> c != bar.counted()).isEmpty())
        .toList();
  }

  /** Wald's expected number for a hitter at the mark; for two kinds, twice the slower one's. */
  double wald(Hitter hitter) {
    double error = catalogue.parameter("decision-error").on(Scenario.FIRST).at(band);
    List<Step.Bar> bars = tried(hitter);
    double most = 0;
    for (Step.Bar bar : bars) {
      Wald test = new Wald(good(bar, floor(bar)), good(bar, mark(bar)), error, error);
      most = Math.max(most, test.tossesAtP1());
    }
    return most * bars.size();
  }

  /**
   * One season of one player.
   *
   * @param good for each of the step's bars, whether each toss was good as it is written, in order
   */
  record Season(Player player, List<Toss> tosses, List<List<Boolean>> good) {}

  /** A club whose players are seasons; no events, tallies or anything else. */
  ClubRecord club(List<Season> seasons) {
    Club club =
        new Club(
            "Lab",
            "letter",
            List.of("en"),
            List.of("pitch-smart-2018"),
            Scenario.FIRST,
            Scenario.FIRST.plusWeeks(Scenario.WEEKS),
            List.of(new Club.Group("g", "Lab", 7, 18, false, 2)),
            curriculum.id(),
            Map.of(),
            List.of(),
            Optional.empty());
    List<Toss> tosses = new ArrayList<>();
    seasons.forEach(s -> tosses.addAll(s.tosses()));
    return new ClubRecord(
        club,
        seasons.stream().map(Season::player).toList(),
        List.of(),
        tosses,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /** Born so that the age stays in the band all season. */
  private Player player(String id) {
    return new Player(
        id,
        "Lab",
        Optional.empty(),
        Scenario.FIRST.minusYears(band.from()).minusMonths(3),
        Bats.RIGHT,
        Optional.empty(),
        OptionalInt.empty(),
        "g",
        false,
        false,
        Optional.empty(),
        OptionalDouble.empty(),
        "en",
        Set.of(),
        Optional.empty(),
        false);
  }

  /** A season, told by its seed alone. */
  Season season(String id, long seed, Scenario scenario) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Toss> tosses = new ArrayList<>();
    Pen pen = new Pen(random, scenario.misread());
    List<List<Boolean>> good = new ArrayList<>();
    step.bars().forEach(bar -> good.add(new ArrayList<>()));
    for (Scenario.Day day : scenario.days()) {
      for (Step.Bar bar : step.bars()) {
        double chance = chance(scenario, bar, day.week());
        boolean now = random.nextDouble() < chance;
        for (int i = 0; i < scenario.tossesADay(); i++) {
          boolean repeats = i > 0 && random.nextDouble() < scenario.hitter().runs();
          now = (i == 0 || repeats) ? now : random.nextDouble() < chance;
          tosses.add(toss(id, day, bar.counted(), now, i + 1, pen));
          record(tosses.get(tosses.size() - 1), good);
        }
      }
    }
    return new Season(player(id), tosses, good);
  }

  private void record(Toss toss, List<List<Boolean>> good) {
    for (int b = 0; b < good.size(); b++) {
      written(step.bars().get(b).counted(), toss).ifPresent(good.get(b)::add);
    }
  }

  /** Whether a toss is good as it is written; empty where it is of another kind. */
  private Optional<Boolean> written(Step.Counted counted, Toss toss) {
    return switch (counted) {
      case CALLS -> {
        Grain grain = step.grain().orElseThrow();
        yield toss.answer(grain).map(grain.seen(toss.zone())::equals);
      }
      case TAKES -> toss.zone().beltHigh() ? Optional.of(toss.swing()) : Optional.empty();
      case CHASES -> toss.zone().strike() ? Optional.empty() : Optional.of(!toss.swing());
      case HARD_HITS -> toss.hit().map(h -> h == Hit.HARD);
      case SENT -> Optional.of(toss.went().flatMap(Went::field).equals(toss.field()));
    };
  }

  /**
   * Who writes down: one label in so many becomes another one, each other label alike. For a call
   * of nine spots that is right with chance a, and a zone that is written right with chance r, they
   * agree with chance ar + (1-a)(1-r)/9.
   */
  record Pen(SplittableRandom random, double misread) {
    <T> T write(T label, T[] labels) {
      if (misread == 0 || random.nextDouble() >= misread) {
        return label;
      }
      int other = random.nextInt(labels.length - 1);
      return labels[other < Arrays.asList(labels).indexOf(label) ? other : other + 1];
    }
  }

  private Toss toss(
      String id, Scenario.Day day, Step.Counted counted, boolean good, int order, Pen pen) {
    Spot zone = counted == Step.Counted.CHASES ? Spot.BALL : Spot.BELT_MIDDLE;
    boolean zoneIsTheLabel = counted != Step.Counted.HARD_HITS && counted != Step.Counted.SENT;
    boolean swing =
        switch (counted) {
          case CALLS -> false;
          case TAKES -> good;
          case CHASES -> !good;
          case HARD_HITS, SENT -> true;
        };
    Optional<Call> called =
        counted == Step.Counted.CALLS
            ? Optional.of(new Call.AtSpot(good ? zone : wrong(zone)))
            : Optional.empty();
    boolean sent = counted == Step.Counted.SENT;
    Hit hit = counted == Step.Counted.HARD_HITS && good ? Hit.HARD : Hit.SOFT;
    return new Toss(
        day.date(),
        id,
        drill.id(),
        drill.kind(),
        12,
        !drill.swing(),
        "1",
        order,
        Side.RIGHT,
        zoneIsTheLabel ? pen.write(zone, Spot.values()) : zone,
        false,
        called,
        sent ? Optional.of(Field.CENTER) : Optional.empty(),
        swing,
        swing ? Optional.of(hit(counted, hit, pen)) : Optional.empty(),
        sent
            ? Optional.of(pen.write(good ? Went.CENTER : Went.LEFT, Went.values()))
            : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.of(day.place()),
        "lab",
        ORIGIN);
  }

  private static Hit hit(Step.Counted counted, Hit hit, Pen pen) {
    return counted == Step.Counted.HARD_HITS ? pen.write(hit, new Hit[] {Hit.HARD, Hit.SOFT}) : hit;
  }

  /** A call that is wrong at every grain. */
  private static Spot wrong(Spot zone) {
    for (Spot other : Spot.values()) {
      boolean differs = true;
      for (Grain grain : Grain.values()) {
        differs &= !grain.seen(other).equals(grain.seen(zone));
      }
      if (differs) {
        return other;
      }
    }
    throw new IllegalStateException("No call is wrong at every grain for " + zone);
  }
}
