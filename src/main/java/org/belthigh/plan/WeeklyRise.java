package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;

/**
 * How far the swings of a week may rise: to a tenth above the mean of the weeks that were played
 * among the last four, or to the starting allowance where that is more.
 *
 * <p>Weeks are those of the plan, seven days from its first. A week without practice, such as a
 * break or rain, does not count, so it halves nothing. A week of which nothing was logged counts as
 * the starting allowance, not as zero. After two weeks off a player begins again from the starting
 * allowance. A week that was missed adds nothing to a later one.
 */
final class WeeklyRise {
  private static final int WEEK = 7;
  private static final int LOOK_BACK = 4;
  private static final int BREAK = 2;

  private final Player player;
  private final Doses doses;
  private final LocalDate from;
  private final Map<Integer, Integer> played = new HashMap<>();
  private final Set<Integer> practised = new HashSet<>();

  private WeeklyRise(Player player, Doses doses, LocalDate from) {
    this.player = player;
    this.doses = doses;
    this.from = from;
  }

  /** What is known of the weeks before {@code from}. */
  static WeeklyRise of(
      ClubRecord record, Season season, Player player, Doses doses, LocalDate from) {
    WeeklyRise rise = new WeeklyRise(player, doses, from);
    Map<LocalDate, Integer> logged = logged(record, player);
    for (int week = -LOOK_BACK; week < 0; week++) {
      List<LocalDate> days = rise.days(week);
      int swings = days.stream().mapToInt(d -> logged.getOrDefault(d, 0)).sum();
      if (swings > 0) {
        rise.played.put(week, swings);
      } else if (days.stream().anyMatch(d -> season.practice(d).isPresent())) {
        rise.played.put(week, doses.swingsPerWeekStart(player.ageOn(days.get(0))));
      }
    }
    return rise;
  }

  /** Logged swings by day; a day without any is missing. */
  static Map<LocalDate, Integer> logged(ClubRecord record, Player player) {
    Map<LocalDate, Integer> swings = new HashMap<>();
    for (Toss toss : record.tosses()) {
      if (toss.swing() && toss.player().equals(player.id())) {
        swings.merge(toss.date(), 1, Integer::sum);
      }
    }
    for (Tally tally : record.tallies()) {
      if (tally.player().equals(player.id())) {
        swings.merge(tally.date(), swings(tally), Integer::sum);
      }
    }
    return swings;
  }

  /** Tallies of calls and of choices do not say how many swings there were. */
  private static int swings(Tally tally) {
    return switch (tally.measure()) {
      case COUNTDOWN -> tally.made();
      case HARD_HIT, FIELD_CALL -> tally.of();
      case ZONE_RECOGNITION, MIDDLE_TAKE, BALL_SWING -> 0;
    };
  }

  private List<LocalDate> days(int week) {
    LocalDate first = from.plusDays((long) WEEK * week);
    return first.datesUntil(first.plusDays(WEEK)).toList();
  }

  private int week(LocalDate day) {
    return (int) Math.floorDiv(day.toEpochDay() - from.toEpochDay(), (long) WEEK);
  }

  /** Notes a practice with swings: the week of {@code day} is then played. */
  void practised(LocalDate day) {
    practised.add(week(day));
  }

  /**
   * Swings that the week of {@code day} still allows.
   *
   * @param planned swings planned so far, by day
   */
  int left(LocalDate day, ToIntFunction<LocalDate> planned) {
    int week = week(day);
    return allowance(week, planned) - days(week).stream().mapToInt(planned).sum();
  }

  private int allowance(int week, ToIntFunction<LocalDate> planned) {
    int age = player.ageOn(days(week).get(0));
    List<Integer> last = new ArrayList<>();
    for (int w = week - LOOK_BACK; w < week; w++) {
      swingsOf(w, planned).ifPresent(last::add);
    }
    boolean back =
        swingsOf(week - 1, planned).isEmpty() && swingsOf(week - BREAK, planned).isEmpty();
    int start = doses.swingsPerWeekStart(age);
    double mean = last.stream().mapToInt(n -> n).average().orElse(0);
    return back ? start : Math.max(start, doses.risen(mean, age));
  }

  private OptionalInt swingsOf(int week, ToIntFunction<LocalDate> planned) {
    if (week < 0) {
      return played.containsKey(week) ? OptionalInt.of(played.get(week)) : OptionalInt.empty();
    }
    return practised.contains(week)
        ? OptionalInt.of(days(week).stream().mapToInt(planned).sum())
        : OptionalInt.empty();
  }
}
