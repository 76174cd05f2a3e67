package org.belthigh.decide;

/**
 * That a clearance ends nothing. Public only because the rules are built as a model of their own.
 */
public record ClearanceVerdict(String rule, IdleClearance clearance) implements Verdict {}
