package org.belthigh.cli;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.belthigh.files.Nearest;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;

/** Age groups that a command line names. */
final class Groups {
  private Groups() {}

  /**
   * The ids of the groups in {@code words}, each an id or a name of club.yaml in any case.
   *
   * @throws NothingDone if one of them is neither
   */
  static Set<String> named(ClubRecord record, Collection<String> words) {
    List<Club.Group> groups = record.club().groups();
    Set<String> ids = new LinkedHashSet<>();
    words.forEach(
        word ->
            ids.add(record.club().groupCalled(word).orElseThrow(() -> unknown(groups, word)).id()));
    return ids;
  }

  private static NothingDone unknown(List<Club.Group> groups, String word) {
    List<String> known = groups.stream().map(Club.Group::id).toList();
    return new NothingDone(
        "group '"
            + word
            + "' is not in club.yaml; the groups there are "
            + String.join(", ", known)
            + ".\n"
            + Nearest.to(word, known)
                .map(near -> "Maybe '" + near + "' is meant.")
                .orElse("Give one of these, or the group's name."));
  }
}
