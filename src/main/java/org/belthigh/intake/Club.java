package org.belthigh.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.catalogue.Stricter;

/**
 * {@code club.yaml}, resolved.
 *
 * @param paper {@code letter} or {@code a4}
 * @param languages ISO 639 codes, the club's own language first
 * @param ruleBooks ids of rule books that exist; the strictest wins
 * @param curriculum id of a curriculum that exists
 * @param equipment how many of each thing there are; empty where the file does not say
 * @param groups who practises together, in file order
 * @param stricter numbers of the club's own, none of them looser than a rule book it names
 */
public record Club(
    String name,
    String paper,
    List<String> languages,
    List<String> ruleBooks,
    LocalDate seasonFirst,
    LocalDate seasonLast,
    List<Group> groups,
    String curriculum,
    Map<String, Integer> equipment,
    List<Venue> places,
    Optional<Emergency> emergency,
    Stricter stricter) {
  public Club {
    languages = List.copyOf(languages);
    ruleBooks = List.copyOf(ruleBooks);
    groups = List.copyOf(groups);
    equipment = Map.copyOf(equipment);
    places = List.copyOf(places);
  }

  /** The same club, at each of whose places so many stations can run at once. */
  public Club withStations(int number) {
    return with(
        ruleBooks,
        groups,
        places.stream()
            .map(v -> new Venue(v.id(), v.name(), v.cage(), v.address(), v.aed(), number, v.note()))
            .toList());
  }

  /** The same club, where so many grown-ups toss at a practice that does not say. */
  public Club withTossers(int number) {
    return with(ruleBooks, groups.stream().map(g -> g.withTossers(number)).toList(), places);
  }

  /** The same club by other rule books, its own stricter numbers kept: to compare. */
  public Club by(List<String> books) {
    return with(books, groups, places);
  }

  private Club with(List<String> books, List<Group> otherGroups, List<Venue> venues) {
    return new Club(
        name,
        paper,
        languages,
        books,
        seasonFirst,
        seasonLast,
        otherGroups,
        curriculum,
        equipment,
        venues,
        emergency,
        stricter);
  }

  /** A club without stricter numbers of its own. */
  public Club(
      String name,
      String paper,
      List<String> languages,
      List<String> ruleBooks,
      LocalDate seasonFirst,
      LocalDate seasonLast,
      List<Group> groups,
      String curriculum,
      Map<String, Integer> equipment,
      List<Venue> places,
      Optional<Emergency> emergency) {
    this(
        name,
        paper,
        languages,
        ruleBooks,
        seasonFirst,
        seasonLast,
        groups,
        curriculum,
        equipment,
        places,
        emergency,
        Stricter.NONE);
  }

  /**
   * The group that a word of a file or of a command line means: by its id, else by id or name
   * whatever the capitals, blanks and hyphens ({@code U10}, {@code U-10}, {@code under 10}). Empty
   * where none fits, and where several do.
   */
  public Optional<Group> groupCalled(String word) {
    return groups.stream()
        .filter(g -> g.id().equals(word))
        .findFirst()
        .or(() -> only(groups.stream().filter(g -> bare(g.id()).equals(bare(word))).toList()))
        .or(() -> only(groups.stream().filter(g -> bare(g.name()).equals(bare(word))).toList()));
  }

  private static Optional<Group> only(List<Group> fitting) {
    return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  /** Letters and digits alone, as names are compared. */
  private static String bare(String name) {
    return Vocabulary.plain(name, '-').replace("-", "");
  }

  /** An age group. {@code ageFrom} to {@code ageTo} in whole years, both included. */
  public record Group(
      String id, String name, int ageFrom, int ageTo, boolean softball, int tossers) {
    Group withTossers(int number) {
      return new Group(id, name, ageFrom, ageTo, softball, number);
    }
  }

  /**
   * A field or a cage.
   *
   * @param aed where the defibrillator is; empty where the file does not say
   * @param stations how many can run at once
   * @param note for the ambulance, about this place; empty where the file does not say
   */
  public record Venue(
      String id,
      String name,
      boolean cage,
      String address,
      String aed,
      int stations,
      String note) {}

  /** Whom to call, and who does it. */
  public record Emergency(String call, String who, String note) {}

  /** The group with that id. @throws IllegalArgumentException if there is none */
  public Group group(String id) {
    return groups.stream()
        .filter(g -> g.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No group '" + id + "' in the club"));
  }
}
