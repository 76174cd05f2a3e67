package org.belthigh.plan;

import java.util.List;
import java.util.Optional;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;

/**
 * A drill as sheets explain it.
 *
 * @param mix where the tosses go, as a sentence
 * @param safety what must be printed beside it
 * @param gear what must be there, all that {@code safety} speaks of among it
 * @param easier what to do where it is too hard; empty where that cannot be done there
 * @param adapt so that it leaves nobody out
 */
public record DrillText(
    String id,
    Skill skill,
    LocalText name,
    LocalText setup,
    LocalText cue,
    LocalText write,
    Ball ball,
    Feed feed,
    int feet,
    boolean swing,
    Phrase mix,
    List<Phrase> safety,
    List<Gear> gear,
    Optional<LocalText> easier,
    LocalText harder,
    Optional<LocalText> adapt) {
  public DrillText {
    safety = List.copyOf(safety);
    gear = List.copyOf(gear);
  }

  /** From whoever tosses to where the ball is met; at the plate for a tee. */
  public Phrase distance() {
    return Say.distance(feet);
  }
}
