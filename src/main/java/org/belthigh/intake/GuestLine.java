package org.belthigh.intake;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.belthigh.intake.ShortMarks.Word;
import org.belthigh.model.Bats;

/** Reads the line that introduces a guest: {@code guest NAME BORN-OR-AGE SIDE [NUMBER]}. */
final class GuestLine {
  private static final int YOUNGEST = 5;
  private static final int OLDEST = 19;
  private static final int LONGEST_ID = 40;

  private final Club club;
  private final Dates dates;

  GuestLine(Club club, Dates dates) {
    this.club = club;
    this.dates = dates;
  }

  /**
   * The guest of a line; empty where it does not say who the guest is.
   *
   * @param on the day of the practice
   * @param group the group that the day's line names, in whatever case
   */
  Optional<Player> read(List<Word> words, LocalDate on, Optional<String> group) {
    Optional<LocalDate> born = words.size() < 4 ? Optional.empty() : born(words.get(2).text(), on);
    Optional<Bats> bats =
        words.size() < 4 ? Optional.empty() : Sides.parseBats(words.get(3).text());
    OptionalInt number = words.size() == 5 ? number(words.get(4)) : OptionalInt.empty();
    boolean whole = words.size() == 4 || (words.size() == 5 && number.isPresent());
    boolean named = words.size() > 1 && !plainId(words.get(1)).isEmpty();
    return whole && named && born.isPresent() && bats.isPresent()
        ? Optional.of(guest(words.get(1), born.get(), bats.get(), number, known(group)))
        : Optional.empty();
  }

  private static OptionalInt number(Word word) {
    return Numeral.parse(word.text().replace("#", "")).filter(Numeral::whole).stream()
        .mapToInt(n -> (int) n.value())
        .filter(n -> n >= 0 && n <= 999)
        .findFirst();
  }

  private String known(Optional<String> group) {
    return club.groups().stream()
        .map(Club.Group::id)
        .filter(id -> group.filter(id::equalsIgnoreCase).isPresent())
        .findFirst()
        .orElse(club.groups().get(0).id());
  }

  private static String plainId(Word name) {
    return Vocabulary.plain(name.text(), '-');
  }

  private Player guest(Word name, LocalDate born, Bats bats, OptionalInt number, String group) {
    String id = "guest-" + plainId(name);
    return new Player(
        id.substring(0, Math.min(LONGEST_ID, id.length())),
        name.text(),
        Optional.empty(),
        born,
        bats,
        Optional.empty(),
        number,
        group,
        false,
        false,
        Optional.empty(),
        OptionalDouble.empty(),
        club.languages().get(0),
        Set.of(),
        Optional.empty(),
        true);
  }

  /** A day of birth; an age is taken as just reached, for younger is safer. */
  private Optional<LocalDate> born(String text, LocalDate on) {
    Optional<LocalDate> born = dates.parse(text);
    Optional<LocalDate> aged =
        Numeral.parse(text).filter(Numeral::whole).map(n -> on.minusYears((long) n.value()));
    return born.or(() -> aged)
        .filter(
            b -> {
              int age = Period.between(b, on).getYears();
              return age >= YOUNGEST && age <= OLDEST;
            });
  }
}
