package org.belthigh.cli;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Each key of {@code plan.json} is looked at by the auditor, or stands below with the reason why
 * not. A key is looked at where another value of its own kind, in at least one of its places, makes
 * the auditor say something that it did not say before.
 *
 * <p>The keys are those of the schema and those of a real plan together, so a new key fails this
 * test until it is checked or a reason is given.
 */
class EachKeyIsLookedAtTest {
  private static final String BY_THE_COMMAND =
      "the command writes it of sheets of earlier runs and of pictures; a plan alone has none";
  private static final String IN_THE_PATH = "the path of the sheet, which is checked, says it too";
  private static final String HISTORY = "what was handed out before is known to the history alone";
  private static final String TOO_MUCH = "a remark that is missing is told; one too many is not";
  private static final String OTHER_WAYS =
      "of the versions for rain or one adult the plan has no rotations: who swings how often is bounded";

  private static final Map<String, String> NOT_LOOKED_AT =
      Map.ofEntries(
          entry("/files/*/date", IN_THE_PATH),
          entry("/files/*/group", IN_THE_PATH),
          entry("/kept", BY_THE_COMMAND),
          entry("/kept/*/bytes", BY_THE_COMMAND),
          entry("/kept/*/date", BY_THE_COMMAND),
          entry("/kept/*/group", BY_THE_COMMAND),
          entry("/kept/*/path", BY_THE_COMMAND),
          entry("/kept/*/player", BY_THE_COMMAND),
          entry("/kept/*/sha256", BY_THE_COMMAND),
          entry("/kept/*/sheet", BY_THE_COMMAND),
          entry("/pictures", BY_THE_COMMAND),
          entry("/pictures/*/bytes", BY_THE_COMMAND),
          entry("/pictures/*/date", BY_THE_COMMAND),
          entry("/pictures/*/group", BY_THE_COMMAND),
          entry("/pictures/*/path", BY_THE_COMMAND),
          entry("/pictures/*/player", BY_THE_COMMAND),
          entry("/pictures/*/sha256", BY_THE_COMMAND),
          entry("/pictures/*/sheet", BY_THE_COMMAND),
          entry("/players/*/last_plan", HISTORY),
          entry("/players/*/sport_months/remark", TOO_MUCH),
          entry("/practices/*/ways/*/stations", OTHER_WAYS),
          entry("/practices/*/ways/*/stations/*/station", OTHER_WAYS),
          entry("/practices/*/ways/*/swings", OTHER_WAYS));

  /** In how many places of one key a wrong value is tried. */
  private static final int PLACES = 3;

  /** How many keys are wrong at once when prints are read, which takes its time. */
  private static final int TOGETHER = 6;

  @Test
  void each_key_is_looked_at_or_there_is_a_reason_why_not() throws IOException {
    Trial trial = new Trial();
    List<String> quiet = paths().stream().filter(path -> !trial.tells(path)).toList();
    Set<String> silent = new TreeSet<>(quiet);
    for (int i = 0; i < quiet.size(); i += TOGETHER) {
      List<String> some = quiet.subList(i, Math.min(quiet.size(), i + TOGETHER));
      if (trial.printed(some)) {
        some.stream().filter(path -> trial.printed(List.of(path))).forEach(silent::remove);
      }
    }
    Set<String> unexplained = new TreeSet<>(silent);
    unexplained.removeAll(NOT_LOOKED_AT.keySet());
    Set<String> outdated = new TreeSet<>(NOT_LOOKED_AT.keySet());
    outdated.removeAll(silent);

    assertThat(unexplained).as("keys that no check looks at, without a reason").isEmpty();
    assertThat(outdated).as("keys that are looked at by now; take their reasons away").isEmpty();
  }

  @Test
  void the_sound_plan_is_sound() {
    assertThat(TinyClub.beside(TinyClub.printed().json, TinyClub.record())).isEmpty();
  }

  private static Set<String> paths() throws IOException {
    Set<String> paths = new TreeSet<>(Keys.of(TinyClub.printed().json).keySet());
    JsonNode schema =
        new ObjectMapper().readTree(Path.of("docs/schemas/plan.schema.json").toFile());
    schema(schema, schema, "", paths);
    return paths;
  }

