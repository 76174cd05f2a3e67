package org.belthigh.cli;

import java.util.List;
import java.util.Set;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;

/** Groups so large that planning them takes minutes: said beforehand, with what may be meant. */
final class Crowds {
  private static final int SECONDS_A_MINUTE = 60;

  /** Players from which a wait is felt. */
  private static final int MANY = 150;

  /**
   * Six weeks with all sheets, on two cores that did little else: 200 players took 8 seconds, 600
   * took 24, 1,500 took 72 (2026-12-01), 5,000 nine minutes in an earlier trial. Two terms fit
   * that; a sense of size, and no promise.
   */
  private static final double SECONDS_A_PLAYER = 0.036;

  private static final double SECONDS_A_PAIR = 0.0000144;

  private Crowds() {}

  /**
   * A notice for each such group.
   *
   * @param groups those that are planned; empty for all
   * @param players those that are planned; empty for all
   */
  static List<String> notices(ClubRecord record, Set<String> groups, Set<String> players) {
    return record.club().groups().stream()
        .map(Club.Group::id)
        .filter(id -> groups.isEmpty() || groups.contains(id))
        .filter(id -> players.isEmpty() || size(record, id, players) > 0)
        .filter(id -> size(record, id, Set.of()) >= MANY)
        .map(id -> notice(id, size(record, id, Set.of())))
        .toList();
  }

  private static long size(ClubRecord record, String group, Set<String> players) {
    return record.players().stream()
        .filter(p -> p.group().equals(group))
        .filter(p -> players.isEmpty() || players.contains(p.id()))
        .count();
  }

  private static String notice(String group, long size) {
    double seconds = SECONDS_A_PLAYER * size + SECONDS_A_PAIR * size * size;
    long minutes = (long) Math.ceil(seconds / SECONDS_A_MINUTE);
    return group
        + " has "
        + size
        + " players; planning it takes about "
        + minutes
        + (minutes == 1 ? " minute" : " minutes")
        + " or longer; a group is those who practice together.\n"
        + "Maybe make a group of each team in club.yaml, or plan with --prints overview first.";
  }
}
