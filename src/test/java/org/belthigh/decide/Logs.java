package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.model.Bats;
import org.belthigh.model.Call;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;
import org.belthigh.model.Went;

/** Logs of one invented player, written in counts: so many right of so many, on a day. */
final class Logs {
  static final String PLAYER = "p01";

  private final String player;
  private final LocalDate born;
  private final List<Toss> tosses = new ArrayList<>();
  private final List<Tally> tallies = new ArrayList<>();
  private final List<Placement> placements = new ArrayList<>();

  Logs(LocalDate born) {
    this(PLAYER, born);
  }

  Logs(String player, LocalDate born) {
    this.player = player;
    this.born = born;
  }

  /** Calls of all nine spots without a swing; a wrong one is wrong at every grain. */
  Logs calls(LocalDate day, int right, int of) {
    for (int i = 0; i < of; i++) {
      Spot called = i < right ? Spot.LOW_IN : Spot.BALL;
      toss(day, "zone-call", DrillKind.ZONE_CALL, Spot.LOW_IN, call(called), false, Hit.SOFT);
    }
    return this;
  }

  /** Belt-high tosses, so many of them let go, in a drill with a swing. */
  Logs takes(LocalDate day, int letGo, int of) {
    for (int i = 0; i < of; i++) {
      choice(day, Spot.BELT_MIDDLE, i >= letGo);
    }
    return this;
  }

  /** Balls, so many of them swung at. */
  Logs chases(LocalDate day, int swungAt, int of) {
    for (int i = 0; i < of; i++) {
      choice(day, Spot.BALL, i < swungAt);
    }
    return this;
  }

  private void choice(LocalDate day, Spot zone, boolean swing) {
    toss(day, "countdown", DrillKind.COUNTDOWN, zone, Optional.empty(), swing, Hit.SOFT);
  }

  /** Swings of a drill about driving the ball, so many of them hit hard. */
  Logs hits(LocalDate day, String drill, int hard, int of) {
    for (int i = 0; i < of; i++) {
      Hit hit = i < hard ? Hit.HARD : Hit.SOFT;
      toss(day, drill, DrillKind.NONE, Spot.HIGH_IN, Optional.empty(), true, hit);
    }
    return this;
  }

  /** Swings to a called field in a drill of that kind, so many of them sent there. */
  Logs sends(LocalDate day, String drill, int made, int of) {
    for (int i = 0; i < of; i++) {
      tosses.add(
          new Toss(
              day,
              player,
              drill,
              DrillKind.FIELD_CALL,
              12,
              false,
              "1",
              tosses.size() + 1,
              Side.RIGHT,
              Spot.BELT_MIDDLE,
              false,
              Optional.empty(),
              Optional.of(Field.CENTER),
              true,
              Optional.of(Hit.SOFT),
              Optional.of(i < made ? Went.CENTER : Went.LEFT),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              OptionalDouble.empty(),
              Optional.empty(),
              "coach",
              Origin.of("logs/test.csv", tosses.size() + 2)));
    }
    return this;
  }

  /** A tally. */
  Logs tally(LocalDate day, String drill, MeasureKind measure, int made, int of) {
    tallies.add(
        new Tally(
            day,
            player,
            drill,
            measure,
            made,
            of,
            Optional.of(Side.RIGHT),
            "coach",
            Origin.of("logs/t.csv", 2)));
    return this;
  }

  /** A coach's word. */
  Logs placed(LocalDate day, Skill skill, String step) {
    placements.add(
        new Placement(
            day, player, skill, step, "Nelly", "saw it in the cage", Origin.of("coach.csv", 2)));
    return this;
  }

  /** Changes the newest toss. */
  Logs last(UnaryOperator<Toss> change) {
    tosses.add(change.apply(tosses.remove(tosses.size() - 1)));
    return this;
  }

  /** Every toss again, marked by somebody else; the first {@code wrong} of them as not hit hard. */
  Logs markedAgain(int wrong) {
    List<Toss> second = new ArrayList<>();
    for (Toss toss : tosses) {
      Hit hit = second.size() < wrong ? Hit.SOFT : toss.hit().orElseThrow();
      second.add(
          TossChange.of(toss).hit(hit).by("other").origin(Origin.of("logs/zz.csv", 2)).done());
    }
    List<Toss> both = new ArrayList<>();
    for (int i = 0; i < tosses.size(); i++) {
      both.add(tosses.get(i));
      both.add(second.get(i));
    }
    tosses.clear();
    tosses.addAll(both);
    return this;
  }

  /** The same rows in the order that {@code random} gives. */
  Logs shuffled(java.util.Random random) {
    java.util.Collections.shuffle(tosses, random);
    return this;
  }

  private static Optional<Call> call(Spot spot) {
    return Optional.of(new Call.AtSpot(spot));
  }

  private void toss(
      LocalDate day,
      String drill,
      DrillKind kind,
      Spot zone,
      Optional<Call> called,
      boolean swing,
      Hit hit) {
    tosses.add(
        new Toss(
            day,
            player,
            drill,
            kind,
            12,
            false,
            "1",
            tosses.size() + 1,
            Side.RIGHT,
            zone,
            false,
            called,
            Optional.empty(),
            swing,
            swing ? Optional.of(hit) : Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            "coach",
            Origin.of("logs/test.csv", tosses.size() + 2)));
  }

  /** The record of a club with this one player. */
  ClubRecord record() {
    Club club =
        new Club(
            "Test Club",
            "letter",
            List.of("en"),
            List.of("pitch-smart-2018"),
            LocalDate.of(2027, 3, 1),
            LocalDate.of(2027, 5, 23),
            List.of(new Club.Group("g", "Group", 7, 18, false, 2)),
            "belthigh-2027",
            Map.of(),
            List.of(),
            Optional.empty());
    Player child =
        new Player(
            player,
            "Ana",
            Optional.empty(),
            born,
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
    return new ClubRecord(
        club,
        List.of(child),
        List.of(),
        tosses,
        tallies,
        List.of(),
        List.of(),
        List.of(),
        placements,
        List.of(),
        List.of());
  }
}
