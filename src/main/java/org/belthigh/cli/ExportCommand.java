package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.belthigh.files.Output;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.Marks;
import org.belthigh.measure.Measures;
import org.belthigh.model.Place;
import org.belthigh.plan.DecisionLine;
import org.belthigh.plan.HoldLine;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.sending.Calendars;
import org.belthigh.sending.Spreadsheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code belthigh export}: calendars and tables for other programs. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "Writes a calendar file for each group and player, and the overview and the measures as CSV",
      "and as a workbook. It plans as plan does, prints nothing and keeps nothing in history."
    },
    footer = {
      "",
      "Example:",
      "  belthigh export demo-players --out target/export --from 2027-04-05"
    })
final class ExportCommand implements Callable<Integer> {
  private static final int USUAL_WEEKS = 6;

  /** Columns of the measures, and where they stand in what {@code measure --json} prints. */
  private static final Map<String, String> MEASURES = measures();

  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Option(names = "--out", required = true, paramLabel = "DIR", description = "Where to write.")
  private Path out;

  @Option(names = "--from", paramLabel = "DATE", description = "First day; today.")
  private LocalDate from;

  @Option(names = "--weeks", paramLabel = "N", description = "1 to 16; 6 unless said.")
  private int weeks = USUAL_WEEKS;

  @Option(names = "--player", paramLabel = "ID", description = "Only this player; may be repeated.")
  private Set<String> players = new LinkedHashSet<>();

  private static Map<String, String> measures() {
    Map<String, String> columns = new LinkedHashMap<>();
    columns.put("player", "/player");
    put(columns, "zone_recognition", "right", "seen", "value", "low", "high");
    put(columns, "middle_take", "taken", "seen", "value", "low", "high");
    put(columns, "ball_swing", "swung", "seen", "value", "low", "high");
    put(columns, "countdown", "mean");
    put(columns, "field_call", "made", "swings", "value", "low", "high");
    return columns;
  }

  private static void put(Map<String, String> columns, String measure, String... keys) {
    for (String key : keys) {
      columns.put(measure + "_" + key, "/" + measure + "/" + key);
    }
  }

  @Override
  public Integer call() {
    if (weeks < 1 || weeks > PlanRequest.MOST_WEEKS) {
      throw new ParameterException(
          spec.commandLine(), "--weeks must be 1 to " + PlanRequest.MOST_WEEKS + ", not " + weeks);
    }
    ClubRecord record = club.read();
    LocalDate first = from == null ? club.today() : from;
    Set<String> named = club.named(players);
    History history = club.history(first, problem -> {});
    PlanRequest request =
        new PlanRequest(first, weeks, Set.of(), named, Optional.empty(), Optional.empty());
    Plan plan = new Planner(club.catalogue()).plan(record, request, history);
    Map<String, Spreadsheet> tables = new LinkedHashMap<>();
    tables.put("overview", overview(plan));
    tables.put("measures", measures(record.upTo(first), first, named));
    try (Output output = Output.into(out)) {
      new Calendars(
              plan,
              record.events(),
              club.catalogue().curricula().get(record.club().curriculum()),
              club.words())
          .files()
          .forEach(output::put);
      tables.forEach((name, table) -> output.put(name + ".csv", table.csv()));
      output.put("tables.xlsx", Spreadsheet.xlsx(tables));
      output.commit();
    }
    return ClubOptions.report(record, first, spec.commandLine().getErr());
  }

  /** A row a player; as on the overview, no cause of a hold. */
  private static Spreadsheet overview(Plan plan) {
    List<String> heading = new ArrayList<>(List.of("group", "player", "name", "age"));
    plan.players().stream()
        .limit(1)
        .flatMap(p -> p.decisions().stream())
        .forEach(
            d -> heading.addAll(List.of(d.skill().id() + "_step", d.skill().id() + "_decision")));
    heading.addAll(List.of("on_hold", "free_from", "home_days", "swings"));
    return new Spreadsheet(heading, plan.players().stream().map(ExportCommand::row).toList());
  }

  private static List<Object> row(PlayerPlan player) {
    List<Object> row = new ArrayList<>();
    row.add(player.who().group());
    row.add(player.who().id());
    row.add(player.who().name());
    row.add(player.who().age());
    for (DecisionLine line : player.decisions()) {
      row.add(line.step());
      row.add(line.outcome().id());
    }
    row.add(String.join(" ", player.holds().stream().map(HoldLine::kind).distinct().toList()));
    row.add(freeFrom(player.holds()));
    row.add(
        player.days().stream()
            .filter(d -> d.place() == Place.HOME && !d.items().isEmpty())
            .count());
    row.add(player.days().stream().mapToInt(d -> d.swings()).sum());
    return row;
  }

  private static String freeFrom(List<HoldLine> holds) {
    if (holds.stream().anyMatch(h -> h.until().isEmpty())) {
      return "when a person ends it";
    }
    return holds.stream()
        .map(h -> h.until().orElseThrow())
        .max(LocalDate::compareTo)
        .map(last -> last.plusDays(1).toString())
        .orElse("");
  }

  private static Spreadsheet measures(ClubRecord known, LocalDate day, Set<String> named) {
    MarkAgreement marks = Marks.of(known.tosses()).agreement();
    ObjectNode json = MeasureJson.of(day, Measures.of(known), marks);
    List<List<Object>> rows = new ArrayList<>();
    for (JsonNode player : json.get("players")) {
      if (named.isEmpty() || named.contains(player.get("player").asText())) {
        rows.add(MEASURES.values().stream().map(at -> cell(player.at(at))).toList());
      }
    }
    return new Spreadsheet(List.copyOf(MEASURES.keySet()), rows);
  }

  private static Object cell(JsonNode node) {
    return node.isNumber() ? node.numberValue() : node.isNull() ? "" : node.asText();
  }
}
