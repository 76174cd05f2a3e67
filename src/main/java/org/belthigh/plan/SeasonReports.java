package org.belthigh.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Toss;
import org.belthigh.measure.BySpot;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.model.Grain;
import org.belthigh.model.Phrase;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;

/** The season reports of a club, as known on the day a plan is made for. */
final class SeasonReports {
  /** A stretch with fewer tosses says nothing and is left out. Ours. */
  private static final int LEAST_A_STRETCH = 6;

  /** The season is cut into at most so many stretches of two, four, six … weeks. */
  private static final int MOST_STRETCHES = 7;

  private static final int FORTNIGHT = 14;

  /** So many calls for two pictures to compare. Ours. */
  private static final int LEAST_CALLS = 20;

  /** More weeks than this do not fit the page; the latest are kept. */
  private static final int MOST_WEEKS = 12;

  private static final List<Grain> FINEST_FIRST =
      List.of(Grain.NINE, Grain.ROW, Grain.COLUMN, Grain.STRIKE);

  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final ClubRecord record;
  private final Doses doses;
  private final LocalDate first;
  private final LocalDate last;
  private final Map<LocalDate, Map<String, PlayerMeasures>> stretches = new LinkedHashMap<>();

  SeasonReports(Catalogue catalogue, ClubRecord record, LocalDate last) {
    this.catalogue = catalogue;
    this.curriculum = catalogue.curricula().get(record.club().curriculum());
    this.record = record;
    this.doses = new Doses(catalogue, last);
    this.first = record.club().seasonFirst();
    this.last = last;
    int step = step();
    for (LocalDate d = first; !d.isAfter(last); d = d.plusDays(step)) {
      ClubRecord some = record.upTo(d.plusDays(step - 1L)).since(d);
      stretches.put(
          d, Measures.of(some).stream().collect(Collectors.toMap(PlayerMeasures::player, p -> p)));
    }
  }

  /** Days of a stretch: whole fortnights, as few as give no more than the most stretches. */
  private int step() {
    long days = Math.max(1, ChronoUnit.DAYS.between(first, last) + 1);
    int most = FORTNIGHT * MOST_STRETCHES;
    return FORTNIGHT * (int) ((days + most - 1) / most);
  }

  SeasonReport of(Player player, List<SkillDecision> decisions) {
    List<Toss> tosses =
        record.tosses().stream()
            .filter(t -> t.player().equals(player.id()) && !t.date().isBefore(first))
            .toList();
    return new SeasonReport(
        first,
        last,
        worked(tosses, decisions),
        courses(player),
        spots(player, tosses),
        weeks(player),
        mostPitches(player),
        decisions.stream().map(SeasonReports::ahead).toList(),
        Phrase.of("season.source", "tosses", LEAST_A_STRETCH, "calls", LEAST_CALLS));
  }

  private static Phrase ahead(SkillDecision decision) {
    return decision
        .next()
        .map(next -> Phrase.of("season.next", "step", next.name()))
        .map(step -> step.with("skill", Say.word("skill", decision.skill())))
        .orElseGet(
            () ->
                Phrase.of(
                    "season.stay",
                    "skill",
                    Say.word("skill", decision.skill()),
                    "step",
                    decision.step().name()));
  }

  private List<SeasonReport.Worked> worked(List<Toss> tosses, List<SkillDecision> decisions) {
    Map<Skill, List<Toss>> bySkill =
        tosses.stream().collect(Collectors.groupingBy(t -> curriculum.drill(t.drill()).skill()));
    return decisions.stream()
        .filter(d -> bySkill.containsKey(d.skill()))
        .map(
            d -> {
              List<Toss> own = bySkill.get(d.skill());
              int days = (int) own.stream().map(Toss::date).distinct().count();
              int seen = (int) own.stream().map(Toss::key).distinct().count();
              return new SeasonReport.Worked(d.skill(), d.step().name(), days, seen);
            })
        .toList();
  }

  private List<SeasonReport.Course> courses(Player player) {
    Grain grain = comparable(player);
    return Stream.of(
            course(player, "calls." + grain.id(), m -> m.skills().see().at(grain).all().exact()),
            course(player, "belts-swung", m -> m.skills().choose().swing().hits()),
            course(player, "balls-let-go", m -> others(m.skills().choose().swing().falseAlarms())),
            course(player, "hard-hits", m -> m.skills().drive().hits().single()),
            course(player, "sent", m -> m.skills().send().all().swings()))
        .filter(c -> !c.points().isEmpty())
        .toList();
  }

