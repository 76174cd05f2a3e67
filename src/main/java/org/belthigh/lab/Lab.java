package org.belthigh.lab;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.Progress;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Share;
import org.belthigh.model.Skill;

/**
 * Runs the real decisions over simulated seasons. Each season has a seed of its own, so that the
 * result does not depend on how many threads there are.
 */
public final class Lab {
  private static final int BATCH = 250;
  private static final int LAST_TEN = 10;
  private static final int EIGHT = 8;

  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final Progress progress;

  /** A lab for one curriculum of {@code catalogue}. */
  public Lab(Catalogue catalogue, Curriculum curriculum) {
    this.catalogue = catalogue;
    this.curriculum = curriculum;
    this.progress = new Progress(catalogue);
  }

  /** What became of one season. {@code proved} is null where the step was not proved. */
  private record Season(LocalDate proved, int tosses, boolean firmedUp, boolean eightOfTen) {}

  /**
   * Whether a skill is judged at all at that age.
   *
   * @param band the age band
   */
  public boolean judged(Skill skill, AgeBand band) {
    return curriculum.ladders().get(skill).start(band.from()).judged(band.from());
  }

  /**
   * Many seasons of one kind of hitter, on the step that the age begins on.
   *
   * @param seasons how many
   * @param tossesADay counted tosses of each kind on each of two days a week
   * @param careless chance that a toss is written down the wrong way, 0 to 0.5
   */
  public Cell run(
      Skill skill,
      AgeBand band,
      Hitter hitter,
      int seasons,
      long seed,
      int tossesADay,
      double careless) {
    Seasons maker = new Seasons(catalogue, curriculum, skill, band);
    long[] seeds = seeds(seed, skill, band, hitter, seasons);
    List<Season> all =
        IntStream.range(0, (seasons + BATCH - 1) / BATCH)
            .parallel()
            .mapToObj(b -> Arrays.copyOfRange(seeds, b * BATCH, Math.min(seasons, (b + 1) * BATCH)))
            .map(some -> batch(maker, some, skill, hitter, tossesADay, careless))
            .flatMap(List::stream)
            .toList();
    List<Season> proved = all.stream().filter(s -> s.proved() != null).toList();
    return new Cell(
        skill,
        band,
        maker.step().id(),
        hitter,
        tossesADay,
        careless,
        new Share(proved.size(), seasons),
        new Share((int) all.stream().filter(Season::firmedUp).count(), seasons),
        proved.stream().mapToInt(Season::tosses).average().orElse(Double.NaN),
        medianWeek(proved, seasons),
        wald(maker),
        new Share((int) all.stream().filter(Season::eightOfTen).count(), seasons));
  }

  private static long[] seeds(long seed, Skill skill, AgeBand band, Hitter hitter, int seasons) {
    SplittableRandom root =
        new SplittableRandom(
            seed
                + 1_000_003L * skill.ordinal()
                + 10_007L * band.ordinal()
                + 101L * hitter.ordinal());
    return root.longs(seasons).toArray();
  }

  private List<Season> batch(
      Seasons maker, long[] seeds, Skill skill, Hitter hitter, int tossesADay, double careless) {
    List<List<Boolean>> results = new ArrayList<>();
    ClubRecord club = maker.club(seeds, hitter, tossesADay, careless, results);
    LocalDate[] proved = new LocalDate[seeds.length];
    boolean[] firmed = new boolean[seeds.length];
    // what was proved stays proved, so the last look tells it; only firm-ups need every week
    boolean weekly = hitter == Hitter.AT_MARK || hitter == Hitter.SLUMPING;
    for (int week = weekly ? 1 : Seasons.WEEKS; week <= Seasons.WEEKS; week++) {
      Map<String, List<SkillDecision>> decisions =
          progress.decide(Seasons.without(club, proved), Seasons.FIRST.plusWeeks(week));
      for (int i = 0; i < seeds.length; i++) {
        if (proved[i] == null) {
          SkillDecision decision = decisions.get(Seasons.id(i)).get(skill.ordinal());
          firmed[i] |= decision.outcome() == Outcome.FIRM_UP;
          proved[i] = proved(decision, maker.step());
        }
      }
    }
    List<Season> seasons = new ArrayList<>();
    int bars = maker.step().bars().size();
    for (int i = 0; i < seeds.length; i++) {
      int tosses = proved[i] == null ? 0 : days(proved[i]) * tossesADay * bars;
      seasons.add(
          new Season(proved[i], tosses, firmed[i], eightOfTen(results.get(i), tossesADay * bars)));
    }
    return seasons;
  }

  /** The day on which the step was proved, or null. */
  private static LocalDate proved(SkillDecision decision, Step step) {
    for (Evidence.Passed passed : decision.evidence().passed()) {
      if (passed.step().equals(step.id())) {
        return passed.on();
      }
    }
    // whether the next step waits for another skill is not what is tried here
    return decision.step().id().equals(step.id())
        ? decision.evidence().provedOn().orElse(null)
        : null;
  }

  /** Practice days up to and including {@code day}. */
  private static int days(LocalDate day) {
    int since = (int) ChronoUnit.DAYS.between(Seasons.FIRST, day);
    return 2 * (since / 7) + (since % 7 >= 3 ? 2 : 1);
  }

  /** The bar that is commonly used: a look each week at the last ten tosses. */
  private static boolean eightOfTen(List<Boolean> results, int tossesADay) {
    for (int end = 2 * tossesADay; end <= results.size(); end += 2 * tossesADay) {
      long good = results.subList(Math.max(0, end - LAST_TEN), end).stream().filter(g -> g).count();
      if (good >= EIGHT) {
        return true;
      }
    }
    return false;
  }

  private static int medianWeek(List<Season> proved, int seasons) {
    if (2 * proved.size() < seasons) {
      return 0;
    }
    List<LocalDate> days = proved.stream().map(Season::proved).sorted().toList();
    LocalDate median = days.get(Math.min(days.size() - 1, seasons / 2));
    return (int) ChronoUnit.WEEKS.between(Seasons.FIRST, median) + 1;
  }

  private double wald(Seasons maker) {
    double error = catalogue.parameter("decision-error").on(Seasons.FIRST).at(AgeBand.AGE_9_10);
    double most = 0;
    for (Step.Bar bar : maker.step().bars()) {
      double p0 = Seasons.good(bar, maker.floor(bar));
      double p1 = Seasons.good(bar, maker.mark(bar));
      most = Math.max(most, new Wald(p0, p1, error, error).tossesAtP1());
    }
    return most * maker.step().bars().size();
  }
}
