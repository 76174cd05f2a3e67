package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code plan.json} against the schema that other programs go by. */
class PlanSchemaTest {
  @TempDir private Path folder;

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(new ObjectMapper().readTree(Path.of("docs/schemas/plan.schema.json").toFile()));
  }

  private JsonNode plan(String... more) throws IOException {
    String[] line = {"plan", "demo-players", "--out", folder + "/out", "--no-history"};
    String[] all = new String[line.length + more.length];
    System.arraycopy(line, 0, all, 0, line.length);
    System.arraycopy(more, 0, all, line.length, more.length);
    Runs.run(all);
    return new ObjectMapper().readTree(folder.resolve("out/plan.json").toFile());
  }

  @Test
  void every_plan_is_good_by_it() throws IOException {
    assertThat(schema().validate(plan("--from", "2027-04-05", "--weeks", "2"))).isEmpty();
    assertThat(schema().validate(plan("--from", "2027-05-20", "--weeks", "2", "--redact")))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/club",
        "/from",
        "/weeks",
        "/players",
        "/players/0/player",
        "/players/0/decisions",
        "/players/0/decisions/0/next",
        "/players/0/holds",
        "/players/0/days/0/date",
        "/players/0/days/0/place",
        "/players/0/days/0/throws",
        "/players/0/days/0/items",
        "/practices/0/stations",
        "/practices/0/ways/0/swings",
        "/files",
        "/files/0/sha256",
        "/files/0/bytes",
        "/players/0/arms",
        "/players/0/arms/0/answer",
        "/players/0/label",
        "/players/0/cautions",
        "/players/0/cautions/card",
        "/players/0/home_gear",
        "/practices/0/place",
        "/practices/0/kind",
        "/practices/0/minutes",
        "/practices/0/start",
        "/practices/0/gear",
        "/practices/0/cautions",
        "/practices/0/no_throwing",
        "/practices/0/no_swinging",
        "/practices/0/rotations",
        "/practices/0/rotations/0/posts",
        "/practices/0/logs",
        "/practices/0/stations/0/gear",
        "/practices/0/stations/0/uses"
      })
  void a_plan_without_one_of_the_fixed_keys_is_not(String key) throws IOException {
    JsonNode plan = plan("--from", "2027-04-05", "--weeks", "1", "--player", "p01");
    int cut = key.lastIndexOf('/');
    ((ObjectNode) plan.at(key.substring(0, cut))).remove(List.of(key.substring(cut + 1)));

    assertThat(schema().validate(plan)).isNotEmpty();
  }
}
