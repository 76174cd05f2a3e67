package org.belthigh.cli;

import java.util.List;
import org.belthigh.files.Nearest;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Player;

/** Players that a command line names. */
final class Players {
  private Players() {}

  /**
   * The id of the one whom {@code text} names: an id, a shirt number or a name.
   *
   * @throws NothingDone if it is nobody's in the roster, or more than one can be meant
   */
  static String named(ClubRecord record, String text) {
    List<String> ids = Intake.called(record, text).stream().map(Player::id).toList();
    if (ids.isEmpty()) {
      throw unknown(record, text, "by id, shirt number or name");
    }
    if (ids.size() > 1) {
      throw new NothingDone(
          "player '"
              + text
              + "' can be "
              + String.join(" or ", ids)
              + "; a name that more than one goes by is not enough.\n"
              + "Give the id of the one who is meant.");
    }
    return ids.get(0);
  }

  /**
   * @throws NothingDone if {@code id} is not in the roster
   */
  static void refuseUnknown(ClubRecord record, String id) {
    if (record.players().stream().noneMatch(p -> p.id().equals(id))) {
      throw unknown(record, id, "by the id there");
    }
  }

  private static NothingDone unknown(ClubRecord record, String text, String how) {
    List<String> ids = record.players().stream().map(Player::id).toList();
    return new NothingDone(
        "player '"
            + text
            + "' is not in the roster; a player is named "
            + how
            + ".\n"
            + Nearest.to(text, ids)
                .map(near -> "Maybe '" + near + "' is meant.")
                .orElse("Look the player up in the roster."));
  }
}
