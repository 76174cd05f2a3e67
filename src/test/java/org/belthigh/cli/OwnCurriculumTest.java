package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo club with the example of a curriculum of its own, which its club.yaml then names. */
class OwnCurriculumTest {
  private static final Path DEMO = Path.of("demo-players");
  private static final String FILE = "wrenfield-curriculum.yaml";

  @TempDir private Path folder;
  private Path club;
  private Path out;

  @BeforeEach
  void club() throws IOException {
    club = Files.createDirectory(folder.resolve("club"));
    out = folder.resolve("out");
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, club.resolve(file.getFileName()));
      }
    }
    name(FILE);
  }

  private void name(String curriculum) throws IOException {
    change("club.yaml", "curriculum: belthigh-2027", "curriculum: " + curriculum);
  }

  private void change(String file, String before, String after) throws IOException {
    String text = Files.readString(club.resolve(file));
    assertThat(text).contains(before);
    Files.writeString(club.resolve(file), text.replace(before, after));
  }

  private Ran plan() {
    return Runs.run(
        "plan",
        club.toString(),
        "--out",
        out.toString(),
        "--from",
        "2027-04-05",
        "--weeks",
        "1",
        "--group",
        "u10",
        "--prints",
        "overview");
  }

  private String planned() throws IOException {
    return Files.readString(out.resolve("plan.json"));
  }

  @Test
  void it_is_planned_by_and_checked_by_the_auditor() throws IOException {
    Ran ran = plan();

    assertThat(ran.err()).doesNotContain("curriculum");
    assertThat(planned()).contains("wrenfield-fall").doesNotContain("zone-call");
    assertThat(Runs.run("check", out.toString(), "--club", club.toString()).status()).isZero();
  }

  @Test
  void an_example_that_is_not_named_is_remarked_on_and_not_used() {
    Ran ran = Runs.run("check", DEMO.toString());

    assertThat(ran.err())
        .contains(FILE + ": this curriculum or rule book is not in use")
        .contains(FILE + ": 1 remark");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "9-10": 15           | "9-10": 8            | must not come nearer than 15 ft
          gear: [bat, helmet, eyewear,   | gear: [bat, helmet,           | it lacks eyewear
          helmet, eyewear          | eyewear                      | no helmet is among it
          from_age: 7             | from_age: 5                 | from_age
          home: plastic           | home: tennis                | at home
          feed: front-toss        | feed: overhand              | no drill is known that is fed by overhand
          id: wrenfield-fall      | id: belthigh-2027           | is the id of a curriculum that travels
          safety: front-toss      | safety: watch               | the caution is that of watch
          """)
  void what_loosens_a_limit_is_told_and_ours_is_used(String before, String after, String told)
      throws IOException {
    change(FILE, before, after);

    Ran ran = plan();

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .contains("'" + FILE + "' cannot be used, so belthigh-2027 is used in its place")
        .contains(told);
    assertThat(planned()).contains("belthigh-2027").doesNotContain("wrenfield-fall");
  }

  @ParameterizedTest
  @ValueSource(strings = {"nowhere.yaml", "../club/wrenfield-curriculum.yaml", "/etc/x.yaml"})
  void a_file_that_is_not_in_the_folder_is_told_and_ours_is_used(String file) throws IOException {
    change("club.yaml", "curriculum: " + FILE, "curriculum: " + file);

    assertThat(plan().err()).contains("'" + file + "' cannot be used, so belthigh-2027 is used");
    assertThat(planned()).contains("belthigh-2027");
  }
}
