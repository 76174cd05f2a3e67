package org.belthigh.catalogue;

import java.util.List;
import org.belthigh.files.Fields;

/** How far a rule, a parameter or a curriculum is looked over. */
final class Status {
  private static final List<String> ALL = List.of("draft", "reviewed", "retired");

  private Status() {}

  /** The value of {@code status}, one of the closed list. */
  static String of(Fields f) {
    String status = f.text("status");
    if (!ALL.contains(status)) {
      f.refuse(
          "status",
          "'" + status + "' is not known",
          "status must be one of " + String.join(", ", ALL),
          "Choose one of these.");
    }
    return status;
  }
}
