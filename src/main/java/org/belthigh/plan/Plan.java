package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.history.Handed;
import org.belthigh.intake.LaterRow;
import org.belthigh.model.Problem;

/**
 * Everything the prints of one run say, and nothing they would have to look up.
 *
 * @param paper {@code letter} or {@code a4}
 * @param language the club's own language, for sheets that are not a family's
 * @param from first day that is planned
 * @param weeks 1 to 16
 * @param curriculum id and version, as the footer says them
 * @param ruleBooks ids of the rule books in use, which say the edition, such as {@code
 *     pitch-smart-2018}
 * @param players in roster order
 * @param groups in the club's order
 * @param laterRows reports dated after {@code from}, by date and place
 * @param setAside what was wrong in the input
 */
public record Plan(
    String club,
    String paper,
    String language,
    LocalDate from,
    int weeks,
    String curriculum,
    List<String> ruleBooks,
    List<PlayerPlan> players,
    List<GroupPlan> groups,
    List<LaterRow> laterRows,
    List<Problem> setAside) {
  public Plan {
    laterRows = List.copyOf(laterRows);
    ruleBooks = List.copyOf(ruleBooks);
    players = List.copyOf(players);
    groups = List.copyOf(groups);
    setAside = List.copyOf(setAside);
  }

  /** How sheets name that player; the id where the player is not in this plan. */
  public String name(String id) {
    return players.stream()
        .map(PlayerPlan::who)
        .filter(who -> who.id().equals(id))
        .findFirst()
        .map(Label::name)
        .orElse(id);
  }

  /** The first week as it is handed out, to be looked back at when the next plan is made. */
  public Handed handedOut() {
    LocalDate end = from.plusDays(7);
    List<Handed.Session> sessions = new ArrayList<>();
    List<Handed.Stood> steps = new ArrayList<>();
    for (PlayerPlan player : players) {
      String id = player.who().id();
      player.days().stream()
          .filter(d -> d.date().isBefore(end))
          .forEach(d -> d.items().forEach(i -> sessions.add(session(id, d, i))));
      player.decisions().forEach(d -> steps.add(stood(id, d)));
    }
    return new Handed(from, sessions, steps);
  }

  private static Handed.Session session(String player, Day day, Item item) {
    return new Handed.Session(
        day.date(),
        player,
        day.place().id(),
        item.drill(),
        item.reps(),
        item.swings(),
        item.minutes());
  }

  private static Handed.Stood stood(String player, DecisionLine line) {
    return new Handed.Stood(
        player, line.skill().id(), line.next().orElse(line.step()), line.outcome().id());
  }
}
