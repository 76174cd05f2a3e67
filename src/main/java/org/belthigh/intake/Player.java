package org.belthigh.intake;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.belthigh.model.Bats;
import org.belthigh.model.Side;

/**
 * One child of the roster.
 *
 * @param born day of birth
 * @param throwsWith empty where the roster does not say
 * @param sex {@code F} or {@code M}, for growth tables only
 * @param heightCm standing height in centimetres
 * @param language ISO 639 code of the family's language
 * @param homeDays days on which the family can; empty leaves the choice to the tool
 * @param needs what the coach should know, free text
 * @param home where and with what the family can practise
 */
public record Player(
    String id,
    String firstName,
    Optional<String> lastName,
    LocalDate born,
    Bats bats,
    Optional<Side> throwsWith,
    OptionalInt number,
    String group,
    boolean pitches,
    boolean catches,
    Optional<String> sex,
    OptionalDouble heightCm,
    String language,
    Set<DayOfWeek> homeDays,
    Optional<String> needs,
    boolean guest,
    Home home)
    implements Named {
  public Player {
    homeDays = Set.copyOf(homeDays);
  }

  /** A child of whose home the roster says nothing. */
  public Player(
      String id,
      String firstName,
      Optional<String> lastName,
      LocalDate born,
      Bats bats,
      Optional<Side> throwsWith,
      OptionalInt number,
      String group,
      boolean pitches,
      boolean catches,
      Optional<String> sex,
      OptionalDouble heightCm,
      String language,
      Set<DayOfWeek> homeDays,
      Optional<String> needs,
      boolean guest) {
    this(
        id,
        firstName,
        lastName,
        born,
        bats,
        throwsWith,
        number,
        group,
        pitches,
        catches,
        sex,
        heightCm,
        language,
        homeDays,
        needs,
        guest,
        Home.USUAL);
  }

  /** Calendar age in whole years on {@code day}. */
  public int ageOn(LocalDate day) {
    return Period.between(born, day).getYears();
  }
}
