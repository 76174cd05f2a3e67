package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Bats;
import org.belthigh.model.Origin;

/**
 * Other children of the club, who throw, catch, complain and are cleared around the day that a case
 * asks about. Nothing of theirs is anything to the player of the case.
 */
final class Crowd {
  private final LocalDate on;
  private final List<Outing> outings = new ArrayList<>();
  private final List<Wellness> wellness = new ArrayList<>();

  private Crowd(LocalDate on) {
    this.on = on;
  }

  /** The record with others beside its players, who come after them in the roster. */
  static ClubRecord around(ClubRecord record, LocalDate on) {
    Crowd crowd = new Crowd(on);
    List<Player> players = new ArrayList<>(record.players());
    List<Outing> outings = new ArrayList<>(record.outings());
    List<Wellness> wellness = new ArrayList<>(record.wellness());
    List<Unread> unread = new ArrayList<>(record.unread());
    players.add(player("p81", "Cal", on.minusYears(9), true));
    players.add(player("p82", "Dee", on.minusYears(17), true));
    players.add(player("p83", "Eli", on.minusYears(13), false));
    crowd.busy("p81");
    crowd.worn("p82");
    crowd.sore("p83");
    outings.addAll(crowd.outings);
    wellness.addAll(crowd.wellness);
    unread.add(
        new Unread(
            Unread.What.OUTING,
            Optional.of("p83"),
            Optional.of(on.minusDays(2)),
            Origin.of("throws.csv", 99)));
    return new ClubRecord(
        record.club(),
        players,
        record.events(),
        record.tosses(),
        record.tallies(),
        outings,
        wellness,
        record.otherSports(),
        record.placements(),
        unread,
        record.problems());
  }

  /** Every day of the last two weeks, a little. */
  private void busy(String id) {
    for (int back = 0; back < 14; back++) {
      outing(id, back, 12, 2);
    }
  }

  /** A long outing, months of throwing, and a long day behind the plate. */
  private void worn(String id) {
    outing(id, 0, 60, 5);
    outing(id, 1, 110, 6);
    outing(id, 3, 95, 0);
    for (int month = 1; month < 12; month++) {
      outing(id, 30 * month, 70, 3);
    }
  }

  private void sore(String id) {
    report(id, 20, Wellness.Kind.HEAD_INJURY, Optional.empty(), Optional.empty());
    report(id, 1, Wellness.Kind.ARM_PAIN, Optional.empty(), Optional.empty());
    report(
        id,
        2,
        Wellness.Kind.CLEARED,
        Optional.of(Wellness.Kind.HEAD_INJURY),
        Optional.of(Wellness.Role.PHYSICIAN));
  }

  private void outing(String id, int daysBack, int pitches, int caught) {
    outings.add(
        new Outing(
            on.minusDays(daysBack),
            id,
            pitches,
            Outing.Kind.GAME,
            OptionalInt.of(pitches / 2),
            OptionalDouble.of(2),
            OptionalInt.of(caught),
            "",
            "",
            Origin.of("throws.csv", 50 + outings.size())));
  }

  private void report(
      String id,
      int daysBack,
      Wellness.Kind kind,
      Optional<Wellness.Kind> clears,
      Optional<Wellness.Role> by) {
    wellness.add(
        new Wellness(
            on.minusDays(daysBack),
            id,
            kind,
            clears,
            by,
            "",
            Origin.of("wellness.csv", 50 + wellness.size())));
  }

  private static Player player(String id, String name, LocalDate born, boolean pitches) {
    return new Player(
        id,
        name,
        Optional.empty(),
        born,
        Bats.RIGHT,
        Optional.empty(),
        OptionalInt.empty(),
        "g",
        pitches,
        true,
        Optional.empty(),
        OptionalDouble.empty(),
        "en",
        Set.of(),
        Optional.empty(),
        false);
  }
}
