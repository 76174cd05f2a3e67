package org.belthigh.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Grain;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;

/** Counts a club's logs by the counting rules. */
public final class Measures {
  private final List<Toss> tosses;
  private final List<Tally> tallies;

  private Measures(List<Toss> tosses, List<Tally> tallies) {
    this.tosses = tosses;
    this.tallies = tallies;
  }

  /**
   * The measures of every player of the roster, in roster order, over all rows of {@code record};
   * cut it with {@link ClubRecord#upTo} first.
   */
  public static List<PlayerMeasures> of(ClubRecord record) {
    Map<String, List<Toss>> tosses =
        record.tosses().stream().collect(Collectors.groupingBy(Toss::player));
    Map<String, List<Tally>> tallies =
        record.tallies().stream().collect(Collectors.groupingBy(Tally::player));
    return record.players().stream()
        .map(Player::id)
        .map(
            id ->
                new Measures(
                        tosses.getOrDefault(id, List.of()), tallies.getOrDefault(id, List.of()))
                    .of(id))
        .toList();
  }

  private PlayerMeasures of(String player) {
    Map<Grain, Recognition> recognition = new EnumMap<>(Grain.class);
    for (Grain grain : Grain.values()) {
      recognition.put(grain, recognition(grain));
    }
    return new PlayerMeasures(
        player,
        recognition,
        agreement(Grain.NINE, toss -> !toss.swing()).right(),
        agreement(Grain.NINE, Toss::swing).right(),
        share(MeasureKind.MIDDLE_TAKE, toss -> !toss.swing()),
        share(MeasureKind.BALL_SWING, Toss::swing),
        countdown(),
        hardHit(),
        fieldCalls());
  }

  /** Tallies of calls do not say their grain and count at the finest. */
  private Recognition recognition(Grain grain) {
    Agreement agreement = agreement(grain, toss -> true);
    Share tallied = grain == Grain.NINE ? tallied(MeasureKind.ZONE_RECOGNITION) : Share.none();
    return new Recognition(agreement.right().plus(tallied), agreement.kappa());
  }

  private Agreement agreement(Grain grain, Predicate<Toss> which) {
    Agreement agreement = new Agreement();
    tosses.stream()
        .filter(which)
        .forEach(
            toss -> toss.answer(grain).ifPresent(a -> agreement.add(grain.seen(toss.zone()), a)));
    return agreement;
  }

  private Share share(MeasureKind measure, Predicate<Toss> made) {
    Share share = tallied(measure);
    for (Toss toss : tosses) {
      if (toss.countsFor(measure)) {
        share = share.and(made.test(toss));
      }
    }
    return share;
  }

  private Share tallied(MeasureKind measure) {
    return tallies.stream()
        .filter(tally -> tally.measure() == measure)
        .map(tally -> new Share(tally.made(), tally.of()))
        .reduce(Share.none(), Share::plus);
  }

  private Countdown countdown() {
    List<Countdown.Round> rounds = new ArrayList<>();
    rounds(DrillKind.COUNTDOWN).forEach(tosses -> rounds.add(round(tosses)));
    tallies.stream()
        .filter(tally -> tally.measure() == MeasureKind.COUNTDOWN)
        .forEach(tally -> rounds.add(round(tally)));
    rounds.sort(Comparator.comparing(Countdown.Round::date));
    return new Countdown(rounds);
  }

  private static Countdown.Round round(List<Toss> tosses) {
    Toss first = tosses.get(0);
    List<Boolean> hits = tosses.stream().filter(Toss::swing).map(Measures::hard).toList();
    CountdownWalk walk = CountdownWalk.of(first.startCount(), hits);
    return new Countdown.Round(
        first.date(),
        first.round(),
        walk.complete() ? OptionalInt.of(walk.swings()) : OptionalInt.empty(),
        walk.swings(),
        OptionalInt.of(walk.hard()),
        walk.free());
  }

  private static Countdown.Round round(Tally tally) {
    return new Countdown.Round(
        tally.date(),
        Countdown.Round.TALLY,
        OptionalInt.of(tally.made()),
        tally.made(),
        OptionalInt.empty(),
        0);
  }

  private static boolean hard(Toss toss) {
    return toss.hit().filter(hit -> hit == Hit.HARD).isPresent();
  }

  private Share hardHit() {
    Share share = Share.none();
    for (Toss toss : tosses) {
      if (toss.kind() == DrillKind.COUNTDOWN && toss.swing()) {
        share = share.and(hard(toss));
      }
    }
    return share;
  }

  private FieldCalls fieldCalls() {
    Share swings = tallied(MeasureKind.FIELD_CALL);
    Share firstTry = Share.none();
    for (List<Toss> round : rounds(DrillKind.FIELD_CALL)) {
      FieldCalls calls = FieldCallWalk.of(round);
      swings = swings.plus(calls.swings());
      firstTry = firstTry.plus(calls.firstTry());
    }
    return new FieldCalls(swings, firstTry);
  }

  private record RoundKey(LocalDate date, String drill, String round) {}

  /** The tosses of that kind, one list per round, rounds and tosses in the record's order. */
  private Collection<List<Toss>> rounds(DrillKind kind) {
    return tosses.stream()
        .filter(toss -> toss.kind() == kind)
        .collect(
            Collectors.groupingBy(
                toss -> new RoundKey(toss.date(), toss.drill(), toss.round()),
                LinkedHashMap::new,
                Collectors.toList()))
        .values();
  }
}
