package org.belthigh.lab;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
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

/** Makes the logs of a club of simulated players, one season each. */
final class Seasons {
  static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  static final int WEEKS = 12;

  /** Days of the week with practice: Tuesday and Thursday. */
  private static final int[] DAYS = {1, 3};

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

  double mark(Step.Bar bar) {
    return catalogue.parameter(bar.mark()).on(FIRST).at(band);
  }

  double floor(Step.Bar bar) {
    return catalogue.parameter(bar.floor()).on(FIRST).at(band);
  }

  /** The chance of what the bar hopes for: for takes and chases, of not doing it. */
  static double good(Step.Bar bar, double share) {
    boolean fewer = bar.counted() == Step.Counted.TAKES || bar.counted() == Step.Counted.CHASES;
    return fewer ? 1 - share : share;
  }

  /**
   * A club whose players are seasons.
   *
   * @param seeds one for each season
   * @param tossesADay counted tosses of each kind on each practice day
   * @param careless chance that a toss is written down the wrong way
   * @param results receives, per season, good and bad in order, for baselines
   */
  ClubRecord club(
      long[] seeds, Hitter hitter, int tossesADay, double careless, List<List<Boolean>> results) {
    List<Player> players = new ArrayList<>();
    List<Toss> tosses = new ArrayList<>();
    for (int i = 0; i < seeds.length; i++) {
      String id = id(i);
      players.add(player(id));
      List<Boolean> own = new ArrayList<>();
      season(id, new SplittableRandom(seeds[i]), hitter, tossesADay, careless, tosses, own);
      results.add(own);
    }
    Club club =
        new Club(
            "Lab",
            "letter",
            List.of("en"),
            List.of("pitch-smart-2018"),
            FIRST,
            FIRST.plusWeeks(WEEKS),
            List.of(new Club.Group("g", "Lab", 7, 18, false, 2)),
            curriculum.id(),
            Map.of(),
            List.of(),
            Optional.empty());
    return new ClubRecord(
        club, players, List.of(), tosses, List.of(), List.of(), List.of(), List.of(), List.of(),
        List.of(), List.of());
  }

  /** The id of the i-th season's player. */
  static String id(int i) {
    return "s" + i;
  }

  /** {@code club} less those seasons that are told already, since their step was proved. */
  static ClubRecord without(ClubRecord club, LocalDate[] proved) {
    Set<String> left = new HashSet<>();
    for (int i = 0; i < proved.length; i++) {
      if (proved[i] == null) {
        left.add(id(i));
      }
    }
    return new ClubRecord(
        club.club(),
        club.players().stream().filter(p -> left.contains(p.id())).toList(),
        club.events(),
        club.tosses().stream().filter(t -> left.contains(t.player())).toList(),
        club.tallies(),
        club.outings(),
        club.wellness(),
        club.otherSports(),
        club.placements(),
        club.unread(),
        club.problems());
  }

  /** Born so that the age stays in the band all season. */
  private Player player(String id) {
    return new Player(
        id,
        "Lab",
        Optional.empty(),
        FIRST.minusYears(band.from()).minusMonths(3),
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

  private void season(
      String id,
      SplittableRandom random,
      Hitter hitter,
      int tossesADay,
      double careless,
      List<Toss> tosses,
      List<Boolean> results) {
    for (int week = 0; week < WEEKS; week++) {
      for (int day : DAYS) {
        LocalDate date = FIRST.plusWeeks(week).plusDays(day);
        for (Step.Bar bar : step.bars()) {
          double chance = hitter.chance(week, good(bar, floor(bar)), good(bar, mark(bar)));
          for (int i = 0; i < tossesADay; i++) {
            boolean good = random.nextDouble() < chance;
            boolean written = random.nextDouble() < careless ? !good : good;
            tosses.add(toss(id, date, bar.counted(), written, i + 1));
            results.add(written);
          }
        }
      }
    }
  }

  private Toss toss(String id, LocalDate date, Step.Counted counted, boolean good, int order) {
    Spot zone = counted == Step.Counted.CHASES ? Spot.BALL : Spot.BELT_MIDDLE;
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
        date,
        id,
        drill.id(),
        drill.kind(),
        12,
        !drill.swing(),
        counted.id(),
        order,
        Side.RIGHT,
        zone,
        false,
        called,
        sent ? Optional.of(Field.CENTER) : Optional.empty(),
        swing,
        swing ? Optional.of(hit) : Optional.empty(),
        sent ? Optional.of(good ? Went.CENTER : Went.LEFT) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.of(Place.FIELD),
        "lab",
        Origin.of("lab"));
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
