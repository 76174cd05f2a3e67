package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.lab.MadeUpLeague;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --league}: many clubs, each as if it were alone. */
class LeagueTest {
  @TempDir private Path folder;
  private Path league;
  private Path out;

  @BeforeEach
  void four_clubs() throws IOException {
    league = folder.resolve("league");
    out = folder.resolve("out");
    for (String club : List.of("east", "north", "south", "west")) {
      write(
          club + "/club.yaml",
          "name: "
              + club
              + "\nrule_book: pitch-smart-2018\n"
              + "season: {first: \"2027-03-01\", last: \"2027-05-24\"}\n"
              + "groups: [{id: u10, age: [9, 10]}]\n");
      write(
          club + "/roster.csv",
          "id,first_name,born,bats,group\n"
              + ("p01,Ana " + club + ",2017-03-04,R,u10\n")
              + "p02,Ben,2017-01-04,L,u10\n");
    }
  }

  private void write(String name, String text) throws IOException {
    Path file = league.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Ran plan(String... more) {
    return run("--league", league.toString(), "--out", out.toString(), more);
  }

  private static Ran run(String a, String b, String c, String d, String... more) {
    List<String> args = new ArrayList<>(List.of("plan", a, b, c, d));
    args.addAll(List.of("--from", "2027-04-05", "--weeks", "1", "--prints", "card,overview"));
    args.addAll(List.of(more));
    return Runs.run(args.toArray(new String[0]));
  }

  /** The lines that begin with a club's name, or tell the sum. */
  private static List<String> lines(Ran ran) {
    return ran.err()
        .lines()
        .filter(l -> l.matches("(east|north|south|west|\\d+ clubs?)\\b.*"))
        .toList();
  }

  private static Map<String, String> contents(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(Files::isRegularFile)
          .filter(f -> !root.relativize(f).startsWith(".finished"))
          .collect(
              Collectors.toMap(
                  f -> root.relativize(f).toString(),
                  f -> {
                    try {
                      return Files.readString(f, StandardCharsets.ISO_8859_1);
                    } catch (IOException e) {
                      throw new UncheckedIOException(e);
                    }
                  },
                  (x, y) -> x,
                  TreeMap::new));
    }
  }

  @Test
  void each_club_gets_the_bytes_that_it_gets_alone() throws IOException {
    Ran ran = plan();

    assertThat(ran.status()).isZero();
    assertThat(ran.out()).isEmpty();
    assertThat(lines(ran))
        .containsExactly(
            "east: 4 files written",
            "north: 4 files written",
            "south: 4 files written",
            "west: 4 files written",
            "4 clubs: 4 planned, 0 finished before, 0 not done.");
    for (String club : List.of("east", "west")) {
      Path alone = folder.resolve("alone-" + club);
      run(league.resolve(club).toString(), "--no-history", "--out", alone.toString());
      assertThat(contents(out.resolve(club))).hasSize(4).isEqualTo(contents(alone));
    }
    assertThat(league.resolve("north/history/2027-04-05-steps.csv")).exists();
  }

  @Test
  void one_club_at_a_time_and_three_give_the_same_bytes_and_the_same_words() throws IOException {
    write("south/logs/april.csv", "date,player,drill,zone,swing\n2027-04-01,p09,zone-call,5,no\n");
    Ran one = plan("--threads", "1", "--no-history");
    Map<String, String> alone = contents(out);
    out = folder.resolve("again/out");

    Ran three = plan("--threads", "3", "--no-history");

    assertThat(contents(out)).isEqualTo(alone);
    assertThat(three.err()).isEqualTo(one.err()).contains("'p09' is not in the roster");
    assertThat(three.status()).isEqualTo(one.status()).isEqualTo(Belthigh.SET_ASIDE);
  }

  @Test
  void a_finished_club_is_left_as_it_is_and_its_exit_status_stays() throws IOException {
    write("south/logs/april.csv", "date,player,drill,zone,swing\n2027-04-01,p09,zone-call,5,no\n");
    plan();
    Map<Path, Object> keys = keys();

    Ran again = plan();

    assertThat(lines(again))
        .containsExactly(
            "east: finished before, and nothing has changed",
            "north: finished before, and nothing has changed",
            "south: finished before, and nothing has changed; some of its input was set aside then",
            "west: finished before, and nothing has changed",
            "4 clubs: 0 planned, 4 finished before, 0 not done.");
    assertThat(again.status()).isEqualTo(Belthigh.SET_ASIDE);
    assertThat(keys()).isEqualTo(keys);

    for (String damaged : List.of("", "{\"files\": {\"plan.json\": null}}", "[half")) {
      Files.writeString(out.resolve(".finished/east.json"), damaged);
      assertThat(lines(plan())).contains("east: 4 files written");
    }
  }

