package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Ball;
import org.belthigh.words.Words;

/**
 * What the sheets say for safety: that an adult stays, helmet and ring, eyes, lightning and heat;
 * what must be there; and a label that no two children share.
 *
 * <p>The sentences are looked up under the same keys from which the sheets are made, in the
 * language of the sheet; which of them must stand there is the auditor's own list.
 */
final class SheetCheck {
  private static final List<String> PRACTICE =
      List.of("practice.safety.adult", "practice.lightning", "practice.heat");
  private static final Set<String> COUNTED = Set.of("tee", "net", "screen", "machine");
  private static final Set<String> TOSSED = Set.of("soft-toss", "front-toss", "overhand");
  private static final String HELMET = "helmet";

  private final Given given;
  private final Words words;
  private final CautionCheck cautions;

  SheetCheck(Given given, Words words) {
    this.given = given;
    this.words = words;
    this.cautions = new CautionCheck(given, words);
  }

  void check() {
    labels();
    for (JsonNode practice : given.json().path("practices")) {
      practice(practice);
    }
  }

  private void labels() {
    Map<String, String> seen = new HashMap<>();
    for (Given.Child child : given.children()) {
      String label = child.said().path("label").asText("");
      if (!label.contains(child.player().firstName())) {
        given.fault(
            child.id(), "the label is '" + label + "'", "sheets call the child by its first name");
      }
      if (child.player().number().isPresent()
          && !label.contains(child.player().number().getAsInt() + "")) {
        given.fault(child.id(), "the label is '" + label + "'", "it has the number of the shirt");
      }
      String other = seen.put(child.player().group() + label, child.id());
      if (other != null) {
        given.fault(
            child.id(), "the label is '" + label + "'", other + " of the group has the same");
      }
    }
  }

  void check(Given.Child child) {
    language(child);
    cautions.check(child);
    new HomeGearCheck(given).check(child);
  }

  /** The family's own, or the one that was asked for. */
  private void language(Given.Child child) {
    String wanted = given.language(child);
    String found = child.said().path("language").asText();
    if (!found.equals(wanted)) {
      given.fault(
          child.id(), "its sheets are in the language '" + found + "'", "it is '" + wanted + "'");
    }
  }

  private static Map<String, Integer> things(JsonNode gear) {
    Map<String, Integer> things = new HashMap<>();
    gear.forEach(g -> things.merge(g.path("what").asText(), g.path("count").asInt(), Integer::sum));
    return things;
  }

  private void practice(JsonNode practice) {
    String where = practice.path("group").asText() + " " + practice.path("date").asText();
    List<String> cautions = Given.words(practice, "cautions");
    List<String> wanted = new ArrayList<>(PRACTICE);
    Set<String> gear = new HashSet<>();
    for (Drill drill : drills(practice)) {
      if (drill.swing()) {
        wanted.add("safety.swing");
        gear.add(HELMET);
        gear.add("bat");
      }
      boolean without = drill.balls().values().stream().allMatch(b -> b == Ball.NONE);
      boolean bare = without || (!drill.swing() && drill.balls().containsValue(Ball.NONE));
      if (!bare) {
        wanted.add(fed(drill));
      }
      drill.gear().stream().filter(COUNTED::contains).forEach(gear::add);
    }
    says(where, cautions, wanted.stream().distinct().toList());
    Map<String, Integer> things = things(practice.path("gear"));
    gear.stream()
        .sorted()
        .filter(g -> things.getOrDefault(g, 0) < 1)
        .forEach(g -> given.broken(where, "no " + g + " under what to bring", "a drill needs it"));
    stationGear(where, practice);
  }

  /** The sentence about how the ball comes: a toss from behind a screen, or one of soft balls. */
  private static String fed(Drill drill) {
    String key = "safety." + drill.safety().id();
    if (!TOSSED.contains(drill.safety().id())) {
      return key;
    }
    return key + (drill.gear().contains("screen") ? ".screen" : ".open");
  }

  private List<Drill> drills(JsonNode practice) {
    List<Drill> drills = new ArrayList<>();
    practice.path("stations").forEach(s -> drills.addAll(at(s)));
    return drills;
  }

  private List<Drill> at(JsonNode station) {
    return Given.words(station, "drills").stream()
        .map(given.curriculum().drills()::get)
        .filter(Objects::nonNull)
        .toList();
  }

  private void stationGear(String where, JsonNode practice) {
    for (JsonNode station : practice.path("stations")) {
      Map<String, Integer> things = things(station.path("gear"));
      String at = where + ", station " + station.path("station").asText();
      for (Drill drill : at(station)) {
        drill.gear().stream()
            .filter(COUNTED::contains)
            .filter(g -> things.getOrDefault(g, 0) < 1)
            .forEach(g -> given.broken(at, "no " + g + " is listed", drill.id() + " needs it"));
      }
      uses(at, station);
    }
  }

  /** How each drill of a station is fed and with which ball. */
  private void uses(String at, JsonNode station) {
    for (JsonNode use : station.path("uses")) {
      Drill drill = given.curriculum().drills().get(use.path("drill").asText());
      if (drill == null || !Given.words(station, "drills").contains(drill.id())) {
        given.fault(at, "it uses " + use.path("drill").asText(), "that drill is not done there");
      } else if (!use.path("feed").asText().equals(drill.feed().id())) {
        given.fault(
            at + ", " + drill.id(), "fed by " + use.path("feed").asText(), drill.feed().id());
      }
      same(at, use, station, "feed");
      same(at, use, station, "ball");
    }
  }

  /** What the station says of its first drill is what it says of the drill. */
  private void same(String at, JsonNode use, JsonNode station, String key) {
    String first = station.path("drills").path(0).asText();
    if (use.path("drill").asText().equals(first)
        && station.path("uses").size() == 1
        && !use.path(key).equals(station.path(key))) {
      given.fault(at, key + " is " + station.path(key), "its drill has " + use.path(key));
    }
  }

  /** Each of the sentences stands there, in one of the languages. */
  private void says(String where, List<String> found, List<String> keys) {
    for (String key : keys) {
      boolean known = Words.LANGUAGES.stream().allMatch(l -> words.keys(l).contains(key));
      if (known && Words.LANGUAGES.stream().noneMatch(l -> stands(words.say(key, l), found))) {
        given.broken(where, "it does not say: " + words.say(key, "en"), "that is said for safety");
      }
    }
  }

  /** Whether a line says it, alone or with more after it. */
  private static boolean stands(String sentence, List<String> found) {
    return found.stream().anyMatch(line -> line.startsWith(sentence));
  }
}
