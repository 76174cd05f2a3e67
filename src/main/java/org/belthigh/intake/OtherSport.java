package org.belthigh.intake;

import java.time.LocalDate;
import org.belthigh.model.Origin;

/** Organised sport besides baseball. {@code hours} is 0 to 24. */
public record OtherSport(LocalDate date, String player, double hours, String what, Origin origin) {}
