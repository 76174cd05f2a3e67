package org.belthigh.decide;

import java.util.List;
import java.util.Optional;

/**
 * What a rule concluded, and from which facts, as the engine told it.
 *
 * @param rule the rule's id
 * @param concluded what follows, as a fact is shown
 * @param facts that matched its conditions, in their order
 */
public record Ground(String rule, String concluded, List<Fact> facts) {
  public Ground {
    facts = List.copyOf(facts);
  }

  /**
   * A fact that matched.
   *
   * @param text its kind and its values
   * @param because the rule that concluded it; empty for what was given
   */
  public record Fact(String text, Optional<Ground> because) {}
}
