package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads {@code plan.json}. What is missing or of another kind is a fault, never a zero. */
final class FinishedPlanFile {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2200;
  private static final int MOST_WEEKS = 16;

  private final Findings findings;

  FinishedPlanFile(Findings findings) {
    this.findings = findings;
  }

  /** The plan; empty where a key without which nothing can be checked is missing. */
  Optional<FinishedPlan> read(JsonNode plan) {
    for (String key : List.of("club", "from", "weeks", "players")) {
      if (!plan.hasNonNull(key)) {
        findings.fault(key, "the key is missing", "a plan has club, from, weeks and players");
        return Optional.empty();
      }
    }
    LocalDate from = date("plan", plan, "from");
    if (from.equals(LocalDate.EPOCH)) {
      return Optional.empty();
    }
    int weeks = whole("plan", plan, "weeks");
    if (weeks < 1 || weeks > MOST_WEEKS) {
      // what is no whole number has been told
      if (plan.get("weeks").isInt() && weeks >= 0) {
        findings.fault("weeks", weeks + " weeks", "a plan has 1 to " + MOST_WEEKS + " weeks");
      }
      return Optional.empty();
    }
    return Optional.of(
        new FinishedPlan(
            curriculum(plan.path("curriculum").asText()),
            from,
            weeks,
            each(plan.get("players"), this::person),
            each(plan.path("practices"), this::practice)));
  }

  /** The id of {@code belthigh-2027 2027.1}; the rest is its version. */
  private static String curriculum(String said) {
    return said.split(" ", 2)[0];
  }

  private FinishedPlan.Person person(JsonNode player) {
    String id = text("player", player, "player");
    return new FinishedPlan.Person(
        id,
        player.path("group").asText(),
        whole(id, player, "age"),
        each(player.path("decisions"), d -> text(id, d, "skill")),
        each(player.path("holds"), h -> held(id, h)),
        each(player.path("days"), d -> dated(id, d)),
        !player.path("sport_months").path("remark").asText("").isBlank());
  }

  private FinishedPlan.Held held(String id, JsonNode hold) {
    return new FinishedPlan.Held(
        text(id, hold, "kind"),
        date(id, hold, "from"),
        hold.hasNonNull("until") ? Optional.of(date(id, hold, "until")) : Optional.empty());
  }

  private FinishedPlan.Dated dated(String id, JsonNode day) {
    LocalDate date = date(id, day, "date");
    String where = id + " " + date;
    return new FinishedPlan.Dated(
        date,
        text(where, day, "place"),
        whole(where, day, "minutes"),
        whole(where, day, "swings"),
        whole(where, day, "throws"),
        each(day.path("items"), i -> work(where, i)));
  }

  private FinishedPlan.Work work(String where, JsonNode item) {
    return new FinishedPlan.Work(
        text(where, item, "drill"),
        text(where, item, "ball"),
        text(where, item, "feed"),
        whole(where, item, "feet"),
        whole(where, item, "reps"),
        whole(where, item, "swings"),
        whole(where, item, "minutes"));
  }

  private FinishedPlan.Practice practice(JsonNode practice) {
    String group = text("practice", practice, "group");
    return new FinishedPlan.Practice(
        group,
        date(group, practice, "date"),
        stations(group, practice),
        each(practice.path("ways"), w -> way(group, w)));
  }

  private FinishedPlan.Way way(String group, JsonNode way) {
    String name = text(group, way, "way");
    Map<String, Integer> swings = new TreeMap<>();
    way.path("swings")
        .fieldNames()
        .forEachRemaining(id -> swings.put(id, whole(group + ", " + name, way.path("swings"), id)));
    return new FinishedPlan.Way(
        name, text(group, way, "place"), whole(group, way, "adults"), stations(group, way), swings);
  }

  private List<FinishedPlan.Station> stations(String group, JsonNode practice) {
    return each(
        practice.path("stations"),
        s ->
            new FinishedPlan.Station(
                whole(group, s, "station"),
                s.path("adult").asBoolean(),
                each(s.path("drills"), JsonNode::asText)));
  }

  private static <T> List<T> each(JsonNode array, Function<JsonNode, T> reader) {
    List<T> all = new ArrayList<>();
    array.forEach(node -> all.add(reader.apply(node)));
    return all;
  }

  private String text(String where, JsonNode node, String key) {
    if (!node.path(key).isTextual()) {
      findings.fault(where + ", " + key, "no text stands there", "each entry has its " + key);
    }
    return node.path(key).asText();
  }

  private int whole(String where, JsonNode node, String key) {
    JsonNode number = node.path(key);
    if (!number.isIntegralNumber() || number.asLong() < 0 || !number.canConvertToInt()) {
      findings.fault(
          where + ", " + key,
          number.isMissingNode() ? "the number is missing" : number + " stands there",
          key + " is a whole number, 0 or more");
    }
    return number.asInt();
  }

  private LocalDate date(String where, JsonNode node, String key) {
    String text = node.path(key).asText();
    try {
      LocalDate date = LocalDate.parse(text);
      if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
        return date;
      }
    } catch (DateTimeParseException e) {
      // said below
    }
    findings.fault(where + ", " + key, "'" + text + "' is not a date", "dates are ISO 8601");
    return LocalDate.EPOCH;
  }
}
