package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code progress}: what may be said, at the end of {@code day},
 * of the step that a player works on? Asked of today and of days long past alike. Public only
 * because the rules are built as a model of their own.
 *
 * @param rung of the step on its ladder
 * @param age in whole years on {@code day}
 * @param ageNow in whole years on the day of the plan
 * @param band the age band on the day of the plan, which thresholds go by
 * @param kinds how many kinds of tosses are counted, each on each side apart for a switch hitter
 * @param days different days on which tosses were counted
 * @param placed whether a coach chose this step
 */
public record Standing(
    String player,
    Skill skill,
    String step,
    int rung,
    LocalDate day,
    int age,
    int ageNow,
    AgeBand band,
    int kinds,
    int days,
    boolean placed) {}
