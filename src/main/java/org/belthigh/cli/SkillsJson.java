package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.belthigh.measure.Calls;
import org.belthigh.measure.Choose;
import org.belthigh.measure.Detection;
import org.belthigh.measure.Drive;
import org.belthigh.measure.FieldCalls;
import org.belthigh.measure.HardHits;
import org.belthigh.measure.See;
import org.belthigh.measure.Send;
import org.belthigh.measure.Skills;
import org.belthigh.measure.TossMix;
import org.belthigh.model.Coded;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/**
 * The four skills as {@code measure --json} prints them. Keys stand in the order of the picture;
 * answers, fields and directions that never came up are left out.
 */
final class SkillsJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private SkillsJson() {}

  static ObjectNode of(Skills skills) {
    ObjectNode node = NODES.objectNode();
    node.set("see", see(skills.see()));
    node.set("choose", choose(skills.choose()));
    node.set("drive", drive(skills.drive()));
    node.set("send", send(skills.send()));
    return node;
  }

  private static ObjectNode see(See see) {
    ObjectNode node = NODES.objectNode();
    for (Grain grain : Grain.values()) {
      See.Reading reading = see.at(grain);
      if (reading.all().exact().isEmpty()) {
        node.putNull(grain.id());
        continue;
      }
      ObjectNode calls = calls(grain, reading.all());
      calls.set("recall", recall(grain, reading.all()));
      calls.set("on_takes", callsOrNull(grain, reading.onTakes()));
      calls.set("on_swings", callsOrNull(grain, reading.onSwings()));
      node.set(grain.id(), calls);
    }
    return node;
  }

  private static JsonNode callsOrNull(Grain grain, Calls calls) {
    return calls.exact().isEmpty() ? NODES.nullNode() : calls(grain, calls);
  }

  private static ObjectNode calls(Grain grain, Calls calls) {
    ObjectNode node = MeasureJson.share("right", "seen", calls.exact());
    node.set("blind", blind(calls.mix()));
    MeasureJson.put(node, "kappa", calls.kappa());
    if (grain != Grain.STRIKE) {
      node.set("one_off", MeasureJson.share("one_off", "strikes_seen", calls.oneOff()));
      node.set("within_one", withinOne(calls));
      MeasureJson.put(node, "weighted_kappa", calls.weightedKappa());
    }
    node.set(
        "ball_or_strike",
        detection(
            calls.ballOrStrike(),
            MeasureJson.share("called_ball", "balls_seen", calls.ballOrStrike().hits()),
            "balls",
            MeasureJson.share("called_ball", "strikes_seen", calls.ballOrStrike().falseAlarms()),
            "strikes"));
    return node;
  }

  private static ObjectNode recall(Grain grain, Calls calls) {
    ObjectNode node = NODES.objectNode();
    Arrays.stream(Spot.values())
        .map(grain::seen)
        .distinct()
        .filter(calls.recall()::containsKey)
        .forEach(
            answer ->
                node.set(answer, MeasureJson.share("right", "seen", calls.recall().get(answer))));
    return node;
  }

  private static ObjectNode withinOne(Calls calls) {
    ObjectNode node = MeasureJson.share("within_one", "strikes_seen", calls.withinOne());
    MeasureJson.put(node, "blind_at_best", calls.mix().withinOneAtBest());
    return MeasureJson.put(node, "blind_in_proportion", calls.mix().withinOneInProportion());
  }

  private static ObjectNode blind(TossMix mix) {
    ObjectNode node = NODES.objectNode();
    mix.commonest().ifPresent(answer -> node.put("commonest", answer));
    MeasureJson.put(node, "always_commonest", mix.alwaysCommonest());
    return MeasureJson.put(node, "in_proportion", mix.inProportion());
  }

  private static ObjectNode detection(
      Detection detection, ObjectNode hits, String hitsKey, ObjectNode alarms, String alarmsKey) {
    ObjectNode node = NODES.objectNode();
    node.set(hitsKey, hits);
    node.set(alarmsKey, alarms);
    MeasureJson.put(node, "d_prime", detection.dPrime());
    return MeasureJson.put(node, "leaning", detection.leaning());
  }

  private static ObjectNode choose(Choose choose) {
    Detection swing = choose.swing();
    return detection(
            swing,
            MeasureJson.share("swung", "seen", swing.hits()),
            "belt_high",
            MeasureJson.share("swung", "seen", swing.falseAlarms()),
            "balls")
        .put("exempt_by_field", choose.exempt())
        .put("near_edge", choose.nearEdge())
        .put("watched", choose.watched());
  }

  private static ObjectNode drive(Drive drive) {
    HardHits hits = drive.hits();
    ObjectNode node = NODES.objectNode();
    node.put("rounds_finished", drive.finished()).put("rounds_unfinished", drive.unfinished());
    MeasureJson.put(node, "mean", drive.mean());
    node.set("swing_by_swing", MeasureJson.share("hard", "swings", hits.single()));
    node.put("scores_only", hits.scores().size());
    ObjectNode share = node.putObject("hard_hit");
    MeasureJson.put(share, "most_likely", hits.mostLikely());
    if (hits.isEmpty()) {
      share.putNull("mean").putNull("low_90").putNull("high_90");
    } else {
      HardHits.Likely likely = hits.likely();
      MeasureJson.put(share, "mean", OptionalDouble.of(likely.mean()));
      MeasureJson.put(share, "low_90", OptionalDouble.of(likely.low()));
      MeasureJson.put(share, "high_90", OptionalDouble.of(likely.high()));
    }
    Drive.Timings timing = drive.timing();
    node.putObject("timing")
        .put("early", timing.early())
        .put("on", timing.on())
        .put("late", timing.late());
    return node;
  }

  private static ObjectNode send(Send send) {
    ObjectNode node = MeasureJson.fieldCall(send.all());
    node.put("fields_in_play", send.fieldsInPlay());
    MeasureJson.put(node, "chance", send.chance());
    ObjectNode fields = node.putObject("by_field");
    for (Field field : Field.values()) {
      if (send.byField().containsKey(field)) {
        ObjectNode one = MeasureJson.fieldCall(send.byField().get(field));
        Share suited = send.suited().get(field);
        one.set("spot_suits", MeasureJson.share("suits", "swings", suited));
        ObjectNode spots = one.putObject("spots");
        Map<Spot, Integer> swings = send.spots().get(field);
        for (Spot spot : Spot.values()) {
          if (swings.containsKey(spot)) {
            spots.put(spot.id(), swings.get(spot));
          }
        }
        fields.set(field.id(), one);
      }
    }
    node.set("by_direction", by(Field.Direction.values(), Field.Direction::id, send.byDirection()));
    node.set("by_side", by(Side.values(), Side::letter, send.bySide()));
    return node;
  }

  private static <K extends Coded> ObjectNode by(
      K[] members, Function<K, String> key, Map<K, FieldCalls> shares) {
    ObjectNode node = NODES.objectNode();
    for (K member : members) {
      if (shares.containsKey(member)) {
        node.set(key.apply(member), MeasureJson.fieldCall(shares.get(member)));
      }
    }
    return node;
  }
}