  private static Share others(Share share) {
    return new Share(share.seen() - share.made(), share.seen());
  }

  private SeasonReport.Course course(
      Player player, String what, Function<PlayerMeasures, Share> share) {
    List<SeasonReport.Point> points = new ArrayList<>();
    stretches.forEach(
        (day, measures) -> {
          Share one = share.apply(measures.get(player.id()));
          if (one.seen() >= LEAST_A_STRETCH) {
            points.add(new SeasonReport.Point(day, one));
          }
        });
    return new SeasonReport.Course(what, points);
  }

  /** The finest grain that every stretch with calls has, so that like is held against like. */
  private Grain comparable(Player player) {
    long all = callStretches(player, Grain.STRIKE);
    return FINEST_FIRST.stream()
        .filter(grain -> callStretches(player, grain) == all)
        .findFirst()
        .orElse(Grain.STRIKE);
  }

  private long callStretches(Player player, Grain grain) {
    return stretches.values().stream()
        .map(m -> m.get(player.id()).skills().see().at(grain).all().exact())
        .filter(share -> share.seen() >= LEAST_A_STRETCH)
        .count();
  }

  /**
   * The pictures of each side; a switch hitter sees other tosses from the left than from the right.
   */
  private List<SeasonReport.Spots> spots(Player player, List<Toss> tosses) {
    Grain grain = comparable(player);
    return Stream.of(Side.values())
        .flatMap(side -> spots(grain, side, tosses.stream().filter(t -> t.side() == side)).stream())
        .toList();
  }

  private static Optional<SeasonReport.Spots> spots(Grain grain, Side side, Stream<Toss> tosses) {
    List<Toss> called = tosses.filter(t -> t.answer(grain).isPresent()).toList();
    List<LocalDate> days = called.stream().map(Toss::date).distinct().sorted().toList();
    if (called.size() < LEAST_CALLS || days.size() < 2) {
      return Optional.empty();
    }
    LocalDate now = days.get((days.size() + 1) / 2);
    return Optional.of(
        new SeasonReport.Spots(
            grain,
            side,
            now,
            bySpot(grain, called.stream().filter(t -> t.date().isBefore(now))),
            bySpot(grain, called.stream().filter(t -> !t.date().isBefore(now)))));
  }

  private static Map<Spot, Share> bySpot(Grain grain, Stream<Toss> tosses) {
    return BySpot.of(tosses, t -> t.answer(grain).orElseThrow().equals(grain.seen(t.zone())));
  }

  private List<SeasonReport.Week> weeks(Player player) {
    Map<LocalDate, Integer> swings = WeeklyRise.logged(record, player);
    Map<LocalDate, Integer> pitches = new TreeMap<>();
    record.outings().stream()
        .filter(o -> o.player().equals(player.id()))
        .forEach(o -> pitches.merge(o.date(), o.pitches(), Integer::sum));
    List<SeasonReport.Week> weeks = new ArrayList<>();
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(7)) {
      List<LocalDate> days = day.datesUntil(day.plusDays(7)).toList();
      weeks.add(
          new SeasonReport.Week(
              day,
              told(days, swings, IntStream::sum),
              doses.swingsPerWeek(player.ageOn(day)),
              told(days, pitches, IntStream::sum),
              told(days, pitches, all -> all.max().orElse(0))));
    }
    return weeks.subList(Math.max(0, weeks.size() - MOST_WEEKS), weeks.size());
  }

  /** What the days on record add up to; empty where none of them is, which is not zero. */
  private static OptionalInt told(
      List<LocalDate> days, Map<LocalDate, Integer> counts, ToIntFunction<IntStream> all) {
    List<LocalDate> known = days.stream().filter(counts::containsKey).toList();
    return known.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(all.applyAsInt(known.stream().mapToInt(counts::get)));
  }

  private OptionalInt mostPitches(Player player) {
    if (!player.pitches()) {
      return OptionalInt.empty();
    }
    Club club = record.club();
    return club.ruleBooks().stream()
        .map(id -> club.stricter().over(catalogue.ruleBook(id), club.name()))
        .flatMapToInt(book -> ages(book, player).flatMap(age -> book.dailyMax(age).stream()))
        .min();
  }

  private IntStream ages(RuleBook book, Player player) {
    return IntStream.of(
        book.ageBasis().age(player.born(), last), book.ageBasis().other().age(player.born(), last));
  }
}
