package org.belthigh.decide;

/**
 * That an arm had too little time off, by one book. Public only because the rules are built as a
 * model of their own.
 */
public record YearVerdict(String rule, Question about, ThrowingYear year, Limit limit)
    implements Verdict {}
