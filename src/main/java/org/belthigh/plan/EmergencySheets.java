package org.belthigh.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.Club;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Phrase;

/** The emergency sheets of a club: one a place, or one to fill in where the file names no place. */
final class EmergencySheets {
  /** Whose source says "not back on the same day". */
  private static final String HEAD = Wellness.Kind.HEAD_INJURY.id();

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
    String head = catalogue.source(catalogue.whoEnds().rows().get(HEAD).source()).shortName();
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
