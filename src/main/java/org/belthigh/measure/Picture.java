package org.belthigh.measure;

import java.util.List;
import org.belthigh.model.Coded;
import org.belthigh.model.Column;
import org.belthigh.model.Grain;
import org.belthigh.model.Row;
import org.belthigh.model.Spot;

/** How far apart two answers lie on the picture of the nine spots, at one grain. */
final class Picture {
  /** A ball against a spot: the log does not say where the ball was, so the farthest. Ours. */
  private static final int BALL_STEPS = 2;

  private final Grain grain;

  private Picture(Grain grain) {
    this.grain = grain;
  }

  static Picture of(Grain grain) {
    return new Picture(grain);
  }

  /**
   * Steps from one answer to another, 0 to 2: rows or columns between them, or moves of a chess
   * king on the nine spots; a ball is 2 from every spot.
   */
  int steps(String one, String other) {
    if (one.equals(other)) {
      return 0;
    }
    if (one.equals(Spot.BALL.id()) || other.equals(Spot.BALL.id())) {
      return BALL_STEPS;
    }
    return Math.max(Math.abs(height(one) - height(other)), Math.abs(width(one) - width(other)));
  }

  private int height(String answer) {
    return switch (grain) {
      case NINE -> spot(answer).row().orElseThrow().ordinal();
      case ROW -> index(Row.values(), answer);
      case COLUMN, STRIKE -> 0;
    };
  }

  private int width(String answer) {
    return switch (grain) {
      case NINE -> spot(answer).column().orElseThrow().ordinal();
      case COLUMN -> index(Column.values(), answer);
      case ROW, STRIKE -> 0;
    };
  }

  private static Spot spot(String answer) {
    return Coded.find(Spot.class, answer).orElseThrow();
  }

  private static int index(Coded[] members, String answer) {
    return List.of(members).stream().map(Coded::id).toList().indexOf(answer);
  }
}
