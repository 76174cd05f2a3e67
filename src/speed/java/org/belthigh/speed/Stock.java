package org.belthigh.speed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.lab.MadeUpLeague;
import org.belthigh.model.LocalText;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.words.Words;

/** What every measurement works on: made-up leagues of the usual seed, made once. */
public final class Stock {
  /** The catalogue in the build. */
  public static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  private static final Path FOLDER = Path.of("target/speed");
  private static final int WEEKS = 6;

  private Stock() {}

  /** A league of {@code players}, on the disk. */
  public static Path league(int players) {
    Path league = FOLDER.resolve("league-" + players);
    try {
      if (!Files.exists(league)) {
        MadeUpLeague.write(league, players, MadeUpLeague.USUAL_SEED, CATALOGUE);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return league;
  }

  /** The first club of a league of {@code players}, on the disk. */
  public static Path folder(int players) {
    return league(players).resolve("club-001");
  }

  /** The same, read. */
  public static ClubRecord club(int players) {
    try {
      return Intake.read(folder(players), CATALOGUE);
    } catch (Unusable e) {
      throw new IllegalStateException("A made-up club cannot be read: " + e.problems(), e);
    }
  }

  /** Its plan of six weeks. */
  public static Plan plan(ClubRecord club) {
    return new Planner(CATALOGUE)
        .plan(
            club,
            new PlanRequest(
                MadeUpLeague.PLAN_DAY,
                WEEKS,
                Set.of(),
                Set.of(),
                Optional.empty(),
                Optional.empty()));
  }

  /** The words, those of the rules among them. */
  public static Words words() {
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    CATALOGUE.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    return Words.load(reasons);
  }
}
