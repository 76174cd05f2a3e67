package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A small round of the harness: what {@code docs/auditor.md} says is found is found here too. */
class AuditorTest {
  @Test
  void what_the_page_says_is_found_is_found() throws Exception {
    Map<String, Boolean> page = AuditorPage.found(Files.readString(Path.of("docs/auditor.md")));
    AuditorTrial trial = new AuditorTrial();
    trial.club(SEED);

    List<String> lost =
        trial.missed().stream()
            .filter(m -> page.getOrDefault(m.substring(0, m.indexOf(" ")), false))
            .toList();

    assertThat(trial.untrue()).isEmpty();
    assertThat(lost).as("found by docs/auditor.md, and missed here").isEmpty();
    assertThat(trial.counts().values().stream().filter(c -> c.planted > 0).count())
        .as("kinds with a place in this club")
        .isGreaterThan(FEWEST_KINDS);
  }

  @Test
  void the_page_has_each_kind() throws Exception {
    String page = Files.readString(Path.of("docs/auditor.md"));

    assertThat(AuditorPage.found(page).keySet()).isEqualTo(new AuditorTrial().counts().keySet());
  }

  /** A club with few children, so that this takes seconds. */
  private static final long SEED = 1;

  private static final int FEWEST_KINDS = 60;
}
