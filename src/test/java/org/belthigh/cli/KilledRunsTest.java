package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code plan} in a process of its own, killed at seeded moments: anywhere in the run, while files
 * are written, while they are moved in place, and while the sheets of the plan before are removed,
 * a quarter each. Six in the build, a hundred with {@code mvn -Pkills test}.
 */
class KilledRunsTest {
  private static final int KILLS = Integer.getInteger("kills", 6);
  private static final long SEED = 20270405L;

  @TempDir private Path folder;
  private Path club;
  private Path out;

  @Test
  void a_killed_run_leaves_each_file_old_or_new_and_the_next_one_completes_it() throws Exception {
    club = club();
    out = folder.resolve("out");
    Map<String, Map<String, String>> whole = new HashMap<>();
    long millis = 0;
    for (String language : List.of("es", "en")) {
      long begin = System.nanoTime();
      assertThat(start(language).waitFor()).isZero();
      millis = Math.max(millis, TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin));
      whole.put(language, contents(out));
    }
    Map<String, String> diary = contents(club.resolve("history"));
    Map<String, String> files = entered();
    Random random = new Random(SEED);
    String old = "en";
    Map<String, Integer> seen = new TreeMap<>();
    int killed = 0;
    for (int kill = 0; killed < KILLS; kill++) {
      forgetDiary();
      String language = kill % 2 == 0 ? "es" : "en";
      Set<String> gone = new TreeSet<>(whole.get(old).keySet());
      gone.removeAll(whole.get(language).keySet());
      assertThat(gone.isEmpty()).isEqualTo(old.equals(language));
      boolean ended = kill(start(language), kill % 4, gone, random, millis);

      Map<String, String> left = contents(out);
      String state = state(left, whole.get(old), whole.get(language));
      assertThat(state).as("kill %d", kill).isIn("old", "new", "between");
      if (!old.equals(language) && state.equals("between")) {
        assertThat(left.get("plan.json")).isEqualTo(whole.get(old).get("plan.json"));
      }
      assertThat(diary).containsAllEntriesOf(contents(club.resolve("history")));
      assertThat(entered()).isEqualTo(files);
      seen.merge(ended ? "ended before it was killed" : state, 1, Integer::sum);
      killed += ended ? 0 : 1;

      assertThat(start(language).waitFor()).isZero();
      assertThat(contents(out)).isEqualTo(whole.get(language));
      assertThat(entered()).isEqualTo(files);
      assertThat(out.resolve(".belthigh")).doesNotExist();
      assertThat(club.resolve(".belthigh")).doesNotExist();
      old = language;
    }
    System.out.println(KILLS + " kills, seed " + SEED + ", left behind: " + seen);
  }

  private Path club() throws IOException {
    Path made = folder.resolve("club");
    Files.createDirectories(made);
    Files.writeString(
        made.resolve("club.yaml"),
        """
        name: Killed Runs
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups: [{id: u10, age: [9, 10]}]
        """);
    Files.writeString(
        made.resolve("roster.csv"),
        """
        id,first_name,born,bats,group
        p01,Ana,2017-03-04,R,u10
        p02,Ben,2017-01-04,L,u10
        """);
    return made;
  }

  private Process start(String language) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Belthigh.class.getName()));
    command.addAll(List.of("plan", club.toString(), "--out", out.toString(), "--weeks", "1"));
    // another day, so that sheets of the plan before are removed
    String from = language.equals("en") ? "2027-04-05" : "2027-04-12";
    command.addAll(List.of("--from", from, "--lang", language));
    File log = folder.resolve("log.txt").toFile();
    return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log).start();
  }

  /** Kills the run; true where it had ended by itself. */
  private boolean kill(Process run, int where, Set<String> gone, Random random, long millis)
      throws Exception {
    if (where == 0) {
      run.waitFor((long) (random.nextDouble() * millis), TimeUnit.MILLISECONDS);
    } else if (where == 3) {
      while (run.isAlive() && gone.stream().allMatch(path -> Files.exists(out.resolve(path)))) {
        Thread.onSpinWait();
      }
    } else {
      Path sign = out.resolve(where == 1 ? ".belthigh/writing" : ".belthigh/ready");
      while (run.isAlive() && !Files.exists(sign)) {
        Thread.onSpinWait();
      }
      long until = System.nanoTime() + (long) (random.nextDouble() * (where == 1 ? 3e8 : 4e6));
      while (System.nanoTime() < until) {
        Thread.onSpinWait();
      }
    }
    boolean ended = !run.isAlive();
    run.destroyForcibly().waitFor();
    return ended;
  }

  private void forgetDiary() throws IOException {
    for (String name : contents(club.resolve("history")).keySet()) {
      Files.delete(club.resolve("history").resolve(name));
    }
  }

  private static String state(
      Map<String, String> left, Map<String, String> old, Map<String, String> now) {
    if (left.equals(now)) {
      return "new";
    }
    if (left.equals(old)) {
      return "old";
    }
    Set<String> both = new TreeSet<>(old.keySet());
    both.retainAll(now.keySet());
    boolean whole =
        left.keySet().containsAll(both)
            && left.entrySet().stream()
                .allMatch(
                    e ->
                        e.getValue().equals(old.get(e.getKey()))
                            || e.getValue().equals(now.get(e.getKey())));
    return whole ? "between" : "lost: " + left.keySet();
  }

  /** What people put into the club folder. */
  private Map<String, String> entered() throws IOException {
    Map<String, String> all = contents(club);
    all.keySet().removeIf(name -> name.startsWith("history"));
    return all;
  }

  /** Every file that a person sees, by its path. */
  private static Map<String, String> contents(Path root) throws IOException {
    Map<String, String> all = new TreeMap<>();
    if (!Files.exists(root)) {
      return all;
    }
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = root.relativize(file).toString();
        if (!name.contains(".belthigh")) {
          all.put(name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
        }
      }
    } catch (NoSuchFileException e) {
      return all;
    }
    return all;
  }
}
