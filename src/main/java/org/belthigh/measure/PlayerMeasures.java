package org.belthigh.measure;

import java.util.Map;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;

/**
 * All counts of one player, unweighted.
 *
 * @param recognition calls by the grain they are read at: a finer call counts at every coarser
 *     grain too, so that a call of a spot counts four times and "strike" once
 * @param callsOnTakes spots called, at the finest grain, of tosses that were let go
 * @param callsOnSwings the same of tosses swung at
 * @param middleTake belt-high tosses let go, less those that the called field does not want
 * @param ballSwing balls swung at
 * @param hardHit swings that hit it hard, of all swings of the countdown drills, free ones included
 */
public record PlayerMeasures(
    String player,
    Map<Grain, Recognition> recognition,
    Share callsOnTakes,
    Share callsOnSwings,
    Share middleTake,
    Share ballSwing,
    Countdown countdown,
    Share hardHit,
    FieldCalls fieldCalls) {
  public PlayerMeasures {
    recognition = Map.copyOf(recognition);
  }

  /** Zone recognition: calls of one of the nine spots, or ball. */
  public Recognition zoneRecognition() {
    return recognition.get(Grain.NINE);
  }
}
