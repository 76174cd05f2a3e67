package org.belthigh.model;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The words of closed lists, worked out once a list: every cell of a log asks for some. */
final class Codes {
  private static final ClassValue<List<String>> PLAIN =
      new ClassValue<>() {
        @Override
        protected List<String> computeValue(Class<?> type) {
          return Arrays.stream(type.getEnumConstants())
              .map(member -> ((Enum<?>) member).name().toLowerCase(Locale.ROOT).replace('_', '-'))
              .toList();
        }
      };

  private static final ClassValue<Map<String, Object>> MEMBERS =
      new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> type) {
          Map<String, Object> members = new LinkedHashMap<>();
          for (Object member : type.getEnumConstants()) {
            members.putIfAbsent(((Coded) member).id(), member);
          }
          return members;
        }
      };

  private Codes() {}

  /** The name of {@code member} in lower case, hyphens between its parts. */
  static String of(Enum<?> member) {
    return PLAIN.get(member.getDeclaringClass()).get(member.ordinal());
  }

  /** The member of {@code type} with that word; null where there is none. */
  static <E extends Enum<E> & Coded> E member(Class<E> type, String word) {
    return type.cast(MEMBERS.get(type).get(word));
  }
}
