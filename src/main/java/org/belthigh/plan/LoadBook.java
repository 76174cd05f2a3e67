package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.belthigh.decide.Comeback;
import org.belthigh.intake.Player;

/**
 * What one player's days hold so far, and whether more fits.
 *
 * <p>Every limit is looked at over each seven days that the new work would fall into, at the
 * player's calendar age on the first of them.
 */
final class LoadBook {
  private static final int WINDOW = 7;

  private final Player player;
  private final Doses doses;
  private final Map<LocalDate, Double> sportMinutes = new HashMap<>();
  private final Map<LocalDate, Integer> swings = new HashMap<>();
  private final Set<LocalDate> hitting = new HashSet<>();
  private final WeeklyRise rise;
  private final ArmRest armRest;
  private final Optional<Comeback> back;

  /**
   * An empty book.
   *
   * @param back the days after a clearance, which have less; empty where nothing was cleared
   */
  LoadBook(Player player, Doses doses, WeeklyRise rise, ArmRest armRest, Optional<Comeback> back) {
    this.back = back;
    this.player = player;
    this.doses = doses;
    this.rise = rise;
    this.armRest = armRest;
  }

  /** Notes organised sport that takes place whatever we plan. */
  void sport(LocalDate day, double minutes) {
    if (minutes > 0) {
      sportMinutes.merge(day, minutes, Double::sum);
    }
  }

  /** Notes planned work. {@code extraMinutes} is what no event covers, such as a home session. */
  void work(LocalDate day, int newSwings, double extraMinutes) {
    hitting.add(day);
    swings.merge(day, newSwings, Integer::sum);
    sport(day, extraMinutes);
  }

  /** Whether any organised sport or work is on {@code day}. */
  boolean busy(LocalDate day) {
    return sportMinutes.containsKey(day) || hitting.contains(day);
  }

  /** Swings of {@code day} so far. */
  int swings(LocalDate day) {
    return swings.getOrDefault(day, 0);
  }

  /** Whether {@code day} has fewer swings, since the arm rests. */
  boolean armRests(LocalDate day) {
    return armRest.on(day);
  }

  private int perSession(LocalDate day) {
    int age = player.ageOn(day);
    int most = armRests(day) ? doses.swingsPerRestedSession(age) : doses.swingsPerSession(age);
    return comesBack(day) ? Math.min(most, doses.lighter(doses.swingsPerSession(age))) : most;
  }

  /** Whether {@code day} has less, since it is one of the first after a clearance. */
  boolean comesBack(LocalDate day) {
    return back.filter(b -> b.on(day)).isPresent();
  }

  /** Most swings that the days after a clearance still have room for, all together. */
  private int leftOfComeback(LocalDate day) {
    int most = doses.lighter(doses.swingsPerWeek(player.ageOn(day)));
    return back.filter(b -> b.on(day)).stream()
        .mapToInt(
            b ->
                most
                    - b.cleared()
                        .datesUntil(b.last().plusDays(1))
                        .mapToInt(d -> swings.getOrDefault(d, 0))
                        .sum())
        .findFirst()
        .orElse(Integer.MAX_VALUE);
  }

  /** Most swings that still fit on {@code day}; 0 where a day with swings does not fit. */
  int swingsLeft(LocalDate day) {
    int left =
        Math.min(
            perSession(day) - swings.getOrDefault(day, 0),
            rise.left(day, d -> swings.getOrDefault(d, 0)));
    left = Math.min(left, leftOfComeback(day));
    for (LocalDate first = day.minusDays(WINDOW - 1); !first.isAfter(day); first = next(first)) {
      int age = player.ageOn(first);
      int taken = 0;
      int days = 0;
      for (LocalDate d = first; d.isBefore(first.plusDays(WINDOW)); d = next(d)) {
        int there = swings.getOrDefault(d, 0);
        taken += there;
        days += there > 0 && !d.equals(day) ? 1 : 0;
      }
      boolean fits = days < doses.swingDaysPerWeek(age);
      left = Math.min(left, fits ? doses.swingsPerWeek(age) - taken : 0);
    }
    return Math.max(0, left);
  }

  /**
   * Whether hitting work fits on {@code day}.
   *
   * @param extraMinutes what no event covers
   */
  boolean fits(LocalDate day, double extraMinutes) {
    return full(day, extraMinutes).isEmpty();
  }

  /**
   * What of the seven days leaves no room for hitting work on {@code day}; empty where it fits.
   *
   * @param extraMinutes what no event covers
   */
  Optional<Idle> full(LocalDate day, double extraMinutes) {
    return day.minusDays(WINDOW - 1)
        .datesUntil(day.plusDays(1))
        .flatMap(first -> full(first, day, extraMinutes).stream())
        .min(Comparator.naturalOrder());
  }

  private Optional<Idle> full(LocalDate first, LocalDate day, double extraMinutes) {
    int age = player.ageOn(first);
    double minutes = extraMinutes;
    int busy = 0;
    int days = 0;
    for (LocalDate d = first; d.isBefore(first.plusDays(WINDOW)); d = next(d)) {
      minutes += sportMinutes.getOrDefault(d, 0.0);
      boolean here = d.equals(day);
      busy += here || sportMinutes.containsKey(d) || hitting.contains(d) ? 1 : 0;
      days += here || hitting.contains(d) ? 1 : 0;
    }
    if (minutes > 60 * doses.hoursPerWeek(age)) {
      return Optional.of(Idle.SITS_OUT);
    }
    if (busy > WINDOW - doses.freeDaysPerWeek(age)) {
      return Optional.of(Idle.NO_FREE_DAY);
    }
    return days > doses.hittingDaysPerWeek(age) ? Optional.of(Idle.HITTING_DAYS) : Optional.empty();
  }

  private static LocalDate next(LocalDate day) {
    return day.plusDays(1);
  }
}
