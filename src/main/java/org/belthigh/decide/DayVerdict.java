package org.belthigh.decide;

/**
 * That more was thrown on a day than the book allows. Public only because the rules are built as a
 * model of their own.
 */
public record DayVerdict(String rule, PitchedDay about, Limit limit) implements Verdict {}
