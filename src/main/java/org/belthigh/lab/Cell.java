package org.belthigh.lab;

import org.belthigh.model.AgeBand;
import org.belthigh.model.Share;
import org.belthigh.model.Skill;

/**
 * What many seasons of one kind of hitter gave.
 *
 * @param step the step that the age begins on
 * @param tossesADay counted tosses on each of two days a week
 * @param carelessness chance that a toss is written down the wrong way
 * @param movedUp seasons in which the step was proved
 * @param firmedUp seasons in which a weekly look said firm up
 * @param meanTosses tosses up to the end of the day that proved it, over the seasons in which it
 *     was; NaN where it never was
 * @param medianWeek week of that day, from 1; 0 where it was proved in less than half the seasons
 * @param wald Wald's expected number at the same errors for a hitter at the mark; of the slower
 *     kind where two are counted
 * @param eightOfTen seasons in which a weekly look at the last ten tosses found eight good ones
 */
public record Cell(
    Skill skill,
    AgeBand band,
    String step,
    Hitter hitter,
    int tossesADay,
    double carelessness,
    Share movedUp,
    Share firmedUp,
    double meanTosses,
    int medianWeek,
    double wald,
    Share eightOfTen) {}
