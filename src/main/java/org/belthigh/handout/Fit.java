package org.belthigh.handout;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Function;
import org.belthigh.handout.kit.Section;

/**
 * How much room a print takes: it is set roomy where it fits the pages it was promised, else
 * closer. The sizes that are promised stay the same, and what is said too, but for the last form:
 * it leaves out what helps and nobody is held to.
 */
enum Fit {
  ROOMY,
  SNUG,
  TIGHT,
  BARE;

  /**
   * The roomiest print that has at most {@code pages} pages; the closest one where none has, which
   * then goes on to a next page.
   */
  static Section on(int pages, Function<Fit, Section> print) {
    return roomiest(EnumSet.allOf(Fit.class), pages, print);
  }

  /** As {@link #on}, for a print that takes another page in place of leaving anything out. */
  static Section whole(int pages, Function<Fit, Section> print) {
    return roomiest(EnumSet.complementOf(EnumSet.of(BARE)), pages, print);
  }

  private static Section roomiest(Set<Fit> fits, int pages, Function<Fit, Section> print) {
    Section section = null;
    for (Fit fit : fits) {
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

  /** Whether it is set as closely as can be. */
  boolean tight() {
    return this == TIGHT || this == BARE;
  }

  /** {@code roomy}, or less of it. */
  double of(double roomy) {
    return switch (this) {
      case ROOMY -> roomy;
      case SNUG -> roomy * 0.88;
      case TIGHT, BARE -> roomy * 0.76;
    };
  }
}
