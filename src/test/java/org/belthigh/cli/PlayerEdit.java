package org.belthigh.cli;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.Set;
import org.belthigh.intake.Home;
import org.belthigh.intake.Player;
import org.belthigh.model.Space;

/** A row of the roster that is changed in one thing. */
final class PlayerEdit {
  private final Player from;
  private String id;
  private String name;
  private LocalDate born;
  private OptionalInt number;
  private String group;
  private String language;
  private Set<DayOfWeek> days;
  private Home home;

  private PlayerEdit(Player from) {
    this.from = from;
    id = from.id();
    name = from.firstName();
    born = from.born();
    number = from.number();
    group = from.group();
    language = from.language();
    days = from.homeDays();
    home = from.home();
  }

  static PlayerEdit of(Player player) {
    return new PlayerEdit(player);
  }

  PlayerEdit id(String other) {
    id = other;
    return this;
  }

  PlayerEdit name(String other) {
    name = other;
    return this;
  }

  PlayerEdit younger(int years) {
    born = born.plusYears(years);
    return this;
  }

  PlayerEdit number(int other) {
    number = OptionalInt.of(other);
    return this;
  }

  PlayerEdit group(String other) {
    group = other;
    return this;
  }

  /** Spanish, or English where it was Spanish. */
  PlayerEdit otherLanguage() {
    language = language.equals("es") ? "en" : "es";
    return this;
  }

  PlayerEdit days(Set<DayOfWeek> other) {
    days = other;
    return this;
  }

  PlayerEdit home(Space space) {
    home = new Home(space, home.gear());
    return this;
  }

  PlayerEdit gear(Home.Gear only) {
    home = new Home(home.space(), Set.of(only));
    return this;
  }

  Player get() {
    return new Player(
        id,
        name,
        from.lastName(),
        born,
        from.bats(),
        from.throwsWith(),
        number,
        group,
        from.pitches(),
        from.catches(),
        from.sex(),
        from.heightCm(),
        language,
        days,
        from.needs(),
        from.guest(),
        home);
  }
}
