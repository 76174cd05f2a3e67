package org.belthigh.measure;

import java.util.Map;
import org.belthigh.model.Grain;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;
import org.belthigh.model.Side;

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
 * @param skills the four skills, finer than the counts above
 * @param bySide the same per side of the plate, tallies where they say the side; empty unless the
 *     player has tosses from both
 * @param inAgeBand shares pulled a little towards those of the club in the age band of the season's
 *     first day, where there are any
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
    FieldCalls fieldCalls,
    Skills skills,
    Map<Side, Skills> bySide,
    Map<MeasureKind, GroupEstimate> inAgeBand) {
  public PlayerMeasures {
    recognition = Map.copyOf(recognition);
    bySide = Map.copyOf(bySide);
    inAgeBand = Map.copyOf(inAgeBand);
  }

  /** These, seen beside those of the age band. */
  PlayerMeasures withAgeBand(Map<MeasureKind, GroupEstimate> estimates) {
    return new PlayerMeasures(
        player,
        recognition,
        callsOnTakes,
        callsOnSwings,
        middleTake,
        ballSwing,
        countdown,
        hardHit,
        fieldCalls,
        skills,
        bySide,
        estimates);
  }

  /** The share that {@code measure} counts; for the countdown the swings that hit it hard. */
  Share share(MeasureKind measure) {
    return switch (measure) {
      case ZONE_RECOGNITION -> zoneRecognition().calls();
      case MIDDLE_TAKE -> middleTake;
      case BALL_SWING -> ballSwing;
      case COUNTDOWN, HARD_HIT -> hardHit;
      case FIELD_CALL -> fieldCalls.swings();
    };
  }

  /** Zone recognition: calls of one of the nine spots, or ball. */
  public Recognition zoneRecognition() {
    return recognition.get(Grain.NINE);
  }
}
