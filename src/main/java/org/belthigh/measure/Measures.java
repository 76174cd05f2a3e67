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
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.model.AgeBand;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Grain;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;
import org.belthigh.model.Side;

/** Counts a club's logs by the counting rules. */
public final class Measures {
  private final List<Toss> tosses;
  private final List<Tally> tallies;
  private final Marks marks;

  private Measures(List<Toss> tosses, List<Tally> tallies) {
    this.tosses = tosses;
    this.marks = Marks.of(tosses);
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
    List<PlayerMeasures> all =
        record.players().stream()
            .map(Player::id)
            .map(
                id ->
                    new Measures(
                            tosses.getOrDefault(id, List.of()), tallies.getOrDefault(id, List.of()))
                        .of(id))
            .toList();
    return besideTheirAge(record, all);
  }

  /** The same players, each beside those of the club in the same age band. */
  private static List<PlayerMeasures> besideTheirAge(ClubRecord record, List<PlayerMeasures> all) {
    LocalDate first = record.club().seasonFirst();
    Map<String, AgeBand> bands =
        record.players().stream()
            .collect(Collectors.toMap(Player::id, p -> AgeBand.of(p.ageOn(first))));
    Map<AgeBand, Map<MeasureKind, Shrinkage>> shrinkage =
        all.stream()
            .collect(
                Collectors.groupingBy(
                    m -> bands.get(m.player()),
                    Collectors.collectingAndThen(Collectors.toList(), Measures::shrinkage)));
    return all.stream()
        .map(m -> m.withAgeBand(inAgeBand(m, shrinkage.get(bands.get(m.player())))))
        .toList();
  }

  private static Map<MeasureKind, Shrinkage> shrinkage(List<PlayerMeasures> group) {
    Map<MeasureKind, Shrinkage> shrinkage = new EnumMap<>(MeasureKind.class);
    for (MeasureKind measure : MeasureKind.values()) {
      shrinkage.put(measure, Shrinkage.of(group.stream().map(m -> m.share(measure)).toList()));
    }
    return shrinkage;
  }

  private static Map<MeasureKind, GroupEstimate> inAgeBand(
      PlayerMeasures measures, Map<MeasureKind, Shrinkage> group) {
    Map<MeasureKind, GroupEstimate> estimates = new EnumMap<>(MeasureKind.class);
    group.forEach(
        (measure, shrinkage) ->
            shrinkage
                .estimate(measures.share(measure))
                .ifPresent(estimate -> estimates.put(measure, estimate)));
    return estimates;
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
        countdown(toss -> true, tallies),
        hardHit(),
        FieldCalls.of(tries()).withTallied(tallied(MeasureKind.FIELD_CALL)),
        skills(tosses, tallies),
        bySide(),
        Map.of());
  }

  private Map<Side, Skills> bySide() {
    Map<Side, List<Toss>> sides = tosses.stream().collect(Collectors.groupingBy(Toss::side));
    if (sides.size() < 2) {
      return Map.of();
    }
    Map<Side, Skills> skills = new EnumMap<>(Side.class);
    sides.forEach(
        (side, own) ->
            skills.put(
                side,
                skills(
                    own,
                    tallies.stream()
                        .filter(t -> t.side().filter(s -> s == side).isPresent())
                        .toList())));
    return skills;
  }

  /**
   * The skills that {@code own} show, which are all tosses or those of one side. Rounds and calls
   * are walked whole, whoever stood where; a countdown belongs to a side if all of it does.
   */
  private Skills skills(List<Toss> own, List<Tally> ownTallies) {
    Set<Toss> which = Set.copyOf(own);
    return new Skills(
        See.of(own),
        Choose.of(own, ownTallies),
        Drive.of(
            own.stream().filter(t -> t.kind() == DrillKind.COUNTDOWN && t.swing()).toList(),
            countdown(which::contains, ownTallies).rounds(),
            ownTallies),
        Send.of(
            tries().stream().filter(one -> which.contains(one.toss())).toList(),
            fieldsInPlay(),
            Tallied.share(ownTallies, MeasureKind.FIELD_CALL)));
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
    return Tallied.share(tallies, measure);
  }

  private Countdown countdown(Predicate<Toss> which, List<Tally> ownTallies) {
    List<Countdown.Round> rounds = new ArrayList<>();
    rounds(DrillKind.COUNTDOWN).stream()
        .filter(round -> round.stream().allMatch(which))
        .forEach(round -> rounds.add(round(round)));
    ownTallies.stream()
        .filter(tally -> tally.measure() == MeasureKind.COUNTDOWN)
        .forEach(tally -> rounds.add(round(tally)));
    rounds.sort(Comparator.comparing(Countdown.Round::date));
    return new Countdown(rounds);
  }

  private static Countdown.Round round(List<Toss> tosses) {
    Toss first = tosses.get(0);
    List<Boolean> hits = tosses.stream().filter(Toss::swing).map(Drive::hard).toList();
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

  private Share hardHit() {
    Share share = Share.none();
    for (Toss toss : tosses) {
      if (toss.kind() == DrillKind.COUNTDOWN && toss.swing()) {
        share = share.and(Drive.hard(toss));
      }
    }
    return share;
  }

  private int fieldsInPlay() {
    return (int)
        tosses.stream()
            .filter(toss -> toss.kind() == DrillKind.FIELD_CALL)
            .map(Toss::field)
            .distinct()
            .count();
  }

  private List<FieldCallWalk.Try> tries() {
    return rounds(DrillKind.FIELD_CALL).stream()
        .flatMap(round -> FieldCallWalk.of(round).stream())
        .toList();
  }

  /**
   * A round.
   *
   * @param by who marked it, where two people did; else blank
   */
  private record RoundKey(LocalDate date, String drill, String round, String by) {}

  /** The tosses of that kind, one list per round, rounds and tosses in the record's order. */
  private Collection<List<Toss>> rounds(DrillKind kind) {
    return tosses.stream()
        .filter(toss -> toss.kind() == kind)
        .collect(
            Collectors.groupingBy(
                toss ->
                    new RoundKey(
                        toss.date(),
                        toss.drill(),
                        toss.round(),
                        marks.people(toss) > 1 ? toss.by() : ""),
                LinkedHashMap::new,
                Collectors.toList()))
        .values();
  }
}
