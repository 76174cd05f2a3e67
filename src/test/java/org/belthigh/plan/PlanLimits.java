package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.belthigh.decide.Outcome;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.Player;
import org.belthigh.model.Ball;
import org.belthigh.model.Place;

/**
 * What every plan must keep, reckoned anew from the finished plan and the calendar.
 *
 * <p>Swing ceilings are ours (common practice, no source), as {@code rules/parameters/load.yaml}
 * says; two free days and five hitting days in any seven: NATA 2019; hours not above age: NATA
 * 2019.
 */
final class PlanLimits {
  private PlanLimits() {}

  private record Ceiling(int session, int week, int days) {}

  private static Ceiling ceiling(int age) {
    if (age <= 8) {
      return new Ceiling(50, 150, 3);
    }
    if (age <= 10) {
      return new Ceiling(70, 200, 3);
    }
    if (age <= 12) {
      return new Ceiling(90, 320, 4);
    }
    return age <= 14 ? new Ceiling(110, 400, 4) : new Ceiling(130, 550, 5);
  }

  static void hold(Plan plan, ClubRecord record) {
    for (PlayerPlan player : plan.players()) {
      Player child = record.player(player.who().id());
      Map<LocalDate, Day> days = new TreeMap<>();
      player.days().forEach(d -> assertThat(days.put(d.date(), d)).isNull());
      assertThat(days).hasSize(7 * plan.weeks());
      for (Day day : player.days()) {
        day(player, child, day);
        week(child, record, days, day.date());
      }
      assertThat(player.decisions()).hasSize(4);
      assertThat(player.decisions())
          .allSatisfy(
              d -> assertThat(d.next().isPresent()).isEqualTo(d.outcome() == Outcome.MOVE_UP));
      assertThat(player.card().things()).hasSizeLessThanOrEqualTo(3);
    }
  }

  private static void day(PlayerPlan player, Player child, Day day) {
    String where = child.id() + " " + day.date();
    assertThat(day.swings())
        .as(where)
        .isLessThanOrEqualTo(ceiling(child.ageOn(day.date())).session());
    assertThat(day.throwsAsked()).isZero();
    if (day.place() == Place.HOME) {
      assertThat(day.items())
          .as(where)
          .allMatch(i -> List.of(Ball.PLASTIC, Ball.FOAM, Ball.NONE).contains(i.ball()));
    }
    if (day.place() == Place.REST) {
      assertThat(day.items()).as(where).isEmpty();
    }
    for (HoldLine hold : player.holds()) {
      boolean held =
          !day.date().isBefore(hold.from()) && hold.until().filter(day.date()::isAfter).isEmpty();
      if (held && hold.kind().equals("everything")) {
        assertThat(day.items()).as(where).isEmpty();
      }
      if (held && hold.kind().equals("swinging")) {
        assertThat(day.swings()).as(where).isZero();
      }
    }
  }

  private static void week(
      Player child, ClubRecord record, Map<LocalDate, Day> days, LocalDate first) {
    Ceiling ceiling = ceiling(child.ageOn(first));
    int swings = 0;
    int swingDays = 0;
    int hittingDays = 0;
    int busy = 0;
    for (LocalDate d = first; d.isBefore(first.plusDays(7)); d = d.plusDays(1)) {
      Day day = days.get(d);
      if (day == null) {
        continue;
      }
      swings += day.swings();
      swingDays += day.swings() > 0 ? 1 : 0;
      hittingDays += day.items().isEmpty() ? 0 : 1;
      busy += !day.items().isEmpty() || organised(record, child, d) ? 1 : 0;
    }
    String where = child.id() + " from " + first;
    assertThat(swings).as(where).isLessThanOrEqualTo(ceiling.week());
    assertThat(swingDays).as(where).isLessThanOrEqualTo(ceiling.days());
    assertThat(hittingDays).as(where).isLessThanOrEqualTo(5);
    if (plannedDays(days, first) > 0) {
      assertThat(busy).as(where).isLessThanOrEqualTo(Math.max(5, eventDays(record, child, first)));
    }
  }

  private static int plannedDays(Map<LocalDate, Day> days, LocalDate first) {
    return (int)
        first
            .datesUntil(first.plusDays(7))
            .filter(d -> days.containsKey(d) && !days.get(d).items().isEmpty())
            .count();
  }

  private static int eventDays(ClubRecord record, Player child, LocalDate first) {
    return (int)
        first.datesUntil(first.plusDays(7)).filter(d -> organised(record, child, d)).count();
  }

  private static boolean organised(ClubRecord record, Player child, LocalDate day) {
    return record.events().stream()
        .anyMatch(
            e ->
                e.date().equals(day)
                    && e.concerns(child.group())
                    && e.kind() != Event.Kind.BREAK
                    && e.kind() != Event.Kind.OFF);
  }
}
