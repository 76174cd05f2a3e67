package org.belthigh.intake;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.model.Problem;

/**
 * A whole club folder, resolved: no later stage looks anything up in a file. Goes stale when the
 * folder or the catalogue changes.
 *
 * @param players in roster order
 * @param tosses sorted by date, player, drill, round, order, then origin
 * @param unread rows that matter for safety and could not be read; whoever decides fails closed
 * @param problems everything set aside or remarked on, sorted by place
 */
public record ClubRecord(
    Club club,
    List<Player> players,
    List<Event> events,
    List<Toss> tosses,
    List<Tally> tallies,
    List<Outing> outings,
    List<Wellness> wellness,
    List<OtherSport> otherSports,
    List<Placement> placements,
    List<Unread> unread,
    List<Problem> problems) {
  public ClubRecord {
    players = List.copyOf(players);
    events = List.copyOf(events);
    tosses = List.copyOf(tosses);
    tallies = List.copyOf(tallies);
    outings = List.copyOf(outings);
    wellness = List.copyOf(wellness);
    otherSports = List.copyOf(otherSports);
    placements = List.copyOf(placements);
    unread = List.copyOf(unread);
    problems = List.copyOf(problems);
  }

  /** What was known at the end of {@code lastDay}; the calendar stays whole. */
  public ClubRecord upTo(LocalDate lastDay) {
    return new ClubRecord(
        club,
        players,
        events,
        until(tosses, Toss::date, lastDay),
        until(tallies, Tally::date, lastDay),
        until(outings, Outing::date, lastDay),
        until(wellness, Wellness::date, lastDay),
        until(otherSports, OtherSport::date, lastDay),
        until(placements, Placement::date, lastDay),
        unread.stream().filter(u -> u.date().filter(lastDay::isBefore).isEmpty()).toList(),
        problems);
  }

  /**
   * The folder cut by age group: to each group its players, what was written of them, and its
   * calendar. What may be about anybody is with every group.
   *
   * @return by group id; groups without players too
   */
  public Map<String, ClubRecord> byGroup() {
    Map<String, String> groupOf =
        players.stream().collect(Collectors.toMap(Player::id, Player::group));
    Map<String, List<Player>> own = players.stream().collect(Collectors.groupingBy(Player::group));
    Map<String, List<Toss>> tossed = cut(tosses, Toss::player, groupOf);
    Map<String, List<Tally>> tallied = cut(tallies, Tally::player, groupOf);
    Map<String, List<Outing>> thrown = cut(outings, Outing::player, groupOf);
    Map<String, List<Wellness>> felt = cut(wellness, Wellness::player, groupOf);
    Map<String, List<OtherSport>> elsewhere = cut(otherSports, OtherSport::player, groupOf);
    Map<String, List<Placement>> placed = cut(placements, Placement::player, groupOf);
    Map<String, ClubRecord> groups = new LinkedHashMap<>();
    for (Club.Group group : club.groups()) {
      String id = group.id();
      groups.put(
          id,
          new ClubRecord(
              club,
              own.getOrDefault(id, List.of()),
              events.stream().filter(e -> e.concerns(id)).toList(),
              tossed.getOrDefault(id, List.of()),
              tallied.getOrDefault(id, List.of()),
              thrown.getOrDefault(id, List.of()),
              felt.getOrDefault(id, List.of()),
              elsewhere.getOrDefault(id, List.of()),
              placed.getOrDefault(id, List.of()),
              unread.stream()
                  .filter(u -> u.player().map(groupOf::get).filter(g -> !g.equals(id)).isEmpty())
                  .toList(),
              problems));
    }
    return groups;
  }

  private static <T> Map<String, List<T>> cut(
      List<T> rows, Function<T, String> player, Map<String, String> groupOf) {
    return rows.stream()
        .filter(row -> groupOf.containsKey(player.apply(row)))
        .collect(Collectors.groupingBy(row -> groupOf.get(player.apply(row))));
  }

  /** With the tosses and tallies of {@code firstDay} and later only; all else stays whole. */
  public ClubRecord since(LocalDate firstDay) {
    return new ClubRecord(
        club,
        players,
        events,
        tosses.stream().filter(t -> !t.date().isBefore(firstDay)).toList(),
        tallies.stream().filter(t -> !t.date().isBefore(firstDay)).toList(),
        outings,
        wellness,
        otherSports,
        placements,
        unread,
        problems);
  }

  /**
   * What was known at the end of {@code first}, and beside it what can only make an answer
   * stricter: complaints, outings and lost reports dated after it, up to {@code last}. Clearances
   * after {@code first} are left out, since they loosen.
   */
  public ClubRecord foreseen(LocalDate first, LocalDate last) {
    ClubRecord reported = upTo(last);
    return upTo(first)
        .withReports(
            reported.outings,
            reported.wellness.stream()
                .filter(w -> w.kind().holds() || !w.date().isAfter(first))
                .toList(),
            reported.unread);
  }

  /** The same folder with other reports that matter for safety. */
  public ClubRecord withReports(
      List<Outing> outings, List<Wellness> wellness, List<Unread> unread) {
    return new ClubRecord(
        club,
        players,
        events,
        tosses,
        tallies,
        outings,
        wellness,
        otherSports,
        placements,
        unread,
        problems);
  }

  /** The same folder by other rule books: to compare. */
  public ClubRecord by(List<String> ruleBooks) {
    return withClub(club.by(ruleBooks));
  }

  private static <T> List<T> until(List<T> rows, Function<T, LocalDate> date, LocalDate lastDay) {
    Predicate<T> known = row -> !date.apply(row).isAfter(lastDay);
    return rows.stream().filter(known).toList();
  }

  /** The same club with another calendar. */
  public ClubRecord withEvents(List<Event> others) {
    return new ClubRecord(
        club,
        players,
        others,
        tosses,
        tallies,
        outings,
        wellness,
        otherSports,
        placements,
        unread,
        problems);
  }

  /** The same folder under other club settings. */
  public ClubRecord withClub(Club other) {
    return new ClubRecord(
        other,
        players,
        events,
        tosses,
        tallies,
        outings,
        wellness,
        otherSports,
        placements,
        unread,
        problems);
  }

  /** The player with that id. @throws IllegalArgumentException if there is none */
  public Player player(String id) {
    return players.stream()
        .filter(p -> p.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No player '" + id + "' in the club"));
  }
}
