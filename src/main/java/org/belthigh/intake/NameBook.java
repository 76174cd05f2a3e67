package org.belthigh.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.files.Nearest;

/**
 * Who is meant by a text: an id, a shirt number, a first or last name, both in either order, the
 * first name with the beginning of the last, and any of these with the shirt number or the id, as
 * sheets print them ({@code Ana O. 12}). Case, accents, points and blanks do not matter.
 *
 * @param <N> what is known of those who can be meant
 */
final class NameBook<N extends Named> {
  private final Map<String, List<N>> whole = new HashMap<>();
  private final Map<String, List<N>> words = new HashMap<>();
  private final Collection<N> players;

  NameBook(Collection<N> players) {
    this.players = players;
    for (N player : players) {
      wholeNames(player).forEach(name -> add(whole, name, player));
      partNames(player).forEach(name -> add(words, name, player));
    }
  }

  private void add(Map<String, List<N>> index, String name, N player) {
    index.computeIfAbsent(name, n -> new ArrayList<>(1)).add(player);
  }

  private static Stream<String> wholeNames(Named player) {
    return Stream.of(plain(player.id()), first(player), last(player), number(player))
        .filter(name -> !name.isEmpty())
        .distinct();
  }

  private static Stream<String> partNames(Named player) {
    return Stream.of(first(player), last(player))
        .flatMap(name -> Stream.concat(Stream.of(name), Stream.of(name.split("-", -1))))
        .filter(name -> !name.isEmpty())
        .distinct();
  }

  private static String first(Named player) {
    return plain(player.firstName());
  }

  private static String last(Named player) {
    return plain(player.lastName().orElse(""));
  }

  private static String number(Named player) {
    return player.number().isPresent() ? Integer.toString(player.number().getAsInt()) : "";
  }

  /** The text as names are compared; a number without the zeros before it. */
  static String plain(String text) {
    int comma = text.indexOf(',');
    String ordered = comma < 0 ? text : text.substring(comma + 1) + " " + text.substring(0, comma);
    String plain = Vocabulary.plain(ordered, '-');
    return isNumber(plain) ? plain.replaceFirst("^0+(?=.)", "") : plain;
  }

  private static boolean isNumber(String text) {
    return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  /**
   * All who can be meant, in roster order within each kind of name; none where nobody fits. A whole
   * id, name or number goes before a part of a name.
   */
  List<N> called(String text) {
    String plain = plain(text);
    List<N> exact = whole.getOrDefault(plain, List.of());
    if (!exact.isEmpty() || plain.isEmpty()) {
      return exact;
    }
    Set<N> composed = new LinkedHashSet<>(composed(plain));
    return composed.isEmpty() ? words.getOrDefault(plain, List.of()) : List.copyOf(composed);
  }

  /** Those of whom {@code plain} is made up: a name and what follows it. */
  private List<N> composed(String plain) {
    List<N> found = new ArrayList<>();
    for (int cut = plain.indexOf('-'); cut > 0; cut = plain.indexOf('-', cut + 1)) {
      String head = plain.substring(0, cut);
      String tail = plain.substring(cut + 1);
      Stream.concat(
              whole.getOrDefault(unpadded(head), List.of()).stream(),
              words.getOrDefault(head, List.of()).stream())
          .filter(player -> fits(player, head, tail))
          .forEach(found::add);
    }
    return found;
  }

  private static String unpadded(String text) {
    return isNumber(text) ? text.replaceFirst("^0+(?=.)", "") : text;
  }

  private static boolean fits(Named player, String head, String tail) {
    boolean byFirst = isPart(head, first(player));
    boolean byLast = isPart(head, last(player));
    boolean byTag = tags(player).contains(unpadded(head));
    return (byFirst && (begins(tail, last(player)) || tagged(player, tail, last(player))))
        || (byLast && (isPart(tail, first(player)) || tagged(player, tail, first(player))))
        || (byTag && isName(player, tail));
  }

  /** The shirt number and the id. */
  private static List<String> tags(Named player) {
    return Stream.of(number(player), plain(player.id())).filter(t -> !t.isEmpty()).toList();
  }

  /**
   * Whether {@code tail} is a tag of the player, with the beginning of {@code other} or without.
   */
  private static boolean tagged(Named player, String tail, String other) {
    for (String tag : tags(player)) {
      if (unpadded(tail).equals(tag)) {
        return true;
      }
      if (tail.endsWith("-" + tag)) {
        String rest = tail.substring(0, tail.length() - tag.length() - 1);
        if (begins(rest, other) || tags(player).contains(unpadded(rest))) {
          return true;
        }
        return tags(player).stream()
            .filter(t -> rest.endsWith("-" + t))
            .anyMatch(t -> begins(rest.substring(0, rest.length() - t.length() - 1), other));
      }
    }
    return false;
  }

  private static boolean isName(Named player, String text) {
    String first = first(player);
    String last = last(player);
    if (isPart(text, first) || isPart(text, last)) {
      return true;
    }
    return Stream.concat(Stream.of(first), Stream.of(first.split("-", -1)))
        .filter(f -> text.startsWith(f + "-"))
        .anyMatch(f -> begins(text.substring(f.length() + 1), last));
  }

  /** Whether {@code text} is that name or a word of it. */
  private static boolean isPart(String text, String name) {
    return !text.isEmpty() && (text.equals(name) || List.of(name.split("-", -1)).contains(text));
  }

  /** Whether that name or a word of it begins with {@code text}. */
  private static boolean begins(String text, String name) {
    return !text.isEmpty() && (name.startsWith(text) || name.contains("-" + text));
  }

  /**
   * The ids of all whom {@code text} resembles: who bears one of its words, or an id or a name a
   * few letters off. None where nobody does: then it may be anyone.
   */
  List<String> similar(String text) {
    String plain = plain(text);
    List<String> parts = List.of(plain.split("-", -1));
    return players.stream()
        .filter(
            player ->
                near(text, Stream.of(player.id()))
                    || near(plain, fullNames(player))
                    || Stream.concat(wholeNames(player), partNames(player))
                        .anyMatch(name -> parts.contains(name)))
        .map(Named::id)
        .toList();
  }

  private static Stream<String> fullNames(Named player) {
    String first = first(player);
    String last = last(player);
    return last.isEmpty()
        ? Stream.of(first)
        : Stream.of(first, last, first + "-" + last, last + "-" + first);
  }

  private static boolean near(String text, Stream<String> names) {
    return !text.isEmpty() && Nearest.to(text, names.toList()).isPresent();
  }

  /**
   * The ids of all whose id or name begins with {@code text}, as a row that was cut off shows it.
   */
  List<String> beginningWith(String text) {
    String plain = plain(text);
    return plain.isEmpty()
        ? List.of()
        : players.stream()
            .filter(
                p -> Stream.concat(wholeNames(p), fullNames(p)).anyMatch(n -> n.startsWith(plain)))
            .map(Named::id)
            .toList();
  }

  /** The one whose name resembles {@code text} most, where one alone bears that name. */
  List<N> nearest(String text) {
    return Nearest.to(plain(text), whole.keySet()).map(whole::get).orElse(List.of());
  }
}
