package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;

/** What must hold for every log; the logs are drawn from seeds, so that a failure repeats. */
class DecisionPropertiesTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Progress PROGRESS = new Progress(CATALOGUE);
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 2);
  private static final int LOGS = 150;

  /** So many right of so many, on a day. */
  private record Day(LocalDate day, int right, int of) {}

  private record Drawn(LocalDate born, Skill skill, List<Day> days) {
    Logs logs() {
      Logs logs = new Logs(born);
      days.forEach(d -> add(logs, d));
      return logs;
    }

    private void add(Logs logs, Day d) {
      switch (skill) {
        case SEE -> logs.calls(d.day(), d.right(), d.of());
        case CHOOSE ->
            logs.takes(d.day(), d.of() - d.right(), d.of())
                .chases(d.day(), d.of() - d.right(), d.of());
        case DRIVE -> logs.hits(d.day(), "tee-up-tee-down", d.right(), d.of());
        case SEND -> logs.sends(d.day(), "field-call", d.right(), d.of());
      }
    }

    /** One more success among as many tosses on the k-th day; the same log where all were right. */
    Drawn better(int k) {
      List<Day> changed = new ArrayList<>(days);
      Day d = days.get(k);
      changed.set(k, new Day(d.day(), Math.min(d.of(), d.right() + 1), d.of()));
      return new Drawn(born, skill, changed);
    }

    /** One toss more, and that a success, on the k-th day. */
    Drawn oneMore(int k) {
      List<Day> changed = new ArrayList<>(days);
      Day d = days.get(k);
      changed.set(k, new Day(d.day(), d.right() + 1, d.of() + 1));
      return new Drawn(born, skill, changed);
    }
  }

  private static Drawn draw(Random random) {
    Skill skill = Skill.values()[random.nextInt(4)];
    double share = random.nextDouble();
    List<Day> days = new ArrayList<>();
    LocalDate day = FIRST;
    for (int i = 1 + random.nextInt(10); i > 0; i--) {
      int of = 1 + random.nextInt(16);
      int right = 0;
      for (int t = 0; t < of; t++) {
        right += random.nextDouble() < share ? 1 : 0;
      }
      days.add(new Day(day, right, of));
      day = day.plusDays(1 + random.nextInt(9));
    }
    return new Drawn(LocalDate.of(2010 + random.nextInt(9), 6, 15), skill, days);
  }

  private static SkillDecision decide(Logs logs, Skill skill, LocalDate day) {
    return PROGRESS.decide(logs.record(), day).get(Logs.PLAYER).get(skill.ordinal());
  }

  private static SkillDecision decide(Drawn drawn) {
    LocalDate last = drawn.days().get(drawn.days().size() - 1).day();
    return decide(drawn.logs(), drawn.skill(), last);
  }

  /** How far up the ladder, and, on the same step, how much has been proved at best. */
  private static void assertNotLower(SkillDecision after, SkillDecision before, String log) {
    assertThat(after.workOn().rung()).as(log).isGreaterThanOrEqualTo(before.workOn().rung());
    if (after.step().equals(before.step())) {
      for (int i = 0; i < before.evidence().bars().size(); i++) {
        Evidence.Reading one = before.evidence().bars().get(i);
        Evidence.Reading other = after.evidence().bars().get(i);
        assertThat(other.best()).as(log).isGreaterThanOrEqualTo(one.best() - 1e-9);
        assertThat(other.against()).as(log).isLessThanOrEqualTo(one.against() + 1e-9);
      }
      assertThat(rank(after.outcome())).as(log).isGreaterThanOrEqualTo(rank(before.outcome()));
    }
  }

  /** Nothing seen, or going on, is neither above nor below the other. */
  private static int rank(Outcome outcome) {
    return switch (outcome) {
      case FIRM_UP -> 0;
      case KEEP_GOING, NOT_SEEN_ENOUGH -> 1;
      case MOVE_UP -> 2;
    };
  }

  @Test
  void a_miss_turned_into_a_success_never_lowers_a_skill() {
    for (int seed = 0; seed < LOGS; seed++) {
      Random random = new Random(seed);
      Drawn drawn = draw(random);
      Drawn better = drawn.better(random.nextInt(drawn.days().size()));

      assertNotLower(decide(better), decide(drawn), "seed " + seed + ": " + drawn);
    }
  }

  @Test
  void one_more_success_never_lowers_a_skill() {
    for (int seed = 0; seed < LOGS; seed++) {
      Random random = new Random(1_000 + seed);
      Drawn drawn = draw(random);
      Drawn more = drawn.oneMore(random.nextInt(drawn.days().size()));

      assertNotLower(decide(more), decide(drawn), "seed " + (1_000 + seed) + ": " + drawn);
    }
  }

  /** Within a round the order is the round's own, so only rows that stand alone are moved. */
  @Test
  void the_order_of_the_rows_does_not_matter() {
    for (int seed = 0; seed < LOGS; seed++) {
      Random random = new Random(2_000 + seed);
      Drawn drawn = draw(random);
      LocalDate last = drawn.days().get(drawn.days().size() - 1).day();
      SkillDecision moved = decide(drawn.logs().shuffled(random), drawn.skill(), last);
      SkillDecision kept = decide(drawn);

      assertThat(moved.outcome()).as("seed %s: %s", seed, drawn).isEqualTo(kept.outcome());
      assertThat(moved.step()).isEqualTo(kept.step());
      assertThat(moved.because()).isEqualTo(kept.because());
    }
  }

  @Test
  void an_empty_log_is_not_seen_enough_at_any_age() {
    for (int year = 2008; year <= 2020; year++) {
      for (Skill skill : Skill.values()) {
        SkillDecision decision = decide(new Logs(LocalDate.of(year, 2, 28)), skill, FIRST);

        assertThat(decision.outcome()).isEqualTo(Outcome.NOT_SEEN_ENOUGH);
        assertThat(decision.evidence().seen()).isZero();
      }
    }
  }

  /** A tally weighs less, but counts the same tosses. */
  @Test
  void a_tally_and_the_same_tosses_agree_in_the_counts() {
    for (int seed = 0; seed < LOGS; seed++) {
      Random random = new Random(3_000 + seed);
      int of = 1 + random.nextInt(20);
      int swung = random.nextInt(of + 1);
      LocalDate born = LocalDate.of(2016, 9, 1);
      Logs tosses = new Logs(born).chases(FIRST, swung, of);
      Logs tally = new Logs(born).tally(FIRST, "countdown", MeasureKind.BALL_SWING, swung, of);

      assertThat(chases(tally).share()).as("seed %s", seed).isEqualTo(chases(tosses).share());
      assertThat(Math.abs(chases(tally).against()))
          .isLessThanOrEqualTo(Math.abs(chases(tosses).against()) + 1e-9);
    }
  }

  private static Evidence.Reading chases(Logs logs) {
    return decide(logs, Skill.CHOOSE, FIRST).evidence().bars().get(1);
  }

  @Test
  void what_is_asked_for_later_never_changes_an_older_answer() {
    for (int seed = 0; seed < LOGS; seed++) {
      Drawn drawn = draw(new Random(4_000 + seed));
      int k = drawn.days().size() / 2;
      LocalDate until = drawn.days().get(k).day();
      Drawn cut = new Drawn(drawn.born(), drawn.skill(), drawn.days().subList(0, k + 1));

      assertThat(decide(drawn.logs(), drawn.skill(), until).because())
          .as("seed %s: %s", seed, drawn)
          .isEqualTo(decide(cut).because());
    }
  }

  @Test
  void another_seed_draws_another_log_and_the_same_seed_the_same() {
    assertThat(draw(new Random(1))).isNotEqualTo(draw(new Random(2)));
    assertThat(draw(new Random(3))).isEqualTo(draw(new Random(3)));
  }
}
