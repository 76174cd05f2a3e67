package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Drill;
import org.belthigh.decide.Reason;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;

/**
 * Why a drill is, or is not, what a player does.
 *
 * @param practice at the next practice; empty where the calendar has none up to {@code looked}
 * @param looked the last day that was looked at
 */
public record DrillAnswer(Drill drill, Optional<Setting> practice, Setting home, LocalDate looked) {
  /**
   * The answer for one place.
   *
   * @param where the place and the day, as a sentence begins
   * @param against what speaks against it, by rule; it may be chosen where that is empty
   * @param notes what else is to be known: whether the day has hitting, what the week is about
   * @param before what is chosen before it, the first first; only where it may be chosen
   * @param more how many more are
   */
  public record Setting(
      Place place,
      LocalDate day,
      Phrase where,
      List<Reason> against,
      List<Phrase> notes,
      List<Before> before,
      int more) {
    public Setting {
      against = List.copyOf(against);
      notes = List.copyOf(notes);
      before = List.copyOf(before);
    }
  }

  /** A drill that is chosen before the one that is asked about, and why. */
  public record Before(Drill drill, Phrase why) {}
}
