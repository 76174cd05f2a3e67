package org.belthigh.decide;

/**
 * What a rule of the pack {@code hold} concluded. Public only because the rules are built as a
 * model of their own.
 */
public record HoldVerdict(String rule, Hold.Kind kind, Complaint complaint) implements Verdict {}
