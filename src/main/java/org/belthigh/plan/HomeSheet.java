package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;

/**
 * The parent's side: one session.
 *
 * @param minutes 8 to 15
 * @param checks before you start, at most eight
 * @param ringFeet nobody else inside this ring around the hitter
 * @param clearFeet free ground in front of the hitter
 * @param eyes whether who tosses and who hits wear eye protection
 * @param script each toss in order
 * @param answers what may be marked for each toss, as the grain asks: words of the marks to tick
 * @param howTo how to toss it
 * @param easier what to do where it is too hard; empty where the family lacks the gear for it
 * @param smaller what to do with less room, the least change first; empty where there is no bat
 * @param stop when to stop
 * @param afterwards where the sheet goes
 */
public record HomeSheet(
    LocalDate date,
    DrillText drill,
    int minutes,
    List<Phrase> checks,
    int ringFeet,
    int clearFeet,
    boolean eyes,
    List<ScriptToss> script,
    List<Phrase> answers,
    SpotPicture picture,
    List<Phrase> howTo,
    Optional<LocalText> easier,
    List<Phrase> smaller,
    List<Phrase> stop,
    Phrase afterwards) {
  public HomeSheet {
    checks = List.copyOf(checks);
    script = List.copyOf(script);
    answers = List.copyOf(answers);
    howTo = List.copyOf(howTo);
    smaller = List.copyOf(smaller);
    stop = List.copyOf(stop);
    if (checks.size() > 8) {
      throw new IllegalArgumentException("At most eight lines to check, not " + checks.size());
    }
  }

  /** All that must be there, how many of each. */
  public List<Gear> needs() {
    return drill.gear();
  }

  /** All that is said for safety, before and during the session. */
  public List<Phrase> cautions() {
    return Stream.of(checks, smaller, stop).flatMap(List::stream).toList();
  }

  /** Where to toss one ball, in words. {@code number} is 1 for the first. */
  public record ScriptToss(int number, Phrase target) {}
}
