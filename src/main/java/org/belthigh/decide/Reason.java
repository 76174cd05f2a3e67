package org.belthigh.decide;

import java.util.Objects;
import org.belthigh.model.Phrase;

/**
 * Why something was decided.
 *
 * @param rule id of the rule that decided, such as {@code ARM-004}
 * @param phrase the rule's own sentence with its values; the key is the rule's id
 */
public record Reason(String rule, Phrase phrase) {
  public Reason {
    Objects.requireNonNull(rule);
    Objects.requireNonNull(phrase);
  }
}
