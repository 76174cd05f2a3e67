package org.belthigh.intake;

import java.time.LocalDate;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;

/**
 * A count written down instead of single tosses.
 *
 * @param made successes as the measure counts them; for a countdown the score
 * @param of tosses; for a countdown the start count
 */
public record Tally(
    LocalDate date,
    String player,
    String drill,
    MeasureKind measure,
    int made,
    int of,
    String by,
    Origin origin) {}
