package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.RuleEntry;
import org.belthigh.catalogue.Source;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Phrase;
import org.belthigh.words.Words;

/**
 * What a hold says of itself: a known rule of the right kind, a source of the catalogue, a reason
 * that names the child and the day, who may end it; and that something in the club folder calls for
 * it. A hold that nobody can give a reason for is as wrong as one that is missing.
 */
final class HoldSaidCheck {
  /** Which rule speaks for which complaint; other pain may be spoken for by any other. */
  static final Map<String, Wellness.Kind> COMPLAINTS =
      Map.of(
          "HLD-001", Wellness.Kind.HEAD_INJURY,
          "HLD-002", Wellness.Kind.ARM_PAIN,
          "HLD-003", Wellness.Kind.ARM_PAIN,
          "HLD-004", Wellness.Kind.BACK_PAIN,
          "HLD-005", Wellness.Kind.BACK_PAIN,
          "HLD-006", Wellness.Kind.ILLNESS,
          "HLD-007", Wellness.Kind.OTHER_PAIN,
          "HLD-010", Wellness.Kind.OTHER_PAIN,
          "HLD-011", Wellness.Kind.OTHER_PAIN);

  /** What each of them stops. */
  private static final Map<String, String> STOPS =
      Map.of(
          "HLD-001", "everything",
          "HLD-002", "throwing",
          "HLD-003", "swinging",
          "HLD-004", "throwing",
          "HLD-005", "swinging",
          "HLD-006", "everything",
          "HLD-007", "everything",
          "HLD-010", "throwing",
          "HLD-011", "swinging");

  private static final String LOST = "HLD-009";
  private static final String HEALTH = "hold";
  private static final String REST = "arm";

  private final Given given;
  private final Words words;
  private final Set<String> sources;

  HoldSaidCheck(Given given, Words words) {
    this.given = given;
    this.words = words;
    this.sources =
        given.catalogue().sources().values().stream()
            .map(Source::shortName)
            .collect(Collectors.toSet());
  }

  void check(Given.Child child) {
    for (JsonNode hold : child.said().path("holds")) {
      String where = child.id() + ", hold on " + hold.path("kind").asText();
      sourced(where, hold);
      Optional<RuleEntry> rule =
          Optional.ofNullable(given.catalogue().rules().get(hold.path("rule").asText()));
      if (rule.isEmpty()) {
        given.fault(where, "the rule '" + hold.path("rule").asText() + "'", "there is none such");
      } else {
        ruled(where, child, hold, rule.get());
      }
      named(where, child, hold);
      span(where, hold);
      if (hold.path("who_ends").asText("").isBlank()) {
        given.fault(where, "nothing says who ends it", "whoever may end a hold is named");
      }
    }
  }

  private void sourced(String where, JsonNode hold) {
    String source = hold.path("source").asText("");
    if (!sources.contains(source)) {
      given.fault(where, "the source is '" + source + "'", "each hold names one of the catalogue");
    }
  }

  private void span(String where, JsonNode hold) {
    Optional<LocalDate> from = Given.date(hold, "from");
    Optional<LocalDate> until = Given.date(hold, "until");
    if (from.isPresent() && until.filter(from.get()::isAfter).isPresent()) {
      given.fault(where, "it ends on " + until.get(), "it begins on " + from.get());
    }
  }

  private void ruled(String where, Given.Child child, JsonNode hold, RuleEntry rule) {
    if (rule.pack().equals(HEALTH)) {
      health(where, child, hold, rule);
    } else if (rule.pack().equals(REST)) {
      rest(where, child, hold);
    } else {
      given.fault(where, "the rule " + rule.id() + " of " + rule.pack(), "a hold has its own");
    }
  }

  private void health(String where, Given.Child child, JsonNode hold, RuleEntry rule) {
    String source = given.limits().plainName(rule.source());
    if (!hold.path("source").asText().equals(source)) {
      given.fault(
          where, "the source is '" + hold.path("source").asText() + "'", rule.id() + ": " + source);
    }
    String stops = STOPS.getOrDefault(rule.id(), hold.path("kind").asText());
    if (!hold.path("kind").asText().equals(stops)) {
      given.fault(where, "by " + rule.id(), "that rule is on " + stops);
    }
    if (rule.id().equals(LOST)) {
      lost(where, child);
    } else {
      complaint(where, child, hold, COMPLAINTS.getOrDefault(rule.id(), Wellness.Kind.OTHER_PAIN));
    }
  }

