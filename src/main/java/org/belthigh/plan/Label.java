package org.belthigh.plan;

import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.model.Bats;
import org.belthigh.model.Side;

/**
 * How sheets name a player: with no more of the last name than tells two of a group apart.
 *
 * @param name the first name; and what tells two of a group apart
 * @param number the shirt's
 * @param language of the family
 * @param age calendar age in whole years on the day the plan is made for
 */
public record Label(
    String id,
    String name,
    OptionalInt number,
    String group,
    int age,
    Bats bats,
    Optional<Side> throwsWith,
    String language) {}
