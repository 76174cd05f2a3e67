package org.belthigh.lab;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.Progress;
import org.belthigh.decide.SkillDecision;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Share;
import org.belthigh.model.Skill;

/**
 * Runs the real decisions over simulated seasons. Each season has a seed of its own, so that the
 * result does not depend on how many threads there are.
 */
public final class Lab {
  private static final int BATCH = 250;

  /** Ten years and more, as good as never beside a season. */
  private static final double NO_FADING = 1e9;

  private final Curriculum curriculum;
  private final Stage real;
  private final Stage plain;

  /** The decisions, and the numbers that they go by. */
  private record Stage(Catalogue catalogue, Progress progress) {
    Stage(Catalogue catalogue) {
      this(catalogue, new Progress(catalogue));
    }
  }

  /** A lab for {@code curriculum}, whether or not {@code catalogue} holds it. */
  public Lab(Catalogue catalogue, Curriculum curriculum) {
    Map<String, Curriculum> curricula = new TreeMap<>(catalogue.curricula());
    curricula.put(curriculum.id(), curriculum);
    this.curriculum = curriculum;
    this.real = new Stage(with(catalogue, catalogue.parameters(), curricula));
    this.plain = new Stage(with(catalogue, plain(catalogue.parameters()), curricula));
  }

  /**
   * The plain test of the books: tosses do not fade, and nothing is kept for a later beginning.
   * Tosses at the field weigh one anyway.
   */
  private static Map<String, Parameter> plain(Map<String, Parameter> real) {
    Map<String, Parameter> parameters = new TreeMap<>(real);
    parameters.computeIfPresent("toss-half-life-days", (id, p) -> set(p, NO_FADING));
    parameters.computeIfPresent("restart-share", (id, p) -> set(p, 0));
    return parameters;
  }

  private static Parameter set(Parameter parameter, double value) {
    Map<AgeBand, Double> byAge = new EnumMap<>(AgeBand.class);
    Arrays.stream(AgeBand.values()).forEach(band -> byAge.put(band, value));
    List<Parameter.Dated> values =
        parameter.values().stream()
            .map(d -> new Parameter.Dated(d.from(), byAge, d.source(), d.evidence(), d.reasoning()))
            .toList();
    return new Parameter(
        parameter.id(),
        parameter.description(),
        parameter.unit(),
        parameter.least(),
        parameter.most(),
        parameter.status(),
        parameter.checkedOn(),
        values);
  }

  private static Catalogue with(
      Catalogue old, Map<String, Parameter> parameters, Map<String, Curriculum> curricula) {
    return new Catalogue(
        old.sources(),
        parameters,
        old.ruleBooks(),
        old.rules(),
        old.precedence(),
        curricula,
        old.growth(),
        old.heatTables(),
        old.whoEnds());
  }

  /** Whether a skill is judged at all on the step that the age begins on. */
  public boolean judged(Skill skill, AgeBand band) {
    return curriculum.ladders().get(skill).start(band.from()).judged(band.from());
  }

  /** The seasons of one trial, on the step that the age begins on. */
  public Cell run(Trial trial, long seed) {
    Stage stage = trial.plain() ? plain : real;
    Seasons maker = new Seasons(stage.catalogue(), curriculum, trial.skill(), trial.band());
    int seasons = trial.seasons();
    long[] seeds = new SplittableRandom(seed + trial.salt()).longs(seasons).toArray();
    List<Told> all =
        IntStream.range(0, (seasons + BATCH - 1) / BATCH)
            .parallel()
            .mapToObj(b -> Arrays.copyOfRange(seeds, b * BATCH, Math.min(seasons, (b + 1) * BATCH)))
            .map(some -> batch(stage.progress(), maker, trial, some))
            .flatMap(List::stream)
            .toList();
    return cell(maker, trial, all);
  }

  private static List<Told> batch(Progress progress, Seasons maker, Trial trial, long[] seeds) {
    Scenario scenario = trial.scenario();
    List<Told> told = new ArrayList<>();
    for (int i = 0; i < seeds.length; i++) {
      told.add(new Told(maker, scenario, maker.season("s" + i, seeds[i], scenario)));
    }
    for (LocalDate look : scenario.looks()) {
      List<Told> open = told.stream().filter(t -> t.proved == null).toList();
      Map<String, List<SkillDecision>> decisions =
          progress.decide(maker.club(open.stream().map(t -> t.season).toList()), look);
      for (Told one : open) {
        one.look(decisions.get(one.season.player().id()).get(trial.skill().ordinal()));
      }
    }
    told.forEach(Told::forget);
    return told;
  }

