package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Unread;

/**
 * The holds of a child are those that the club folder calls for, each once and from the first to
 * the last of its days: none is missing, none is longer or shorter, none stands there for nothing.
 */
final class HoldDaysCheck {
  /** Rules that speak for rest. */
  private static final Set<String> REST = Set.of("ARM-004", "ARM-005", "ARM-020", "ARM-026");

  private final Given given;

  HoldDaysCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    List<HoldDue> open = new ArrayList<>(due(given, child));
    List<JsonNode> unexplained = new ArrayList<>();
    for (JsonNode hold : child.said().path("holds")) {
      Optional<HoldDue> same = open.stream().filter(due -> same(due, hold)).findFirst();
      same.ifPresentOrElse(open::remove, () -> unexplained.add(hold));
    }
    unexplained.forEach(hold -> unexplained(child, hold, open));
    open.forEach(due -> missing(child, due));
  }

  /** The holds that the club folder calls for in the planned weeks. */
  static List<HoldDue> due(Given given, Given.Child child) {
    LocalDate from = given.plan().from();
    LocalDate last = given.plan().last();
    List<Outing> outings =
        given.whole().outings().stream().filter(o -> o.player().equals(child.id())).toList();
    List<Unread> unread =
        given.whole().unread().stream()
            .filter(u -> u.what() == Unread.What.WELLNESS && u.concerns(child.id()))
            .toList();
    Stream<HoldDue> rest =
        given.record().club().group(child.player().group()).softball()
            ? Stream.empty()
            : new RestDue(given.catalogue(), given.record().club(), child.player().born(), outings)
                .of(from, last).stream();
    return Stream.concat(new HealthDue(from, last).of(given.health(child), unread).stream(), rest)
        .toList();
  }

  private static boolean same(HoldDue due, JsonNode hold) {
    return spokenFor(due, hold)
        && Given.date(hold, "from").equals(Optional.of(due.from()))
        && Given.date(hold, "until").equals(due.until());
  }

  private static boolean spokenFor(HoldDue due, JsonNode hold) {
    String rule = hold.path("rule").asText();
    return hold.path("kind").asText().equals(due.kind())
        && due.rule().map(rule::equals).orElseGet(() -> REST.contains(rule));
  }

  /** Says what is called for in its place; each such hold is then told of once. */
  private void unexplained(Given.Child child, JsonNode hold, List<HoldDue> open) {
    String where = child.id() + ", hold on " + hold.path("kind").asText();
    String until = hold.hasNonNull("until") ? " to " + hold.path("until").asText() : " until ended";
    String found = "it holds from " + hold.path("from").asText() + until;
    Optional<HoldDue> meant = open.stream().filter(due -> spokenFor(due, hold)).findFirst();
    meant.ifPresent(open::remove);
    given.fault(
        where,
        found,
        meant
            .map(due -> "the club folder calls for one " + due.days() + " for " + due.why())
            .orElse("nothing in the club folder calls for this hold, or it stands there twice"));
  }

  private void missing(Given.Child child, HoldDue due) {
    given.broken(
        child.id() + " " + due.from(),
        "no hold on " + due.kind() + " " + due.days(),
        "the club folder calls for it: " + due.why());
  }
}
