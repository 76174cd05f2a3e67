package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Row;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
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
    assertThat(TossScript.counts(new int[] {20, 40, 20, 20}, 18)).containsExactly(4, 7, 4, 3);
  }

  @Test
  void counts_vary_from_list_to_list_around_the_mix() {
    Set<Long> counts = new HashSet<>();
    long belts = 0;
    for (int seed = 0; seed < 400; seed++) {
      List<Spot> script = TossScript.of(MIX, 18, "seed " + seed);
      long balls = script.stream().filter(s -> s == Spot.BALL).count();
      counts.add(balls);
      belts += script.stream().filter(Spot::beltHigh).count();
    }

    assertThat(counts).containsExactlyInAnyOrder(2L, 3L, 4L, 5L, 6L, 7L);
    assertThat(belts / 400.0).isBetween(6.8, 7.6);
  }

  @Test
  void belt_high_tosses_are_enough_to_judge_takes_and_there_is_a_ball_to_let_go() {
    for (int seed = 0; seed < 400; seed++) {
      List<Spot> script = TossScript.of(MIX, 12, "seed " + seed);

      assertThat(script.stream().filter(Spot::beltHigh).count()).isBetween(3L, 9L);
      assertThat(script).contains(Spot.BALL);
    }
  }

  @Test
  void runs_stay_short() {
    for (int seed = 0; seed < 300; seed++) {
      List<Spot> script = TossScript.of(new Drill.Mix(30, 30, 25, 15), 24, "seed " + seed);
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
    for (int tosses : new int[] {8, 12, 16, 18, 24}) {
      for (int seed = 0; seed < 20; seed++) {
        assertThat(TossScript.of(mix, tosses, "s" + seed)).hasSize(tosses);
      }
    }
  }

  @Test
  void a_law_without_shares_is_refused() {
    assertThatThrownBy(() -> new TossLaw(Map.of(), 12, Grain.ROW))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new TossLaw(Map.of(Spot.BALL, 1.0), 0, Grain.ROW))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void most_belt_high_tosses_suit_the_field_that_was_called(Side side) {
    List<Field> fields = List.of(Field.LEFT, Field.CENTER, Field.RIGHT);
    int belts = 0;
    int suiting = 0;
    for (int seed = 0; seed < 200; seed++) {
      TossLaw law = TossLaw.of(new Drill.Mix(15, 60, 15, 10), 24);
      List<TossScript.Called> calls =
          TossScript.called(law, Drill.Fields.ANY, 10, toss -> side, Map.of(), "s" + seed);
      assertThat(calls.stream().map(TossScript.Called::field)).containsAll(fields);
      for (int i = 3; i < calls.size(); i++) {
        assertThat(calls.subList(i - 3, i + 1).stream().map(TossScript.Called::field).distinct())
            .hasSizeGreaterThan(1);
      }
      for (TossScript.Called call : calls) {
        assertThat(call.suits()).isEqualTo(call.field().wants(call.spot(), side));
        boolean sided = call.spot().beltHigh() && call.field() != Field.CENTER;
        belts += sided ? 1 : 0;
        suiting += sided && call.suits() ? 1 : 0;
      }
    }
    assertThat((double) suiting / belts).isBetween(0.72, 0.78);
  }

  @ParameterizedTest
  @CsvSource({
    "PULL, RIGHT, LEFT, BELT_AWAY",
    "PULL, LEFT, RIGHT, BELT_AWAY",
    "OPPOSITE, RIGHT, RIGHT, BELT_IN",
    "OPPOSITE, LEFT, LEFT, BELT_IN"
  })
  void the_belt_high_spot_that_does_not_suit_is_away_when_pulling_and_in_when_not(
      Drill.Fields fields, Side side, Field field, Spot unsuited) {
    TossLaw law = TossLaw.of(new Drill.Mix(0, 100, 0, 0), 24);

    assertThat(TossScript.called(law, fields, 10, toss -> side, Map.of(), "x"))
        .allMatch(call -> call.field() == field)
        .filteredOn(call -> !call.suits())
        .isNotEmpty()
        .allMatch(call -> call.spot() == unsuited && call.spot().row().orElseThrow() == Row.BELT);
  }
}
