package org.belthigh.decide;

/**
 * That an arm had too little time off. Public only because the rules are built as a model of their
 * own.
 */
public record YearVerdict(String rule, ThrowingYear about) implements Verdict {}
