package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Player;
import org.belthigh.model.Bats;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Phrase;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/**
 * One toss of a home session.
 *
 * @param field called before it; empty where none is, or always the same
 * @param miss where a ball goes by; empty for a strike
 * @param bare whether a belt-high spot is named by its side alone
 */
record HomeToss(Optional<Field> field, Spot spot, Optional<String> miss, boolean bare) {
  /** Where a ball goes by: never between plate and hitter, so that nobody is hit. */
  private static final List<String> MISSES = List.of("low", "high", "away");

  /** The tosses of {@code player} on {@code day}; the same day gives the same tosses. */
  static List<HomeToss> script(TossLaw law, Drill drill, Player player, LocalDate day) {
    String seed = player.id() + '|' + day;
    SplittableRandom misses = new SplittableRandom(TossScript.seed(seed + "|ball"));
    if (drill.fields().isEmpty()) {
      return TossScript.of(law, seed).stream()
          .map(spot -> new HomeToss(Optional.empty(), spot, miss(spot, misses), false))
          .toList();
    }
    Drill.Fields fields = drill.fields().get();
    List<HomeToss> script = new ArrayList<>();
    for (TossScript.Called call :
        TossScript.called(
            law, fields, player.ageOn(day), toss -> side(player, toss, law.tosses()), seed)) {
      Optional<Field> named =
          fields == Drill.Fields.ANY ? Optional.of(call.field()) : Optional.empty();
      script.add(new HomeToss(named, call.spot(), miss(call.spot(), misses), true));
    }
    return List.copyOf(script);
  }

  /** A switch hitter hits the first half from the right side. */
  private static Side side(Player player, int toss, int tosses) {
    return player.bats() == Bats.SWITCH && 2 * toss >= tosses ? Side.LEFT : HomeWork.side(player);
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
