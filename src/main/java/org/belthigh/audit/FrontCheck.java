package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.intake.Club;
import org.belthigh.model.Problem;

/** Whose plan it is and by which books: club, curriculum, rule books, and what was set aside. */
final class FrontCheck {
  /** All of a path but the file's own name; what is said of it follows after a comma. */
  private static final Pattern FOLDER = Pattern.compile("^[^,\\n]*[/\\\\](?=[^,\\n]*,)");

  private final Given given;

  FrontCheck(Given given) {
    this.given = given;
  }

  void check() {
    Club club = given.record().club();
    JsonNode json = given.json();
    same("club", json.path("club").asText(), club.name());
    same(
        "curriculum",
        json.path("curriculum").asText(),
        given.curriculum().id() + " " + given.curriculum().version());
    books(Given.words(json, "rule_books"), club.ruleBooks());
    setAside(Given.words(json, "set_aside"));
  }

  private void same(String key, String found, String wanted) {
    if (!found.equals(wanted)) {
      given.fault(key, "'" + found + "' stands there", "the club folder has '" + wanted + "'");
    }
  }

  /** The club's own, those that the plan was asked to keep as well, and no other. */
  private void books(List<String> found, List<String> wanted) {
    wanted.stream()
        .filter(book -> !found.contains(book))
        .forEach(
            book ->
                given.fault(
                    "rule_books", book + " is missing in " + found, "the club plays by " + wanted));
    found.stream()
        .filter(book -> !wanted.contains(book))
        .filter(given.catalogue().ruleBooks()::containsKey)
        .forEach(
            book ->
                given.fault(
                    "rule_books",
                    book + " stands in " + found,
                    "the club plays by " + wanted + ", and no other was asked for"));
    Stream.concat(found.stream(), Given.words(given.json().path("asked"), "books").stream())
        .distinct()
        .filter(book -> !given.catalogue().ruleBooks().containsKey(book))
        .forEach(
            book ->
                given.fault("rule_books", "'" + book + "' is no rule book", "books have an id"));
    if (new HashSet<>(found).size() < found.size()) {
      given.fault("rule_books", "a book stands twice in " + found, "each stands once");
    }
  }

  /** The text without its folder, which may be given in another way than when planning. */
  private static String inFolder(String text) {
    return FOLDER.matcher(text).replaceFirst("");
  }

  private void setAside(List<String> found) {
    List<String> wanted =
        given.whole().problems().stream().map(Problem::text).map(FrontCheck::inFolder).toList();
    Set<String> missing = new HashSet<>(wanted);
    found.stream().map(FrontCheck::inFolder).forEach(missing::remove);
    new ArrayList<>(missing)
        .stream()
            .sorted()
            .forEach(
                text ->
                    given.fault(
                        "set_aside",
                        "nothing is said of " + text.lines().findFirst().orElse(""),
                        "whatever of the club folder was set aside is told"));
    Set<String> known = new HashSet<>(wanted);
    found.stream()
        .filter(text -> !known.contains(inFolder(text)))
        .forEach(
            text ->
                given.fault(
                    "set_aside",
                    "'" + text.lines().findFirst().orElse("") + "'",
                    "the club folder has no such fault now"));
  }
}
