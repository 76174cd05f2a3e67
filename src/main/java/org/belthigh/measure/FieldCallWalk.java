package org.belthigh.measure;

import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Toss;
import org.belthigh.model.Field;
import org.belthigh.model.Share;

/**
 * One round of the field-call drill, call by call. A call is a run of tosses with the same field,
 * ended by a swing that got there; takes belong to the run, and a run without a swing is no call.
 */
final class FieldCallWalk {
  private Share swings = Share.none();
  private Share firstTry = Share.none();
  private Optional<Field> field = Optional.empty();
  private boolean swungInCall;

  private FieldCallWalk() {}

  /** The shares of one round, whose tosses come in their order. */
  static FieldCalls of(List<Toss> round) {
    FieldCallWalk walk = new FieldCallWalk();
    round.forEach(walk::step);
    return new FieldCalls(walk.swings, walk.firstTry);
  }

  private void step(Toss toss) {
    if (!toss.field().equals(field)) {
      begin(toss.field());
    }
    if (!toss.swing()) {
      return;
    }
    boolean made = made(toss);
    swings = swings.and(made);
    if (!swungInCall) {
      firstTry = firstTry.and(made);
    }
    swungInCall = true;
    if (made) {
      begin(toss.field());
    }
  }

  private void begin(Optional<Field> next) {
    field = next;
    swungInCall = false;
  }

  private static boolean made(Toss toss) {
    return toss.field().isPresent() && toss.went().flatMap(w -> w.field()).equals(toss.field());
  }
}
