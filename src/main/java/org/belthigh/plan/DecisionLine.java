package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;

/**
 * A decision as sheets and {@code plan.json} say it.
 *
 * @param next the step that follows a move up; empty otherwise
 * @param because one sentence with the numbers in it
 * @param settles what would settle it, such as "about 9 more tosses"; empty where nothing is open
 * @param rules ids of the rules that fired
 * @param seen tosses counted at this step
 * @param lastSeen day of the newest of them
 * @param readings the shares behind it, against mark and floor
 */
public record DecisionLine(
    Skill skill,
    String step,
    LocalText stepName,
    Outcome outcome,
    Optional<String> next,
    Optional<LocalText> nextName,
    Phrase because,
    Optional<Phrase> settles,
    List<String> rules,
    int seen,
    Optional<LocalDate> lastSeen,
    List<Evidence.Reading> readings) {
  public DecisionLine {
    rules = List.copyOf(rules);
    readings = List.copyOf(readings);
  }
}
