package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The schemas of {@code docs/schemas} against the loaders. Every good file is changed in every
 * group of keys, one change at a time, and given to both: the schema refuses nothing that the
 * loader takes, and what the loader says of keys (unknown, missing, a group in place of a value)
 * the schema says too.
 */
class SchemasTest {
  private static final Path SCHEMAS = Path.of("docs/schemas");
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper YAML = new YAMLMapper();
  private static final Pattern KNOWN = Pattern.compile("keys are ([a-z_0-9, -]+)[.;]");
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  @TempDir private static Path temp;

  /** A kind of file: its schema, good ones by path, and what the loader says of another text. */
  private record Kind(
      String schema, List<String> good, BiFunction<String, String, List<Problem>> loader) {
    @Override
    public String toString() {
      return schema;
    }
  }

  static Stream<Kind> kinds() {
    Set<String> all = Resources.all().keySet();
    return Stream.of(
        new Kind("club", List.of("demo-players/club.yaml"), SchemasTest::club),
        new Kind(
            "curriculum",
            under(all, "curricula/"),
            (file, text) -> CatalogueLoader.curriculum(file, text, CATALOGUE).problems()),
        new Kind(
            "rule-book",
            under(all, "rules/books/"),
            (file, text) -> CatalogueLoader.ruleBook(file, text, CATALOGUE).problems()),
        new Kind("parameters", under(all, "rules/parameters/"), SchemasTest::catalogue),
        new Kind(
            "rules",
            all.stream().filter(f -> f.endsWith("/rules.yaml")).toList(),
            SchemasTest::catalogue),
        new Kind("sources", List.of("rules/sources.yaml"), SchemasTest::catalogue),
        new Kind("heat-table", under(all, "rules/heat/"), SchemasTest::catalogue),
        new Kind("units", List.of("rules/units.yaml"), SchemasTest::catalogue),
        new Kind("who-ends", List.of("rules/hold/who-ends.yaml"), SchemasTest::catalogue),
        new Kind("precedence", List.of("rules/precedence.yaml"), SchemasTest::catalogue),
        new Kind("growth", under(all, "rules/growth/"), SchemasTest::catalogue));
  }

  private static List<String> under(Set<String> all, String folder) {
    return all.stream().filter(f -> f.startsWith(folder)).toList();
  }

