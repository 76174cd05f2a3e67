package org.belthigh.lab;

import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Skill;

/**
 * One question to the lab: so many seasons of one scenario.
 *
 * @param plain whether the test of the books is tried, without fading and later beginnings, in
 *     place of the one that decides
 * @param seasons 1 or more
 */
public record Trial(Skill skill, AgeBand band, Scenario scenario, boolean plain, int seasons) {
  /** Counted tosses of a kind on a usual day. */
  static final int USUAL = 12;

  static final int FEW = 6;
  static final int MANY = 24;

  /** A logger who writes 15 of 100 labels wrong; ours, common practice. */
  static final double CARELESS = 0.15;

  /** Last week in which a learner reaches the mark. */
  private static final int LATEST = 10;

  /** Rows beside the two bounds get a part of the seasons. */
  private static final int PART = 10;

  public Trial {
    if (seasons < 1) {
      throw new IllegalArgumentException("seasons must be 1 or more, but is " + seasons);
    }
  }

  /** Everything that is asked about one skill at one age. */
  public static List<Trial> of(Skill skill, AgeBand band, int seasons) {
    int part = Math.max(1, seasons / PART);
    boolean choose = skill == Skill.CHOOSE;
    List<Trial> trials = new ArrayList<>();
    bounds(choose).forEach(s -> trials.add(new Trial(skill, band, s, false, seasons)));
    others().forEach(s -> trials.add(new Trial(skill, band, s, false, part)));
    learners().forEach(s -> trials.add(new Trial(skill, band, s, false, (part + 1) / 2)));
    books(choose, Scenario.of(Hitter.AT_MARK, 1).on(Scenario.Rhythm.DAILY))
        .forEach(s -> trials.add(new Trial(skill, band, s, true, seasons)));
    books(choose, Scenario.of(Hitter.AT_MARK, MANY))
        .forEach(s -> trials.add(new Trial(skill, band, s, true, part)));
    return trials;
  }

  /** Where an error is promised. */
  private static List<Scenario> bounds(boolean choose) {
    List<Scenario> bounds = new ArrayList<>();
    bounds.add(Scenario.of(Hitter.AT_FLOOR, USUAL));
    if (choose) {
      bounds.add(Scenario.of(Hitter.TAKES_AT_FLOOR, USUAL));
      bounds.add(Scenario.of(Hitter.CHASES_AT_FLOOR, USUAL));
    }
    bounds.add(Scenario.of(Hitter.AT_MARK, USUAL));
    return bounds;
  }

  private static List<Scenario> others() {
    List<Scenario> others = new ArrayList<>();
    for (Hitter hitter : List.of(Hitter.AT_FLOOR, Hitter.AT_MARK)) {
      others.add(Scenario.of(hitter, FEW));
      others.add(Scenario.of(hitter, MANY));
      others.add(Scenario.of(hitter, USUAL).on(Scenario.Rhythm.FIELD_AND_HOME));
      others.add(Scenario.of(hitter, USUAL).misread(CARELESS));
    }
    others.add(Scenario.of(Hitter.STREAKY_AT_FLOOR, USUAL));
    others.add(Scenario.of(Hitter.STREAKY_AT_MARK, USUAL));
    others.add(Scenario.of(Hitter.BETWEEN, USUAL));
    others.add(Scenario.of(Hitter.SLUMPING, USUAL));
    return others;
  }

  /** Told over all skills and ages together, so that half as many each are enough. */
  private static List<Scenario> learners() {
    List<Scenario> learners = new ArrayList<>();
    for (int crossing = 2; crossing <= LATEST; crossing++) {
      learners.add(Scenario.learning(crossing, USUAL));
      learners.add(Scenario.learning(crossing, MANY));
    }
    return learners;
  }

  /** The test of the books, for each share alone and for both together. */
  private static List<Scenario> books(boolean choose, Scenario how) {
    List<Hitter> hitters =
        choose
            ? List.of(Hitter.TAKES_AT_MARK, Hitter.CHASES_AT_MARK, Hitter.AT_MARK)
            : List.of(Hitter.AT_MARK);
    return hitters.stream()
        .map(h -> new Scenario(h, 0, how.tossesADay(), how.misread(), how.rhythm()))
        .toList();
  }

  /** A number of its own for the seed. */
  long salt() {
    long salt = 31L * skill.ordinal() + band.ordinal();
    return 1_000_003L * (2 * salt + (plain ? 1 : 0)) + 65_537L * scenario.salt();
  }
}
