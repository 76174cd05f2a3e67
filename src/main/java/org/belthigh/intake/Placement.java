package org.belthigh.intake;

import java.time.LocalDate;
import org.belthigh.model.Origin;
import org.belthigh.model.Skill;

/** A coach's word: this player works on that step, for that reason. */
public record Placement(
    LocalDate date,
    String player,
    Skill skill,
    String step,
    String by,
    String reason,
    Origin origin) {}
