package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.belthigh.intake.Club;
import org.belthigh.intake.Event;
import org.belthigh.intake.Player;
import org.belthigh.model.Spot;

/** The evaluation day of a group. */
final class EvaluationSheets {
  /**
   * What each hitter gets: all three heights and all three widths, more at the belt, two to let go.
   * Ten a hitter take fourteen hitters about an hour. Ours.
   */
  private static final List<Spot> TOSSES =
      List.of(
          Spot.LOW_MIDDLE,
          Spot.LOW_AWAY,
          Spot.BELT_IN,
          Spot.BELT_MIDDLE,
          Spot.BELT_MIDDLE,
          Spot.BELT_AWAY,
          Spot.HIGH_IN,
          Spot.HIGH_MIDDLE,
          Spot.BALL,
          Spot.BALL);

  /** How far ahead an evaluation day is looked for. */
  private static final int DAYS_AHEAD = 366;

  private final Season season;
  private final Stops stops;
  private final LocalDate from;
  private final boolean screen;

  /**
   * The sheets of one group.
   *
   * @param screen whether the club has a screen to toss from
   */
  EvaluationSheets(Season season, Stops stops, LocalDate from, boolean screen) {
    this.screen = screen;
    this.season = season;
    this.stops = stops;
    this.from = from;
  }

  EvaluationSheet of(Club.Group group, List<Player> players, List<Label> labels) {
    Map<String, Label> names = labels.stream().collect(Collectors.toMap(Label::id, l -> l));
    Optional<LocalDate> day = day();
    return new EvaluationSheet(
        day,
        script("evaluation " + group.id() + day.map(d -> " " + d).orElse("")),
        players.stream()
            .map(p -> new EvaluationSheet.Hitter(names.get(p.id()), may(p, day.orElse(from))))
            .toList(),
        screen);
  }

  /** The tosses in an order that {@code seed} shuffles. */
  private static List<Spot> script(String seed) {
    List<Spot> script = new ArrayList<>(TOSSES);
    Collections.shuffle(script, new Random(TossScript.seed(seed)));
    return script;
  }

  private Optional<LocalDate> day() {
    return from.datesUntil(from.plusDays(DAYS_AHEAD))
        .filter(d -> season.practice(d).filter(e -> e.kind() == Event.Kind.EVALUATION).isPresent())
        .findFirst();
  }

  private EvaluationSheet.May may(Player player, LocalDate day) {
    if (stops.all(player, day)) {
      return EvaluationSheet.May.NOTHING;
    }
    return stops.swings(player, day) ? EvaluationSheet.May.CALL : EvaluationSheet.May.SWING;
  }
}
