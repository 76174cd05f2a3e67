package org.belthigh.decide;

import java.util.Objects;
import org.belthigh.model.Phrase;

/**
 * Why something was decided.
 *
 * @param rule id of the rule that decided, such as {@code ARM-004}
 * @param phrase the rule's own sentence with its values; the key is the rule's id
 * @param saysYes whether it is why something is allowed, and not why it is not
 */
public record Reason(String rule, Phrase phrase, boolean saysYes) {
  /** Why something is not allowed, or is to be known. */
  public Reason(String rule, Phrase phrase) {
    this(rule, phrase, false);
  }

  public Reason {
    Objects.requireNonNull(rule);
    Objects.requireNonNull(phrase);
  }
}
