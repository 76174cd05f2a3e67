package org.belthigh.decide;

import java.util.List;

/**
 * One conclusion of one rule, as the engine tells it.
 *
 * @param rule the rule's id
 * @param matched the facts that its conditions matched, in their order; for what was looked for and
 *     not found there is none
 * @param concluded what follows
 */
record Because(String rule, List<Object> matched, Object concluded) {
  Because {
    matched = List.copyOf(matched);
  }
}
