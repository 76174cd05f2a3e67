package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Side;

/**
 * A count written down instead of single tosses.
 *
 * @param made successes as the measure counts them; for a countdown the score
 * @param of tosses; for a countdown the start count
 * @param side the side the hitter stood on; empty for a switch hitter whose tally does not say
 */
public record Tally(
    LocalDate date,
    String player,
    String drill,
    MeasureKind measure,
    int made,
    int of,
    Optional<Side> side,
    String by,
    Origin origin) {}
