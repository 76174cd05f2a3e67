package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.intake.Wellness;

/**
 * What a rule of the pack {@code hold} concluded of a report: nobody who may has ended it since.
 * The other rules of the pack go on from it. Public only because the rules are built as a model of
 * their own.
 */
public record Open(String rule, String player, String name, Wellness.Kind kind, LocalDate date)
    implements Verdict {}
