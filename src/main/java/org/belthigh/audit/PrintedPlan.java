package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.intake.ClubRecord;

/**
 * A plan as its prints are held against it: the tree itself, since a key that is missing must not
 * become one that is empty.
 *
 * @param record the club folder; empty where the plan is looked at alone
 */
record PrintedPlan(
    JsonNode json, LocalDate from, Curriculum curriculum, Optional<ClubRecord> record) {
  private static final int WEEK = 7;

  /** Empty where the plan has no first day or names no curriculum that is known. */
  static Optional<PrintedPlan> of(JsonNode json, Catalogue catalogue, Optional<ClubRecord> record) {
    Optional<LocalDate> from = date(json.path("from"));
    String id = json.path("curriculum").asText().split(" ", 2)[0];
    Optional<Curriculum> curriculum = Optional.ofNullable(catalogue.curricula().get(id));
    return from.filter(f -> curriculum.isPresent())
        .map(f -> new PrintedPlan(json, f, curriculum.orElseThrow(), record));
  }

  static Optional<LocalDate> date(JsonNode node) {
    try {
      return Optional.of(LocalDate.parse(node.asText()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(node -> texts.add(node.asText()));
    return texts;
  }

  String club() {
    return json.path("club").asText();
  }

  LocalDate last() {
    return from.plusDays(WEEK - 1);
  }

  boolean inFirstWeek(JsonNode dated) {
    return date(dated.path("date"))
        .filter(d -> !d.isBefore(from) && !d.isAfter(last()))
        .isPresent();
  }

  /** Groups of which the plan has a player or a practice. */
  Set<String> groups() {
    Set<String> groups = new LinkedHashSet<>();
    json.path("players").forEach(p -> groups.add(p.path("group").asText()));
    json.path("practices").forEach(p -> groups.add(p.path("group").asText()));
    return groups;
  }

  /** The players of one group. */
  List<JsonNode> players(String group) {
    return of("players", group);
  }

  /** The printed practices of one group. */
  List<JsonNode> practices(String group) {
    return of("practices", group);
  }

  private List<JsonNode> of(String key, String group) {
    List<JsonNode> all = new ArrayList<>();
    for (JsonNode node : json.path(key)) {
      if (node.path("group").asText().equals(group)) {
        all.add(node);
      }
    }
    return all;
  }

  /** The player with that id. */
  Optional<JsonNode> player(String id) {
    for (JsonNode node : json.path("players")) {
      if (node.path("player").asText().equals(id)) {
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }

  /** Days of the first week on which the player has work at home. */
  List<JsonNode> homeDays(JsonNode player) {
    List<JsonNode> days = new ArrayList<>();
    for (JsonNode day : player.path("days")) {
      if (inFirstWeek(day)
          && day.path("place").asText().equals("home")
          && !day.path("items").isEmpty()) {
        days.add(day);
      }
    }
    return days;
  }

  /** The player's drills of the first week, by id. */
  Set<String> drills(JsonNode player) {
    Set<String> drills = new LinkedHashSet<>();
    for (JsonNode day : player.path("days")) {
      if (inFirstWeek(day)) {
        day.path("items").forEach(i -> drills.add(i.path("drill").asText()));
      }
    }
    return drills;
  }

  /** The name of a drill as prints in {@code language} have it; empty for an unknown drill. */
  Optional<String> drillName(String id, String language) {
    return Optional.ofNullable(curriculum.drills().get(id)).map(d -> d.name().in(language));
  }

  /** Whether a hold on {@code kind}, or on everything, is in force on {@code day}. */
  static boolean held(JsonNode player, String kind, LocalDate day) {
    for (JsonNode hold : player.path("holds")) {
      String what = hold.path("kind").asText();
      boolean begun = date(hold.path("from")).filter(day::isBefore).isEmpty();
      boolean over = date(hold.path("until")).filter(day::isAfter).isPresent();
      if ((what.equals(kind) || what.equals("everything")) && begun && !over) {
        return true;
      }
    }
    return false;
  }

  /** Whether the first name, in any case, begins the label, and the shirt's number ends it. */
  static boolean names(String label, String first, String number) {
    String said = PaperText.squeeze(label.toLowerCase(Locale.ROOT));
    return said.startsWith(PaperText.squeeze(first)) && said.endsWith(number);
  }
}
