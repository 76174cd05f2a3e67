package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.model.Origin;

/**
 * Whom a row of the roster names, be it usable or not.
 *
 * @param born empty where the row does not clearly say
 * @param used whether the row gave a player
 */
record RosterRow(
    String id,
    String firstName,
    Optional<String> lastName,
    Optional<LocalDate> born,
    OptionalInt number,
    String group,
    boolean used,
    Origin origin)
    implements Named {

  static RosterRow of(Cells cells, Club club, boolean used) {
    String number = NameBook.plain(cells.text("number"));
    return new RosterRow(
        cells.text("id"),
        cells.text("first_name"),
        Optional.of(cells.text("last_name")).filter(last -> !last.isEmpty()),
        cells.clearDate("born"),
        number.matches("[0-9]{1,3}")
            ? OptionalInt.of(Integer.parseInt(number))
            : OptionalInt.empty(),
        club.groupCalled(cells.text("group")).map(Club.Group::id).orElse(cells.text("group")),
        used,
        cells.origin("id"));
  }

  /** The id as file systems compare it: many do not tell capitals from small letters. */
  String key() {
    return id.toLowerCase(Locale.ROOT);
  }

  /** First and last name, as names are compared. */
  String fullName() {
    return NameBook.plain(firstName + " " + lastName.orElse(""));
  }

  /** Whether both name one child, as far as name and birthday tell. */
  boolean sameChild(RosterRow other) {
    return fullName().equals(other.fullName()) && born.isPresent() && born.equals(other.born);
  }
}
