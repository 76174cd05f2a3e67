package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeatCommandTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2027-06-01T09:00:00Z"), ZoneOffset.UTC);

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String line) {
    return Belthigh.commandLine(TODAY, new PrintWriter(out), new PrintWriter(err))
        .execute(("heat " + line).split(" ", -1));
  }

  @Test
  void both_tables_stand_there_where_they_differ() {
    assertThat(run("--wbgt 91 --region 3 --acclimatised 20 --age 16")).isZero();
    assertThat(out.toString())
        .contains("wbgt-acsm-2007: American College of Sports Medicine")
        .contains("at most 60 minutes in all")
        .contains("no bats and no hitting against a moving ball")
        .contains("The tables differ; take the strictest, wbgt-acsm-2007: No practice outdoors.");
  }

  @Test
  void a_heat_index_says_shade_and_sun() {
    assertThat(run("--temp 90 --humidity 60")).isZero();
    assertThat(out.toString())
        .contains("Heat index 99.7 °F (37.6 °C)")
        .contains("it holds for shade and is no wet-bulb globe temperature")
        .contains("Full sun adds up to 15 °F")
        .contains("region not given: the strictest, 1")
        .doesNotContain("wbgt-");
  }

  @Test
  void celsius_is_taken_too() {
    assertThat(run("--wbgt 30 --celsius")).isZero();
    assertThat(out.toString()).contains("86.0 °F (30.0 °C)");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "--temp 90",
        "--humidity 50",
        "--wbgt 85 --temp 90 --humidity 50",
        "--temp 90 --humidity 101",
        "--wbgt 400",
        "--wbgt NaN",
        "--wbgt 85 --region 4",
        "--wbgt 85 --acclimatised -1"
      })
  void what_cannot_be_is_refused(String line) {
    assertThat(run(line)).isEqualTo(2);
    assertThat(err.toString()).endsWith("'belthigh heat --help' explains every option.\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--temp 33", "--temp 33 --humidity 50", "--wbgt 31.5"})
  void a_number_that_could_be_celsius_is_asked_about(String line) {
    int status = run(line);

    assertThat(status).isEqualTo(2);
    assertThat(err.toString()).contains("which degrees", "--celsius or --fahrenheit");
  }

  @Test
  void degrees_that_are_named_are_not_asked_about() {
    assertThat(run("--temp 33 --humidity 50 --celsius")).isEqualTo(0);
    assertThat(run("--temp 33 --humidity 50 --fahrenheit")).isEqualTo(0);
    assertThat(run("--temp 33 --humidity 50 --fahrenheit --celsius")).isEqualTo(2);
  }
}
