package org.belthigh.audit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Looks through a {@code plan.json}: each date once, sums that add up, one decision a skill, no
 * hard ball at home, nothing that a hold of the plan itself forbids.
 */
public final class PlanCheck {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Set<String> HOME_BALLS = Set.of("plastic", "foam", "none");
  private static final Set<String> SKILLS = Set.of("see", "choose", "drive", "send");

  private final String file;
  private final List<Problem> problems = new ArrayList<>();

  private PlanCheck(String file) {
    this.file = file;
  }

  /**
   * Every fault of the plan.
   *
   * @param file how messages name it
   */
  public static List<Problem> of(String file, String text) {
    PlanCheck check = new PlanCheck(file);
    try {
      check.plan(JSON.readTree(text));
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
      check.problems.add(
          Problem.fault(
              Origin.of(file, line),
              "",
              "this is not JSON",
              "a plan is written by belthigh plan",
              "Write the plan anew."));
    } catch (DateTimeParseException e) {
      check.fault("date", "'" + e.getParsedString() + "' is not a date", "dates are ISO 8601");
    }
    return List.copyOf(check.problems);
  }

  private void fault(String subject, String found, String allowed) {
    problems.add(Problem.fault(Origin.of(file), subject, found, allowed, "Write the plan anew."));
  }

  private void plan(JsonNode plan) {
    for (String key : List.of("club", "from", "weeks", "players")) {
      if (!plan.hasNonNull(key)) {
        fault(key, "the key is missing", "a plan has club, from, weeks and players");
        return;
      }
    }
    LocalDate from = LocalDate.parse(plan.get("from").asText());
    int days = 7 * plan.get("weeks").asInt();
    plan.get("players").forEach(player -> player(player, from, days));
  }

  private void player(JsonNode player, LocalDate from, int days) {
    String id = player.path("player").asText();
    Set<String> decided = new HashSet<>();
    for (JsonNode decision : player.path("decisions")) {
      if (!decided.add(decision.path("skill").asText())) {
        fault(
            id, "a second decision for " + decision.path("skill").asText(), "one decision a skill");
      }
    }
    if (!decided.equals(SKILLS)) {
      fault(id, "decisions for " + decided, "each player has one for see, choose, drive and send");
    }
    Set<LocalDate> dates = new HashSet<>();
    for (JsonNode day : player.path("days")) {
      LocalDate date = LocalDate.parse(day.path("date").asText());
      if (!dates.add(date)) {
        fault(id + " " + date, "the date stands twice", "each date stands once");
      }
      day(id + " " + date, day);
      held(id + " " + date, player.path("holds"), date, day);
    }
    for (int i = 0; i < days; i++) {
      if (!dates.contains(from.plusDays(i))) {
        fault(id, "no entry for " + from.plusDays(i), "every date of the planned weeks has one");
      }
    }
  }

  private void day(String where, JsonNode day) {
    for (String sum : List.of("minutes", "swings")) {
      int items = 0;
      for (JsonNode item : day.path("items")) {
        items += item.path(sum).asInt();
      }
      if (items != day.path(sum).asInt()) {
        fault(
            where,
            sum + " is " + day.path(sum).asInt() + ", its items add up to " + items,
            "a day's " + sum + " are the sum of its items'");
      }
    }
    if (day.path("place").asText().equals("home")) {
      for (JsonNode item : day.path("items")) {
        if (!HOME_BALLS.contains(item.path("ball").asText())) {
          fault(
              where,
              "a " + item.path("ball").asText() + " at home",
              "at home the ball is plastic, foam or none");
        }
      }
    }
  }

  private void held(String where, JsonNode holds, LocalDate date, JsonNode day) {
    for (JsonNode hold : holds) {
      boolean begun = !date.isBefore(LocalDate.parse(hold.path("from").asText()));
      boolean over =
          hold.hasNonNull("until") && date.isAfter(LocalDate.parse(hold.get("until").asText()));
      if (begun && !over) {
        forbidden(where, hold.path("kind").asText(), day);
      }
    }
  }

  private void forbidden(String where, String kind, JsonNode day) {
    boolean works = day.path("items").size() > 0;
    boolean swings = day.path("swings").asInt() > 0;
    boolean throwing = day.path("throws").asInt() > 0;
    boolean broken =
        switch (kind) {
          case "everything" -> works;
          case "swinging" -> swings;
          default -> throwing;
        };
    if (broken) {
      fault(where, "work that the hold on " + kind + " forbids", "a hold forbids it that day");
    }
  }
}
