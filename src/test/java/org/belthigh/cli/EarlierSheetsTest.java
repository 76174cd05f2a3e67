package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EarlierSheetsTest {
  @TempDir private Path folder;

  private Ran plan(Path club, String from, String... more) {
    return Runs.run(
        Stream.concat(
                Stream.of(
                    "plan",
                    club.toString(),
                    "--out",
                    folder + "/out",
                    "--from",
                    from,
                    "--weeks",
                    "1",
                    "--no-history"),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private Set<String> sheets() throws IOException {
    Path out = folder.resolve("out");
    try (Stream<Path> files = Files.walk(out)) {
      Set<String> all = new TreeSet<>();
      files
          .filter(f -> f.toString().endsWith(".pdf"))
          .forEach(f -> all.add(out.relativize(f).toString().replace('\\', '/')));
      return all;
    }
  }

  private Set<String> listed(String... keys) throws IOException {
    Set<String> all = new TreeSet<>();
    for (String key : keys) {
      new ObjectMapper()
          .readTree(folder.resolve("out/plan.json").toFile())
          .path(key)
          .forEach(f -> all.add(f.path("path").asText()));
    }
    return all;
  }

  @Test
  void sheets_of_the_last_plan_go_and_what_others_put_there_stays() throws IOException {
    Path club = Runs.cleanDemo(folder);
    plan(club, "2027-04-05", "--prints", "card,overview");
    Set<String> before = sheets();
    String changed = before.stream().filter(p -> p.contains("p02-week")).findFirst().orElseThrow();
    Files.writeString(folder.resolve("out").resolve(changed), "my notes");
    Files.writeString(folder.resolve("out/u10/mine.pdf"), "mine");
    Runs.run("forget", club.toString(), "p03");

    Ran ran = plan(club, "2027-04-12", "--prints", "card,overview");

    assertThat(before).anyMatch(p -> p.contains("p03-week"));
    assertThat(sheets()).noneMatch(p -> p.contains("p03-week")).contains(changed, "u10/mine.pdf");
    Set<String> ours = sheets();
    ours.removeAll(Set.of(changed, "u10/mine.pdf"));
    assertThat(ours).isEqualTo(listed("files"));
    assertThat(ran.err()).contains(changed, "was changed since, and stays");
  }

  @Test
  void a_run_for_one_group_leaves_the_others_sheets_and_lists_them() throws IOException {
    Path club = Runs.cleanDemo(folder);
    plan(club, "2027-04-05", "--prints", "card,overview");
    Set<String> before = sheets();

    plan(club, "2027-04-05", "--prints", "overview", "--group", "u10");

    assertThat(sheets()).isEqualTo(listed("files", "kept")).isSubsetOf(before);
    assertThat(sheets()).anyMatch(p -> !p.startsWith("u10/") && p.contains("/cards/"));
    assertThat(sheets()).noneMatch(p -> p.startsWith("u10/cards/"));
  }

  @Test
  void other_prints_of_the_same_plan_are_added() throws IOException {
    Path club = Runs.cleanDemo(folder);
    plan(club, "2027-04-05", "--prints", "card");
    Set<String> before = sheets();

    plan(club, "2027-04-05", "--prints", "overview");

    assertThat(sheets()).containsAll(before).hasSizeGreaterThan(before.size());
  }

  @Test
  void the_club_folder_itself_is_no_place_for_sheets() throws IOException {
    Path club = Runs.cleanDemo(folder);
    Ran ran = Runs.run("plan", club.toString(), "--out", club.toString());
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("--out must not be the club folder itself");
    assertThat(Runs.run("plan", club.toString(), "--out", "").status()).isEqualTo(2);
    assertThat(Runs.run("new", folder + "/n", "--name", "").status()).isEqualTo(2);
    assertThat(folder.resolve("n")).doesNotExist();
  }
}
