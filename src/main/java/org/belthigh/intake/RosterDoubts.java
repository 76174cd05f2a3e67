package org.belthigh.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Finds the children of a roster who cannot be told apart: a report about one of them may be about
 * another. Each such pair is a fault, and the children stay in the plan, asked about first.
 */
final class RosterDoubts {
  private final List<RosterRow> rows;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Origin> children = new LinkedHashMap<>();

  /**
   * Looks through a roster.
   *
   * @param rows all of its rows, in the order of reading
   */
  RosterDoubts(List<RosterRow> rows) {
    this.rows = List.copyOf(rows);
    alike(RosterDoubts::idKey, RosterDoubts::oneId, RosterDoubts::idAgain);
    alike(RosterDoubts::nameAndDayKey, RosterDoubts::twoIds, RosterDoubts::nameAndDay);
    alike(RosterDoubts::nameAndNumberKey, RosterDoubts::twoChildren, RosterDoubts::nameAndNumber);
    idsThatAreNumbers();
  }

  /** A fault for each pair. */
  List<Problem> problems() {
    return problems;
  }

  /** The ids of the players concerned, and where the row stands that makes the doubt. */
  Map<String, Origin> children() {
    return children;
  }

  private interface Fault {
    /** What is said where {@code later} stands. */
    Optional<Problem> of(RosterRow earlier, RosterRow later);
  }

  /** Compares rows of one key, each with the first before it that is too like it. */
  private void alike(
      Function<RosterRow, Optional<String>> key,
      BiPredicate<RosterRow, RosterRow> tooLike,
      Fault fault) {
    Map<String, List<RosterRow>> before = new HashMap<>();
    for (RosterRow row : rows) {
      Optional<List<RosterRow>> others =
          key.apply(row).map(k -> before.computeIfAbsent(k, n -> new ArrayList<>(1)));
      others
          .flatMap(all -> all.stream().filter(one -> tooLike.test(one, row)).findFirst())
          .ifPresent(one -> doubt(one, row, fault));
      others.ifPresent(all -> all.add(row));
    }
  }

  private void doubt(RosterRow one, RosterRow two, Fault fault) {
    fault.of(one, two).ifPresent(problems::add);
    doubt(one, two);
    doubt(two, two);
  }

  private void doubt(RosterRow child, RosterRow because) {
    if (child.used()) {
      children.putIfAbsent(child.id(), because.origin());
    }
  }

  private static boolean sameId(RosterRow one, RosterRow two) {
    return one.key().equals(two.key());
  }

  private static Optional<String> idKey(RosterRow row) {
    return Optional.of(row.key()).filter(id -> !id.isEmpty());
  }

  private static boolean oneId(RosterRow one, RosterRow two) {
    return !one.sameChild(two);
  }

  /** The row that is not used says so itself, unless it stands first. */
  private static Optional<Problem> idAgain(RosterRow one, RosterRow two) {
    return two.used()
        ? Optional.of(
            fault(
                two,
                "id",
                "'" + two.id() + "' stands for another child too, " + place(one, two),
                "each id must stand for one child",
                "Give one of them another id, also in the rows about that child."))
        : Optional.empty();
  }

  private void idsThatAreNumbers() {
    Map<String, List<RosterRow>> ids = new HashMap<>();
    for (RosterRow row : rows) {
      ids.computeIfAbsent(NameBook.plain(row.id()), n -> new ArrayList<>(1)).add(row);
    }
    for (RosterRow row : rows) {
      row.number().stream()
          .mapToObj(n -> ids.getOrDefault(Integer.toString(n), List.of()))
          .flatMap(List::stream)
          .filter(other -> !sameId(other, row))
          .forEach(other -> doubt(first(other, row), last(other, row), RosterDoubts::idAndNumber));
    }
  }

  private static RosterRow first(RosterRow one, RosterRow two) {
    return one.origin().compareTo(two.origin()) <= 0 ? one : two;
  }

  private static RosterRow last(RosterRow one, RosterRow two) {
    return one.origin().compareTo(two.origin()) <= 0 ? two : one;
  }

  private static boolean isNumberOf(RosterRow one, RosterRow two) {
    return two.number().isPresent()
        && NameBook.plain(one.id()).equals(Integer.toString(two.number().getAsInt()));
  }

  private static Optional<Problem> idAndNumber(RosterRow one, RosterRow two) {
    boolean firstById = isNumberOf(one, two);
    RosterRow byId = firstById ? one : two;
    RosterRow byNumber = firstById ? two : one;
    return Optional.of(
        fault(
            two,
            firstById ? "number" : "id",
            "'"
                + byId.id()
                + "' is the id of one child and the shirt number of "
                + shown(byNumber.id())
                + ", "
                + place(one, two)
                + " and here",
            "an id must not be another child's shirt number",
            "Maybe p" + byId.id() + " in place of the id " + byId.id() + "."));
  }

  private static Optional<String> nameAndDayKey(RosterRow row) {
    return row.born().filter(b -> row.used()).map(born -> row.fullName() + " " + born);
  }

  private static boolean twoIds(RosterRow one, RosterRow two) {
    return !sameId(one, two);
  }

  private static Optional<Problem> nameAndDay(RosterRow one, RosterRow two) {
    return Optional.of(
        fault(
            two,
            "born",
            shown(one.id()) + " " + place(one, two) + " has this name and birthday too",
            "each child must stand once",
            "Maybe one child stands twice; then take one row out, and write its other id in"
                + " the rows about that child."));
  }

  private static Optional<String> nameAndNumberKey(RosterRow row) {
    return Optional.of(row.group() + " " + row.fullName() + " " + row.number())
        .filter(key -> row.used());
  }

  private static boolean twoChildren(RosterRow one, RosterRow two) {
    return !sameId(one, two) && !one.sameChild(two);
  }

  private static Optional<Problem> nameAndNumber(RosterRow one, RosterRow two) {
    return Optional.of(
        fault(
            two,
            "number",
            shown(one.id())
                + " "
                + place(one, two)
                + " has this name and "
                + (one.number().isPresent() ? "this number too" : "no number either"),
            "children of one name in a group must have different last names or shirt numbers",
            one.number().isPresent()
                ? "Maybe a number was mistyped; else give one of them another."
                : "Give each a shirt number or a last name; add that column if it is missing."));
  }

  private static String place(RosterRow one, RosterRow two) {
    Origin at = one.origin();
    return at.file().equals(two.origin().file())
        ? "on line " + at.line()
        : "at " + Origin.of(at.file(), at.line());
  }

  private static String shown(String id) {
    return id.isEmpty() ? "the child" : "'" + id + "'";
  }

  private static Problem fault(
      RosterRow row, String subject, String found, String allowed, String maybe) {
    Origin at = row.origin();
    return Problem.fault(
        subject.equals("id") ? at : Origin.of(at.file(), at.line()),
        subject,
        found,
        allowed + "; until then ask before either plays",
        maybe);
  }
}
