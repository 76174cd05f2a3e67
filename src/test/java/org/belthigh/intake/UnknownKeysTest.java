package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No key of {@code club.yaml} is passed over in silence. A club that uses every key of the schema
 * is read with one more, a letter off, in each of its groups of keys.
 */
class UnknownKeysTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String COUNT = "3";

  /** Every group of keys that the schema knows, with every key; equipment is filled in below. */
  private static final String FULL =
      """
      {"name": "Example Club", "paper": "letter", "languages": ["en", "es"],
       "rule_book": "pitch-smart-2018", "curriculum": "small", "dates": "day-first",
       "tossers": 2, "season": {"first": "2027-03-01", "last": "2027-05-24"},
       "groups": [{"id": "u10", "name": "Under 10", "age": [9, 10], "sport": "baseball",
                   "tossers": 1}],
       "stricter": {"daily_max": {"ages": [9, 10], "pitches": 40},
                    "weekly_max": [{"ages": [9, 10], "pitches": 60}],
                    "rest_days_add": 1, "days_in_a_row": 1},
       "equipment": {},
       "places": [{"id": "park", "name": "Park", "kind": "field", "address": "Elm Street",
                   "aed": "shed", "stations": 3, "note": "gate code"}],
       "emergency": {"call": "911", "who": "coach", "note": "gate"},
       "other": {}}
      """;

  @TempDir private Path temp;

  private static JsonNode schema() {
    try {
      return JSON.readTree(Files.readString(Path.of("docs/schemas/club.schema.json")));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ObjectNode full() {
    try {
      ObjectNode club = (ObjectNode) JSON.readTree(FULL);
      schema()
          .at("/properties/equipment/anyOf/0/properties")
          .fieldNames()
          .forEachRemaining(thing -> club.withObject("/equipment").put(thing, COUNT));
      return club;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Set<String> names(JsonNode object) {
    Set<String> names = new TreeSet<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<Set<String>> known() {
    return schema().findValues("properties").stream().map(UnknownKeysTest::names).toList();
  }

  /** Where the groups of keys of {@code node} stand, as JSON pointers. */
  private static List<String> groups(JsonNode node, String at) {
    List<String> all = new ArrayList<>();
    if (node.isObject() && !at.equals("/other")) {
      all.add(at);
    }
    node.properties().forEach(e -> all.addAll(groups(e.getValue(), at + "/" + e.getKey())));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      all.addAll(groups(node.get(i), at + "/" + i));
    }
    return all;
  }

  /** A group of keys, one of its keys, and that key a letter off. */
  static Stream<List<String>> slips() {
    ObjectNode club = full();
    return groups(club, "").stream()
        .flatMap(
            at ->
                names(club.at(at)).stream()
                    .flatMap(
                        key ->
                            Stream.of(key + key.charAt(key.length() - 1), "x" + key)
                                .map(slip -> List.of(at, key, slip))));
  }

  private List<Problem> problems(ObjectNode club) throws IOException {
    TestClub folder = TestClub.in(temp).with("club.yaml", club.toPrettyString().split("\n", -1));
    try {
      return Intake.read(folder.folder(), TestCatalogue.small()).problems();
    } catch (Unusable e) {
      return e.problems();
    }
  }

  @Test
  void the_club_uses_every_key_of_the_schema_and_nothing_is_said_of_it() throws IOException {
    ObjectNode club = full();
    List<Set<String>> used = groups(club, "").stream().map(at -> names(club.at(at))).toList();

    assertThat(used).containsAll(known());
    assertThat(problems(club)).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("slips")
  void a_key_that_is_a_letter_off_is_told_with_the_one_that_is_meant(List<String> slip)
      throws IOException {
    ObjectNode club = full();
    ObjectNode group = (ObjectNode) club.at(slip.get(0));
    group.set(slip.get(2), group.get(slip.get(1)));

    List<Problem> told = problems(club);

    assertThat(told)
        .filteredOn(p -> p.subject().equals(slip.get(2)))
        .singleElement()
        .matches(Problem::isFault)
        .matches(p -> p.origin().line() > 0)
        .matches(p -> p.text().contains("'" + slip.get(1) + "'"));
  }

  @Test
  void the_rest_of_the_group_is_used() throws IOException {
    ObjectNode club = full();
    groups(club, "").stream()
        .filter(at -> !at.startsWith("/stricter"))
        .forEach(at -> ((ObjectNode) club.at(at)).put("zzzzzz", COUNT));
    TestClub folder = TestClub.in(temp).with("club.yaml", club.toPrettyString().split("\n", -1));

    Club read = folder.read().club();

    assertThat(read.groups()).singleElement().matches(g -> g.tossers() == 1);
    assertThat(read.places()).singleElement().matches(v -> v.address().equals("Elm Street"));
    assertThat(read.emergency()).get().matches(e -> e.who().equals("coach"));
    assertThat(read.equipment()).containsEntry("tees", 3).containsEntry("screens", 3);
    assertThat(folder.read().problems()).filteredOn(p -> p.subject().equals("zzzzzz")).hasSize(6);
  }

  @Test
  void a_number_of_the_clubs_own_that_is_not_understood_leaves_no_club() throws IOException {
    ObjectNode club = full();
    club.withObject("/stricter").put("daily_maxx", COUNT);

    assertThat(problems(club)).singleElement().matches(p -> p.subject().equals("daily_maxx"));
    assertThatThrownBy(() -> Intake.read(temp.resolve("club"), TestCatalogue.small()))
        .isInstanceOf(Unusable.class);
  }

  @Test
  void what_stands_below_other_is_told() throws IOException {
    ObjectNode club = full();
    club.withObject("/other").put("tees", COUNT);

    assertThat(problems(club)).singleElement().matches(p -> p.subject().equals("tees"));
  }
}
