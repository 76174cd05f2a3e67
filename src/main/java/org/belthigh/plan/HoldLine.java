package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Phrase;

/**
 * A safety stop.
 *
 * @param kind {@code throwing}, {@code swinging} or {@code everything}
 * @param until last day held; empty on a hold that a person must end
 * @param because for the family: with the cause in plain words
 * @param open for sheets that others see: no cause
 * @param whoEnds who can end it
 * @param endedBy ids of the roles whose word ends it; none where a date ends it, or a row put right
 * @param rule id of the rule
 * @param source short name and year of where the rule comes from
 */
public record HoldLine(
    String kind,
    LocalDate from,
    Optional<LocalDate> until,
    Phrase because,
    Phrase open,
    Phrase whoEnds,
    List<String> endedBy,
    String rule,
    String source) {
  public HoldLine {
    endedBy = List.copyOf(endedBy);
  }
}
