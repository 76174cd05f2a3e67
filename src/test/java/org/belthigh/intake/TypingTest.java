package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.Hit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A team's practices of the demo club in short form: nothing is lost, and it is typed in time. */
class TypingTest {
  private static final Path DEMO = Path.of("demo-players");
  private static final Path PAGE = Path.of("docs/typing.md");
  private static final List<LocalDate> WEEK =
      List.of(LocalDate.of(2027, 3, 23), LocalDate.of(2027, 3, 25));

  /** Ours, an assumption: a tired person who looks from sheet to screen and back. */
  private static final int KEYS_A_MINUTE = 100;

  private static ClubRecord read(Path club) {
    try {
      return Intake.read(club, CatalogueLoader.load().orThrow());
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  private static Predicate<Toss> on(LocalDate day) {
    return toss -> toss.date().equals(day) && toss.origin().file().endsWith("u10-march.csv");
  }

  private static String shown(Toss toss) {
    boolean hit = toss.hit().filter(h -> h == Hit.HARD || h == Hit.SOFT).isPresent();
    return Stream.of(
            toss.key(),
            toss.side(),
            toss.zone(),
            toss.nearEdge(),
            toss.called(),
            toss.field(),
            toss.hit(),
            hit ? toss.went() : "",
            toss.ball(),
            toss.feed(),
            toss.feet(),
            toss.place(),
            toss.by())
        .map(Object::toString)
        .toList()
        .toString();
  }

  @Test
  void a_week_of_a_team_keeps_every_toss_and_is_typed_in_less_than_fifteen_minutes(
      @TempDir Path temp) throws IOException {
    ClubRecord demo = read(DEMO);
    Files.createDirectories(temp.resolve("logs"));
    for (String name : List.of("club.yaml", "roster.csv")) {
      Files.copy(DEMO.resolve(name), temp.resolve(name));
    }
    List<String> rows = new ArrayList<>();
    int keys = 0;
    int tosses = 0;
    for (LocalDate day : WEEK) {
      List<String> lines = new Typist(demo).practice("u10", on(day));
      Files.write(temp.resolve("logs/" + day + ".txt"), lines);
      long count = demo.tosses().stream().filter(on(day)).count();
      int pressed = Typist.keystrokes(lines);
      keys += pressed;
      tosses += (int) count;
      rows.add(row(day.toString(), count, pressed));
    }
    rows.add(row("both", tosses, keys));

    ClubRecord typed = read(temp);

    assertThat(typed.problems()).isEmpty();
    assertThat(typed.tosses().stream().map(TypingTest::shown))
        .containsExactlyInAnyOrderElementsOf(
            demo.tosses().stream()
                .filter(t -> WEEK.stream().anyMatch(day -> on(day).test(t)))
                .map(TypingTest::shown)
                .toList());
    assertThat(keys).isLessThan(15 * KEYS_A_MINUTE);
    assertThat(Files.readString(PAGE)).contains(rows);
  }

  private static String row(String day, long tosses, int keys) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %,d | %.1f min |",
        day,
        tosses,
        keys,
        (double) keys / KEYS_A_MINUTE);
  }
}
