package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.belthigh.measure.Calls;
import org.belthigh.measure.Choose;
import org.belthigh.measure.Countdown;
import org.belthigh.measure.Detection;
import org.belthigh.measure.Drive;
import org.belthigh.measure.FieldCalls;
import org.belthigh.measure.HardHits;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.Marks;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.measure.Recognition;
import org.belthigh.measure.See;
import org.belthigh.measure.Send;
import org.belthigh.measure.Skills;
import org.belthigh.measure.TossMix;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.junit.jupiter.api.Test;

class MeasureJsonTest {
  private static final MarkAgreement NOTHING_TWICE = Marks.of(List.of()).agreement();
  private static final LocalDate DAY = LocalDate.of(2027, 3, 8);

  private static JsonNode player(
      Recognition nine, Share take, Share swung, Countdown countdown, FieldCalls calls) {
    Map<Grain, Recognition> recognition = new EnumMap<>(Grain.class);
    for (Grain grain : Grain.values()) {
      recognition.put(grain, new Recognition(Share.none(), OptionalDouble.empty()));
    }
    recognition.put(Grain.NINE, nine);
    Share none = Share.none();
    PlayerMeasures measures =
        new PlayerMeasures(
            "p01",
            recognition,
            none,
            none,
            take,
            swung,
            countdown,
            none,
            calls,
            skills(),
            Map.of(),
            Map.of());
    return MeasureJson.of(DAY, List.of(measures), NOTHING_TWICE).get("players").get(0);
  }

  private static Skills skills() {
    Map<Grain, See.Reading> grains = new EnumMap<>(Grain.class);
    Share none = Share.none();
    Detection nothing = new Detection(none, none);
    for (Grain grain : Grain.values()) {
      Calls calls =
          new Calls(
              none,
              none,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              nothing,
              Map.of(),
              Map.of(),
              new TossMix(grain, Map.of()));
      grains.put(grain, new See.Reading(calls, calls, calls));
    }
    return new Skills(
        new See(grains),
        new Choose(nothing, 0, 0, 0, Map.of()),
        new Drive(
            new HardHits(none, List.of()),
            0,
            0,
            OptionalDouble.empty(),
            new Drive.Timings(0, 0, 0),
            Map.of()),
        new Send(new FieldCalls(none, none), 0, Map.of(), Map.of(), Map.of(), Map.of(), Map.of()));
  }

  /** The numbers of the documentation: 30 of 48, 2 of 25, 5 of 20, a score of 10, 9 of 14. */
  private static JsonNode documented() {
    return player(
        new Recognition(new Share(30, 48), OptionalDouble.of(0.57)),
        new Share(2, 25),
        new Share(5, 20),
        new Countdown(
            List.of(
                new Countdown.Round(DAY, "1", OptionalInt.of(10), 10, OptionalInt.of(8), 0),
                new Countdown.Round(DAY, "2", OptionalInt.empty(), 3, OptionalInt.of(1), 0))),
        new FieldCalls(new Share(9, 14), new Share(5, 8)));
  }

  @Test
  void recognition_has_the_documented_numbers() {
    JsonNode zone = documented().get("zone_recognition");

    assertThat(zone.get("right").asInt()).isEqualTo(30);
    assertThat(zone.get("seen").asInt()).isEqualTo(48);
    assertThat(zone.get("value").asDouble()).isEqualTo(0.625);
    assertThat(zone.get("low").asDouble()).isCloseTo(0.4836, within(0.00005));
    assertThat(zone.get("high").asDouble()).isCloseTo(0.7478, within(0.00005));
    assertThat(zone.get("kappa").asDouble()).isEqualTo(0.57);
  }

  @Test
  void every_measure_has_its_fixed_keys_in_their_order() {
    JsonNode player = documented();

    assertThat(names(player))
        .startsWith(
            "player", "zone_recognition", "middle_take", "ball_swing", "countdown", "field_call");
    assertThat(names(player.get("zone_recognition")))
        .startsWith("right", "seen", "value", "low", "high", "kappa");
    assertThat(names(player.get("middle_take")))
        .containsExactly("taken", "seen", "value", "low", "high");
    assertThat(names(player.get("ball_swing")))
        .containsExactly("swung", "seen", "value", "low", "high");
    assertThat(names(player.get("countdown"))).containsExactly("rounds", "mean");
    assertThat(names(player.get("countdown").get("rounds").get(0)))
        .startsWith("date", "round", "score", "complete");
    assertThat(names(player.get("field_call")))
        .startsWith("made", "swings", "value", "low", "high", "first_try");
  }

  private static List<String> names(JsonNode node) {
    return node.properties().stream().map(Map.Entry::getKey).toList();
  }

  @Test
  void an_unfinished_round_has_no_score_and_the_mean_is_over_the_others() {
    JsonNode countdown = documented().get("countdown");

    assertThat(countdown.get("rounds").get(0).toString())
        .isEqualTo(
            "{\"date\":\"2027-03-08\",\"round\":\"1\",\"score\":10,\"complete\":true,"
                + "\"swings\":10,\"hard\":8}");
    assertThat(countdown.get("rounds").get(1).get("score").isNull()).isTrue();
    assertThat(countdown.get("rounds").get(1).get("complete").asBoolean()).isFalse();
    assertThat(countdown.get("mean").asDouble()).isEqualTo(10.0);
  }

  @Test
  void first_try_is_a_plain_ratio() {
    assertThat(documented().get("field_call").get("first_try").asDouble()).isEqualTo(0.625);
  }

  @Test
  void what_was_not_seen_is_null_and_not_nought() {
    JsonNode player =
        player(
            new Recognition(Share.none(), OptionalDouble.empty()),
            Share.none(),
            Share.none(),
            new Countdown(List.of()),
            new FieldCalls(Share.none(), Share.none()));

    assertThat(player.get("middle_take").toString())
        .isEqualTo("{\"taken\":0,\"seen\":0,\"value\":null,\"low\":null,\"high\":null}");
    assertThat(player.get("zone_recognition").get("kappa").isNull()).isTrue();
    assertThat(player.get("countdown").toString()).isEqualTo("{\"rounds\":[],\"mean\":null}");
    assertThat(player.get("field_call").get("first_try").isNull()).isTrue();
  }

  @Test
  void the_day_stands_first() {
    assertThat(MeasureJson.of(DAY, List.of(), NOTHING_TWICE).toString())
        .startsWith("{\"as_of\":\"2027-03-08\",")
        .endsWith("\"players\":[]}");
  }
}
