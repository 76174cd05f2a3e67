package org.belthigh.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Toss;
import org.belthigh.model.Field;

/**
 * One round of the field-call drill, call by call. A call is a run of tosses with the same field,
 * ended by a swing that got there; takes belong to the run, and a run without a swing is no call.
 */
final class FieldCallWalk {
  private final List<Try> tries = new ArrayList<>();
  private Optional<Field> field = Optional.empty();
  private boolean swungInCall;

  private FieldCallWalk() {}

  /**
   * A swing at a called field.
   *
   * @param made whether the ball went there
   * @param first whether it is the first swing of its call
   */
  record Try(Toss toss, boolean made, boolean first) {}

  /** The swings of one round, whose tosses come in their order. */
  static List<Try> of(List<Toss> round) {
    FieldCallWalk walk = new FieldCallWalk();
    round.forEach(walk::step);
    return walk.tries;
  }

  private void step(Toss toss) {
    if (!toss.field().equals(field)) {
      begin(toss.field());
    }
    if (!toss.swing()) {
      return;
    }
    boolean made = made(toss);
    tries.add(new Try(toss, made, !swungInCall));
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
