package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.cli.Runs.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a wrong command line is told, and what is understood as people write it. */
class UsageMistakesTest {
  @TempDir Path folder;

  @Test
  void a_mistyped_option_is_told_as_itself_and_stays_last_on_the_screen() {
    Ran ran = run("plan", "demo-players", "--outt", "target/x");

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .isEqualTo(
            """
            '--outt' is no option of belthigh plan. Maybe --out is meant.
            'belthigh plan --help' explains every option.
            """);
  }

  @Test
  void an_option_with_its_value_behind_an_equals_sign_is_known() {
    Ran ran = run("rest", "demo-players", "--on=2027-04-05", "--jsn");

    assertThat(ran.err())
        .startsWith("'--jsn' is no option of belthigh rest. Maybe --json is meant.\n");
  }

  @Test
  void a_missing_option_is_told_in_two_lines() {
    Ran ran = run("plan", "demo-players");

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err().lines()).hasSize(2).first().asString().contains("--out=DIR");
  }

  @Test
  void a_mistyped_command_is_told_with_the_one_that_may_be_meant() {
    Ran ran = run("paln", "demo-players");

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("paln", "Maybe 'plan' is meant.").doesNotContain("Usage:");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"2027-04-05", "April 5 2027", "5 April 2027", "5 abril 2027", "2027/04/05"})
  void a_day_is_understood_as_people_write_it(String day) throws IOException {
    assertThat(run("rest", "demo-players", "--on", day, "--json").json().get("on").asText())
        .isEqualTo("2027-04-05");
  }

  @Test
  void a_day_that_can_be_two_is_asked_about() {
    Ran ran = run("rest", "demo-players", "--on", "4/5/2027");

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .contains("'4/5/2027' can be two days", "Maybe 2027-04-05, or 2027-05-04.")
        .doesNotContain("Usage:");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2027-02-30", "soon", "", "31/31/2027"})
  void what_is_no_day_is_refused(String day) {
    Ran ran = run("rest", "demo-players", "--on", day);

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("is no day of the calendar", "2027-04-05");
  }

  @ParameterizedTest
  @CsvSource({"--group,U10", "--group,under 10", "--paper,A4", "--lang,ES"})
  void capitals_do_not_matter(String option, String value) throws IOException {
    Path out = folder.resolve("out");

    Ran ran =
        run(
            "plan",
            "demo-players",
            "--out",
            out.toString(),
            "--weeks",
            "1",
            "--from",
            "2027-04-05",
            "--prints",
            "emergency",
            "--no-history",
            option,
            value);

    assertThat(ran.status()).as(ran.err()).isEqualTo(Belthigh.SET_ASIDE);
    assertThat(Files.exists(out.resolve("u14"))).isEqualTo(!option.equals("--group"));
  }

  @Test
  void an_unknown_group_names_the_near_one() {
    Ran ran =
        run("plan", "demo-players", "--out", folder.resolve("out").toString(), "--group", "u11");

    assertThat(ran.status()).isEqualTo(Belthigh.NOTHING_DONE);
    assertThat(ran.err()).contains("group 'u11' is not in club.yaml", "Maybe 'u10' is meant.");
  }

  @Test
  void a_new_club_suggests_the_first_day_it_was_given() {
    Path club = folder.resolve("club");

    Ran ran = run("new", club.toString(), "--from", "2027-03-01", "--paper", "A4");

    assertThat(ran.out())
        .contains("belthigh plan " + club + " --out next-week --from 2027-03-01\n");
  }
}