  private void lost(String where, Given.Child child) {
    if (given.whole().unread().stream()
        .noneMatch(u -> u.what() == Unread.What.WELLNESS && u.concerns(child.id()))) {
      given.fault(where, "a report that was lost", "every health report of the club could be read");
    }
  }

  private void complaint(String where, Given.Child child, JsonNode hold, Wellness.Kind kind) {
    LocalDate from = given.plan().from();
    HealthDays health = given.health(child);
    List<HealthDays.Open> open =
        Stream.concat(
                health.openAt(from).stream(), health.begunAfter(from, given.plan().last()).stream())
            .filter(o -> o.kind() == kind)
            .toList();
    if (open.isEmpty()) {
      given.fault(where, "a hold for " + kind.id(), "no such complaint is open in the club folder");
    } else if (Given.date(hold, "from")
        .filter(d -> begins(health, open, hold, kind, d))
        .isEmpty()) {
      given.fault(
          where,
          "it begins on " + hold.path("from").asText(),
          kind.id() + " was reported on " + open.get(0).since());
    }
    ended(where, hold, kind);
  }

  /** From the first day that nobody has ended; what stops one day alone, on a day of its own. */
  private static boolean begins(
      HealthDays health,
      List<HealthDays.Open> open,
      JsonNode hold,
      Wellness.Kind kind,
      LocalDate day) {
    return open.stream().anyMatch(o -> o.since().equals(day))
        || (hold.path("until").asText().equals(day.toString())
            && kind == Wellness.Kind.OTHER_PAIN
            && health.complaints(kind).contains(day));
  }

  private void ended(String where, JsonNode hold, Wellness.Kind kind) {
    if (!hold.has("ended_by") || hold.hasNonNull("until")) {
      return;
    }
    Set<String> may =
        HealthDays.mayEnd(kind).stream()
            .map(Wellness.Role::id)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> said = new TreeSet<>(Given.words(hold, "ended_by"));
    said.remove("symptom-free");
    if (!said.equals(may)) {
      given.fault(where, "it may be ended by " + said, kind.id() + " is ended by " + may);
    }
  }

  private void rest(String where, Given.Child child, JsonNode hold) {
    boolean threw =
        given.whole().outings().stream()
            .anyMatch(o -> o.player().equals(child.id()) && o.pitches() > 0);
    if (!threw) {
      given.fault(where, "rest of a pitcher", "the club folder has no pitches of " + child.id());
    }
    if (!hold.path("kind").asText().equals("throwing") || !hold.hasNonNull("until")) {
      given.fault(where, "a rest that is not of throwing, or has no end", "rest ends by its date");
    }
    if (!Given.words(hold, "ended_by").isEmpty()) {
      given.fault(where, "somebody may end a rest", "rest ends by its date, and nobody ends it");
    }
  }

  /**
   * The sentence that its rule has for it: for a complaint with the last of its days, in a language
   * of ours; for rest with the child's name.
   */
  private void named(String where, Given.Child child, JsonNode hold) {
    String because = hold.path("because").asText("");
    if (COMPLAINTS.containsKey(hold.path("rule").asText())) {
      Phrase due = because(given, child, hold);
      if (Words.LANGUAGES.stream().noneMatch(l -> words.say(due, l).equals(because))) {
        given.fault(where, "because is '" + because + "'", "it is '" + words.say(due, "en") + "'");
      }
    } else if (!because.contains(child.player().firstName())) {
      given.fault(where, "because is '" + because + "'", "the reason names the child");
    }
  }

  /** Why a complaint holds, as its rule says it, with the last day on which it was reported. */
  static Phrase because(Given given, Given.Child child, JsonNode hold) {
    String rule = hold.path("rule").asText();
    LocalDate from = given.plan().from();
    HealthDays health = given.health(child);
    LocalDate begun = Given.date(hold, "from").orElse(from);
    LocalDate day =
        hold.hasNonNull("until")
            ? begun
            : health.openAt(from).stream()
                .filter(o -> o.kind() == COMPLAINTS.get(rule))
                .map(HealthDays.Open::last)
                .findFirst()
                .orElse(begun);
    return Phrase.of(rule, "player", child.player().firstName(), "date", day);
  }
}
