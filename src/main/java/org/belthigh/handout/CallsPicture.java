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

/**
 * The nine spots as the hitter sees them, and balls beside them: in each how many calls were right
 * of how many.
 */
final class CallsPicture {
  private static final double CELL = 50;
  private static final double ROW = 24;
  private static final double FOOT = 16;
  private static final double WORDS = 52;
  private static final double TOP = 2;
  private static final double BALLS = 46;
  private static final double WIDTH = WORDS + 3 * CELL + BALLS;

  private final Voice voice;
  private final Side side;
  private final Map<Spot, Share> calls;
  private final double row;

  CallsPicture(Voice voice, Side side, Map<Spot, Share> calls, Fit fit) {
    this.voice = voice;
    this.side = side;
    this.calls = calls;
    this.row = fit.of(ROW);
  }

  void addTo(Flow flow) {
    flow.picture(WIDTH, TOP + 3 * row + FOOT, alternate(), this::draw);
  }

  private void draw(Pen pen) {
    pen.rect(WORDS, TOP, 3 * CELL, 3 * row, Pen.Stroke.THICK);
    for (int i = 1; i <= 2; i++) {
      pen.line(WORDS + i * CELL, TOP, WORDS + i * CELL, TOP + 3 * row, Pen.Stroke.MEDIUM);
      pen.line(WORDS, TOP + i * row, WORDS + 3 * CELL, TOP + i * row, Pen.Stroke.MEDIUM);
    }
    for (Row height : Row.values()) {
      pen.boldLabel(WORDS - 6, y(height), Align.RIGHT, voice.say("target." + height.id()));
      for (Column column : Column.values()) {
        count(pen, Spot.at(height, column), x(column), y(height));
      }
    }
    double beside = WORDS + 3 * CELL + BALLS / 2;
    pen.boldLabel(beside, y(Row.HIGH), Align.CENTRE, voice.say("target.ball"));
    count(pen, Spot.BALL, beside, y(Row.BELT));
    for (Column column : Column.values()) {
      pen.label(x(column), TOP + 3 * row + 9, Align.CENTRE, voice.say("target." + column.id()));
    }
  }

  private void count(Pen pen, Spot spot, double x, double y) {
    Share share = calls.getOrDefault(spot, Share.none());
    if (!share.isEmpty()) {
      String words = voice.say("season.cell", "made", share.made(), "seen", share.seen());
      pen.label(x, y, Align.CENTRE, words);
    }
  }

  /** "In" is at the left for who stands left of the plate, seen from behind it. */
  private double x(Column column) {
    int place = side == Side.RIGHT ? column.ordinal() : 2 - column.ordinal();
    return WORDS + (place + 0.5) * CELL;
  }

  private double y(Row height) {
    return TOP + (2 - height.ordinal() + 0.5) * row;
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
