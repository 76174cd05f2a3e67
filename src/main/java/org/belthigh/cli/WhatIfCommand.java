package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Skill;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.PlayerPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code belthigh whatif}: what another calendar, more adults or cages would do for each child. */
@Command(
    name = "whatif",
    mixinStandardHelpOptions = true,
    description = {
      "Each child's tosses by skill as planned, and with a change.",
      "Nothing is written; the same limits hold."
    },
    footer = {
      "",
      "Examples:",
      "  belthigh whatif demo-players --from 2027-04-05 --adults 1",
      "  belthigh whatif demo-players --from 2027-04-05 --calendar rainy-april.csv --weeks 4"
    })
final class WhatIfCommand implements Callable<Integer> {
  private static final int USUAL_WEEKS = 6;
  private static final int MOST_STATIONS = 20;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Option(names = "--from", paramLabel = "DATE", description = "First day to plan; today.")
  private LocalDate from;

  @Option(names = "--weeks", paramLabel = "N", description = "1 to 16; 6 unless said.")
  private int weeks = USUAL_WEEKS;

  @Option(names = "--adults", paramLabel = "N", description = "Grown-ups at every practice.")
  private Integer adults;

  @Option(names = "--stations", paramLabel = "N", description = "Stations at every place.")
  private Integer stations;

  @Option(names = "--calendar", paramLabel = "FILE", description = "In place of calendar.csv.")
  private Path calendar;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  /** What one plan holds for one player. */
  private record Dose(Map<Skill, Integer> tosses, int swings, int days) {
    static Dose of(PlayerPlan plan) {
      Map<Skill, Integer> tosses = new EnumMap<>(Skill.class);
      plan.days().stream()
          .flatMap(d -> d.items().stream())
          .forEach(i -> tosses.merge(i.skill(), i.reps(), Integer::sum));
      return new Dose(
          tosses,
          plan.days().stream().mapToInt(d -> d.swings()).sum(),
          (int) plan.days().stream().filter(d -> !d.items().isEmpty()).count());
    }

    int of(Skill skill) {
      return tosses.getOrDefault(skill, 0);
    }
  }

  @Override
  public Integer call() {
    refuseOddOptions();
    ClubRecord record = club.read();
    LocalDate first = from == null ? club.today() : from;
    PlanRequest request =
        new PlanRequest(first, weeks, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    History history = club.history(first, problem -> {});
    ClubRecord other = changed(record);
    Planner planner = new Planner(club.catalogue());
    List<PlayerPlan> now = planner.plan(record, request, history).players();
    List<PlayerPlan> then = planner.plan(other, request, history).players();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Json.print(json(first, now, then), out);
    } else {
      text(now, then, out);
    }
    return ClubOptions.report(
        calendar == null ? record : other, first, spec.commandLine().getErr());
  }

  private void refuseOddOptions() {
    if (adults == null && stations == null && calendar == null) {
      refuse("whatif needs a change: --adults, --stations or --calendar");
    }
    if (weeks < 1 || weeks > PlanRequest.MOST_WEEKS) {
      refuse("--weeks must be 1 to " + PlanRequest.MOST_WEEKS + ", not " + weeks);
    }
    if (adults != null && (adults < 0 || adults > MOST_STATIONS)) {
      refuse("--adults must be 0 to " + MOST_STATIONS + ", not " + adults);
    }
    if (stations != null && (stations < 1 || stations > MOST_STATIONS)) {
      refuse("--stations must be 1 to " + MOST_STATIONS + ", not " + stations);
    }
    if (calendar != null && !Files.isReadable(calendar)) {
      refuse("--calendar must be a file that can be read, not '" + calendar + "'");
    }
  }

  private void refuse(String message) {
    throw new ParameterException(spec.commandLine(), message);
  }

  private ClubRecord changed(ClubRecord now) {
    ClubRecord record = calendar == null ? now : withCalendar();
    if (adults != null) {
      record =
          record
              .withEvents(record.events().stream().map(e -> e.withAdults(adults)).toList())
              .withClub(record.club().withTossers(adults));
    }
    if (stations != null && record.club().places().isEmpty()) {
      refuse("--stations needs places in club.yaml, and there are none");
    }
    return stations == null ? record : record.withClub(record.club().withStations(stations));
  }

  private ClubRecord withCalendar() {
    return club.read(calendar);
  }

  private static void text(List<PlayerPlan> now, List<PlayerPlan> then, PrintWriter out) {
    out.print(String.format(Locale.ROOT, "%-24s", "tosses, now > then"));
    for (Skill skill : Skill.values()) {
      out.print(String.format(Locale.ROOT, "%16s", skill.id()));
    }
    out.println(String.format(Locale.ROOT, "%16s%16s", "swings", "days"));
    for (int i = 0; i < now.size(); i++) {
      Dose before = Dose.of(now.get(i));
      Dose after = Dose.of(then.get(i));
      String who = now.get(i).who().id() + " " + now.get(i).who().name();
      out.print(String.format(Locale.ROOT, "%-24s", who));
      for (Skill skill : Skill.values()) {
        out.print(change(before.of(skill), after.of(skill)));
      }
      out.println(change(before.swings(), after.swings()) + change(before.days(), after.days()));
    }
  }

  private static String change(int before, int after) {
    return String.format(
        Locale.ROOT, "%16s", before == after ? "" + before : before + " > " + after);
  }

  private static ObjectNode json(LocalDate from, List<PlayerPlan> now, List<PlayerPlan> then) {
    ObjectNode root = NODES.objectNode().put("from", from.toString());
    ArrayNode players = root.putArray("players");
    for (int i = 0; i < now.size(); i++) {
      ObjectNode node = players.addObject().put("player", now.get(i).who().id());
      node.set("now", json(Dose.of(now.get(i))));
      node.set("then", json(Dose.of(then.get(i))));
    }
    return root;
  }

  private static ObjectNode json(Dose dose) {
    ObjectNode node = NODES.objectNode();
    for (Skill skill : Skill.values()) {
      node.put(skill.id(), dose.of(skill));
    }
    return node.put("swings", dose.swings()).put("days", dose.days());
  }
}
