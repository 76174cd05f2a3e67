package org.belthigh.audit;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;

/** Calendar ages: by the day of birth where the club folder is there, else as the plan says. */
final class Ages {
  private final LocalDate from;
  private final Optional<Map<String, Player>> roster;

  Ages(LocalDate from, Optional<ClubRecord> record) {
    this.from = from;
    this.roster =
        record.map(
            r -> r.players().stream().collect(Collectors.toMap(Player::id, player -> player)));
  }

  /**
   * Age in whole years on {@code day}. Without the club folder a birthday may have come since the
   * first day, so the next age counts then.
   */
  int on(FinishedPlan.Person person, LocalDate day) {
    return roster
        .map(known -> known.get(person.id()).ageOn(day))
        .orElse(day.isAfter(from) ? person.age() + 1 : person.age());
  }

  /** Whether a player of the plan is not of the club, or of another age; said then. */
  boolean refuse(FinishedPlan plan, Findings findings) {
    if (roster.isEmpty()) {
      return false;
    }
    boolean wrong = false;
    for (FinishedPlan.Person person : plan.players()) {
      Optional<Player> player = Optional.ofNullable(roster.get().get(person.id()));
      if (player.isEmpty() || !player.get().group().equals(person.group())) {
        findings.fault(
            person.id(), "the roster has no such player in that group", "a plan is for its club");
        wrong = true;
      } else if (player.get().ageOn(from) != person.age()) {
        findings.fault(
            person.id(),
            "the age is " + person.age(),
            "by the day of birth it is " + player.get().ageOn(from) + " on " + from);
      }
    }
    return wrong;
  }
}
