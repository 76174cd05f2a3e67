package org.belthigh.lab;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Step;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Coded;
import org.belthigh.model.Skill;

/**
 * A simulated child whose true ability is known, is hidden from the tool and grows with practice.
 *
 * <p>Ability is told in rungs of the ladder: on rung r the child has the {@linkplain Hitter level}
 * ability - r, 0 at the step's floor, 1 at its mark. Pace and slump are ours, with no source.
 */
public final class LearningChild {
  /** How fast ability grows; a choice of ours. */
  public enum Pace implements Coded {
    SLOW(0.02),
    USUAL(0.07),
    FAST(0.15);

    private final double perVisit;

    Pace(double perVisit) {
      this.perVisit = perVisit;
    }
  }

  private static final double LEAST_LEVEL = -0.5;
  private static final double MOST_LEVEL = 1.25;
  private static final double SLUMP = 1.2;
  private static final int SLUMP_WEEKS = 2;

  private final Catalogue catalogue;
  private final Pace pace;
  private final LocalDate slumpFrom;
  private final Map<Skill, Double> ability = new EnumMap<>(Skill.class);

  /**
   * A child on the first day of the season, somewhat below the mark of where its age begins.
   *
   * @param begins the step on which the age begins, by skill
   * @param slumpFrom first day of two weeks in which nothing works; a day after the season for none
   */
  public LearningChild(
      Catalogue catalogue,
      Pace pace,
      Map<Skill, Step> begins,
      LocalDate slumpFrom,
      SplittableRandom random) {
    this.catalogue = catalogue;
    this.pace = pace;
    this.slumpFrom = slumpFrom;
    for (Skill skill : Skill.values()) {
      ability.put(skill, begins.get(skill).rung() + 0.2 + 0.6 * random.nextDouble());
    }
  }

  /** How fast the child learns. */
  public Pace pace() {
    return pace;
  }

  /** True ability in rungs, without the slump. */
  public double ability(Skill skill) {
    return ability.get(skill);
  }

  /** One visit to a drill of {@code skill}. */
  void practise(Skill skill) {
    ability.merge(skill, pace.perVisit, Double::sum);
  }

  /** The true chance of a good toss, as {@code bar} of {@code step} counts it, on that day. */
  double chance(Step step, Step.Bar bar, int age, LocalDate day) {
    AgeBand band = AgeBand.of(age);
    double level = ability.get(step.skill()) - step.rung() - (slumps(day) ? SLUMP : 0);
    return Seasons.chance(
        bar,
        catalogue.parameter(bar.floor()).on(day).at(band),
        catalogue.parameter(bar.mark()).on(day).at(band),
        Math.max(LEAST_LEVEL, Math.min(MOST_LEVEL, level)));
  }

  private boolean slumps(LocalDate day) {
    long since = ChronoUnit.WEEKS.between(slumpFrom, day);
    return !day.isBefore(slumpFrom) && since < SLUMP_WEEKS;
  }
}
