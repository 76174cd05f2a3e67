package org.belthigh.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Ball;
import org.belthigh.model.Call;
import org.belthigh.model.Coded;
import org.belthigh.model.Column;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.Place;
import org.belthigh.model.Problem;
import org.belthigh.model.Row;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.belthigh.model.Timing;
import org.belthigh.model.Went;

/** Reads logs with a toss a row. */
final class TossRows {
  static final String COLUMNS =
      "date* player* drill* round toss bats zone* near called field swing* hit went timing ball"
          + " feed feet place by group";

  /** Where tosses are logged; there is no such place as rest. */
  static final List<Place> PLACES = List.of(Place.FIELD, Place.CAGE, Place.HOME);

  private static final String ZONE_ALLOWED =
      "1 to 9, ball, or a word such as low-in, belt-away or high-middle";
  private static final String CALLED_ALLOWED =
      "1 to 9, ball, a spot in words, strike, low, belt, high, in, middle, away or none";
  private static final List<String> ZONE_WORDS = words(Spot.values()).toList();
  private static final List<String> CALLED_WORDS =
      Stream.of(
              words(Spot.values()),
              words(Row.values()),
              words(Column.values()),
              Stream.of("strike", "none"))
          .flatMap(w -> w)
          .toList();

  private final Bearings bearings;

  TossRows(Bearings bearings) {
    this.bearings = bearings;
  }

  private static Stream<String> words(Coded[] members) {
    return Stream.of(members).map(Coded::id);
  }

  /** The toss of a row; its order is 0 where the row does not say. */
  Optional<Toss> row(Cells cells) {
    Optional<LocalDate> date = bearings.day(cells);
    Optional<Player> player = bearings.player(cells);
    Optional<Drill> drill = bearings.drill(cells);
    OptionalInt order = cells.whole("toss", 1, 9999);
    Optional<Side> side = player.flatMap(p -> side(cells, p));
    Optional<Spot> zone = zone(cells);
    Optional<Boolean> near = cells.yesNo("near");
    Optional<Call> called = cells.parsed("called", CALLED_ALLOWED, CALLED_WORDS, Call::parse);
    Optional<Field> field = cells.word("field", Field.class);
    Optional<Boolean> swing = cells.needYesNo("swing");
    Optional<Hit> hit = cells.word("hit", Hit.class);
    Optional<Went> went = cells.word("went", Went.class);
    Optional<Timing> timing = cells.word("timing", Timing.class);
    Optional<Ball> ball = cells.word("ball", Ball.class);
    Optional<Feed> feed = cells.word("feed", Feed.class);
    OptionalDouble feet = cells.number("feet", 0, 400);
    Optional<Place> place = cells.word("place", PLACES);
    if (!cells.sound() || !agree(cells, drill.orElseThrow(), swing.orElseThrow(), went)) {
      return Optional.empty();
    }
    return Optional.of(
        new Toss(
            date.orElseThrow(),
            player.orElseThrow().id(),
            drill.orElseThrow().id(),
            drill.orElseThrow().kind(),
            drill.orElseThrow().startCount(),
            !drill.orElseThrow().swing(),
            cells.has("round") ? cells.text("round") : "1",
            order.orElse(0),
            side.orElseThrow(),
            zone.orElseThrow(),
            near.orElse(false),
            called,
            field,
            swing.orElseThrow(),
            hit,
            went,
            timing,
            ball,
            feed,
            feet,
            place,
            cells.text("by"),
            cells.origin()));
  }

  private static Optional<Spot> zone(Cells cells) {
    cells.need("zone", ZONE_ALLOWED);
    return cells.parsed("zone", ZONE_ALLOWED, ZONE_WORDS, Spot::parse);
  }

  /** The side the hitter stood on: the log's where it says, else the roster's. */
  static Optional<Side> side(Cells cells, Player player) {
    Optional<Side> logged = cells.parsed("bats", "L or R", List.of(), Sides::parse);
    Optional<Side> usual = player.bats().side();
    if (logged.isEmpty() && usual.isEmpty() && !cells.has("bats")) {
      cells.fault(
          "bats",
          "the cell is empty and " + player.id() + " bats from both sides",
          "bats must be L or R for a switch hitter",
          "Write the side the hitter stood on.");
    }
    if (logged.isPresent() && usual.isPresent() && !logged.equals(usual)) {
      cells.remarkOnce("bats " + player.id(), rows -> otherSide(cells, player, logged.get(), rows));
    }
    return logged.or(() -> usual);
  }

  private static Problem otherSide(Cells cells, Player player, Side logged, int rows) {
    return Problem.warning(
        cells.origin("bats"),
        "bats",
        player.id() + " stands on side " + logged.letter() + " in " + Notes.rows(rows),
        "the roster says " + player.bats().letter() + ", and the log's side is kept",
        "Maybe the roster should say S.");
  }

  private static boolean agree(Cells cells, Drill drill, boolean swing, Optional<Went> went) {
    if (swing) {
      cells.need("hit", "hard, soft, miss or foul on a swing");
    } else {
      refuseOnTake(cells, "hit", cells.has("hit"));
      refuseOnTake(cells, "went", went.filter(w -> w != Went.NONE).isPresent());
    }
    if (drill.kind() == DrillKind.FIELD_CALL) {
      cells.need("field", "the field called before the toss, in the drill " + drill.id());
    }
    return cells.sound();
  }

  private static void refuseOnTake(Cells cells, String column, boolean said) {
    if (said) {
      cells.fault(
          column,
          "'" + cells.text(column) + "' stands beside a take",
          column + " must be empty where swing is no",
          "Maybe swing should be yes.");
    }
  }
}
