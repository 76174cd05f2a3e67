package org.belthigh.plan;

import java.util.List;
import org.belthigh.model.Phrase;

/**
 * A blank sheet to write on: one drill, a line a player.
 *
 * @param players names printed in; spare lines follow for guests
 * @param tosses boxes per player
 * @param marks what one mark in a box means
 * @param typed what may be written in a box in place of a mark, as it is typed later
 * @param who who writes
 */
public record LogSheet(
    DrillText drill,
    List<Label> players,
    int tosses,
    List<Phrase> marks,
    Phrase typed,
    Phrase who) {
  public LogSheet {
    players = List.copyOf(players);
    marks = List.copyOf(marks);
  }
}
