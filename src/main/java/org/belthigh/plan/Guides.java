package org.belthigh.plan;

import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Growth;
import org.belthigh.intake.Club;
import org.belthigh.model.Grain;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/** The pages that say how a card is read: one for each language that a group's families have. */
final class Guides {
  private static final int MONTHS = 12;

  private Guides() {}

  /**
   * The pages of a group.
   *
   * @param languages of the families, in roster order; the club's where the group has no players
   */
  static List<Guide> of(Club.Group group, Growth growth, List<String> languages) {
    SpotPicture picture = picture(group, growth);
    return languages.stream().distinct().map(language -> new Guide(language, picture)).toList();
  }

  /** A child in the middle of the group's ages, of the median height (source: cdc-2000). */
  private static SpotPicture picture(Club.Group group, Growth growth) {
    long months = MONTHS * (group.ageFrom() + group.ageTo() + 1L) / 2;
    return new SpotPicture(
        Grain.NINE,
        Side.RIGHT,
        List.of(Spot.BELT_MIDDLE.id()),
        Body.rows(growth.median(Optional.empty(), months)),
        true,
        true);
  }
}
