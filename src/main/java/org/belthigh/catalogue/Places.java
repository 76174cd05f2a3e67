package org.belthigh.catalogue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.belthigh.files.Fields;
import org.belthigh.files.Nearest;
import org.belthigh.model.Problem;

/**
 * Where each thing was read, so that a check across files can still name file and line.
 *
 * <p>A thing is a kind and an id, such as {@code drill} and {@code tee-rows}.
 */
final class Places {
  private final Map<Thing, Fields> read = new HashMap<>();
  private final List<Problem> problems;

  /** Faults found by {@link #refuse} go to {@code problems}. */
  Places(List<Problem> problems) {
    this.problems = problems;
  }

  private record Thing(String kind, String id) {}

  /** Notes where a thing stands; one that was there already is a fault. */
  void note(String kind, String id, Fields fields) {
    Fields first = read.putIfAbsent(new Thing(kind, id), fields);
    if (first != null) {
      fields.refuse(
          "id",
          "there is a " + kind + " '" + id + "' already, at " + first.origin(),
          "each id may stand once",
          "Give one of the two another id.");
    }
  }

  /** A fault of the key {@code key} of a thing that was noted. */
  void refuse(String kind, String id, String key, String found, String allowed, String maybe) {
    Fields fields = read.get(new Thing(kind, id));
    problems.add(Problem.fault(fields.origin(key), key, found, allowed, maybe));
  }

  /** A fault where {@code wanted} is none of {@code known}. */
  void resolve(
      String kind, String id, String key, String wantedKind, String wanted, Set<String> known) {
    if (known.contains(wanted)) {
      return;
    }
    refuse(
        kind,
        id,
        key,
        "there is no " + wantedKind + " '" + wanted + "'",
        known.isEmpty()
            ? "no " + wantedKind + " is known at all"
            : "it must be the id of a " + wantedKind + " that exists",
        Nearest.to(wanted, known)
            .map(near -> "Maybe '" + near + "' is meant.")
            .orElse("Known are " + some(known) + "."));
  }

  private static String some(Set<String> known) {
    int shown = 12;
    String first = known.stream().sorted().limit(shown).collect(Collectors.joining(", "));
    return known.size() > shown ? first + " and more" : first.isEmpty() ? "none" : first;
  }
}
