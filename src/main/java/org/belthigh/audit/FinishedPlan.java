package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a {@code plan.json} says, read back without the code that wrote it.
 *
 * @param curriculum id of the curriculum, empty where the plan does not say
 * @param from first day that is planned
 * @param practices set-up of the practices that the plan prints
 */
record FinishedPlan(
    String curriculum, LocalDate from, int weeks, List<Person> players, List<Practice> practices) {
  FinishedPlan {
    players = List.copyOf(players);
    practices = List.copyOf(practices);
  }

  /** Last day that is planned. */
  LocalDate last() {
    return from.plusDays(7L * weeks - 1);
  }

  /**
   * One player; {@code age} in whole years on the first day, {@code skills} one per decision,
   * {@code yearRemarked} whether too many months of the sport are remarked on.
   */
  record Person(
      String id,
      String group,
      int age,
      List<String> skills,
      List<Held> holds,
      List<Dated> days,
      boolean yearRemarked) {
    Person {
      skills = List.copyOf(skills);
      holds = List.copyOf(holds);
      days = List.copyOf(days);
    }
  }

  /** A stop; {@code until} is the last day held, empty where a person must end it. */
  record Held(String kind, LocalDate from, Optional<LocalDate> until) {
    boolean on(LocalDate day) {
      return !day.isBefore(from) && until.filter(day::isAfter).isEmpty();
    }

    /** Whether every day from {@code first} to {@code last} is held. */
    boolean covers(LocalDate first, LocalDate last) {
      return !from.isAfter(first) && until.filter(last::isAfter).isEmpty();
    }

    /** Whether it stops what {@code wanted} stops. */
    boolean stops(String wanted) {
      return kind.equals(wanted) || kind.equals(HoldCheck.EVERYTHING);
    }
  }

  /** One date of one player; {@code minutes} and {@code swings} as the plan says them. */
  record Dated(
      LocalDate date, String place, int minutes, int swings, int throwing, List<Work> items) {
    Dated {
      items = List.copyOf(items);
    }

    boolean works() {
      return !items.isEmpty();
    }

    /** Swings as said or as the items add up, whichever is more: no sum hides any. */
    int allSwings() {
      return Math.max(swings, items.stream().mapToInt(Work::swings).sum());
    }

    /** Minutes as said or as the items add up, whichever is more. */
    int allMinutes() {
      return Math.max(minutes, items.stream().mapToInt(Work::minutes).sum());
    }

    boolean atHome() {
      return place.equals("home");
    }
  }

  /** One drill on one date. */
  record Work(
      String drill, String ball, String feed, int feet, int reps, int swings, int minutes) {}

  /** How a practice is set up, and how in other ways. */
  record Practice(String group, LocalDate date, List<Station> stations, List<Way> ways) {
    Practice {
      stations = List.copyOf(stations);
      ways = List.copyOf(ways);
    }
  }

  /** The same practice with other grown-ups or elsewhere; {@code swings} by player id. */
  record Way(
      String name, String place, int adults, List<Station> stations, Map<String, Integer> swings) {
    Way {
      stations = List.copyOf(stations);
      swings = Map.copyOf(swings);
    }
  }

  /** A station; {@code drills} are those done there, in any rotation. */
  record Station(int number, boolean adult, List<String> drills) {
    Station {
      drills = List.copyOf(drills);
    }
  }
}
