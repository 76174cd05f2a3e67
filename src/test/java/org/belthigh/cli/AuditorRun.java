package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.practice.Effort;
import org.junit.jupiter.api.Test;

/**
 * Plants every kind of fault in plans of made-up clubs and counts which the auditor finds: {@code
 * mvn -Pauditor test -Dauditor.clubs=20 -Dauditor.seed=1}; with {@code -Dbelthigh.accept=true} it
 * writes {@code docs/auditor.md}. No part of the ordinary tests.
 */
class AuditorRun {
  private static final int WEEKS = 2;
  private final Map<String, int[]> counts = new LinkedHashMap<>();
  private int falseFindings;

  @Test
  void counts_what_is_found_of_what_is_planted() throws Exception {
    int clubs = Integer.getInteger("auditor.clubs", 20);
    long first = Long.getLong("auditor.seed", 1);
    PlantedKinds.all().forEach(k -> counts.put(k.id(), new int[2]));
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    for (long seed = first; seed < first + clubs; seed++) {
      club(seed, catalogue);
    }
    String page = page(clubs, first);
    System.out.println(page);
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(Path.of("docs/auditor.md"), page);
    }
    assertThat(falseFindings).as("findings in plans that nobody touched").isZero();
  }

  private void club(long seed, Catalogue catalogue) {
    ClubRecord record = RandomClub.of(seed, catalogue);
    PlanRequest request =
        new PlanRequest(
            record.club().seasonFirst().plusDays(14),
            WEEKS,
            Set.of(),
            Set.of(),
            Optional.empty(),
            Optional.empty());
    Planner planner = new Planner(catalogue, new Effort(0.05));
    ObjectNode plan = PlanJson.of(planner.plan(record, request), ClubOptions.words(catalogue));
    Audit audit = new Audit(catalogue);
    Set<String> before = Set.copyOf(look(audit, plan, record));
    before.forEach(f -> System.out.println("false finding, seed " + seed + ": " + f));
    falseFindings += before.size();
    for (PlantedKinds.Kind kind : PlantedKinds.all()) {
      ObjectNode copy = plan.deepCopy();
      SplittableRandom dice = new SplittableRandom(seed * 31 + kind.id().hashCode());
      Optional<String> named = kind.how().plant(copy, dice);
      if (named.isEmpty()) {
        continue;
      }
      int[] count = counts.get(kind.id());
      count[0]++;
      Pattern said = Pattern.compile(kind.said());
      if (look(audit, copy, record).stream()
          .filter(f -> !before.contains(f))
          .anyMatch(
              f -> f.contains(named.get()) && said.matcher(f.toLowerCase(Locale.ROOT)).find())) {
        count[1]++;
      }
    }
  }

  private static List<String> look(Audit audit, ObjectNode plan, ClubRecord record) {
    try {
      return audit.beside("plan", plan.toString(), record).stream()
          .map(Problem::text)
          .collect(Collectors.toList());
    } catch (RuntimeException e) {
      // an auditor that stops has told nobody anything: counted as missed, and printed
      System.out.println("the auditor stopped: " + e);
      return List.of();
    }
  }

  private String page(int clubs, long first) {
    StringBuilder page = new StringBuilder("# What the auditor finds\n\n");
    int planted = counts.values().stream().mapToInt(c -> c[0]).sum();
    int found = counts.values().stream().mapToInt(c -> c[1]).sum();
    long whole = counts.values().stream().filter(c -> c[0] > 0 && c[0] == c[1]).count();
    page.append("Made by `mvn -Pauditor test -Dauditor.clubs=%d -Dauditor.seed=%d`"
        .formatted(clubs, first))
        .append(" with `-Dbelthigh.accept=true`.\n")
        .append("%d clubs, %d kinds: %d faults planted, %d found; %d kinds always found; %d false findings.\n\n"
            .formatted(clubs, counts.size(), planted, found, whole, falseFindings))
        .append("| Kind | What is wrong | Planted | Found |\n| --- | --- | --: | --: |\n");
    for (PlantedKinds.Kind kind : PlantedKinds.all()) {
      int[] count = counts.get(kind.id());
      page.append("| %s | %s | %d | %d |\n".formatted(kind.id(), kind.what(), count[0], count[1]));
    }
    return page.toString();
  }
}
