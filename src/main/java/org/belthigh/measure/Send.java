package org.belthigh.measure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.belthigh.model.Field;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/**
 * How well a player sends the ball where he or she called. Every map holds what was called and
 * swung at, no more.
 *
 * @param all every swing and call, tallies included in the swings
 * @param fieldsInPlay different fields that the player called, from either side, swung at or not
 * @param byField by called field
 * @param byDirection by called direction, seen from the hitter
 * @param bySide by the side the hitter stood on
 * @param spots swings by called field and the spot they were swung at
 * @param suited swings at a spot that the called field wants, of all swings, by called field
 */
public record Send(
    FieldCalls all,
    int fieldsInPlay,
    Map<Field, FieldCalls> byField,
    Map<Field.Direction, FieldCalls> byDirection,
    Map<Side, FieldCalls> bySide,
    Map<Field, Map<Spot, Integer>> spots,
    Map<Field, Share> suited) {
  public Send {
    if (fieldsInPlay < byField.size()) {
      throw new IllegalArgumentException(
          fieldsInPlay + " fields in play, but swings at " + byField.keySet());
    }
    byField = Map.copyOf(byField);
    byDirection = Map.copyOf(byDirection);
    bySide = Map.copyOf(bySide);
    spots =
        spots.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(Map.Entry::getKey, e -> Map.copyOf(e.getValue())));
    suited = Map.copyOf(suited);
  }

  /**
   * What a ball that goes to any of the fields in play would score, 0 to 1: one part of them. Empty
   * with fewer than two, where there was nothing to tell apart. Balls do not go evenly, the young
   * pull most of them, so that this is a yardstick and no more.
   */
  public OptionalDouble chance() {
    return fieldsInPlay < 2 ? OptionalDouble.empty() : OptionalDouble.of(1.0 / fieldsInPlay);
  }

  static Send of(List<FieldCallWalk.Try> tries, int fieldsInPlay, Share tallied) {
    return new Send(
        FieldCalls.of(tries).withTallied(tallied),
        fieldsInPlay,
        by(tries, Field.class, Send::field),
        by(tries, Field.Direction.class, one -> field(one).direction(one.toss().side())),
        by(tries, Side.class, one -> one.toss().side()),
        tries.stream()
            .collect(
                Collectors.groupingBy(
                    Send::field,
                    Collectors.toMap(one -> one.toss().zone(), one -> 1, Integer::sum))),
        tries.stream().collect(Collectors.toMap(Send::field, Send::suited, Share::plus)));
  }

  private static <K extends Enum<K>> Map<K, FieldCalls> by(
      List<FieldCallWalk.Try> tries, Class<K> type, Function<FieldCallWalk.Try, K> key) {
    Map<K, FieldCalls> shares = new EnumMap<>(type);
    tries.stream()
        .collect(Collectors.groupingBy(key))
        .forEach((k, some) -> shares.put(k, FieldCalls.of(some)));
    return shares;
  }

  /** Intake takes no field-call row without its field. */
  private static Field field(FieldCallWalk.Try one) {
    return one.toss().field().orElseThrow();
  }

  private static Share suited(FieldCallWalk.Try one) {
    return Share.none().and(field(one).wants(one.toss().zone(), one.toss().side()));
  }
}
