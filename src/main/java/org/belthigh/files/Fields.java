package org.belthigh.files;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.belthigh.model.Coded;
import org.belthigh.model.LocalText;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Typed reading of one group of YAML keys. Each getter notes what is wrong and goes on with a
 * stand-in, so that one run reports every fault; {@link #read} then gives no value at all.
 */
public final class Fields {
  private final Node.Entries node;
  private final List<Problem> problems;
  private final Set<String> asked = new LinkedHashSet<>();

  private Fields(Node.Entries node, List<Problem> problems) {
    this.node = node;
    this.problems = problems;
  }

  /**
   * Reads {@code node} with {@code reader}; keys that the reader never asked for are faults.
   *
   * @param problems receives what is wrong
   * @return empty where anything in this group was wrong
   */
  public static <T> Optional<T> read(
      Node node, List<Problem> problems, Function<Fields, T> reader) {
    return read(node, problems, Optional.empty(), reader);
  }

  /**
   * Reads {@code node} with {@code reader}; keys that the reader never asked for are faults, and
   * the rest is used.
   *
   * @param problems receives what is wrong
   * @param unknown receives the keys that were never asked for
   * @return empty where anything but unknown keys was wrong
   */
  public static <T> Optional<T> read(
      Node node, List<Problem> problems, List<Problem> unknown, Function<Fields, T> reader) {
    return read(node, problems, Optional.of(unknown), reader);
  }

  private static <T> Optional<T> read(
      Node node,
      List<Problem> problems,
      Optional<List<Problem>> unknown,
      Function<Fields, T> reader) {
    if (!(node instanceof Node.Entries entries)) {
      problems.add(
          Problem.fault(
              node.origin(),
              "",
              node.shown() + " stands here",
              "a group of keys belongs here",
              "Maybe the blanks at the line's start are off."));
      return Optional.empty();
    }
    List<Problem> own = new ArrayList<>();
    Fields fields = new Fields(entries, own);
    Optional<T> result = Optional.empty();
    try {
      result = Optional.ofNullable(reader.apply(fields));
    } catch (IllegalArgumentException | IllegalStateException e) {
      if (own.isEmpty()) {
        own.add(
            Problem.fault(
                entries.origin(),
                "",
                e.getMessage(),
                "the values must agree with each other",
                "Correct the value that is named."));
      }
    }
    unknown.orElse(own).addAll(fields.unknown());
    problems.addAll(own);
    return own.stream().anyMatch(Problem::isFault) ? Optional.empty() : result;
  }

  private List<Problem> unknown() {
    return node.values().keySet().stream()
        .filter(key -> !asked.contains(key))
        .map(key -> unknown(node.keys().get(key), key, asked))
        .toList();
  }

  /** The fault of a key that is not among those that can stand there. */
  public static Problem unknown(Origin origin, String key, Collection<String> known) {
    return Problem.fault(
        origin,
        key,
        "this key is not known here",
        "known keys are " + String.join(", ", known),
        Nearest.to(key, known)
            .map(near -> "Maybe '" + near + "' is meant.")
            .orElse("Take the key out."));
  }

  private void fault(Origin origin, String key, String found, String allowed, String maybe) {
    problems.add(Problem.fault(origin, key, found, allowed, maybe));
  }

  /** Where this group begins. */
  public Origin origin() {
    return node.origin();
  }

  /** Where {@code key} stands, or the group's beginning. */
  public Origin origin(String key) {
    return node.keys().getOrDefault(key, node.origin());
  }

  /** The keys of this group, all of which count as asked for. */
  public Set<String> keys() {
    asked.addAll(node.values().keySet());
    return node.values().keySet();
  }

  /** Notes a fault of the value at {@code key}, found by the caller. */
  public void refuse(String key, String found, String allowed, String maybe) {
    fault(origin(key), key, found, allowed, maybe);
  }

  /** Whether {@code key} is there with a value. */
  public boolean has(String key) {
    return find(key).isPresent();
  }

  private Optional<Node> find(String key) {
    asked.add(key);
    return Optional.ofNullable(node.values().get(key))
        .filter(n -> !(n instanceof Node.Scalar s && s.text().isEmpty()));
  }

  private Optional<Node> need(String key, String kind) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      fault(
          origin(key),
          key,
          "the key is missing or empty",
          key + " must be " + kind,
          "Add a line '" + key + ": …'.");
    }
    return found;
  }

  private Optional<String> scalar(String key, String kind, Optional<Node> value) {
    if (value.isPresent() && !(value.get() instanceof Node.Scalar)) {
      fault(
          origin(key),
          key,
          value.get().shown() + " stands here",
          key + " must be " + kind,
          "Maybe the blanks at the line's start are off.");
      return Optional.empty();
    }
    return value.map(n -> ((Node.Scalar) n).text().strip());
  }

  /** A text that must be there. */
  public String text(String key) {
    return scalar(key, "a text", need(key, "a text")).orElse("?");
  }

  /** A text that may be missing. */
  public Optional<String> optionalText(String key) {
    return scalar(key, "a text", find(key));
  }

  /** A whole number from {@code least} to {@code most}, which must be there. */
  public int whole(String key, int least, int most) {
    String kind = "a whole number from " + least + " to " + most;
    return whole(key, least, most, scalar(key, kind, need(key, kind))).orElse(least);
  }

  /** A whole number that may be missing. */
  public OptionalInt optionalWhole(String key, int least, int most) {
    String kind = "a whole number from " + least + " to " + most;
    return whole(key, least, most, scalar(key, kind, find(key)));
  }

  private OptionalInt whole(String key, int least, int most, Optional<String> text) {
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    try {
      int value = Integer.parseInt(text.get());
      if (value >= least && value <= most) {
        return OptionalInt.of(value);
      }
    } catch (NumberFormatException e) {
      // said below
    }
    fault(
        origin(key),
        key,
        "'" + text.get() + "' is no such number",
        key + " must be a whole number from " + least + " to " + most,
        "Maybe a digit was mistyped.");
    return OptionalInt.empty();
  }

  /** A decimal number from {@code least} to {@code most}, which must be there. */
  public double number(String key, double least, double most) {
    String kind = "a number from " + least + " to " + most;
    Optional<String> text = scalar(key, kind, need(key, kind));
    if (text.isEmpty()) {
      return least;
    }
    try {
      double value = Double.parseDouble(text.get());
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    fault(
        origin(key),
        key,
        "'" + text.get() + "' is no such number",
        key + " must be " + kind,
        "Maybe the point is missing or a comma stands in its place.");
    return least;
  }

  /** A day, ISO 8601, which must be there. */
  public LocalDate date(String key) {
    return date(key, scalar(key, "a date", need(key, "a date such as \"2027-03-01\"")))
        .orElse(LocalDate.EPOCH);
  }

  /** A day that may be missing. */
  public Optional<LocalDate> optionalDate(String key) {
    return date(key, scalar(key, "a date", find(key)));
  }

  private Optional<LocalDate> date(String key, Optional<String> text) {
    try {
      return text.map(LocalDate::parse);
    } catch (DateTimeParseException e) {
      fault(
          origin(key),
          key,
          "'" + text.orElseThrow() + "' is not a day of the calendar",
          key + " must be a date such as \"2027-03-01\"",
          "Maybe day and month are swapped.");
      return Optional.empty();
    }
  }

  /** {@code true} or {@code false}; {@code otherwise} where the key is missing. */
  public boolean flag(String key, boolean otherwise) {
    Optional<String> text = scalar(key, "true or false", find(key));
    if (text.isEmpty() || text.get().equals("true") || text.get().equals("false")) {
      return text.map("true"::equals).orElse(otherwise);
    }
    fault(
        origin(key),
        key,
        "'" + text.get() + "' is neither",
        key + " must be true or false",
        "Write true or false.");
    return otherwise;
  }

  /** A member of a closed list, which must be there. */
  public <E extends Enum<E> & Coded> E word(String key, Class<E> type) {
    String kind = "one of " + Coded.words(type);
    return word(key, type, scalar(key, kind, need(key, kind))).orElse(type.getEnumConstants()[0]);
  }

  /** A member of a closed list that may be missing. */
  public <E extends Enum<E> & Coded> Optional<E> optionalWord(String key, Class<E> type) {
    return word(key, type, scalar(key, "one word", find(key)));
  }

  private <E extends Enum<E> & Coded> Optional<E> word(
      String key, Class<E> type, Optional<String> text) {
    Optional<E> found = text.flatMap(t -> Coded.find(type, t));
    if (text.isPresent() && found.isEmpty()) {
      fault(
          origin(key),
          key,
          "'" + text.get() + "' is not known",
          key + " must be one of " + Coded.words(type),
          Nearest.to(text.get(), Set.of(Coded.words(type).split(", ", -1)))
              .map(near -> "Maybe '" + near + "' is meant.")
              .orElse("Choose one of these."));
    }
    return found;
  }

  /** The members of a list; empty where the key is missing. A single value is a list of one. */
  public List<Node> items(String key) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      return List.of();
    }
    return found.get() instanceof Node.Items items ? items.items() : List.of(found.get());
  }

  /** The texts of a list; empty where the key is missing. */
  public List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    for (Node item : items(key)) {
      if (item instanceof Node.Scalar scalar) {
        texts.add(scalar.text().strip());
      } else {
        fault(
            item.origin(),
            key,
            item.shown() + " stands here",
            key + " must be a list of texts",
            "Write it as [one, two].");
      }
    }
    return texts;
  }

  /** A list of two whole numbers, such as an age range; empty where the key is missing. */
  public Optional<int[]> pair(String key, int least, int most) {
    List<String> texts = texts(key);
    if (texts.isEmpty()) {
      return Optional.empty();
    }
    if (texts.size() == 2) {
      OptionalInt from = whole(key, least, most, Optional.of(texts.get(0)));
      OptionalInt to = whole(key, least, most, Optional.of(texts.get(1)));
      if (from.isPresent() && to.isPresent() && from.getAsInt() <= to.getAsInt()) {
        return Optional.of(new int[] {from.getAsInt(), to.getAsInt()});
      }
    }
    refuse(
        key,
        texts + " is no such range",
        key + " must be two whole numbers from " + least + " to " + most + ", the lower first",
        "Write it as [9, 10].");
    return Optional.empty();
  }

  /** The members of a list, each read with {@code reader}; those with faults are left out. */
  public <T> List<T> each(String key, Function<Fields, T> reader) {
    List<T> all = new ArrayList<>();
    for (Node item : items(key)) {
      read(item, problems, reader).ifPresent(all::add);
    }
    return all;
  }

  /** A group of keys below {@code key}; empty where the key is missing or the group has faults. */
  public <T> Optional<T> inside(String key, Function<Fields, T> reader) {
    return find(key).flatMap(found -> read(found, problems, reader));
  }

  /** As {@link #inside}, but keys that were never asked for go to {@code unknown}. */
  public <T> Optional<T> inside(String key, List<Problem> unknown, Function<Fields, T> reader) {
    return find(key).flatMap(found -> read(found, problems, unknown, reader));
  }

  /** A text by language, which must be there with English at the least. */
  public LocalText localText(String key) {
    return optionalLocalText(key)
        .orElseGet(
            () -> {
              need(key, "a text by language: {en: …, es: …}");
              return LocalText.of("?", "?");
            });
  }

  /** A text by language that may be missing. */
  public Optional<LocalText> optionalLocalText(String key) {
    return inside(
        key,
        f -> {
          java.util.Map<String, String> texts = new java.util.LinkedHashMap<>();
          texts.put(LocalText.FALLBACK, f.text(LocalText.FALLBACK));
          for (String language : f.keys()) {
            texts.put(language, f.text(language));
          }
          return new LocalText(texts);
        });
  }
}
