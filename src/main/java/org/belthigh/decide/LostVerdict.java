package org.belthigh.decide;

/**
 * That a report which could not be read stops everything. Public only because the rules are built
 * as a model of their own.
 */
public record LostVerdict(String rule, Hold.Kind kind, LostReport report) implements Verdict {}
