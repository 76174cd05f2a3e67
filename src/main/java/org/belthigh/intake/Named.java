package org.belthigh.intake;

import java.util.Optional;
import java.util.OptionalInt;

/** What a child goes by. */
interface Named {
  /** The id, as written; empty where none was. */
  String id();

  /** The first name; empty where none was written. */
  String firstName();

  Optional<String> lastName();

  /** The shirt number. */
  OptionalInt number();
}
