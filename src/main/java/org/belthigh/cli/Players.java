package org.belthigh.cli;

import java.util.Collection;
import org.belthigh.files.Nearest;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;

/** Players that a command line names. */
final class Players {
  private Players() {}

  /**
   * @throws NothingDone if one of {@code ids} is not in the roster
   */
  static void refuseUnknown(ClubRecord record, Collection<String> ids) {
    refuseUnknown(record.players().stream().map(Player::id).toList(), ids);
  }

  /**
   * @throws NothingDone if one of {@code ids} is not {@code known}
   */
  static void refuseUnknown(Collection<String> known, Collection<String> ids) {
    for (String id : ids) {
      if (!known.contains(id)) {
        throw new NothingDone(
            "player '"
                + id
                + "' is not in the roster; a player is named by the id there.\n"
                + Nearest.to(id, known)
                    .map(near -> "Maybe '" + near + "' is meant.")
                    .orElse("Look the id up in roster.csv."));
      }
    }
  }
}
