package org.belthigh.decide;

import java.util.Map;

/**
 * A fact for the rules of the pack {@code arm}: a number that an edition of a rule book sets for an
 * age. Public only because the rules are built as a model of their own.
 *
 * @param edition the edition's key
 * @param what what is limited, such as {@code pitches-in-a-day}; see {@link ArmTables}
 * @param ageFrom youngest age, in whole years
 * @param ageTo oldest age
 * @param days the stretch of days over which it is counted; 1 for the day itself
 * @param most the number
 * @param printed false where the book has no row for the age, and 0 stands for it
 */
public record Limit(
    String edition, String what, int ageFrom, int ageTo, int days, int most, boolean printed)
    implements Figure {
  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("most", most);
  }
}
