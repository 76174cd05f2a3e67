package org.belthigh.decide;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.belthigh.model.Coded;

/** Facts for people: {@code RestRow: age from 11, age to 12, from 51, to 65, days 3}. */
final class FactText {
  /** Says nothing to a reader: row numbers, and names of names. */
  private static final List<String> LEFT_OUT = List.of("row", "rule", "key", "books", "rank");

  private FactText() {}

  /** The kind of {@code fact} and its values. */
  static String of(Object fact) {
    return fact instanceof Record
        ? fact.getClass().getSimpleName() + ": " + values(fact)
        : String.valueOf(fact);
  }

  private static String values(Object fact) {
    return Arrays.stream(fact.getClass().getRecordComponents())
        .filter(part -> !LEFT_OUT.contains(part.getName()))
        .map(part -> shown(fact, part))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String shown(Object fact, RecordComponent part) {
    Object value = value(fact, part);
    String name = words(part.getName());
    if (value instanceof Boolean yes) {
      return yes ? name : "not " + name;
    }
    String text = text(value);
    return text.isEmpty() ? "" : name + " " + text;
  }

  private static String text(Object value) {
    if (value instanceof LocalDate day) {
      return day.equals(LocalDate.MIN) ? "ever" : day.equals(LocalDate.MAX) ? "open" : day + "";
    } else if (value instanceof Optional<?> some) {
      return some.map(FactText::text).orElse("");
    } else if (value instanceof OptionalInt some) {
      return some.isPresent() ? String.valueOf(some.getAsInt()) : "";
    } else if (value instanceof Coded word) {
      return word.id();
    } else if (value instanceof Double number) {
      return String.format(java.util.Locale.ROOT, "%.2f", number);
    } else if (value instanceof Integer number) {
      return number == Integer.MAX_VALUE ? "open" : number.toString();
    } else if (value instanceof Edition edition) {
      return edition.name() + ", " + edition.title();
    } else if (value instanceof Reckoned by) {
      return by.reckoning().id();
    } else if (value instanceof Standing standing) {
      return standing.step() + " on " + standing.day();
    } else if (value instanceof Question asked) {
      return asked.day() + " by " + asked.edition().name();
    } else if (value instanceof Record || value instanceof List<?>) {
      return "";
    }
    return String.valueOf(value);
  }

  private static Object value(Object fact, RecordComponent part) {
    try {
      return part.getAccessor().invoke(fact);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("A fact cannot be read: " + fact.getClass(), e);
    }
  }

  /** {@code ageFrom} as {@code age from}. */
  private static String words(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(java.util.Locale.ROOT);
  }
}