  /** The keys that a schema names; an element of a list is {@code *}, a child's id {@code @}. */
  private static void schema(JsonNode root, JsonNode node, String path, Set<String> paths) {
    if (node.has("$ref")) {
      schema(root, root.at(node.get("$ref").asText().substring(1)), path, paths);
    }
    node.path("properties")
        .properties()
        .forEach(
            e -> {
              paths.add(path + "/" + e.getKey());
              schema(root, e.getValue(), path + "/" + e.getKey(), paths);
            });
    if (node.path("items").isObject()) {
      schema(root, node.get("items"), path + "/*", paths);
    }
    for (String either : List.of("anyOf", "oneOf", "allOf")) {
      node.path(either).forEach(n -> schema(root, n, path, paths));
    }
  }

  /** Where the keys of a plan stand. */
  private static final class Keys {
    private final Map<String, List<Place>> places = new TreeMap<>();

    /** A value, in the object that has it. */
    private record Place(ObjectNode owner, String key) {}

    static Map<String, List<Place>> of(ObjectNode plan) {
      Keys keys = new Keys();
      keys.object(plan, "");
      return keys.places;
    }

    private void object(ObjectNode node, String path) {
      node.properties()
          .forEach(
              e -> {
                String name = path.endsWith("/swings") ? "@" : e.getKey();
                String at = path + "/" + name;
                places.computeIfAbsent(at, k -> new ArrayList<>()).add(new Place(node, e.getKey()));
                inside(e.getValue(), at);
              });
    }

    private void inside(JsonNode node, String path) {
      if (node instanceof ObjectNode object) {
        object(object, path);
      } else if (node instanceof ArrayNode array) {
        array.forEach(n -> inside(n, path + "/*"));
      }
    }
  }

  /** A sound plan, and what is said of it when one key is wrong. */
  private static final class Trial {
    private final PrintedClub sound = TinyClub.printed();
    private final Set<String> plan = new HashSet<>(TinyClub.beside(sound.json, TinyClub.record()));
    private final Set<String> papers = new HashSet<>(sound.said());

    boolean tells(String path) {
      int places = Keys.of(sound.json).getOrDefault(path, List.of()).size();
      for (int place = 0; place < Math.min(places, PLACES); place++) {
        for (int other = 0; other < others(path, place).size(); other++) {
          PrintedClub wrong = sound.copy();
          wrong(wrong.json, path, place, other);
          if (!plan.containsAll(TinyClub.beside(wrong.json, TinyClub.record()))) {
            return true;
          }
        }
      }
      return false;
    }

    /** Whether the prints show it, where each of {@code paths} is wrong in each of its places. */
    boolean printed(List<String> paths) {
      PrintedClub wrong = sound.copy();
      for (String path : paths) {
        int places = Keys.of(wrong.json).getOrDefault(path, List.of()).size();
        for (int place = 0; place < places; place++) {
          wrong(wrong.json, path, place, 0);
        }
      }
      return !papers.containsAll(wrong.said());
    }

    private List<JsonNode> others(String path, int place) {
      Keys.Place at = Keys.of(sound.json).get(path).get(place);
      return EachKeyIsLookedAtTest.others(at.owner().get(at.key()));
    }

    private static void wrong(ObjectNode plan, String path, int place, int other) {
      Keys.Place at = Keys.of(plan).get(path).get(place);
      List<JsonNode> others = EachKeyIsLookedAtTest.others(at.owner().get(at.key()));
      at.owner().set(at.key(), others.get(Math.min(other, others.size() - 1)));
    }
  }

  /** Other values of the same kind. */
  private static List<JsonNode> others(JsonNode value) {
    JsonNodeFactory nodes = JsonNodeFactory.instance;
    if (value.isNumber()) {
      return List.of(IntNode.valueOf(value.asInt() + 1), IntNode.valueOf(value.asInt() + 90));
    }
    if (value.isBoolean()) {
      return List.of(BooleanNode.valueOf(!value.asBoolean()));
    }
    if (value instanceof ArrayNode array) {
      return List.of(
          array.isEmpty() ? nodes.arrayNode().add("zz") : nodes.arrayNode(),
          array.deepCopy().add(array.isEmpty() ? TextNode.valueOf("zz") : array.get(0)));
    }
    if (value.isObject()) {
      return List.of(nodes.objectNode());
    }
    if (value.isNull()) {
      return List.of(TextNode.valueOf("zz"));
    }
    try {
      LocalDate day = LocalDate.parse(value.asText());
      return List.of(text(day.plusDays(1)), text(day.minusDays(40)), text(day.plusYears(1)));
    } catch (DateTimeParseException e) {
      return List.of(TextNode.valueOf("zz"), TextNode.valueOf(""));
    }
  }

  private static JsonNode text(LocalDate day) {
    return TextNode.valueOf(day.toString());
  }
}
