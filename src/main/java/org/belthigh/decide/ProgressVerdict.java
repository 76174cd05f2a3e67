package org.belthigh.decide;

import java.util.Optional;

/**
 * What one rule says should come next. Public only because the rules make it.
 *
 * @param because what the plan has to know of it beside the outcome
 * @param proved whether the mark is proved, moved up or not
 * @param missing the step that is waited for; empty where none is
 */
public record ProgressVerdict(
    String rule,
    Standing about,
    Outcome outcome,
    Standout because,
    boolean proved,
    Optional<String> missing)
    implements Verdict {
  /** What is out of the usual. */
  public enum Standout {
    NOTHING,
    /** At this age the skill is played, and nobody is judged on it. */
    PLAYED,
    /** Good weeks were followed by poor ones: less, and one simple cue. */
    DIP
  }

  /** The verdict of {@code rule} about {@code standing}, whose mark is not proved. */
  public static ProgressVerdict of(String rule, Standing standing, Outcome outcome) {
    return of(rule, standing, outcome, Standout.NOTHING);
  }

  /** The same, where something is out of the usual. */
  public static ProgressVerdict of(
      String rule, Standing standing, Outcome outcome, Standout because) {
    return new ProgressVerdict(rule, standing, outcome, because, false, Optional.empty());
  }

  /** The verdict where the mark is proved. */
  public static ProgressVerdict proved(String rule, Standing standing, Outcome outcome) {
    return new ProgressVerdict(rule, standing, outcome, Standout.NOTHING, true, Optional.empty());
  }

  /** The mark is proved, and {@code missing} is waited for. */
  public static ProgressVerdict waiting(String rule, Standing standing, String missing) {
    return new ProgressVerdict(
        rule, standing, Outcome.KEEP_GOING, Standout.NOTHING, true, Optional.of(missing));
  }
}
