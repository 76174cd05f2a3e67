package org.belthigh.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.Club;
import org.belthigh.model.Phrase;

/** The emergency sheets of a club: one a place, or one to fill in where the file names no place. */
final class EmergencySheets {
  /** Source of "not back on the same day": the rule for a hit to the head. */
  private static final String HEAD_RULE = "HLD-001";

  private final Catalogue catalogue;
  private final Club club;

  EmergencySheets(Catalogue catalogue, Club club) {
    this.catalogue = catalogue;
    this.club = club;
  }

  List<EmergencySheet> all() {
    return club.places().isEmpty()
        ? List.of(sheet(Optional.empty()))
        : club.places().stream().map(Optional::of).map(this::sheet).toList();
  }

  private EmergencySheet sheet(Optional<Club.Venue> venue) {
    return new EmergencySheet(
        said(venue, Club.Venue::name),
        said(venue, Club.Venue::address),
        said(venue, Club.Venue::aed),
        said(venue, Club.Venue::note),
        said(club.emergency(), Club.Emergency::call),
        said(club.emergency(), Club.Emergency::who),
        said(club.emergency(), Club.Emergency::note),
        phrases("emergency.job.", "stays", "aed", "gate", "others", "family"),
        phrases("emergency.step.", "look", "wake", "chest", "head", "heat", "storm"),
        phrases("emergency.after.", "told", "family", "written"),
        sources());
  }

  private List<Phrase> sources() {
    String head = catalogue.source(catalogue.rules().get(HEAD_RULE).source()).shortName();
    return List.of(
        Phrase.of("emergency.source", "head", head), Phrase.of("emergency.source.first"));
  }

  private static List<Phrase> phrases(String stem, String... names) {
    return Stream.of(names).map(name -> Phrase.of(stem + name)).toList();
  }

  /** A text of the file; empty where it is blank or where there is nothing to ask. */
  private static <T> Optional<String> said(Optional<T> from, Function<T, String> text) {
    return from.map(text).filter(t -> !t.isBlank());
  }
}
