package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Row;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TossScriptTest {
  private static final Drill.Mix MIX = new Drill.Mix(20, 40, 20, 20);

  @Test
  void the_same_seed_gives_the_same_script_and_another_day_another_one() {
    List<Spot> script = TossScript.of(MIX, 18, "p01|2027-04-05");

    assertThat(TossScript.of(MIX, 18, "p01|2027-04-05")).isEqualTo(script);
    assertThat(TossScript.of(MIX, 18, "p01|2027-04-06")).isNotEqualTo(script);
  }

  @Test
  void counts_follow_the_mix_by_largest_remainder() {
    List<Spot> script = TossScript.of(MIX, 18, "any");

    assertThat(script).hasSize(18);
    assertThat(script.stream().filter(s -> s == Spot.BALL)).hasSize(3);
    assertThat(script.stream().filter(Spot::beltHigh)).hasSize(7);
    assertThat(TossScript.counts(new int[] {20, 40, 20, 20}, 18)).containsExactly(4, 7, 4, 3);
  }

  @Test
  void runs_stay_short() {
    for (int seed = 0; seed < 200; seed++) {
      List<Spot> script = TossScript.of(MIX, 24, "seed " + seed);
      for (int i = 3; i < script.size(); i++) {
        List<Spot> four = script.subList(i - 3, i + 1);
        assertThat(four.stream().map(Spot::row).distinct().count()).isGreaterThan(1);
        boolean same = four.get(1).strike() && four.subList(1, 4).stream().distinct().count() == 1;
        assertThat(same).isFalse();
      }
    }
  }

  static Stream<Drill.Mix> mixes() {
    return CatalogueLoader.load()
        .orThrow()
        .curricula()
        .get("belthigh-2027")
        .drills()
        .values()
        .stream()
        .map(Drill::mix)
        .distinct();
  }

  @ParameterizedTest
  @MethodSource("mixes")
  void every_mix_of_the_curriculum_has_a_script_of_every_length(Drill.Mix mix) {
    for (int tosses : new int[] {12, 18, 24}) {
      for (int seed = 0; seed < 20; seed++) {
        assertThat(TossScript.of(mix, tosses, "s" + seed)).hasSize(tosses);
      }
    }
  }

  @Test
  void the_sides_of_a_row_come_evenly() {
    List<Spot> script = TossScript.of(new Drill.Mix(0, 100, 0, 0), 24, "x");

    for (int column = 0; column < 3; column++) {
      Spot spot = Spot.at(Row.BELT, org.belthigh.model.Column.values()[column]);
      assertThat(script.stream().filter(s -> s == spot)).hasSize(8);
    }
  }
}
