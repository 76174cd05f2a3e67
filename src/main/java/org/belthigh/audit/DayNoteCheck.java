package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.intake.Event;
import org.belthigh.model.Phrase;
import org.belthigh.words.Words;

/**
 * What a day is called: as the calendar has it. A game is no practice, a break is neither, and work
 * stands only on a day that is called practice or home session.
 */
final class DayNoteCheck {
  private static final String HOME = "day.home";
  private static final String PRACTICE = "day.practice";

  /** What is said beside work, after its place. */
  private static final List<String> HOW = List.of("", ".rested", ".lighter", ".back");

  /** What is said of a practice on which the child does no hitting. */
  private static final List<String> IDLE =
      List.of(
          "day.helps",
          "day.sits-out",
          "day.no-free-day",
          "day.hitting-days",
          "day.swings-used",
          "day.no-minutes",
          "day.light-share",
          "day.nothing-fits",
          "day.no-adult",
          "day.evaluation");

  private final Given given;
  private final Words words;

  DayNoteCheck(Given given, Words words) {
    this.given = given;
    this.words = words;
  }

  void check(Given.Child child) {
    for (JsonNode day : child.said().path("days")) {
      Given.date(day, "date").ifPresent(date -> day(child, day, date));
    }
  }

  private void day(Given.Child child, JsonNode day, LocalDate date) {
    Set<String> may =
        day.path("items").isEmpty()
            ? idle(child, date)
            : worked(day.path("place").asText().equals("home"));
    String note = day.path("note").asText("");
    if (may.stream().noneMatch(key -> says(key, note))) {
      given.fault(
          Given.at(child, day),
          "its note is '" + note + "'",
          "it is "
              + may.stream()
                  .map(key -> "'" + said(key, "en") + "'")
                  .collect(Collectors.joining(" or ")));
    }
  }

  private static Set<String> worked(boolean home) {
    return HOW.stream()
        .map(how -> (home ? HOME : PRACTICE) + how)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private Set<String> idle(Given.Child child, LocalDate date) {
    Set<Event.Kind> kinds =
        given.events(child.player().group(), date).stream()
            .map(Event::kind)
            .collect(Collectors.toSet());
    Set<String> may = new LinkedHashSet<>();
    Stream.of(Event.Kind.GAME, Event.Kind.TOURNAMENT)
        .filter(kinds::contains)
        .forEach(kind -> may.add("day." + kind.id()));
    boolean practice =
        kinds.contains(Event.Kind.PRACTICE)
            || kinds.contains(Event.Kind.EVALUATION)
            || new Sport(given.record(), given.plan()).assumed(child.person(), date);
    if (may.isEmpty() && practice) {
      may.addAll(IDLE);
    }
    boolean off = kinds.contains(Event.Kind.BREAK) || kinds.contains(Event.Kind.OFF);
    if (may.isEmpty() || off) {
      may.addAll(List.of("day.rest", "day.time-off", "day.off"));
    }
    if (held(child, date)) {
      may.add("day.held");
    }
    return may;
  }

  private static boolean held(Given.Child child, LocalDate date) {
    for (JsonNode hold : child.said().path("holds")) {
      Optional<LocalDate> from = Given.date(hold, "from");
      boolean begun = from.filter(d -> !d.isAfter(date)).isPresent();
      boolean over = Given.date(hold, "until").filter(date::isAfter).isPresent();
      if (begun && !over && hold.path("kind").asText().equals("everything")) {
        return true;
      }
    }
    return false;
  }

  private boolean says(String key, String note) {
    return Words.LANGUAGES.stream().anyMatch(language -> said(key, language).equals(note));
  }

  private String said(String key, String language) {
    return words.say(Phrase.of(key), language);
  }
}
