package org.belthigh.decide;

import org.belthigh.model.Skill;

/**
 * Where a player stands on a skill's ladder, as a fact for the rules.
 *
 * <p>Proof is a log likelihood ratio in nats: how much better the mark explains the tosses than the
 * floor does. Public only because the rules are built as a model of their own.
 *
 * @param seen counted tosses; of the kind with the fewest where two kinds are counted
 * @param asked counted tosses before a judgement is tried, per kind
 * @param days different days on which they were seen
 * @param daysAsked different days that a judgement needs
 * @param forMark highest proof for the mark so far; of the weaker kind where two are counted
 * @param markBar proof for the mark that moves up
 * @param againstMark proof against the mark now; of the worse kind where two are counted
 * @param floorBar proof against the mark that firms up
 * @param wasGood whether what came before the last days spoke for the mark
 * @param dip proof against the mark from the last days alone; of the worse kind
 * @param dipBar such proof that is called a dip
 * @param judged whether this step is judged at this age, or only played
 * @param top whether no step follows
 * @param nextForAge whether the next step is asked for at this age
 * @param needsMet whether all that the next step needs is behind the player
 * @param placed whether a coach chose this step
 */
public record Standing(
    String player,
    Skill skill,
    String step,
    int seen,
    int asked,
    int days,
    int daysAsked,
    double forMark,
    double markBar,
    double againstMark,
    double floorBar,
    boolean wasGood,
    double dip,
    double dipBar,
    boolean judged,
    boolean top,
    boolean nextForAge,
    boolean needsMet,
    boolean placed) {}
