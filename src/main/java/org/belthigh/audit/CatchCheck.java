package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Unread;

/** Who may catch on a day of the first week, after what was thrown and caught on that day. */
final class CatchCheck {
  private final Given given;

  CatchCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    for (JsonNode arm : child.said().path("arms")) {
      if (arm.path("may_catch").asBoolean()) {
        Given.date(arm, "date").ifPresent(day -> catches(child, day));
      }
    }
  }

  private void catches(Given.Child child, LocalDate day) {
    String where = child.id() + " " + day + ", arm";
    if (!child.player().catches()) {
      barred(where, "the roster has the child as no catcher");
    }
    if (given.whole().unread().stream()
        .filter(u -> u.date().filter(day::isBefore).isEmpty())
        .anyMatch(u -> u.what() == Unread.What.OUTING && u.concerns(child.id()))) {
      barred(where, "a report of throwing was lost");
    }
    List<Outing> outings =
        given.whole().outings().stream()
            .filter(o -> o.player().equals(child.id()) && o.date().equals(day))
            .toList();
    int thrown =
        outings.stream()
            .filter(o -> o.kind() != Outing.Kind.BULLPEN)
            .mapToInt(Outing::pitches)
            .sum();
    int caught = outings.stream().mapToInt(o -> o.inningsCaught().orElse(0)).sum();
    if (thrown == 0 || given.record().club().group(child.player().group()).softball()) {
      return;
    }
    for (String id : given.record().club().ruleBooks()) {
      RuleBook book = given.book(id, day);
      if (book.avoidCatching()) {
        barred(where, book.id() + " advises against catching after " + thrown + " pitches");
      }
      int age = book.ageBasis().age(child.player().born(), day);
      book.catcher()
          .filter(
              c ->
                  thrown >= c.pitchesThatBarCatching()
                      || (caught > 0 && thrown >= c.returnBar(age)))
          .ifPresent(c -> barred(where, thrown + " pitches bar catching by " + book.id()));
    }
  }

  private void barred(String where, String why) {
    given.broken(where, "the child may catch", why);
  }
}
