package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;

/** Rest that outings owe, reckoned from the rule book's table and the log, and nothing else. */
final class ArmsOwed {
  private final Catalogue catalogue;
  private final Limits limits;
  private final Optional<ClubRecord> record;

  ArmsOwed(Catalogue catalogue, Limits limits, Optional<ClubRecord> record) {
    this.catalogue = catalogue;
    this.limits = limits;
    this.record = record;
  }

  /**
   * Full days of rest, both ends included.
   *
   * @param book the rule book that asks for it
   */
  record Rest(LocalDate first, LocalDate last, int pitches, String book) {
    boolean on(LocalDate day) {
      return !day.isBefore(first) && !day.isAfter(last);
    }
  }

  /** The rest of every day of pitching in the log; none in softball, which has no table. */
  List<Rest> rests(FinishedPlan.Person person) {
    if (record.isEmpty() || record.get().club().group(person.group()).softball()) {
      return List.of();
    }
    Player player = record.get().player(person.id());
    Map<LocalDate, Integer> thrown = new TreeMap<>();
    outings(person).stream()
        .filter(o -> o.kind() != Outing.Kind.BULLPEN)
        .forEach(o -> thrown.merge(o.date(), o.pitches(), Integer::sum));
    List<Rest> rests = new ArrayList<>();
    for (String id : record.get().club().ruleBooks()) {
      thrown.forEach(
          (day, pitches) -> {
            RuleBook book = edition(id, day);
            int age = book.ageBasis().age(player.born(), day);
            int days = pitches == 0 ? 0 : tightened(book).restDays(age, pitches);
            if (days > 0) {
              rests.add(new Rest(day.plusDays(1), day.plusDays(days), pitches, book.id()));
            }
          });
    }
    return rests;
  }

  private RuleBook edition(String id, LocalDate day) {
    RuleBook named = catalogue.ruleBook(id);
    return catalogue.editions(named).stream().filter(b -> b.inForce(day)).findFirst().orElse(named);
  }

  private RuleBook tightened(RuleBook book) {
    return record.get().club().stricter().over(book, record.get().club().name());
  }

  /** Whether the player pitched on {@code day}. */
  boolean pitched(FinishedPlan.Person person, LocalDate day) {
    return outings(person).stream()
        .anyMatch(o -> o.date().equals(day) && o.kind() != Outing.Kind.BULLPEN && o.pitches() > 0);
  }

  private List<Outing> outings(FinishedPlan.Person person) {
    return record
        .map(r -> r.outings().stream().filter(o -> o.player().equals(person.id())).toList())
        .orElse(List.of());
  }

  /** Whether swings are fewer on {@code day}: a rest day, or the day after a heavy load. */
  boolean fewerSwings(FinishedPlan.Person person, LocalDate day) {
    return rests(person).stream().anyMatch(r -> r.on(day)) || heavy(person, day.minusDays(1));
  }

  private boolean heavy(FinishedPlan.Person person, LocalDate day) {
    int pitches = 0;
    int caught = 0;
    for (Outing outing : outings(person)) {
      if (outing.date().equals(day)) {
        pitches += outing.pitches();
        caught += outing.inningsCaught().orElse(0);
      }
    }
    if (pitches == 0 && caught == 0) {
      return false;
    }
    int age = record.orElseThrow().player(person.id()).ageOn(day);
    return pitches >= limits.whole("heavy-pitches", age)
        || caught >= limits.whole("heavy-innings-caught", age);
  }
}
