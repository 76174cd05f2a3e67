package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.OptionalDouble;
import org.belthigh.catalogue.Drill;
import org.belthigh.measure.Calls;
import org.belthigh.measure.Detection;
import org.belthigh.measure.TossMix;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;

class WeakSpotsTest {
  private static final Map<Spot, Double> EVEN = TossLaw.shares(new Drill.Mix(30, 30, 30, 10));

  private static Calls calls(Map<String, Share> recall, Map<String, Share> precision) {
    int seen = recall.values().stream().mapToInt(Share::seen).sum();
    int made = recall.values().stream().mapToInt(Share::made).sum();
    Map<String, Integer> tossed =
        recall.entrySet().stream()
            .collect(
                java.util.stream.Collectors.toMap(Map.Entry::getKey, e -> e.getValue().seen()));
    return new Calls(
        new Share(made, seen),
        Share.none(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        new Detection(Share.none(), Share.none()),
        recall,
        precision,
        new TossMix(Grain.ROW, tossed));
  }

  private static double row(Map<Spot, Double> shares, Spot one) {
    return shares.entrySet().stream()
        .filter(e -> e.getKey().row().equals(one.row()))
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  @Test
  void rows_taken_for_each_other_are_both_tossed_more_and_balls_as_before() {
    // high is often called belt; low never fails
    Calls calls =
        calls(
            Map.of(
                "low", new Share(20, 20),
                "belt", new Share(20, 20),
                "high", new Share(8, 20)),
            Map.of("low", new Share(20, 20), "belt", new Share(20, 32), "high", new Share(8, 8)));

    Map<Spot, Double> turned = WeakSpots.turned(EVEN, Grain.ROW, calls);

    assertThat(row(turned, Spot.HIGH_IN)).isGreaterThan(row(turned, Spot.BELT_IN));
    assertThat(row(turned, Spot.BELT_IN)).isGreaterThan(0.3);
    assertThat(row(turned, Spot.LOW_IN)).isLessThan(0.2);
    assertThat(turned.get(Spot.BALL)).isEqualTo(0.1);
    assertThat(turned.values().stream().mapToDouble(d -> d).sum()).isCloseTo(1, within(1e-12));
  }

  @Test
  void three_tosses_turn_the_mix_only_a_little() {
    Calls calls =
        calls(
            Map.of("low", new Share(1, 1), "high", new Share(1, 2)),
            Map.of("low", new Share(1, 1), "belt", new Share(0, 1), "high", new Share(1, 1)));

    assertThat(row(WeakSpots.turned(EVEN, Grain.ROW, calls), Spot.HIGH_IN)).isBetween(0.30, 0.34);
  }

  @Test
  void without_an_error_or_a_toss_the_mix_stays() {
    Calls none = calls(Map.of(), Map.of());
    Calls right = calls(Map.of("low", new Share(9, 9)), Map.of("low", new Share(9, 9)));

    assertThat(WeakSpots.turned(EVEN, Grain.ROW, none)).isEqualTo(EVEN);
    assertThat(WeakSpots.turned(EVEN, Grain.ROW, right)).isEqualTo(EVEN);
  }

  @Test
  void a_spot_that_is_let_go_or_not_hit_hard_is_tossed_up_to_twice_as_often() {
    Map<Spot, Share> good =
        Map.of(
            Spot.BELT_IN, new Share(0, 60),
            Spot.BELT_MIDDLE, new Share(60, 60),
            Spot.BELT_AWAY, new Share(60, 60));

    Map<Spot, Double> turned = WeakSpots.turned(EVEN, good);

    assertThat(turned.get(Spot.BELT_IN) / turned.get(Spot.LOW_IN)).isCloseTo(2, within(1e-12));
    assertThat(turned.get(Spot.BELT_AWAY) / turned.get(Spot.LOW_IN)).isCloseTo(0.5, within(1e-12));
    assertThat(turned.get(Spot.BALL)).isEqualTo(0.1);
    assertThat(WeakSpots.turned(EVEN, Map.<Spot, Share>of())).isEqualTo(EVEN);
  }

  @Test
  void a_field_that_is_seldom_hit_is_called_more_often() {
    Map<String, Share> sent = Map.of("left", new Share(3, 12), "right", new Share(9, 12));

    // mean of wrong ones 1/2: left (9 + 3) / 18 against it, right (3 + 3) / 18
    assertThat(WeakSpots.weight("left", sent)).isCloseTo(4 / 3.0, within(1e-12));
    assertThat(WeakSpots.weight("right", sent)).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(WeakSpots.weight("center", sent)).isEqualTo(1);
    assertThat(WeakSpots.weight("left", Map.of())).isEqualTo(1);
  }
}
