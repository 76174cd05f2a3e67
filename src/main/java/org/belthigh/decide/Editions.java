package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.Stricter;
import org.belthigh.intake.Club;

/**
 * A rule book that holds for a club, with the older editions of it. Which of them counts on a day
 * is for the rules to say.
 *
 * @param newestFirst the book itself, then its older editions
 */
record Editions(List<RuleBook> newestFirst) {
  Editions {
    newestFirst = List.copyOf(newestFirst);
  }

  /**
   * All that hold for {@code club} on {@code on}: the books it names; beside a book whose own dates
   * are over, the edition that follows it, so that an old edition never loosens; and beside each,
   * the club's own stricter numbers, if it has any. The strictest wins.
   */
  static List<Editions> of(Club club, Catalogue catalogue, LocalDate on) {
    List<Editions> all = new ArrayList<>();
    for (String id : club.ruleBooks()) {
      RuleBook named = catalogue.ruleBook(id);
      List<RuleBook> editions = catalogue.editions(named);
      Stream<RuleBook> current = editions.stream().filter(b -> b.inForce(on) && newer(b, named));
      Stream.concat(Stream.of(named), current)
          .map(b -> new Editions(editions.subList(editions.indexOf(b), editions.size())))
          .filter(e -> !all.contains(e))
          .forEach(all::add);
    }
    List<Editions> asPublished = List.copyOf(all);
    if (!club.stricter().isNone()) {
      asPublished.forEach(e -> all.add(e.with(club.stricter(), club.name())));
    }
    return all;
  }

  private static boolean newer(RuleBook book, RuleBook than) {
    Optional<LocalDate> end = than.effectiveTo();
    return end.isPresent() && book.effectiveFrom().filter(end.get()::isBefore).isPresent();
  }

  private Editions with(Stricter stricter, String club) {
    return new Editions(newestFirst.stream().map(b -> stricter.over(b, club)).toList());
  }
}
