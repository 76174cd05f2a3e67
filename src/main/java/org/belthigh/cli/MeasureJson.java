package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.belthigh.measure.Countdown;
import org.belthigh.measure.FieldCalls;
import org.belthigh.measure.GroupEstimate;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.measure.Recognition;
import org.belthigh.model.Grain;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;
import org.belthigh.model.Side;

/**
 * What {@code measure --json} prints. Counts are exact; ratios are rounded half up to six decimals.
 */
final class MeasureJson {
  private static final int DECIMALS = 6;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private MeasureJson() {}

  /**
   * The whole document.
   *
   * @param asOf the last day that is counted
   * @param marks how far two people who marked the same tosses agree
   * @param players as {@link Measures#of} gives them for a record cut at that day
   */
  static ObjectNode of(LocalDate asOf, List<PlayerMeasures> players, MarkAgreement marks) {
    ObjectNode root = NODES.objectNode().put("as_of", asOf.toString());
    ObjectNode twice = root.putObject("marked_by_two").put("tosses", marks.tosses());
    twice.set("zone", agreed(marks.zone()));
    twice.set("swing", agreed(marks.swing()));
    twice.set("hard", agreed(marks.hard()));
    ArrayNode list = root.putArray("players");
    players.forEach(player -> list.add(player(player)));
    return root;
  }

  private static ObjectNode agreed(MarkAgreement.Agreed agreed) {
    return put(share("same", "seen", agreed.same()), "kappa", agreed.kappa());
  }

  private static ObjectNode player(PlayerMeasures measures) {
    ObjectNode node = NODES.objectNode().put("player", measures.player());
    node.set("zone_recognition", zoneRecognition(measures));
    node.set("middle_take", share("taken", "seen", measures.middleTake()));
    node.set("ball_swing", share("swung", "seen", measures.ballSwing()));
    node.set("countdown", countdown(measures.countdown()));
    node.set("field_call", fieldCall(measures.fieldCalls()));
    for (Grain grain : List.of(Grain.STRIKE, Grain.ROW, Grain.COLUMN)) {
      node.set(grain.id() + "_recognition", recognition(measures.recognition().get(grain)));
    }
    node.set("hard_hit", share("hard", "swings", measures.hardHit()));
    node.set("skills", SkillsJson.of(measures.skills()));
    if (!measures.bySide().isEmpty()) {
      ObjectNode sides = node.putObject("by_side");
      for (Side side : Side.values()) {
        sides.set(side.letter(), SkillsJson.of(measures.bySide().get(side)));
      }
    }
    node.set("in_age_band", inAgeBand(measures.inAgeBand()));
    return node;
  }

  private static ObjectNode inAgeBand(Map<MeasureKind, GroupEstimate> estimates) {
    ObjectNode node = NODES.objectNode();
    for (MeasureKind measure : MeasureKind.values()) {
      if (measure == MeasureKind.COUNTDOWN) {
        continue;
      }
      String key = measure.id().replace('-', '_');
      GroupEstimate estimate = estimates.get(measure);
      if (estimate == null) {
        node.putNull(key);
        continue;
      }
      ObjectNode one = node.putObject(key);
      put(one, "value", OptionalDouble.of(estimate.value()));
      put(one, "group_mean", OptionalDouble.of(estimate.groupMean()));
      put(one, "group_tosses", OptionalDouble.of(estimate.groupTosses()));
      one.put("players", estimate.players());
    }
    return node;
  }

  private static ObjectNode zoneRecognition(PlayerMeasures measures) {
    ObjectNode node = recognition(measures.zoneRecognition());
    node.set("on_takes", share("right", "seen", measures.callsOnTakes()));
    node.set("on_swings", share("right", "seen", measures.callsOnSwings()));
    return node;
  }

  private static ObjectNode recognition(Recognition recognition) {
    ObjectNode node = share("right", "seen", recognition.calls());
    return put(node, "kappa", recognition.kappa());
  }

  private static ObjectNode countdown(Countdown countdown) {
    ObjectNode node = NODES.objectNode();
    ArrayNode rounds = node.putArray("rounds");
    countdown.rounds().forEach(round -> rounds.add(round(round)));
    return put(node, "mean", countdown.mean());
  }

  private static ObjectNode round(Countdown.Round round) {
    ObjectNode node =
        NODES.objectNode().put("date", round.date().toString()).put("round", round.round());
    if (round.complete()) {
      node.put("score", round.score().getAsInt());
    } else {
      node.putNull("score");
    }
    node.put("complete", round.complete()).put("swings", round.swings());
    if (round.hard().isPresent()) {
      return node.put("hard", round.hard().getAsInt());
    }
    return node.putNull("hard");
  }

  static ObjectNode fieldCall(FieldCalls calls) {
    ObjectNode node = share("made", "swings", calls.swings());
    put(node, "first_try", value(calls.firstTry()));
    return node.put("first_try_made", calls.firstTry().made())
        .put("calls", calls.firstTry().seen());
  }

  private static OptionalDouble value(Share share) {
    return share.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(share.value());
  }

  /** A share under those names, with its interval; null where nothing was seen. */
  static ObjectNode share(String made, String seen, Share share) {
    ObjectNode node = NODES.objectNode().put(made, share.made()).put(seen, share.seen());
    if (share.isEmpty()) {
      return node.putNull("value").putNull("low").putNull("high");
    }
    put(node, "value", OptionalDouble.of(share.value()));
    put(node, "low", OptionalDouble.of(share.low()));
    return put(node, "high", OptionalDouble.of(share.high()));
  }

  /** Adds a number, rounded; null where there is none. */
  static ObjectNode put(ObjectNode node, String key, OptionalDouble value) {
    return value.isPresent() ? node.put(key, rounded(value.getAsDouble())) : node.putNull(key);
  }

  private static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue();
  }
}
