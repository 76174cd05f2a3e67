package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.belthigh.model.Ball;
import org.belthigh.model.Call;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.Origin;
import org.belthigh.model.Place;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.belthigh.model.Timing;
import org.belthigh.model.Went;

/**
 * One logged toss.
 *
 * @param kind how the drill's rows are counted, resolved from the curriculum
 * @param round one countdown, or one visit to a drill; {@code 1} unless said
 * @param order position within the round, from 1; the file order where the log does not say
 * @param side the side the hitter stood on
 * @param called empty where nothing was written down
 * @param field called before the toss
 * @param hit empty on a take
 * @param feet toss distance in feet
 */
public record Toss(
    LocalDate date,
    String player,
    String drill,
    DrillKind kind,
    String round,
    int order,
    Side side,
    Spot zone,
    Optional<Call> called,
    Optional<Field> field,
    boolean swing,
    Optional<Hit> hit,
    Optional<Went> went,
    Optional<Timing> timing,
    Optional<Ball> ball,
    Optional<Feed> feed,
    OptionalDouble feet,
    Optional<Place> place,
    String by,
    Origin origin) {}
