package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.practice.Effort;

/**
 * Plants faults, kind by kind, each in a fresh copy of a plan, and counts what the auditor finds.
 */
final class AuditorTrial {
  private static final int WEEKS = 2;
  private static final double LITTLE_EFFORT = 0.05;
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate FROM = LocalDate.of(2027, 4, 5);

  /** How often a kind was planted, and how often it was found. */
  static final class Count {
    int planted;
    int found;

    boolean whole() {
      return planted > 0 && found == planted;
    }
  }

  private final Audit audit = new Audit(CATALOGUE);
  private final Map<String, Count> counts = new LinkedHashMap<>();
  private final List<String> missed = new ArrayList<>();
  private final List<String> untrue = new ArrayList<>();
  private final List<String> where = new ArrayList<>();
  private final int every;
  private int plans;

  /** With every kind. */
  AuditorTrial() {
    this(1);
  }

  /** With each kind of which the number in the list is a multiple of {@code every}. */
  AuditorTrial(int every) {
    this.every = every;
    PlantedKinds.all().forEach(k -> counts.put(k.id(), new Count()));
    PlantedPaper.all().forEach(k -> counts.put(k.id(), new Count()));
  }

  Map<String, Count> counts() {
    return counts;
  }

  /** Each fault that was not found: kind, what must be named, and what was said instead. */
  List<String> missed() {
    return missed;
  }

  /** Kinds for which no plan had a place. */
  List<String> never() {
    return counts.entrySet().stream()
        .filter(e -> e.getValue().planted == 0)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** What was said of plans that nobody touched. */
  List<String> untrue() {
    return untrue;
  }

  /** Where faults were planted. */
  List<String> where() {
    return where;
  }

  /** How many plans were looked at before anything was planted. */
  int plans() {
    return plans;
  }

  /** Adds what another trial counted. */
  void add(AuditorTrial other) {
    other.counts.forEach(
        (kind, count) -> {
          counts.get(kind).planted += count.planted;
          counts.get(kind).found += count.found;
        });
    missed.addAll(other.missed);
    untrue.addAll(other.untrue);
    plans += other.plans;
    where.addAll(other.where);
  }

  /** The made-up club of {@code seed}. */
  void club(long seed) {
    ClubRecord record = RandomClub.of(seed, CATALOGUE);
    club("club " + seed, record, record.club().seasonFirst().plusDays(14), WEEKS, seed);
  }

  /** The demo club in plain weeks. */
  void demo() {
    ClubRecord record = demoClub();
    club("demo", record, FROM, WEEKS, 0);
  }

  /** The demo club in a break. */
  void demoBreak() {
    club("demo, break", demoClub(), LocalDate.of(2027, 4, 19), WEEKS, 1);
  }

  /** The demo club before a tournament. */
  void demoTournament() {
    club("demo, tournament", demoClub(), LocalDate.of(2027, 5, 10), WEEKS, 2);
  }

  private static ClubRecord demoClub() {
    return new ClubReading(Path.of("demo-players"), CATALOGUE, false).record();
  }

  private void club(String where, ClubRecord record, LocalDate from, int weeks, long seed) {
    PlanRequest request =
        new PlanRequest(from, weeks, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    Planner planner = new Planner(CATALOGUE, new Effort(LITTLE_EFFORT));
    ObjectNode plan = PlanJson.of(planner.plan(record, request), ClubOptions.words(CATALOGUE));
    new PrintedFiles().into(plan, Set.of());
    Set<String> before = Set.copyOf(look(plan, record));
    sound(where, before);
    for (Planted kind : sample(PlantedKinds.all())) {
      if (Thread.currentThread().isInterrupted()) {
        return;
      }
      long salt = seed * 31 + kind.id().hashCode();
      Planted.Stage stage = new Planted.Stage(plan.deepCopy(), record);
      kind.how()
          .plant(stage, new SplittableRandom(salt))
          .ifPresent(named -> count(where, kind, named, before, look(stage.plan, stage.record)));
    }
  }

  /** The demo club's prints. */
  void papers() {
    ClubRecord demo = demoClub();
    PrintedClub printed = PlantedPaper.Others.sound(CATALOGUE, demo);
    PlantedPaper.Others others = new PlantedPaper.Others(CATALOGUE, demo);
    Set<String> before = Set.copyOf(printed.said());
    sound("demo prints", before);
    for (PlantedPaper.Kind kind : sample(PlantedPaper.all())) {
      PrintedClub copy = printed.copy();
      String named = kind.how().spoil(copy, others);
      // a sheet that another one lacks is named by that too
      String place = named.contains("/") ? "plan.json, " + named : named;
      count("demo prints", kind.planted(), place, before, copy.said());
    }
  }

  private <T> List<T> sample(List<T> kinds) {
    return IntStream.range(0, kinds.size())
        .filter(i -> i % every == 0)
        .mapToObj(kinds::get)
        .toList();
  }

  private void sound(String place, Set<String> before) {
    plans++;
    where.add(place);
    before.forEach(f -> untrue.add(place + ": " + f));
  }

  private void count(
      String where, Planted kind, String named, Set<String> before, List<String> after) {
    Count count = counts.get(kind.id());
    count.planted++;
    Pattern said = Pattern.compile(kind.said());
    List<String> fresh = after.stream().filter(f -> !before.contains(f)).toList();
    if (fresh.stream()
        .anyMatch(f -> f.contains(named) && said.matcher(f.toLowerCase(Locale.ROOT)).find())) {
      count.found++;
    } else {
      missed.add(
          "%s | %s | %s, %s | %s"
              .formatted(
                  kind.id(),
                  kind.what(),
                  where,
                  named,
                  fresh.isEmpty() ? "nothing" : fresh.subList(0, Math.min(3, fresh.size()))));
    }
  }

  /** An auditor that stops has told nobody anything: a miss, with the reason in the list. */
  private List<String> look(ObjectNode plan, ClubRecord record) {
    try {
      return audit.beside("plan", plan.toString(), record).stream().map(Problem::text).toList();
    } catch (RuntimeException e) {
      missed.add("STOPPED | " + e + " at " + e.getStackTrace()[0] + " | | ");
      return List.of();
    }
  }
}
