package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.SplittableRandom;
import org.belthigh.intake.ClubRecord;

/**
 * One kind of fault that can be planted beside the auditor.
 *
 * @param id unlike all others
 * @param what is wrong afterwards, in words
 * @param said a regular expression that a message must hold, in lower case, beside who or what it
 *     is about
 */
record Planted(String id, String what, String said, Planting how) {
  /** Plants and answers what a message must name; empty where nothing there fits. */
  interface Planting {
    Optional<String> plant(Stage stage, SplittableRandom dice);
  }

  /** What the auditor will be given: a plan and its club, each open to be made wrong. */
  static final class Stage {
    final ObjectNode plan;
    ClubRecord record;

    Stage(ObjectNode plan, ClubRecord record) {
      this.plan = plan;
      this.record = record;
    }
  }
}
