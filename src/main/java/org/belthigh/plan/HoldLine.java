package org.belthigh.plan;

import java.time.LocalDate;
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
    String rule,
    String source) {}
