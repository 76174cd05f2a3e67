package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each kind of fault that {@code docs/auditor.md} calls found is found in a club of four, one test
 * a kind, so that a mistake in one check fails by the name of the fault that it no longer finds.
 */
class EachFaultIsFoundTest {
  private static final int DICE = 7;

  /**
   * Not told in this club yet: a rest after pitching that is called a day of no pitching, and a
   * season that ended, which changes the months of the sport alone.
   */
  private static final Set<String> NOT_HERE = Set.of("arm-answer", "season-over");

  private static final class Sound {
    private static final Set<String> SAID =
        Set.copyOf(TinyClub.beside(TinyClub.plan(), TinyClub.record()));
  }

  /** Kinds that the page calls found and that have a place in this club. */
  static List<String> kinds() throws IOException {
    Map<String, Boolean> page = AuditorPage.found(Files.readString(Path.of("docs/auditor.md")));
    return PlantedKinds.all().stream()
        .filter(kind -> page.getOrDefault(kind.id(), false) && !NOT_HERE.contains(kind.id()))
        .filter(kind -> planted(kind, stage()).isPresent())
        .map(Planted::id)
        .toList();
  }

  private static Planted.Stage stage() {
    return new Planted.Stage(TinyClub.plan(), TinyClub.record());
  }

  private static Optional<String> planted(Planted kind, Planted.Stage stage) {
    return kind.how().plant(stage, new SplittableRandom(DICE));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_fault_is_told_of_whom_it_is_about(String id) {
    Planted kind =
        PlantedKinds.all().stream().filter(k -> k.id().equals(id)).findFirst().orElseThrow();
    Planted.Stage stage = stage();
    String named = planted(kind, stage).orElseThrow();
    List<String> fresh =
        TinyClub.beside(stage.plan, stage.record).stream()
            .filter(t -> !Sound.SAID.contains(t))
            .toList();

    Pattern said = Pattern.compile(kind.said());
    assertThat(fresh)
        .as(kind.what() + ": " + named)
        .anyMatch(t -> t.contains(named) && said.matcher(t.toLowerCase(Locale.ROOT)).find());
  }

  @Test
  void most_kinds_have_their_place_in_this_club() throws IOException {
    assertThat(kinds()).hasSizeGreaterThan(100);
  }
}
