package org.belthigh.decide;

/**
 * That a pitcher must be asked about first. Public only because the rules are built as a model of
 * their own.
 */
public record ReportVerdict(String rule, LastReport about) implements Verdict {}
