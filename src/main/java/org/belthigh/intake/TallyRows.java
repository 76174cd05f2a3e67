package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Ball;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;

/** Reads logs with a drill a row. */
final class TallyRows {
  static final String COLUMNS =
      "date* player* drill* measure* made* of* bats ball feed feet place by group";

  private static final int MOST = 999;
  private static final int USUAL_START = 12;

  private final Bearings bearings;

  TallyRows(Bearings bearings) {
    this.bearings = bearings;
  }

  Optional<Tally> row(Cells cells) {
    Optional<LocalDate> date = bearings.day(cells);
    Optional<Player> player = bearings.player(cells);
    Optional<Drill> drill = bearings.drill(cells);
    Optional<MeasureKind> measure = cells.needWord("measure", MeasureKind.class);
    OptionalInt made = cells.needWhole("made", 0, MOST);
    OptionalInt of = cells.needWhole("of", 1, MOST);
    Optional<Side> side =
        player.filter(p -> cells.has("bats")).flatMap(p -> TossRows.side(cells, p));
    cells.word("ball", Ball.class);
    cells.word("feed", Feed.class);
    cells.number("feet", 0, 400);
    cells.word("place", TossRows.PLACES);
    if (!cells.sound()) {
      return Optional.empty();
    }
    if (measure.orElseThrow() == MeasureKind.COUNTDOWN) {
      checkCountdown(cells, drill.orElseThrow(), made.getAsInt(), of.getAsInt());
    } else if (measure.get() == MeasureKind.HARD_HIT && !hardHits(drill.orElseThrow())) {
      cells.fault(
          "measure",
          "hard hits of " + drill.get().id() + " are not counted by a tally",
          "hard-hit is for drills about hitting it hard that are no countdown",
          "Maybe another drill or measure is meant.");
    } else if (made.getAsInt() > of.getAsInt()) {
      cells.fault(
          "made",
          made.getAsInt() + " made of " + of.getAsInt(),
          "made must be 0 to " + of.getAsInt(),
          "Maybe made and of are swapped.");
    }
    return cells.sound()
        ? Optional.of(
            new Tally(
                date.orElseThrow(),
                player.orElseThrow().id(),
                drill.orElseThrow().id(),
                measure.orElseThrow(),
                made.getAsInt(),
                of.getAsInt(),
                side.or(() -> player.flatMap(p -> p.bats().side())),
                cells.text("by"),
                cells.origin()))
        : Optional.empty();
  }

  /** Whether each swing of a drill is hard or not, and nothing else is counted. */
  static boolean hardHits(Drill drill) {
    return drill.kind() == DrillKind.NONE && drill.skill() == Skill.DRIVE && drill.swing();
  }

  /** A finished round takes at least half as many swings as the start count, at most as many. */
  private static void checkCountdown(Cells cells, Drill drill, int score, int start) {
    int usual = drill.kind() == DrillKind.COUNTDOWN ? drill.startCount() : USUAL_START;
    int fewest = (usual + 1) / 2;
    if (start != usual) {
      cells.fault(
          "of",
          "the count starts at " + start,
          "of must be the start count, " + usual,
          "Maybe the number of tosses was written.");
    }
    if (score < fewest || score > usual) {
      cells.fault(
          "made",
          "a score of " + score + " cannot be",
          "made must be the swings used, " + fewest + " to " + usual,
          "Maybe the round was not finished; then leave the row out.");
    }
  }
}