  /** What became of one season. */
  private static final class Told {
    private static final double Z = 1.959963984540054;

    private final Seasons maker;
    private final Scenario scenario;
    private final EightOfTen.Passed eightOfTen;
    private Seasons.Season season;
    private LocalDate proved;
    private boolean firmedUp;
    private Share firstLook = Share.none();
    private Share lastLook = Share.none();
    private Share plain = Share.none();

    Told(Seasons maker, Scenario scenario, Seasons.Season season) {
      this.maker = maker;
      this.scenario = scenario;
      this.season = season;
      this.eightOfTen = EightOfTen.passed(season.good(), scenario);
    }

    /** Looks at a decision; nothing is looked at once the step is proved. */
    void look(SkillDecision decision) {
      proved = proved(decision);
      firmedUp |= proved == null && decision.outcome() == Outcome.FIRM_UP;
      if (scenario.hitter().steady() && decision.step().id().equals(maker.step().id())) {
        List<Evidence.Reading> readings = decision.evidence().bars();
        lastLook = held(readings, r -> holds(r.estimate().low(), r.estimate().high(), r));
        plain = held(readings, this::plainHolds);
        firstLook = firstLook.isEmpty() ? lastLook : firstLook;
      }
    }

    private static Share held(List<Evidence.Reading> readings, Predicate<Evidence.Reading> holds) {
      Share share = Share.none();
      for (Evidence.Reading reading : readings) {
        share = share.and(holds.test(reading));
      }
      return share;
    }

    private boolean plainHolds(Evidence.Reading reading) {
      double p = reading.share().isEmpty() ? 0.5 : reading.share().value();
      double half = Z * Math.sqrt(p * (1 - p) / Math.max(1, reading.share().seen()));
      return holds(p - half, p + half, reading);
    }

    private boolean holds(double low, double high, Evidence.Reading reading) {
      Step.Bar bar =
          maker.step().bars().stream()
              .filter(b -> b.counted() == reading.counted())
              .findFirst()
              .orElseThrow();
      double truth = Seasons.good(bar, maker.chance(scenario, bar, 1));
      return low <= truth && truth <= high;
    }

    /** The day on which the step was proved, or null. */
    private LocalDate proved(SkillDecision decision) {
      for (Evidence.Passed passed : decision.evidence().passed()) {
        if (passed.step().equals(maker.step().id())) {
          return passed.on();
        }
      }
      // whether the next step waits for another skill is not what is tried here
      return decision.step().id().equals(maker.step().id())
          ? decision.evidence().provedOn().orElse(null)
          : null;
    }

    /** Lets go of the log, which is large. */
    void forget() {
      season = null;
    }

    int tosses() {
      int days = scenario.daysUntil(proved);
      return days * scenario.tossesADay() * maker.tried(scenario.hitter()).size();
    }

    int week() {
      return (int) ChronoUnit.WEEKS.between(Scenario.FIRST, proved) + 1;
    }
  }

  private static Cell cell(Seasons maker, Trial trial, List<Told> all) {
    List<Told> proved = all.stream().filter(t -> t.proved != null).toList();
    List<EightOfTen.Passed> passed =
        all.stream().map(t -> t.eightOfTen).filter(EightOfTen.Passed::ever).toList();
    return new Cell(
        trial,
        maker.step().id(),
        new Share(proved.size(), all.size()),
        new Share((int) all.stream().filter(t -> t.firmedUp).count(), all.size()),
        proved.stream().mapToInt(Told::tosses).average().orElse(Double.NaN),
        byWeek(proved.stream().map(Told::week).toList()),
        maker.wald(trial.scenario().hitter()),
        new Cell.Baseline(
            new Share(passed.size(), all.size()),
            passed.stream().mapToInt(EightOfTen.Passed::tosses).average().orElse(Double.NaN),
            byWeek(passed.stream().map(EightOfTen.Passed::week).toList())),
        all.stream().map(t -> t.firstLook).reduce(Share.none(), Share::plus),
        all.stream().map(t -> t.lastLook).reduce(Share.none(), Share::plus),
        all.stream().map(t -> t.plain).reduce(Share.none(), Share::plus));
  }

  private static List<Integer> byWeek(List<Integer> weeks) {
    return IntStream.rangeClosed(1, Scenario.WEEKS)
        .mapToObj(week -> (int) weeks.stream().filter(w -> w <= week).count())
        .toList();
  }
}
