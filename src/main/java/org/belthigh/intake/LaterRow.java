package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * A report that is dated after the day that was asked for: not counted, and never passed over in
 * silence. It says nothing of what the matter is.
 *
 * @param player id; empty where a lost report may be about anybody
 */
public record LaterRow(LocalDate date, Origin origin, Optional<String> player, What what) {
  /** What was reported. */
  public enum What implements Coded {
    COMPLAINT("a health report"),
    CLEARANCE("a clearance"),
    OUTING("an outing");

    private final String words;

    What(String words) {
      this.words = words;
    }
  }

  /** The rows of {@code record} that are dated after {@code day}, by date and place. */
  public static List<LaterRow> after(ClubRecord record, LocalDate day) {
    Stream<LaterRow> outings = record.outings().stream().map(LaterRow::of);
    Stream<LaterRow> health = record.wellness().stream().map(LaterRow::of);
    Stream<LaterRow> lost = record.unread().stream().flatMap(u -> of(u).stream());
    return Stream.of(outings, health, lost)
        .flatMap(rows -> rows)
        .filter(row -> row.date.isAfter(day))
        .sorted(Comparator.comparing(LaterRow::date).thenComparing(LaterRow::origin))
        .toList();
  }

  /** The same as remarks, for those who asked for {@code day}. */
  public static List<Problem> remarks(ClubRecord record, LocalDate day) {
    return after(record, day).stream().map(row -> row.remark(day)).toList();
  }

  private static LaterRow of(Outing outing) {
    return new LaterRow(outing.date(), outing.origin(), Optional.of(outing.player()), What.OUTING);
  }

  private static LaterRow of(Wellness row) {
    return new LaterRow(
        row.date(),
        row.origin(),
        Optional.of(row.player()),
        row.kind().holds() ? What.COMPLAINT : What.CLEARANCE);
  }

  private static Optional<LaterRow> of(Unread lost) {
    What what = lost.what() == Unread.What.OUTING ? What.OUTING : What.COMPLAINT;
    return lost.date().map(day -> new LaterRow(day, lost.origin(), lost.player(), what));
  }

  private Problem remark(LocalDate day) {
    return Problem.warning(
        origin,
        "date",
        what.words
            + player.map(p -> " about " + p).orElse("")
            + " is dated "
            + date
            + ", after "
            + day,
        "what is reported after the day that is asked for is not counted"
            + (what == What.CLEARANCE ? "" : ", but a stop in a plan holds from its day on"),
        "Maybe ask for " + date + " or a later day.");
  }
}
