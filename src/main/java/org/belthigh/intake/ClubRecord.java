package org.belthigh.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
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
