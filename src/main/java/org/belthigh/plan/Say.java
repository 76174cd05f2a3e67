package org.belthigh.plan;

import org.belthigh.model.Coded;
import org.belthigh.model.Distance;
import org.belthigh.model.Phrase;

/** Phrases that several sheets share. */
final class Say {
  private Say() {}

  /** A distance in feet, with metres for those who think in them. */
  static Phrase distance(int feet) {
    return Distance.feet(feet);
  }

  /** The word for a member of a closed list: {@code ball.plastic}, {@code feed.front-toss}. */
  static Phrase word(String list, Coded member) {
    return Phrase.of(list + "." + member.id());
  }
}
