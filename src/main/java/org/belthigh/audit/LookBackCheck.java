package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * What is said of the plan before: days that add up, before this plan, and a sentence with the same
 * numbers. What was handed out then is known to the history alone, which the auditor does not read.
 */
final class LookBackCheck {
  private final Given given;

  LookBackCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    if (!child.said().has("last_plan")) {
      given.fault(child.id(), "nothing is said of the plan before", "last_plan is there, or null");
    }
    JsonNode back = child.said().path("last_plan");
    if (!back.isObject()) {
      return;
    }
    String where = child.id() + ", last_plan";
    int parts =
        back.path("done").asInt() + back.path("partly").asInt() + back.path("not_logged").asInt();
    if (parts != back.path("days").asInt(-1)) {
      given.fault(where, parts + " days of " + back.path("days"), "each day is one of the three");
    }
    if (Given.date(back, "from").filter(d -> d.isBefore(given.plan().from())).isEmpty()) {
      given.fault(where, "it is of " + back.path("from").asText(), "it was before this plan");
    }
    if (back.path("sentence").asText("").isBlank()) {
      given.fault(where, "nothing is said of it", "it has its sentence");
    }
  }
}
