package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Club;

/**
 * The rule books that bind on a day: each that the club names, and where its own dates are over by
 * then, the edition that came after it as well; all with the club's stricter numbers.
 */
final class BooksOnDay {
  /** A book and its older editions, newest first. */
  record Series(List<RuleBook> editions) {
    Series {
      editions = List.copyOf(editions);
    }

    RuleBook named() {
      return editions.get(0);
    }

    /** The edition in force on {@code day}; the book itself where none was. */
    RuleBook on(LocalDate day) {
      return editions.stream().filter(b -> b.inForce(day)).findFirst().orElse(named());
    }
  }

  private BooksOnDay() {}

  static List<Series> of(Catalogue catalogue, Club club, List<String> ids, LocalDate day) {
    List<Series> all = new ArrayList<>();
    for (String id : ids) {
      RuleBook named = catalogue.ruleBook(id);
      List<RuleBook> editions = catalogue.editions(named);
      Stream.concat(Stream.of(named), editions.stream().filter(b -> follows(b, named, day)))
          .map(b -> editions.subList(editions.indexOf(b), editions.size()))
          .map(e -> e.stream().map(b -> club.stricter().over(b, club.name())).toList())
          .map(Series::new)
          .forEach(all::add);
    }
    return all;
  }

  private static boolean follows(RuleBook later, RuleBook named, LocalDate day) {
    return later.inForce(day)
        && named
            .effectiveTo()
            .flatMap(end -> later.effectiveFrom().filter(end::isBefore))
            .isPresent();
  }
}
