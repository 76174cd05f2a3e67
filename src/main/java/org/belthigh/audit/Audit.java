package org.belthigh.audit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.LocalText;
import org.belthigh.model.Problem;
import org.belthigh.words.Words;

/**
 * The second pair of eyes: reads a finished {@code plan.json} and, where it is there, the club
 * folder, and checks every limit anew. It shares no code with the planner; both read the same
 * catalogue.
 *
 * <p>Each finding names the limit, where the limit comes from, the player and the day. No finding
 * means that the plan may be printed.
 */
public final class Audit {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Catalogue catalogue;
  private final Words words;

  /** Limits, rule books and drills come from {@code catalogue}. */
  public Audit(Catalogue catalogue) {
    this.catalogue = catalogue;
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    catalogue.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    this.words = Words.load(reasons);
  }

  /**
   * Everything that can be seen from the plan alone: form, swings, days, holds that it names,
   * drills and places. A birthday is not known, so the older age counts where one may have come.
   *
   * @param file how messages name it
   */
  public List<Problem> alone(String file, String text) {
    return check(file, text, Optional.empty());
  }

  /**
   * Everything, with the club folder beside the plan: its calendar, births, other sport, outings
   * and wellness, as known on the first day of the plan.
   *
   * @param file how messages name it
   */
  public List<Problem> beside(String file, String text, ClubRecord record) {
    return check(file, text, Optional.of(record));
  }

  /**
   * The prints beside the plan, as they can be read from the pages; with the club folder also
   * against its roster and places. A plan that is no JSON is told by the other ways in.
   *
   * @param file how messages name the plan
   */
  public List<Problem> papers(
      String file, String text, Papers papers, Optional<ClubRecord> record) {
    PaperFindings findings = new PaperFindings(file);
    try {
      PrintedPlan.of(JSON.readTree(text), catalogue, record)
          .ifPresent(plan -> new PaperCheck(plan, papers, findings).check());
    } catch (JsonProcessingException e) {
      return List.of();
    }
    return findings.all();
  }

  private List<Problem> check(String file, String text, Optional<ClubRecord> record) {
    Findings findings = new Findings(file);
    JsonNode json;
    try {
      json = JSON.readTree(text);
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
      findings.unreadable(line, "this is not JSON");
      return findings.all();
    }
    Optional<ClubRecord> whole = record.map(r -> Given.held(r, json, catalogue));
    new FinishedPlanFile(findings).read(json).ifPresent(plan -> whole(plan, json, findings, whole));
    return findings.all();
  }

  /** A plan on which a check stops is not a sound one: that is told like all else. */
  private void whole(
      FinishedPlan plan, JsonNode json, Findings findings, Optional<ClubRecord> record) {
    try {
      Optional<ClubRecord> known = record.map(r -> r.upTo(plan.from()));
      boolean ofTheClub = check(plan, findings, known, record);
      if (ofTheClub) {
        known.ifPresent(r -> club(given(plan, json, r, record.get(), findings)));
      }
    } catch (RuntimeException e) {
      findings.fault(
          "plan",
          "it could not be looked through to the end: " + e.getMessage(),
          "each id and date is one that the club and its curriculum have");
    }
  }

  private Given given(
      FinishedPlan plan, JsonNode json, ClubRecord known, ClubRecord whole, Findings findings) {
    Limits limits = new Limits(catalogue, plan.from());
    return new Given(plan, json, known, whole, catalogue, limits, findings);
  }

  /** What can be seen with the club folder alone. */
  private void club(Given given) {
    new KeysCheck(given).check();
    new FrontCheck(given).check();
    new RosterCheck(given).check();
    new PracticeCheck(given, words).check();
    boolean older = !given.json().has("files") || !given.json().has("later_rows");
    if (older) {
      given.fault("plan", "it is of an older form, without files or later_rows", "plan it anew");
    }
    new RotationCheck(given, words).check();
    new LaterRowsCheck(given).check();
    SheetCheck sheets = new SheetCheck(given, words);
    sheets.check();
    DecisionCheck decisions = new DecisionCheck(given, words);
    for (Given.Child child : given.children()) {
      decisions.check(child);
      new HoldSaidCheck(given, words).check(child);
      new HoldDaysCheck(given).check(child);
      new ItemCheck(given, decisions.easier(child)).check(child);
      new ArmsCheck(given).check(child);
      new CatchCheck(given).check(child);
      sheets.check(child);
      new WeekCheck(given).check(child);
      new DayNoteCheck(given, words).check(child);
      new VarietyCheck(given).check(child);
      new LookBackCheck(given).check(child);
      years(given, child);
    }
  }

  private static void years(Given given, Given.Child child) {
    given.plan().players().stream()
        .filter(p -> p.id().equals(child.id()))
        .forEach(
            p ->
                new YearCheck(given.record(), given.plan(), given.findings(), given.limits())
                    .said(p, child.said().path("sport_months")));
  }

  /** Returns whether the plan is of the club at all. */
  private boolean check(
      FinishedPlan plan,
      Findings findings,
      Optional<ClubRecord> record,
      Optional<ClubRecord> whole) {
    Limits limits = new Limits(catalogue, plan.from());
    Ages ages = new Ages(plan.from(), record);
    plan.players().forEach(p -> new FormCheck(plan, findings).check(p));
    if (ages.refuse(plan, findings)) {
      return false;
    }
    Map<String, ClubRecord> groups = record.map(ClubRecord::byGroup).orElse(Map.of());
    for (FinishedPlan.Practice practice : plan.practices()) {
      Optional<ClubRecord> own = record.map(r -> groups.getOrDefault(practice.group(), r));
      new DrillCheck(catalogue, limits, ages, own, findings).check(plan, practice);
    }
    for (FinishedPlan.Person person : plan.players()) {
      Optional<ClubRecord> own = record.map(r -> groups.get(person.group()));
      ArmsOwed owed = new ArmsOwed(catalogue, limits, own);
      new HoldCheck(findings, limits, whole, owed).check(plan, person);
      whole.ifPresent(r -> new ReturnCheck(plan, findings, limits, ages, r).check(person));
      new LoadCheck(plan, findings, limits, ages, own, owed).check(person);
      new DrillCheck(catalogue, limits, ages, own, findings).check(plan, person);
      own.ifPresent(r -> new EventCheck(r, plan, findings).check(person));
      own.ifPresent(r -> new YearCheck(r, plan, findings, limits).check(person));
    }
    return true;
  }
}
