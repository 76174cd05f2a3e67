package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The commands as a coordinator gives them. */
class CommandLineTest {
  @TempDir private Path folder;

  private static Ran run(String... args) {
    return Runs.run(args);
  }

  private Path cleanDemo() throws IOException {
    return Runs.cleanDemo(folder);
  }

  private static Map<String, String> bytes(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.put(folder.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)) + "");
      }
    }
    return all;
  }

  @Test
  void the_demo_is_planned_and_its_planted_faults_are_told() {
    Path out = folder.resolve("out");

    Ran ran =
        run(
            "plan",
            "demo-players",
            "--out",
            out.toString(),
            "--from",
            "2027-04-05",
            "--no-history");

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .contains(
            "demo-players/logs/u10-practice-0330.csv line 4 column 12, player: 'p44' is not in the"
                + " roster; player must be an id of the roster.\nMaybe p04.")
        .contains("line 7 column 16, drill: 'zone-cal'")
        .contains("line 11 column 31, zone: '10'")
        .contains("line 16 column 43, hit: the cell is empty")
        .contains("line 21 column 1, date: 2027-02-30")
        .contains("line 41 column 29, toss: toss 3 of round 1 of p05 stands already on line 40")
        .contains("6 things were set aside, 3 remarks; all the rest was used.")
        .doesNotContain("Mateo", "Holcomb", "Rentería");
    assertThat(out.resolve("plan.json")).exists();
    for (String group : List.of("u10", "u14")) {
      assertThat(out.resolve(group + "/packet.pdf")).exists();
      assertThat(out.resolve(group + "/overview.pdf")).exists();
    }
    assertThat(out.resolve("u10/practice-2027-04-06.pdf")).exists();
    assertThat(out.resolve("u10/cards/p01-week-2027-04-05.pdf")).exists();
    assertThat(out.resolve("u14/cards/p28-week-2027-04-05.pdf")).exists();
  }

  @Test
  void without_the_faults_all_is_well_and_twice_the_same_command_gives_the_same_bytes()
      throws IOException {
    String club = cleanDemo().toString();
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");

    Ran first = run("plan", club, "--out", one.toString(), "--from", "2027-04-05");
    Ran second = run("plan", club, "--out", two.toString(), "--from", "2027-04-05");

    assertThat(first.status()).isZero();
    assertThat(second.status()).isZero();
    assertThat(bytes(one)).isNotEmpty().isEqualTo(bytes(two));
  }

  @Test
  void the_next_plan_looks_back_at_the_one_that_was_handed_out() throws IOException {
    Path club = cleanDemo();
    Path out = folder.resolve("out");
    run("plan", club.toString(), "--out", out.toString(), "--from", "2027-03-29");
    Map<String, String> kept = bytes(club.resolve("history"));
    run("plan", club.toString(), "--out", out.toString(), "--from", "2027-04-05");
    Map<String, String> both = bytes(club.resolve("history"));
    JsonNode mateo = player(out, "p03").get("last_plan");
    run("plan", club.toString(), "--out", out.toString(), "--from", "2027-03-29");

    assertThat(kept).hasSize(2);
    assertThat(both).hasSize(4).containsAllEntriesOf(kept);
    assertThat(bytes(club.resolve("history"))).isEqualTo(both);
    assertThat(mateo.get("from").asText()).isEqualTo("2027-03-29");
    int days = mateo.get("days").asInt();
    assertThat(days).isBetween(1, 7);
    assertThat(
            mateo.get("done").asInt()
                + mateo.get("partly").asInt()
                + mateo.get("not_logged").asInt())
        .isEqualTo(days);
    assertThat(mateo.get("sentence").asText())
        .startsWith("Of " + days + " planned days since Mar 29:")
        .contains("Changed: Hit it hard from");
    assertThat(player(out, "p03").get("last_plan").isNull()).isTrue(); // the old day again
  }

  private static JsonNode player(Path out, String id) throws IOException {
    JsonNode plan = new ObjectMapper().readTree(out.resolve("plan.json").toFile());
    for (JsonNode player : plan.get("players")) {
      if (player.get("player").asText().equals(id)) {
        return player;
      }
    }
    throw new AssertionError("no player " + id);
  }

  @Test
  void a_change_is_seen_at_once_and_nothing_is_written() throws IOException {
    Path club = cleanDemo();
    Path calendar = folder.resolve("rain.csv");
    Files.writeString(calendar, "date,group,kind,minutes\n2027-04-20,all,practice,90\n");
    String[] base = {"whatif", club.toString(), "--from", "2027-04-05", "--weeks", "2", "--json"};

    JsonNode fewer = run(with(base, "--adults", "1")).json().get("players").get(0);
    JsonNode none = run(with(base, "--adults", "0")).json().get("players").get(0);
    JsonNode rain = run(with(base, "--calendar", calendar.toString())).json().get("players").get(0);

    assertThat(fewer.at("/then/swings").asInt()).isLessThan(fewer.at("/now/swings").asInt());
    assertThat(none.at("/then/days").asInt()).isLessThan(none.at("/now/days").asInt());
    assertThat(rain.get("now")).isEqualTo(fewer.get("now"));
    assertThat(rain.get("then")).isNotEqualTo(rain.get("now"));
    assertThat(club.resolve("history")).doesNotExist();
    assertThat(run(base).status()).isEqualTo(2);
    Files.delete(club.resolve("calendar.csv")); // two assumed practices a week
    JsonNode assumed = run(with(base, "--adults", "0")).json().get("players").get(0);
    assertThat(assumed.at("/then/swings").asInt()).isLessThan(assumed.at("/now/swings").asInt());
    assertThat(run(with(base, "--calendar", "nowhere.csv")).status()).isEqualTo(2);
  }

  private static String[] with(String[] base, String... more) {
    return Stream.concat(Stream.of(base), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void what_cannot_be_kept_is_a_remark_and_the_plan_is_printed() throws IOException {
    Path club = cleanDemo();
    Files.writeString(club.resolve("history"), "a file where the folder should be");
    Path out = folder.resolve("out");

    Ran ran =
        run(
            "plan",
            club.toString(),
            "--out",
            out.toString(),
            "--from",
            "2027-04-05",
            "--weeks",
            "1");

    assertThat(ran.status()).isZero();
    assertThat(ran.err()).contains("what was handed out could not be kept");
    assertThat(out.resolve("plan.json")).exists();
  }

  @Test
  void what_another_program_put_into_the_folder_stays() throws IOException {
    String club = cleanDemo().toString();
    Path out = folder.resolve("out");
    Files.createDirectories(out);
    Files.writeString(out.resolve("notes.txt"), "bring water");

    run("plan", club, "--out", out.toString(), "--from", "2027-04-05", "--player", "p02");
    run("plan", club, "--out", out.toString(), "--from", "2027-04-12", "--player", "p02");

    assertThat(out.resolve("notes.txt")).hasContent("bring water");
    assertThat(out.resolve("u10/cards/p02-week-2027-04-05.pdf")).doesNotExist();
    assertThat(out.resolve("u10/cards/p02-week-2027-04-12.pdf")).exists();
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left.map(p -> p.getFileName().toString())).noneMatch(n -> n.startsWith("."));
    }
  }

  @Test
  void plan_json_has_the_fixed_keys_in_their_shape() throws IOException {
    Path out = folder.resolve("out");

    run(
        "plan",
        "demo-players",
        "--out",
        out.toString(),
        "--from",
        "2027-04-05",
        "--weeks",
        "2",
        "--no-history");

    JsonNode plan = new ObjectMapper().readTree(Files.readString(out.resolve("plan.json")));
    assertThat(plan.get("club").asText()).isEqualTo("Wrenfield Ferry Youth Baseball");
    assertThat(plan.get("from").asText()).isEqualTo("2027-04-05");
    assertThat(plan.get("weeks").asInt()).isEqualTo(2);
    assertThat(plan.get("players")).hasSize(28);
    for (JsonNode player : plan.get("players")) {
      assertThat(player.fieldNames())
          .toIterable()
          .contains("player", "group", "age", "decisions", "holds", "days");
      assertThat(player.get("decisions")).hasSize(4);
      assertThat(player.get("decisions").get(0).fieldNames())
          .toIterable()
          .contains("skill", "step", "decision", "next", "because", "rules");
      assertThat(player.get("days")).hasSize(14);
      JsonNode day = player.get("days").get(0);
      assertThat(day.fieldNames())
          .toIterable()
          .contains("date", "place", "minutes", "swings", "throws", "items");
    }
    JsonNode hold = plan.get("players").get(9).get("holds").get(0);
    assertThat(hold.fieldNames())
        .toIterable()
        .contains("kind", "from", "until", "because", "rule", "source");
    assertThat(hold.get("until").isNull()).isTrue();
    assertThat(run("check", out.toString()).out()).contains("no faults");
  }

  @Test
  void measure_lists_every_player_and_keeps_an_old_day() throws IOException {
    JsonNode now = run("measure", "demo-players", "--as-of", "2027-04-05", "--json").json();
    JsonNode before = run("measure", "demo-players", "--as-of", "2027-02-01", "--json").json();

    assertThat(now.get("players")).hasSize(28);
    assertThat(before.get("players")).hasSize(28);
    JsonNode nobody = before.get("players").get(0).get("zone_recognition");
    assertThat(nobody.get("seen").asInt()).isZero();
    assertThat(nobody.get("value").isNull()).isTrue();
    JsonNode takes = now.get("players").get(1).get("middle_take");
    assertThat(takes.get("value").asDouble())
        .isEqualTo(
            takes.get("taken").asDouble() / takes.get("seen").asDouble(),
            org.assertj.core.api.Assertions.within(1e-6));
  }

  @Test
  void rest_says_who_may_pitch_and_from_when_if_not() throws IOException {
    JsonNode rest = run("rest", "demo-players", "--on", "2027-04-05", "--json").json();

    assertThat(rest.get("rule_book").asText()).isEqualTo("pitch-smart-2018");
    assertThat(rest.get("players")).hasSize(28);
    JsonNode mateo = rest.get("players").get(2);
    assertThat(mateo.get("player").asText()).isEqualTo("p03");
    assertThat(mateo.get("may_pitch").asBoolean()).isFalse();
    assertThat(mateo.get("pitches_left").asInt()).isZero();
    assertThat(mateo.get("eligible_from").asText()).isEqualTo("2027-04-07");
    assertThat(mateo.get("known_to").asText()).isEqualTo("2027-04-03");
    JsonNode head = rest.get("players").get(9);
    assertThat(head.get("eligible_from").isNull()).isTrue();
    assertThat(head.get("may_catch").asBoolean()).isFalse();
  }

  @Test
  void explain_prints_the_whole_chain() {
    Ran ran = run("explain", "demo-players", "p26", "--as-of", "2027-04-05", "--all");

    assertThat(ran.out())
        .contains("Tosses logged")
        .contains("choose: move-up")
        .contains("mark 10 % (choose-3-take-mark, ours, common practice)")
        .contains("rule PRG-002")
        .contains("moves up at 3.00");
  }

  /** Why is she not moving up, why may he not pitch, who must say yes: read out to a parent. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "p03; Mateo threw 58 pitches on Sat, Apr 3",
        "p10; until a doctor or athletic trainer says yes",
        "p05; June"
      })
  void explain_says_why_in_a_few_plain_lines(String player, String says) {
    Ran ran = run("explain", "demo-players", player, "--as-of", "2027-04-05");
    List<String> lines = ran.out().lines().toList();

    assertThat(lines).hasSizeBetween(6, 7);
    assertThat(lines.get(0)).contains(says);
    assertThat(lines.subList(1, 5)).allMatch(line -> line.matches("[A-Z][^:]+: .+[.]"));
    assertThat(ran.out())
        .doesNotContainPattern("(ARM|HLD|PRG)-\\d")
        .doesNotContain("95 %", "nats", "{");
    assertThat(lines.get(lines.size() - 1)).contains("--all");
  }

  @Test
  void what_is_read_out_leaves_no_stop_and_no_word_out(@TempDir Path temp) throws IOException {
    Path club = Runs.cleanDemo(temp);
    Files.writeString(
        club.resolve("wellness.csv"),
        """
        date,player,kind,clears,by
        2027-04-02,p05,arm-pain,,
        2027-04-04,p05,cleared,arm-pain,parent
        """);
    String said = run("explain", club.toString(), "p05", "--as-of", "2027-04-05").out();

    assertThat(said.lines().findFirst().orElseThrow())
        .contains("No throwing for now", "swing", "parent", "physical therapist");
  }

  @Test
  void explain_as_json_says_the_same() throws IOException {
    JsonNode json = run("explain", "demo-players", "p26", "--as-of", "2027-04-05", "--json").json();

    assertThat(json.get("decisions")).hasSize(4);
    assertThat(json.get("decisions").get(1).get("decision").asText()).isEqualTo("move-up");
    assertThat(json.get("decisions").get(1).get("measured")).hasSize(2);
  }

  @Test
  void a_print_that_is_not_known_is_told_with_those_that_are() {
    Ran ran = run("plan", "demo-players", "--out", "x", "--prints", "card,cake");

    assertThat(ran.err())
        .contains(
            "--prints must name any of overview, practice, arm, emergency, guide, card,"
                + " clipboard, home, season, evaluation, log, own-log, packet, not 'cake'");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan demo-players",
        "plan demo-players --out x --weeks 17",
        "plan demo-players --out x --weeks 0",
        "plan demo-players --out x --paper a5",
        "plan demo-players --out x --lang fr",
        "plan demo-players --out x --prints card,cake",
        "plan demo-players --out x --prints clipboard --large",
        "plan demo-players --out x --from yesterday",
        "dance",
        ""
      })
  void a_wrong_command_line_is_2_and_says_so(String line) {
    Ran ran = run(line.isEmpty() ? new String[0] : line.split(" ", -1));

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).isNotBlank().doesNotContain("\tat ");
  }

  @Test
  void a_folder_that_is_not_there_is_4() {
    Ran ran = run("plan", folder.resolve("nowhere").toString(), "--out", folder + "/out");

    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.err()).contains("Maybe").doesNotContain("\tat ");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void an_unknown_player_is_4_with_the_nearest() {
    Ran ran = run("explain", "demo-players", "pp03");

    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.err()).contains("'pp03' is not in the roster").contains("Maybe 'p03'");
  }

  @Test
  void check_finds_the_planted_faults_and_none_in_the_curriculum_or_the_rule_books() {
    assertThat(run("check", "demo-players").status()).isEqualTo(3);
    assertThat(run("check", "demo-players").out()).contains("6 faults");
    assertThat(run("check", "curricula/belthigh-2027.yaml").status()).isZero();
    assertThat(run("check", "rules/books/pitch-smart-2018.yaml").status()).isZero();
  }

  @Test
  void check_finds_what_is_wrong_in_a_plan() throws IOException {
    Path plan = folder.resolve("plan.json");
    Files.writeString(
        plan,
        """
        {"club": "x", "from": "2027-04-05", "weeks": 1, "players": [{"player": "p01",
          "decisions": [{"skill": "see"}], "holds": [
            {"kind": "everything", "from": "2027-04-01", "until": null}],
          "days": [{"date": "2027-04-05", "place": "home", "minutes": 9, "swings": 2,
            "items": [{"ball": "baseball", "minutes": 10, "swings": 2}]}]}]}
        """,
        StandardCharsets.UTF_8);

    Ran ran = run("check", plan.toString());

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .contains("a baseball at home")
        .contains("minutes is 9, its items add up to 10")
        .contains("no entry for 2027-04-06")
        .contains("work that the hold on everything forbids")
        .contains("each player has one for see, choose, drive and send");
  }

  @Test
  void every_command_has_help_with_an_example() {
    List<CommandLine> commands =
        Belthigh.commandLine(
                Clock.systemUTC(),
                new PrintWriter(Writer.nullWriter()),
                new PrintWriter(Writer.nullWriter()))
            .getSubcommands()
            .values()
            .stream()
            .filter(c -> !c.getCommandSpec().usageMessage().hidden())
            .toList();
    assertThat(commands).hasSizeGreaterThan(12);
    for (CommandLine line : commands) {
      String command = line.getCommandName();
      Ran ran = run(command, "--help");
      assertThat(ran.status()).isZero();
      assertThat(ran.out()).contains("Example").contains("belthigh " + command);
    }
  }

  static Collection<String> ruleBooks() {
    return CatalogueLoader.load().orThrow().ruleBooks().keySet();
  }

  @ParameterizedTest
  @MethodSource("ruleBooks")
  void rest_says_for_every_day_of_a_week_under_any_book_who_may_and_why(String book)
      throws IOException {
    Path club = cleanDemo();
    Path file = club.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file).replace("rule_book: pitch-smart-2018", "rule_book: " + book));

    for (int day = 5; day <= 11; day++) {
      Ran ran =
          run(
              "rest",
              club.toString(),
              "--json",
              "--on",
              String.format(Locale.ROOT, "2027-04-%02d", day));

      assertThat(ran.status()).isEqualTo(Belthigh.OK);
      assertThat(ran.json().get("rule_book").asText()).isEqualTo(book);
      for (JsonNode player : ran.json().get("players")) {
        assertThat(player.get("because")).isNotEmpty();
        assertThat(player.get("because").get(0).asText()).isNotBlank().doesNotContain("{");
        assertThat(player.get("may_pitch").asBoolean())
            .isEqualTo(player.get("pitches_left").asInt() > 0);
        assertThat(player.has("known_to")).isTrue();
      }
    }
  }

  @Test
  void another_book_is_shown_to_compare_and_what_the_club_forbids_is_said_with_it()
      throws IOException {
    String club = cleanDemo().toString();
    String book = "babe-ruth-tournament-2018";

    Ran ran = run("rest", club, "--on", "2027-04-05", "--days", "2", "--book", book);
    Ran json = run("rest", club, "--on", "2027-04-05", "--book", book, "--json");

    assertThat(ran.out())
        .contains("Throwing on 2027-04-05, by " + book, "Throwing on 2027-04-06, by " + book)
        .contains("To compare only: the club goes by pitch-smart-2018")
        .contains("p03 Mateo: may pitch, 75 at most")
        .contains("  By the club's own rules: no pitching before 2027-04-07; may catch.");
    assertThat(json.json().get("rule_book").asText()).isEqualTo(book);
    assertThat(json.json().get("players").get(2).get("may_pitch").asBoolean()).isTrue();
    assertThat(json.json().get("club").get("rule_book").asText()).isEqualTo("pitch-smart-2018");
    assertThat(json.json().get("club").get("players").get(2).get("may_pitch").asBoolean())
        .isFalse();
  }

  @Test
  void a_plan_can_be_held_to_another_book_too() throws IOException {
    String club = cleanDemo().toString();
    String out = folder.resolve("both").toString();

    Ran ran =
        run(
            "plan",
            club,
            "--out",
            out,
            "--from",
            "2027-04-05",
            "--weeks",
            "1",
            "--no-history",
            "--book",
            "piaa-2017",
            "--group",
            "u14");
    Ran unknown = run("plan", club, "--out", out, "--book", "piaa-2071");

    assertThat(ran.status()).isLessThan(2);
    assertThat(new ObjectMapper().readTree(Path.of(out, "plan.json").toFile()).get("rule_books"))
        .extracting(JsonNode::asText)
        .containsExactly("pitch-smart-2018", "piaa-2017");
    assertThat(unknown.status()).isEqualTo(2);
    assertThat(unknown.err()).contains("--book must be one of", "maybe piaa-2017");
  }

  @Test
  void rest_for_several_days_goes_by_what_is_known_on_the_first() throws IOException {
    String club = cleanDemo().toString();

    JsonNode week = run("rest", club, "--on", "2027-04-02", "--days", "7", "--json").json();

    assertThat(week.get("days")).hasSize(7);
    assertThat(week.get("days").get(6).get("on").asText()).isEqualTo("2027-04-08");
    // what he threw on the third is not known on the second
    assertThat(week.get("days").get(2).get("players").get(2).get("known_to").asText())
        .isEqualTo("2027-03-25");
  }

  @ParameterizedTest
  @CsvSource({"--book,pitch-smart-2081,maybe pitch-smart-2018", "--days,15,must be 1 to 14"})
  void what_rest_cannot_show_is_2(String option, String value, String said) {
    Ran ran = run("rest", "demo-players", option, value);

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains(said);
  }

  @Test
  void docs_writes_the_pages_that_come_from_the_catalogue() throws IOException {
    Ran ran = run("docs", folder.resolve("docs").toString());

    assertThat(ran.status()).isEqualTo(Belthigh.OK);
    for (String page : List.of("rules.md", "parameters.md", "sources.md")) {
      assertThat(Files.readString(folder.resolve("docs").resolve(page)))
          .isEqualTo(Files.readString(Path.of("docs", page)));
    }
  }

  @Test
  void remarks_alone_set_nothing_aside() {
    StringWriter said = new StringWriter();
    Problem remark =
        Problem.warning(Origin.of("CLUB/roster.csv"), "", "it is read so", "so or so", "Maybe.");

    int status = ClubOptions.report(List.of(remark), new PrintWriter(said, true));

    assertThat(status).isZero();
    assertThat(said.toString()).contains("Nothing was set aside; 1 remark.").doesNotContain("0 ");
  }
}
