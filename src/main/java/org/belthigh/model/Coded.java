package org.belthigh.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A closed list whose members have a word in files: lower case, hyphens between parts. */
public interface Coded {
  /** The member's word in files, such as {@code front-toss}. */
  default String id() {
    return Codes.of((Enum<?>) this);
  }

  /** The member of {@code type} that {@code word} names, blanks and case aside, or empty. */
  static <E extends Enum<E> & Coded> Optional<E> find(Class<E> type, String word) {
    String wanted = word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    return Optional.ofNullable(Codes.member(type, wanted));
  }

  /** The words of {@code type} in their order, for a message: {@code L, R, S}. */
  static <E extends Enum<E> & Coded> String words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Coded::id).collect(Collectors.joining(", "));
  }
}
