package org.belthigh.decide;

/**
 * What one rule concluded about one subject.
 *
 * <p>Public only because the rules, built as a model of their own, make them; no later stage reads
 * one. Every implementation is an immutable record, so that two runs of the same rules over the
 * same facts give equal verdicts.
 */
public interface Verdict {
  /** The id of the rule that concluded it, such as {@code ARM-001}. */
  String rule();
}
