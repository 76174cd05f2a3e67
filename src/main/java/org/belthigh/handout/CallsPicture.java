package org.belthigh.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.belthigh.handout.kit.Align;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Pen;
import org.belthigh.model.Column;
import org.belthigh.model.Row;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/** The nine spots as the hitter sees them, in each how many calls were right of how many. */
final class CallsPicture {
  private static final double CELL = 50;
  private static final double ROW = 24;
  private static final double WORDS = 52;
  private static final double TOP = 2;
  private static final double WIDTH = WORDS + 3 * CELL + 2;
  private static final double HEIGHT = TOP + 3 * ROW + 16;

  private final Voice voice;
  private final Side side;
  private final Map<Spot, Share> calls;

  CallsPicture(Voice voice, Side side, Map<Spot, Share> calls) {
    this.voice = voice;
    this.side = side;
    this.calls = calls;
  }

  void addTo(Flow flow) {
    flow.picture(WIDTH, HEIGHT, alternate(), this::draw);
    Share balls = calls.getOrDefault(Spot.BALL, Share.none());
    flow.p(voice.say("season.balls", "made", balls.made(), "seen", balls.seen()));
  }

  private void draw(Pen pen) {
    pen.rect(WORDS, TOP, 3 * CELL, 3 * ROW, Pen.Stroke.THICK);
    for (int i = 1; i <= 2; i++) {
      pen.line(WORDS + i * CELL, TOP, WORDS + i * CELL, TOP + 3 * ROW, Pen.Stroke.MEDIUM);
      pen.line(WORDS, TOP + i * ROW, WORDS + 3 * CELL, TOP + i * ROW, Pen.Stroke.MEDIUM);
    }
    for (Row row : Row.values()) {
      pen.boldLabel(WORDS - 6, y(row), Align.RIGHT, voice.say("target." + row.id()));
      for (Column column : Column.values()) {
        Share share = calls.getOrDefault(Spot.at(row, column), Share.none());
        if (!share.isEmpty()) {
          pen.label(
              x(column),
              y(row),
              Align.CENTRE,
              voice.say("season.cell", "made", share.made(), "seen", share.seen()));
        }
      }
    }
    for (Column column : Column.values()) {
      pen.label(x(column), TOP + 3 * ROW + 9, Align.CENTRE, voice.say("target." + column.id()));
    }
  }

  /** "In" is at the left for who stands left of the plate, seen from behind it. */
  private double x(Column column) {
    int place = side == Side.RIGHT ? column.ordinal() : 2 - column.ordinal();
    return WORDS + (place + 0.5) * CELL;
  }

  private static double y(Row row) {
    return TOP + (2 - row.ordinal() + 0.5) * ROW;
  }

  private String alternate() {
    List<String> parts = new ArrayList<>(List.of(voice.say("picture.hitter")));
    for (Spot spot : Spot.values()) {
      Share share = calls.getOrDefault(spot, Share.none());
      if (!share.isEmpty()) {
        parts.add(
            voice.say(
                "season.cell.alt",
                "spot",
                voice.say("target." + spot.id()),
                "made",
                share.made(),
                "seen",
                share.seen()));
      }
    }
    return String.join(" ", parts);
  }
}
