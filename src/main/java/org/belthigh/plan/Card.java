package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;

/**
 * One player, one week, one page.
 *
 * @param first first day of the week
 * @param last last day of the week
 * @param aim one sentence
 * @param cue one cue
 * @param week what is other than usual in this week; empty in a usual one
 * @param things at most three; empty in a week without work
 * @param picture empty where no spot is called this week
 * @param movesOn what moves the player on; empty where nothing is open
 * @param wentWell one sentence from the log
 * @param hold what is on hold and who can end it, in the family's words; empty where nothing is
 * @param open the same for the eyes of others: no cause
 */
public record Card(
    LocalDate first,
    LocalDate last,
    Phrase aim,
    LocalText cue,
    Optional<Phrase> week,
    List<Thing> things,
    Optional<SpotPicture> picture,
    List<Phrase> movesOn,
    Phrase wentWell,
    ArmBox arm,
    List<Phrase> hold,
    List<Phrase> open) {
  public Card {
    things = List.copyOf(things);
    movesOn = List.copyOf(movesOn);
    hold = List.copyOf(hold);
    open = List.copyOf(open);
    if (things.size() > 3) {
      throw new IllegalArgumentException("A card has at most three things to do, not " + things);
    }
  }

  /** All that is said for safety, in the family's words: holds, then the arm. */
  public List<Phrase> cautions() {
    return Stream.of(hold, arm.lines(), arm.ends()).flatMap(List::stream).distinct().toList();
  }

  /** This card for the eyes of others: no cause of a hold, and not who can end it. */
  Card inTheOpen() {
    return new Card(
        first,
        last,
        aim,
        cue,
        week,
        things,
        picture,
        movesOn,
        wentWell,
        arm.inTheOpen(),
        open,
        open);
  }

  /**
   * One thing to do.
   *
   * @param days on which it is done, one box each
   * @param goodEnough what is good enough
   */
  public record Thing(
      List<LocalDate> days,
      Place place,
      LocalText drill,
      Ball ball,
      Feed feed,
      int feet,
      int reps,
      int swings,
      Phrase goodEnough) {
    public Thing {
      days = List.copyOf(days);
    }
  }
}