  private static List<Problem> club(String file, String text) {
    try {
      Path club = Files.createDirectories(temp.resolve("club"));
      Files.writeString(club.resolve("club.yaml"), text);
      Files.writeString(
          club.resolve("roster.csv"), "id,first_name,born,bats,group\np01,Ana,2017-03-04,R,u10\n");
      return Intake.read(club, CATALOGUE).problems().stream()
          .filter(p -> p.origin().file().endsWith("club.yaml"))
          .toList();
    } catch (Unusable e) {
      return e.problems().stream().filter(p -> p.origin().file().endsWith("club.yaml")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the loader says of that file; of the others it may say that ids are gone. */
  private static List<Problem> catalogue(String file, String text) {
    SortedMap<String, String> files = new TreeMap<>(Resources.all());
    files.put(file, text);
    return CatalogueLoader.load(files).problems().stream()
        .filter(p -> p.origin().file().equals(file))
        .toList();
  }

  private static JsonNode schemaNode(String name) {
    try {
      return new ObjectMapper().readTree(SCHEMAS.resolve(name + ".schema.json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonSchema schema(String name) {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(schemaNode(name));
  }

  private static String text(String file) throws IOException {
    String text = Resources.all().get(file);
    return text == null ? Files.readString(Path.of(file)) : text;
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void every_good_file_is_good_by_its_schema(Kind kind) throws IOException {
    assertThat(kind.good()).isNotEmpty();
    for (String file : kind.good()) {
      assertThat(schema(kind.schema()).validate(YAML.readTree(text(file)))).as(file).isEmpty();
      assertThat(kind.loader().apply(file, text(file))).as(file).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void schema_and_loader_say_the_same_of_every_change(Kind kind) throws IOException {
    JsonSchema schema = schema(kind.schema());
    Set<String> done = new HashSet<>();
    List<String> apart = new ArrayList<>();
    for (String file : kind.good()) {
      JsonNode root = YAML.readTree(text(file));
      for (List<Object> path : groups(root, List.of())) {
        ObjectNode group = (ObjectNode) at(root, path);
        String shape = path.toString().replaceAll("\\d+", "*");
        if (done.add(shape)) {
          unknownKey(kind, file, root, path, schema, apart);
        }
        for (String key : List.copyOf(iterable(group))) {
          if (done.add(shape + key)) {
            changes(kind, file, root, path, key, schema, apart);
          }
        }
      }
    }
    assertThat(apart).isEmpty();
  }

  private static List<String> iterable(ObjectNode group) {
    List<String> names = new ArrayList<>();
    group.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** Every group of keys, by its path. */
  private static List<List<Object>> groups(JsonNode node, List<Object> path) {
    List<List<Object>> all = new ArrayList<>();
    if (node instanceof ObjectNode object) {
      all.add(path);
      iterable(object).forEach(key -> all.addAll(groups(object.get(key), plus(path, key))));
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        all.addAll(groups(array.get(i), plus(path, i)));
      }
    }
    return all;
  }

  private static List<Object> plus(List<Object> path, Object step) {
    List<Object> longer = new ArrayList<>(path);
    longer.add(step);
    return longer;
  }

  private static JsonNode at(JsonNode root, List<Object> path) {
    JsonNode node = root;
    for (Object step : path) {
      node = step instanceof Integer i ? node.get(i) : node.get((String) step);
    }
    return node;
  }

  private static void unknownKey(
      Kind kind,
      String file,
      JsonNode root,
      List<Object> path,
      JsonSchema schema,
      List<String> apart) {
    JsonNode changed = root.deepCopy();
    ((ObjectNode) at(changed, path)).put("zzz", 1);
    List<Problem> said = kind.loader().apply(file, changed.toString());
    boolean refused = !schema.validate(changed).isEmpty();
    if (refused == said.isEmpty()) {
      apart.add("an unknown key at " + path + ": schema " + refused + ", loader " + said);
    }
    for (Problem problem : said) {
      Matcher known = KNOWN.matcher(problem.allowed() + ".");
      if (problem.subject().equals("zzz") && known.find()) {
        Set<String> keys = new TreeSet<>(Arrays.asList(known.group(1).split(", ", -1)));
        Set<String> properties = properties(kind.schema(), path);
        if (!properties.isEmpty() && !keys.equals(properties)) {
          apart.add("keys at " + path + ": schema " + properties + ", loader " + keys);
        }
      }
    }
  }

  /** The keys that the schema knows at {@code path}; none where they hang on another value. */
  private static Set<String> properties(String name, List<Object> path) {
    JsonNode root = schemaNode(name);
    JsonNode node = root;
    for (Object step : path) {
      node = resolved(root, node);
      node =
          step instanceof Integer
              ? node.at("/then/items")
              : node.get("properties").get((String) step);
    }
    node = resolved(root, node);
    node = node.has("else") && !node.has("properties") ? resolved(root, node.get("else")) : node;
    Set<String> keys = new TreeSet<>();
    node.path("properties").fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static JsonNode resolved(JsonNode root, JsonNode node) {
    JsonNode bare = node.has("anyOf") ? node.get("anyOf").get(0) : node;
    return bare.has("$ref") ? root.at(bare.get("$ref").asText().substring(1)) : bare;
  }

  private static void changes(
      Kind kind,
      String file,
      JsonNode root,
      List<Object> path,
      String key,
      JsonSchema schema,
      List<String> apart) {
    Map<String, JsonNode> others =
        Map.of(
            "nothing", NODES.nullNode(),
            "a word", NODES.textNode("zzz"),
            "a number", NODES.numberNode(-123456),
            "a group", NODES.objectNode().put("zzz", 1),
            "a list", NODES.arrayNode().add(NODES.arrayNode().add(1)));
    JsonNode without = root.deepCopy();
    ((ObjectNode) at(without, path)).remove(key);
    compare(kind, file, without, "without " + path + key, schema, apart);
    for (Map.Entry<String, JsonNode> other : new TreeMap<>(others).entrySet()) {
      JsonNode changed = root.deepCopy();
      ((ObjectNode) at(changed, path)).set(key, other.getValue());
      compare(kind, file, changed, other.getKey() + " at " + path + key, schema, apart);
    }
  }

  private static void compare(
      Kind kind,
      String file,
      JsonNode changed,
      String what,
      JsonSchema schema,
      List<String> apart) {
    List<Problem> said = kind.loader().apply(file, changed.toString());
    var errors = schema.validate(changed);
    boolean ofForm =
        said.stream()
            .anyMatch(
                p -> p.found().contains("key is missing") || p.found().contains("stands here"));
    if (!errors.isEmpty() && said.isEmpty()) {
      apart.add(what + ": only the schema refuses: " + errors);
    } else if (errors.isEmpty() && ofForm) {
      apart.add(what + ": only the loader refuses: " + said);
    }
  }

  private static boolean takes(JsonSchema schema, Path file) throws IOException {
    try {
      return schema.validate(YAML.readTree(file.toFile())).isEmpty();
    } catch (JsonProcessingException e) {
      return false;
    }
  }

  @Test
  void a_broken_club_file_of_the_collection_is_refused_where_its_form_is_broken()
      throws IOException {
    Set<String> ofContent =
        Set.of(
            "curriculum-unknown",
            "group-age-backwards",
            "group-twice",
            "key-twice",
            "name-of-200-thousand-letters",
            "name-turns-the-writing",
            "name-with-escape",
            "nested-deep",
            "nested-deep-keys",
            "other-holds-keys",
            "tag-of-a-class",
            "two-documents",
            "rule-book-unknown",
            "season-backwards",
            "season-cannot-be",
            "stricter-daily-max-is-looser",
            "group-id-is-a-device",
            "stricter-days-in-a-row-is-looser",
            "stricter-weekly-max-is-looser");
    JsonSchema schema = schema("club");
    List<String> taken = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/bad/club.yaml"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        String name = file.getFileName().toString().replace(".yaml", "");
        if (takes(schema, file)) {
          taken.add(name);
        }
      }
    }
    assertThat(ofContent).containsAll(taken);
    assertThat(taken).isNotEmpty();
  }
}
