package org.belthigh.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.files.Node;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Finds the limits that a club folder tries to set: none of its keys and none of its columns sets
 * one, at whatever depth. Only the part {@code stricter} of {@code club.yaml} tightens; it is
 * checked against the rule books where it is read.
 */
final class LimitKeys {
  /** The one key below which numbers of a club's own stand. */
  static final String STRICTER = "stricter";

  /** What rule books and {@code stricter} call their numbers. */
  private static final Set<String> OF_RULE_BOOKS =
      Set.of(
          "daily-max",
          "weekly-max",
          "pitches-max",
          "max-pitches",
          "pitch-limit",
          "rest-days",
          "rest-days-add",
          "days-in-a-row",
          "consecutive-days");

  private final Set<String> parameters;

  /** Our own limits are those of {@code catalogue}. */
  LimitKeys(Catalogue catalogue) {
    this.parameters = catalogue.parameters().keySet();
  }

  /** Whether a key or a column of that name would set a limit. */
  boolean names(String key) {
    String id = key.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    return OF_RULE_BOOKS.contains(id) || parameters.contains(id);
  }

  /** The fault of setting one at {@code origin}. */
  static Problem fault(Origin origin, String key) {
    return Problem.fault(
        origin,
        key,
        "a limit is set here",
        "no club folder sets a limit; a club may be stricter than its rule book, under stricter",
        "Take it out.");
  }

  /**
   * {@code club} without the limits in it.
   *
   * @param problems receives a fault for each
   */
  Node without(Node club, List<Problem> problems) {
    if (club instanceof Node.Entries entries) {
      Map<String, Node> kept = new LinkedHashMap<>();
      entries
          .values()
          .forEach(
              (key, value) -> {
                if (names(key)) {
                  problems.add(fault(entries.keys().getOrDefault(key, entries.origin()), key));
                } else {
                  kept.put(key, key.equals(STRICTER) ? value : without(value, problems));
                }
              });
      return new Node.Entries(kept, entries.keys(), entries.origin());
    }
    if (club instanceof Node.Items items) {
      List<Node> kept = new ArrayList<>();
      items.items().forEach(item -> kept.add(without(item, problems)));
      return new Node.Items(kept, items.origin());
    }
    return club;
  }
}
