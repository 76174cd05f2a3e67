package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.Player;

/**
 * What a check beside the club folder looks at.
 *
 * @param plan the plan as it was read
 * @param json the same, key by key
 * @param record the club folder, rows after the first planned day left out
 * @param whole the club folder with every row
 */
record Given(
    FinishedPlan plan,
    JsonNode json,
    ClubRecord record,
    ClubRecord whole,
    Catalogue catalogue,
    Limits limits,
    Findings findings) {

  /** The club's curriculum; what the plan names is checked against it. */
  Curriculum curriculum() {
    return catalogue.curricula().get(record.club().curriculum());
  }

  /** The club by its own rule books and by those that the plan was asked to keep as well. */
  static ClubRecord held(ClubRecord record, JsonNode json, Catalogue catalogue) {
    Set<String> books = new LinkedHashSet<>(record.club().ruleBooks());
    words(json.path("asked"), "books").stream()
        .filter(catalogue.ruleBooks()::containsKey)
        .forEach(books::add);
    return record.by(List.copyOf(books));
  }

  /** The children of the roster, by id. */
  Map<String, Player> roster() {
    return record.players().stream()
        .collect(Collectors.toMap(Player::id, Function.identity(), (a, b) -> a));
  }

  /** The entries of {@code players} whose child is on the roster. */
  List<Child> children() {
    Map<String, Player> roster = roster();
    List<Child> children = new ArrayList<>();
    for (JsonNode node : json.path("players")) {
      Optional.ofNullable(roster.get(node.path("player").asText()))
          .ifPresent(p -> children.add(new Child(p, node)));
    }
    return children;
  }

  /** A child of the roster and what the plan says of it. */
  record Child(Player player, JsonNode said) {
    String id() {
      return player.id();
    }

    /** The child alone, without what the plan says of it, for checks that read the calendar. */
    FinishedPlan.Person person() {
      return new FinishedPlan.Person(
          id(), player.group(), 0, List.of(), List.of(), List.of(), false);
    }

    /** The step that is worked on in a skill by the plan's own decision; empty where unsaid. */
    Optional<String> works(String skill) {
      for (JsonNode decision : said.path("decisions")) {
        if (decision.path("skill").asText().equals(skill)) {
          String key = decision.hasNonNull("next") ? "next" : "step";
          return Optional.of(decision.path(key).asText());
        }
      }
      return Optional.empty();
    }
  }

  /** The events of a group on {@code day}, as the calendar has them. */
  List<Event> events(String group, LocalDate day) {
    return record.events().stream().filter(e -> e.date().equals(day) && e.concerns(group)).toList();
  }

  /**
   * The edition of a rule book that is in force on {@code day}, with the club's stricter numbers.
   */
  RuleBook book(String id, LocalDate day) {
    RuleBook named = catalogue.ruleBook(id);
    RuleBook edition =
        catalogue.editions(named).stream().filter(b -> b.inForce(day)).findFirst().orElse(named);
    return record.club().stricter().over(edition, record.club().name());
  }

  /** The language of a child's sheets: the family's own, or the one that was asked for. */
  String language(Child child) {
    JsonNode asked = json.path("asked").path("language");
    return asked.isTextual() ? asked.asText() : child.player().language();
  }

  /** The health of a child, by every report of the club folder. */
  HealthDays health(Child child) {
    return new HealthDays(
        whole.wellness().stream().filter(w -> w.player().equals(child.id())).toList());
  }

  /** A list of words under {@code key}; empty where there is none. */
  static List<String> words(JsonNode node, String key) {
    List<String> words = new ArrayList<>();
    node.path(key).forEach(w -> words.add(w.asText()));
    return words;
  }

  /** The date under {@code key}; empty where none stands there, which the reader has told. */
  static Optional<LocalDate> date(JsonNode node, String key) {
    try {
      return Optional.of(LocalDate.parse(node.path(key).asText()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Where a day of a child is. */
  static String at(Child child, JsonNode day) {
    return child.id() + " " + day.path("date").asText();
  }

  void broken(String where, String found, String limit) {
    findings.broken(where, found, limit, "ours, common practice");
  }

  void fault(String where, String found, String allowed) {
    findings.fault(where, found, allowed);
  }
}
