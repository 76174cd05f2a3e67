package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No key of a plan may be missing. */
class KeysCheckTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  @Test
  void the_keys_are_those_that_the_schema_requires() throws Exception {
    JsonNode schema = JSON.readTree(Path.of("docs/schemas/plan.schema.json").toFile());
    Set<String> required = new TreeSet<>();
    walk(schema, schema, "", required);

    assertThat(KeysCheck.all()).isEqualTo(required);
  }

  /** Required keys of an object of the schema, and of those that stand in it. */
  private static void walk(JsonNode schema, JsonNode named, String way, Set<String> required) {
    JsonNode node = named.has("$ref") ? schema.at(named.path("$ref").asText().substring(1)) : named;
    node.path("required").forEach(key -> required.add(way + key.asText()));
    if (node.has("items")) {
      walk(schema, node.get("items"), way, required);
    }
    for (JsonNode key : node.path("required")) {
      walk(schema, node.path("properties").path(key.asText()), way + key.asText() + ".", required);
    }
  }

  private List<String> said(String json) throws Exception {
    ClubRecord record = new SmallClub(folder).record();
    Given given =
        new Given(
            SmallClub.plan(SmallClub.ada()),
            JSON.readTree(json.replace('\'', '"')),
            record,
            record,
            SmallClub.CATALOGUE,
            SmallClub.LIMITS,
            SmallClub.findings());
    new KeysCheck(given).check();
    return SmallClub.said(given.findings());
  }

  @Test
  void each_that_is_missing_is_told_with_where_it_belongs() throws Exception {
    ObjectNode plan = JSON.createObjectNode();
    Set.of("club", "from", "weeks", "curriculum").forEach(key -> plan.put(key, "x"));
    Set.of("rule_books", "later_rows", "set_aside", "prints", "files").forEach(plan::putArray);
    plan.putObject("asked").put("groups", 1).put("players", 1).put("books", 1).put("language", 1);
    plan.putArray("practices");
    plan.putArray("players");
    assertThat(said(plan.toString())).isEmpty();

    plan.remove("practices");
    assertThat(said(plan.toString()))
        .containsExactly("plan: the key practices is missing; it is always there");

    plan.putNull("practices");
    assertThat(said(plan.toString()))
        .containsExactly("plan: practices is null; a list stands there");

    plan.putArray("practices");
    plan.withArray("players").addObject().put("player", "a1").putArray("holds").addObject();
    assertThat(said(plan.toString()))
        .contains("a1: the key arms is missing; it is always there")
        .contains("a1, holds 1: the key until is missing; it is always there");
  }
}
