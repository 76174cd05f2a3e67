package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.plan.Plan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prints read by programs that share no code with ours; where one is missing, it is skipped. */
class OtherProgramsTest {
  @TempDir private static Path folder;

  @BeforeAll
  static void print() throws IOException {
    Plan plan =
        SamplePlans.demo(1, Set.of("u10"), Set.of("p01", "p12"), "letter", Optional.empty());
    Map<String, byte[]> prints = new TreeMap<>();
    new Handouts(SamplePlans.WORDS).print(plan, EnumSet.allOf(Print.class), prints::put);
    for (Map.Entry<String, byte[]> print : prints.entrySet()) {
      Files.write(folder.resolve(print.getKey().replace('/', '-')), print.getValue());
    }
  }

  @Test
  void qpdf_finds_nothing_to_repair() throws Exception {
    for (Path print : prints()) {
      assertThat(run("qpdf", "--check", print.toString()))
          .as(print.toString())
          .contains("No syntax or stream encoding errors found")
          .doesNotContain("WARNING");
    }
  }

  @Test
  void pdffonts_sees_every_font_embedded_cut_down_and_with_its_letters() throws Exception {
    for (Path print : prints()) {
      assertThat(run("pdffonts", print.toString()).lines().skip(2))
          .as(print.toString())
          .isNotEmpty()
          .allMatch(font -> font.matches(".*\\byes +yes +yes +\\d+ +\\d+ *"));
    }
  }

  @Test
  void pdftotext_reads_a_card_in_order_down_the_page() throws Exception {
    String text = run("pdftotext", "-layout", prints("cards-p01-").get(0).toString(), "-");

    assertThat(text)
        .containsSubsequence(
            "Oscar", "This week's aim", "What to do", "Arm and rest", "page 1 of 1");
  }

  @Test
  void mutool_draws_every_page_without_a_complaint() throws Exception {
    for (Path print : prints()) {
      Path drawn = folder.resolve("drawn.pgm");
      String said =
          run("mutool", "draw", "-q", "-r", "20", "-o", drawn.toString(), print.toString());
      // of how some builds of it are made, not of the print
      assertThat(said.lines().filter(l -> !l.contains("ICC support is not available")))
          .as(print.toString())
          .isEmpty();
    }
  }

  private static List<Path> prints() throws IOException {
    return prints("");
  }

  private static List<Path> prints(String part) throws IOException {
    try (var files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".pdf") && f.toString().contains(part))
          .sorted()
          .toList();
    }
  }

  /** What a program says on both channels; it must end well. */
  private static String run(String... command) throws IOException, InterruptedException {
    Process process;
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException e) {
      assumeTrue(false, command[0] + " is not here");
      throw e;
    }
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as("%s: %s", command[0], said).isZero();
    return said;
  }
}
