package org.belthigh.decide;

import java.util.List;

/**
 * That a pitcher must be asked about first. Public only because the rules are built as a model of
 * their own.
 *
 * @param figures what the sentence names
 */
public record ReportVerdict(String rule, Pitcher about, List<Figure> figures) implements Verdict {
  /** Asked, since nothing or nothing readable was heard. */
  public static ReportVerdict of(String rule, Pitcher about) {
    return new ReportVerdict(rule, about, List.of());
  }

  /** Asked, since {@code last} was too long ago. */
  public static ReportVerdict of(String rule, Pitcher about, Heard last) {
    return new ReportVerdict(rule, about, List.of(last));
  }
}
