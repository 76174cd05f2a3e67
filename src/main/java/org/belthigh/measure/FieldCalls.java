package org.belthigh.measure;

import java.util.List;
import org.belthigh.model.Share;

/**
 * How often the ball went to the field that was called.
 *
 * @param swings swings that got there of all swings
 * @param firstTry calls that got there on their first swing, of all calls with a swing; tallies do
 *     not say
 */
public record FieldCalls(Share swings, Share firstTry) {
  static FieldCalls of(List<FieldCallWalk.Try> tries) {
    Share swings = Share.none();
    Share firstTry = Share.none();
    for (FieldCallWalk.Try one : tries) {
      swings = swings.and(one.made());
      firstTry = one.first() ? firstTry.and(one.made()) : firstTry;
    }
    return new FieldCalls(swings, firstTry);
  }

  /** The same with swings that were tallied. */
  FieldCalls withTallied(Share tallied) {
    return new FieldCalls(swings.plus(tallied), firstTry);
  }
}
