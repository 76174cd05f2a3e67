package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A small round of the harness: what {@code docs/auditor.md} says is found is found here too. */
class AuditorTest {
  @Test
  void what_the_page_says_is_found_is_found() throws Exception {
    AuditorTrial trial = new AuditorTrial();
    trial.club(SEED);

    found(trial, FEWEST_KINDS);
  }

  @Test
  void so_it_is_in_the_demo_club_with_its_practices() throws Exception {
    AuditorTrial trial = new AuditorTrial(SAMPLE);
    trial.demo();

    found(trial, FEWEST_OF_SAMPLE);
  }

  @Test
  void and_on_its_prints() throws Exception {
    AuditorTrial trial = new AuditorTrial(SAMPLE_OF_PRINTS);
    trial.papers();

    found(trial, FEWEST_PRINTS);
  }

  private static void found(AuditorTrial trial, int fewest) throws IOException {
    Map<String, Boolean> page = AuditorPage.found(Files.readString(Path.of("docs/auditor.md")));
    List<String> lost =
        trial.missed().stream()
            .filter(m -> page.getOrDefault(m.substring(0, m.indexOf(" ")), true))
            .toList();

    assertThat(trial.untrue()).isEmpty();
    assertThat(lost).as("found by docs/auditor.md, and missed here").isEmpty();
    assertThat(trial.counts().values().stream().filter(c -> c.planted > 0).count())
        .as("kinds with a place there")
        .isGreaterThan(fewest);
  }

  @Test
  void the_page_has_each_kind() throws Exception {
    String page = Files.readString(Path.of("docs/auditor.md"));

    assertThat(AuditorPage.found(page).keySet()).isEqualTo(new AuditorTrial().counts().keySet());
  }

  /** A club with few children, so that this takes seconds. */
  private static final long SEED = 1;

  private static final int FEWEST_KINDS = 60;

  /** Each thirtieth kind, so that this takes seconds too. */
  private static final int SAMPLE = 30;

  private static final int FEWEST_OF_SAMPLE = 6;
  private static final int SAMPLE_OF_PRINTS = 12;
  private static final int FEWEST_PRINTS = 5;
}
