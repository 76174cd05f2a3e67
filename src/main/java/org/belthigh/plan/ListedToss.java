package org.belthigh.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Phrase;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/**
 * One toss of a list.
 *
 * @param field called before it; empty where none is, or always the same
 * @param miss where a ball goes by; empty for a strike
 * @param bare whether a belt-high spot is named by its side alone
 */
record ListedToss(Optional<Field> field, Spot spot, Optional<String> miss, boolean bare) {
  /** Where a ball goes by: never between plate and hitter, so that nobody is hit. */
  private static final List<String> MISSES = List.of("low", "high", "away");

  /**
   * A list; the same seed gives the same one.
   *
   * @param age of the hitter
   * @param side where the hitter stands at a toss, 0 for the first
   * @param sent how often the hitter sent it to each field that was called
   * @param seed any text
   */
  static List<ListedToss> script(
      TossLaw law,
      Drill drill,
      int age,
      IntFunction<Side> side,
      Map<Field, Share> sent,
      String seed) {
    SplittableRandom misses = new SplittableRandom(TossScript.seed(seed + "|ball"));
    if (drill.fields().isEmpty()) {
      return TossScript.of(law, seed).stream()
          .map(spot -> new ListedToss(Optional.empty(), spot, miss(spot, misses), false))
          .toList();
    }
    Drill.Fields fields = drill.fields().get();
    List<ListedToss> script = new ArrayList<>();
    for (TossScript.Called call : TossScript.called(law, fields, age, side, sent, seed)) {
      Optional<Field> named =
          fields == Drill.Fields.ANY ? Optional.of(call.field()) : Optional.empty();
      script.add(new ListedToss(named, call.spot(), miss(call.spot(), misses), true));
    }
    return List.copyOf(script);
  }

  private static Optional<String> miss(Spot spot, SplittableRandom random) {
    return spot.strike() ? Optional.empty() : Optional.of(MISSES.get(random.nextInt(3)));
  }

  /** What the list says, at the grain at which the hitter works. */
  Phrase target(Grain grain) {
    Phrase where = Phrase.of("target." + word(grain));
    return field
        .map(
            f ->
                Phrase.of(
                    "target.called", "field", Phrase.of("target.field." + f.id()), "spot", where))
        .orElse(where);
  }

  private String word(Grain grain) {
    if (miss.isPresent()) {
      return "ball-" + miss.get();
    }
    if (!bare) {
      return grain.seen(spot);
    }
    return (spot.beltHigh() ? Grain.COLUMN : Grain.ROW).seen(spot);
  }
}
