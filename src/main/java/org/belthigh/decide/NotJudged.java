package org.belthigh.decide;

/**
 * Concluded by a rule of the pack {@code progress}: at this age the step is a game, and nobody is
 * judged on it. Public only because the rules are built as a model of their own.
 */
public record NotJudged(String rule, Standing standing) implements Verdict {}
