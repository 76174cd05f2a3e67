package org.belthigh.decide;

import java.util.Optional;
import org.drools.model.Rule;

/**
 * A rule with one small mistake in it.
 *
 * @param kind the mistake
 * @param where the part of the rule that it was made in, such as {@code pattern 2 not Clearance,
 *     constraint 3: date > $day}; empty where the whole rule is gone
 * @param rule the rule with the mistake; empty where the whole rule is gone
 */
record RuleMutant(Kind kind, String where, Optional<Rule> rule) {
  /** The mistakes that are made. */
  enum Kind {
    CONDITION_DROPPED("condition dropped"),
    JOIN_LOOSENED("join loosened"),
    TURNED("turned into its opposite"),
    BORDER_MOVED("border moved by one"),
    PART_DROPPED("whole part dropped"),
    NOT_AND_EXISTS("not and exists changed over"),
    RULE_REMOVED("whole rule removed");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  @Override
  public String toString() {
    return where.isEmpty() ? kind.toString() : where + " | " + kind;
  }
}
