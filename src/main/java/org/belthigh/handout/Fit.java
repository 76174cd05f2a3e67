package org.belthigh.handout;

import java.util.function.Function;
import org.belthigh.handout.kit.Section;

/**
 * How much room a print takes: it is set roomy where it fits the pages it was promised, else
 * closer. What is said and the sizes that are promised stay the same.
 */
enum Fit {
  ROOMY,
  SNUG,
  TIGHT;

  /**
   * The roomiest print that has at most {@code pages} pages; the closest one where none has, which
   * then goes on to a next page.
   */
  static Section on(int pages, Function<Fit, Section> print) {
    Section section = null;
    for (Fit fit : values()) {
      section = print.apply(fit);
      if (section.pageCount() <= pages) {
        return section;
      }
    }
    return section;
  }

  /** Whether it is set closer than usual. */
  boolean close() {
    return this != ROOMY;
  }

  /** {@code roomy}, or less of it. */
  double of(double roomy) {
    return switch (this) {
      case ROOMY -> roomy;
      case SNUG -> roomy * 0.88;
      case TIGHT -> roomy * 0.76;
    };
  }
}
