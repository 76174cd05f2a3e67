package org.belthigh.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.belthigh.catalogue.Step;
import org.belthigh.model.Skill;

/** Reads other sport and the coach's placements. */
final class OtherRows {
  static final String SPORT_COLUMNS = "date* player* hours* what";
  static final String PLACEMENT_COLUMNS = "date* player* skill* step* by* reason*";

  private final Bearings bearings;

  OtherRows(Bearings bearings) {
    this.bearings = bearings;
  }

  Optional<OtherSport> sport(Cells cells) {
    Optional<LocalDate> date = bearings.day(cells);
    Optional<Player> player = bearings.player(cells);
    cells.need("hours", "a number from 0 to 24");
    OptionalDouble hours = cells.number("hours", 0, 24);
    return cells.sound()
        ? Optional.of(
            new OtherSport(
                date.orElseThrow(),
                player.orElseThrow().id(),
                hours.getAsDouble(),
                cells.text("what"),
                cells.origin()))
        : Optional.empty();
  }

  Optional<Placement> placement(Cells cells) {
    Optional<LocalDate> date = bearings.day(cells);
    Optional<Player> player = bearings.player(cells);
    Optional<Skill> skill = cells.needWord("skill", Skill.class);
    Optional<Step> step = skill.flatMap(s -> step(cells, s));
    String by = cells.needText("by", "who said so");
    String reason = cells.needText("reason", "why, in a few words");
    return cells.sound()
        ? Optional.of(
            new Placement(
                date.orElseThrow(),
                player.orElseThrow().id(),
                skill.orElseThrow(),
                step.orElseThrow().id(),
                by,
                reason,
                cells.origin()))
        : Optional.empty();
  }

  private Optional<Step> step(Cells cells, Skill skill) {
    List<Step> steps =
        Optional.ofNullable(bearings.curriculum().ladders().get(skill))
            .map(ladder -> ladder.steps())
            .orElse(List.of());
    List<String> ids = steps.stream().map(Step::id).toList();
    String allowed = "a step of " + skill.id() + ": " + Cells.oneOf(ids);
    cells.need("step", allowed);
    return cells.parsed(
        "step", allowed, ids, id -> steps.stream().filter(s -> s.id().equals(id)).findFirst());
  }
}