  private Map<Path, Object> keys() throws IOException {
    Map<Path, Object> keys = new TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        keys.put(file, Files.readAttributes(file, BasicFileAttributes.class).fileKey());
      }
    }
    return keys;
  }

  @Test
  void what_changed_is_planned_anew() throws IOException {
    plan();
    write("east/roster.csv", "id,first_name,born,bats,group\np01,Ana,2017-03-04,R,u10\n");
    write("north/history/2027-03-29-steps.csv", "player,skill,step,decision\n");
    Files.delete(out.resolve("south/u10/cards/p01-week-2027-04-05.pdf"));
    Files.writeString(out.resolve("south/of-somebody-else.txt"), "stays");
    Files.writeString(out.resolve("west/of-somebody-else.txt"), "stays");

    Ran again = plan();
    Ran otherwise = plan("--lang", "es");

    assertThat(lines(again))
        .contains("east: 3 files written", "north: 4 files written", "south: 4 files written")
        .contains("west: finished before, and nothing has changed");
    assertThat(out.resolve("south/u10/cards/p01-week-2027-04-05.pdf")).exists();
    assertThat(out.resolve("south/of-somebody-else.txt")).hasContent("stays");
    assertThat(lines(otherwise)).contains("west: 4 files written");
  }

  @Test
  void a_broken_club_stops_no_other_and_the_strictest_exit_status_counts() throws IOException {
    Files.delete(league.resolve("east/club.yaml"));
    write("north/roster.csv", "id,first_name,born,bats,group\np01,Ana,soon,R,u10\n");
    write("south/logs/april.csv", "date,player,drill,zone,swing\n2027-04-01,p09,zone-call,5,no\n");
    Files.createDirectories(league.resolve(".hidden"));
    Files.writeString(league.resolve("read-me.txt"), "no club");

    Ran ran = plan();

    assertThat(ran.status()).isEqualTo(Belthigh.NOTHING_DONE);
    assertThat(ran.err())
        .containsSubsequence(
            "east: could not be done\n",
            "east/club.yaml: the file is missing",
            "north: could not be done\n",
            "there is no usable player",
            "south: 4 files written\n",
            "'p09' is not in the roster",
            "west: 4 files written\n",
            "4 clubs: 2 planned, 0 finished before, 2 not done: east, north.\n");
    assertThat(contents(out).keySet()).allMatch(f -> f.startsWith("south") || f.startsWith("west"));
  }

  /** Children of many ages, sides and steps: among them all a sheet has every line that it may. */
  @Test
  void a_made_up_league_is_planned_and_finds_all_its_words() throws IOException {
    Path madeUp = folder.resolve("made-up");
    MadeUpLeague.write(madeUp, 28, MadeUpLeague.USUAL_SEED, CatalogueLoader.load().orThrow());

    Ran ran = run("--league", madeUp.toString(), "--out", out.toString(), "--prints", "home");

    assertThat(ran.status()).isZero();
    assertThat(ran.err())
        .matches(
            "club-001: \\d+ files written\n1 club: 1 planned, 0 finished before, 0 not done.\n");
  }

  @Test
  void odd_leagues_are_refused() throws IOException {
    assertThat(run("--league", league.toString(), "--out", league + "/out").err())
        .contains("--out must lie outside of --league");
    assertThat(run("--league", "nowhere", "--out", out.toString()).err())
        .contains("nowhere: there is no such folder; a folder of club folders must be there.");
    assertThat(run("--league", league + "/east", "--out", out.toString()).err())
        .contains("it is a club itself; a league must hold a folder for each club.\nMaybe leave");
    Path empty = Files.createDirectories(folder.resolve("empty"));
    assertThat(run("--league", empty.toString(), "--out", out.toString()).err())
        .contains("empty: there is no folder in it; a league must hold a folder for each club.");
    assertThat(plan("--threads", "0").err()).contains("--threads must be 1 to 64, not 0");
    assertThat(plan("--faults", folder + "/f.csv").err()).contains("--faults goes with one club");
    assertThat(Runs.run("plan", league + "/east", "--league", league.toString()).status())
        .isEqualTo(2);
    assertThat(Runs.run("plan", "--out", out.toString()).status()).isEqualTo(2);
    assertThat(
            Runs.run("plan", league + "/east", "--out", out.toString(), "--threads", "2").status())
        .isEqualTo(2);
    assertThat(out).doesNotExist();
  }

  @Test
  void a_run_that_is_killed_leaves_no_half_club_and_goes_on_where_it_was() throws Exception {
    plan("--no-history");
    Map<String, String> whole = contents(out);
    out = folder.resolve("killed/out");
    File log = folder.resolve("log.txt").toFile();
    Process run =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Belthigh.class.getName(),
                "plan",
                "--league",
                league.toString(),
                "--out",
                out.toString(),
                "--from",
                "2027-04-05",
                "--weeks",
                "1",
                "--prints",
                "card,overview",
                "--no-history",
                "--threads",
                "1")
            .redirectErrorStream(true)
            .redirectOutput(log)
            .start();
    while (run.isAlive() && !Files.exists(out.resolve("south/.belthigh/writing"))) {
      Thread.onSpinWait();
    }
    run.destroyForcibly().waitFor();

    for (String club : List.of("east", "north")) {
      assertThat(out.resolve(club + "/plan.json")).exists();
    }
    for (Map.Entry<String, String> file : contents(out).entrySet()) {
      if (!file.getKey().contains(".belthigh")) {
        assertThat(whole).containsEntry(file.getKey(), file.getValue());
      }
    }

    Ran next = plan("--no-history");

    assertThat(lines(next))
        .startsWith(
            "east: finished before, and nothing has changed",
            "north: finished before, and nothing has changed")
        .last()
        .asString()
        .endsWith(", 0 not done.");
    assertThat(contents(out)).isEqualTo(whole);
  }
}
