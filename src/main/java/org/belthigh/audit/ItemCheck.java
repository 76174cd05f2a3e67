package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Home;
import org.belthigh.intake.Player;

/**
 * Each item is a drill of its skill, of the step that the child works on or of one below it, for
 * children of that age, and at home with what the family has and within the family's days.
 */
final class ItemCheck {
  /** Room is the same at every age. */
  private static final int ANY_AGE = 10;

  private final Given given;
  private final Optional<String> easier;

  /**
   * Looks at the items of one child.
   *
   * @param easier the step that a hitter who dipped goes back to in the first week
   */
  ItemCheck(Given given, Optional<String> easier) {
    this.given = given;
    this.easier = easier;
  }

  void check(Given.Child child) {
    for (JsonNode day : child.said().path("days")) {
      for (JsonNode item : day.path("items")) {
        Optional.ofNullable(given.curriculum().drills().get(item.path("drill").asText()))
            .ifPresent(drill -> item(child, day, item, drill));
      }
      if (home(day) && !day.path("items").isEmpty()) {
        homeDay(child, day);
      }
    }
  }

  private static boolean home(JsonNode day) {
    return day.path("place").asText().equals("home");
  }

  private void item(Given.Child child, JsonNode day, JsonNode item, Drill drill) {
    String where = Given.at(child, day) + ", " + drill.id();
    String skill = item.path("skill").asText();
    if (!skill.equals(drill.skill().id())) {
      given.fault(where, "its skill is '" + skill + "'", "the drill is of " + drill.skill().id());
    }
    String said = item.path("step").asText();
    Optional<Step> step = given.curriculum().step(said);
    Optional<Step> works =
        child.works(drill.skill().id()).flatMap(id -> given.curriculum().step(id));
    if (step.isEmpty() || step.get().skill() != drill.skill()) {
      given.fault(where, "its step is '" + said + "'", "steps are those of " + drill.skill().id());
    } else if (works.isPresent()) {
      step(where, child, day, step.get(), works.get());
      suits(where, home(day), drill, step.get());
    }
    if (home(day)) {
      family(where, child.player().home(), item, drill);
    } else {
      pace(where, item, drill);
    }
  }

  /**
   * The step worked on; in the first week of a hitter who dipped, in that skill, the last step that
   * the log shows behind the hitter.
   */
  private void step(String where, Given.Child child, JsonNode day, Step step, Step works) {
    boolean eased = firstWeek(day) && easier.filter(step.id()::equals).isPresent();
    if (!step.id().equals(works.id()) && !eased) {
      given.fault(
          where, "its step is " + step.id(), child.id() + " works on " + works.id() + " now");
    }
  }

  private boolean firstWeek(JsonNode day) {
    LocalDate second = given.plan().from().plusDays(Week.DAYS);
    return Given.date(day, "date").filter(d -> d.isBefore(second)).isPresent();
  }

  /** At home a drill of the step; at a practice, shared by many, one of an easier step will do. */
  private void suits(String where, boolean home, Drill drill, Step step) {
    if (step.drills().contains(drill.id())) {
      return;
    }
    int easiest = easiest(given.curriculum(), drill);
    if (home || easiest > step.rung()) {
      given.broken(
          where,
          "a drill of another step than " + step.id(),
          "its drills are " + step.drills() + (home ? "" : ", or those of a step before it"));
    }
  }

  private static int easiest(Curriculum curriculum, Drill drill) {
    return curriculum.ladders().get(drill.skill()).steps().stream()
        .filter(s -> s.drills().contains(drill.id()))
        .mapToInt(Step::rung)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private void family(String where, Home home, JsonNode item, Drill drill) {
    String ball = item.path("ball").asText();
    boolean known = ball.equals("plastic") || ball.equals("foam");
    if (known && home.gear().stream().noneMatch(g -> g.id().equals(ball))) {
      given.broken(where, "a " + ball + " ball", "the family has no such ball");
    }
    for (String thing : List.of("tee", "net")) {
      if (drill.gear().contains(thing)
          && home.gear().stream().noneMatch(g -> g.id().equals(thing))) {
        given.broken(where, "it needs a " + thing, "the family has none");
      }
    }
    if (drill.gear().contains("machine")) {
      given.broken(where, "it needs a machine", "no family is asked to have one");
    }
    int room = given.limits().whole(home.space().id() + "-toss-feet", ANY_AGE);
    if (item.path("feet").asInt() > room) {
      given.broken(
          where,
          "tossed from " + item.path("feet").asInt() + " ft",
          "a " + home.space().id() + " has room for " + room);
    }
  }

  private void pace(String where, JsonNode item, Drill drill) {
    int reps = item.path("reps").asInt();
    double most = Math.max(1, item.path("minutes").asInt()) * drill.perMinute();
    if (reps > Math.max(1, Math.ceil(most))) {
      given.broken(
          where,
          reps + " tosses in " + item.path("minutes").asInt() + " minutes",
          "this drill has " + drill.perMinute() + " a minute");
    }
  }

  private void homeDay(Given.Child child, JsonNode day) {
    Player player = child.player();
    Given.date(day, "date")
        .map(LocalDate::getDayOfWeek)
        .filter(d -> !player.homeDays().isEmpty() && !player.homeDays().contains(d))
        .ifPresent(
            d ->
                given.broken(
                    Given.at(child, day),
                    "home work on a " + d,
                    "the family has " + player.homeDays().stream().sorted().toList()));
    if (day.path("items").size() > 1) {
      given.broken(
          Given.at(child, day),
          day.path("items").size() + " drills at home",
          "a home session is one drill");
    }
  }
}
