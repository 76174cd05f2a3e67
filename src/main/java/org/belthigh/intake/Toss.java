package org.belthigh.intake;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.belthigh.model.Ball;
import org.belthigh.model.Call;
import org.belthigh.model.Coded;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
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
 * @param startCount where a countdown of this drill starts, 12 unless the curriculum says otherwise
 * @param watched whether the drill is done without a swing, so that a take is no choice
 * @param round one countdown, or one visit to a drill; {@code 1} unless said
 * @param order position within the round, from 1; the file order where the log does not say
 * @param side the side the hitter stood on
 * @param nearEdge whether the log says that the ball was near the edge of the spots, where nobody
 *     can blame a choice; no unless said
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
    int startCount,
    boolean watched,
    String round,
    int order,
    Side side,
    Spot zone,
    boolean nearEdge,
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
    Origin origin) {
  /** A copy at that place in its round. */
  Toss withOrder(int newOrder) {
    return new Toss(
        date,
        player,
        drill,
        kind,
        startCount,
        watched,
        round,
        newOrder,
        side,
        zone,
        nearEdge,
        called,
        field,
        swing,
        hit,
        went,
        timing,
        ball,
        feed,
        feet,
        place,
        by,
        origin);
  }

  /**
   * What was seen, by column and in the words of the files, empty cells left out: two rows for one
   * toss agree where it is the same.
   */
  Map<String, String> seen() {
    Map<String, String> seen = new LinkedHashMap<>();
    seen.put("bats", side.letter());
    seen.put("zone", zone.id());
    seen.put("near", nearEdge ? "yes" : "");
    seen.put("called", called.map(Call::id).orElse(""));
    seen.put("field", id(field));
    seen.put("swing", swing ? "yes" : "no");
    seen.put("hit", id(hit));
    seen.put("went", id(went));
    seen.put("timing", id(timing));
    seen.put("ball", id(ball));
    seen.put("feed", id(feed));
    seen.put("feet", feet.isPresent() ? Double.toString(feet.getAsDouble()) : "");
    seen.put("place", id(place));
    seen.values().removeIf(String::isEmpty);
    return seen;
  }

  private static String id(Optional<? extends Coded> word) {
    return word.map(Coded::id).orElse("");
  }

  /** Which toss it is: the rows of one player that share it were marked by different people. */
  public record Key(LocalDate date, String player, String drill, String round, int order) {}

  /** Which toss it is. */
  public Key key() {
    return new Key(date, player, drill, round, order);
  }

  /**
   * Whether this toss is counted in {@code measure}: a call at the nine-spot grain, a belt-high
   * spot that the called field does not rule out, a ball, any toss of a countdown, a swing of a
   * field call.
   */
  public boolean countsFor(MeasureKind measure) {
    return switch (measure) {
      case ZONE_RECOGNITION -> answer(Grain.NINE).isPresent();
      case MIDDLE_TAKE -> zone.beltHigh() && wanted();
      case BALL_SWING -> !zone.strike();
      case COUNTDOWN -> kind == DrillKind.COUNTDOWN;
      case HARD_HIT -> swing && hit.isPresent();
      case FIELD_CALL -> kind == DrillKind.FIELD_CALL && swing;
    };
  }

  /**
   * Whether this belt-high toss is no fault to take, because the field that was called does not
   * want the spot.
   */
  public boolean exemptByField() {
    return zone.beltHigh() && !wanted();
  }

  /**
   * What the hitter answered at {@code grain}, in the words of {@link Grain#seen}; empty where no
   * call was written down or the call was coarser. Only in the zone-call drill is silence an
   * answer: it means a ball.
   */
  public Optional<String> answer(Grain grain) {
    return called
        .filter(c -> kind == DrillKind.ZONE_CALL || !(c instanceof Call.Silent))
        .flatMap(c -> c.readAt(grain));
  }

  /** Whether no field was called that wants another spot; there a take would be no fault. */
  private boolean wanted() {
    return kind != DrillKind.FIELD_CALL || field.filter(f -> !f.wants(zone, side)).isEmpty();
  }
}
