package org.belthigh.plan;

import java.util.List;
import java.util.Optional;
import org.belthigh.model.Phrase;

/**
 * What to do at one place when somebody is badly hurt, for the wall and the clipboard.
 *
 * <p>What the club's file does not say is empty: a line to fill in by hand.
 *
 * @param place the place's name; empty for a sheet of no place
 * @param address what to tell the ambulance
 * @param aed where the defibrillator is
 * @param way the way in for the ambulance, at this place
 * @param call the number to call
 * @param who who calls
 * @param note whom to tell besides; empty where the file does not say
 * @param jobs who does what, in the order of need; the caller is not among them
 * @param steps what to do, in order
 * @param afterwards when the ambulance is there
 * @param sources where the steps come from
 */
public record EmergencySheet(
    Optional<String> place,
    Optional<String> address,
    Optional<String> aed,
    Optional<String> way,
    Optional<String> call,
    Optional<String> who,
    Optional<String> note,
    List<Phrase> jobs,
    List<Phrase> steps,
    List<Phrase> afterwards,
    List<Phrase> sources) {
  public EmergencySheet {
    jobs = List.copyOf(jobs);
    steps = List.copyOf(steps);
    afterwards = List.copyOf(afterwards);
    sources = List.copyOf(sources);
  }
}
