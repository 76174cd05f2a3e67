package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;

/**
 * Concluded by rules of the pack {@code arm}: the pitches of one outing that a count takes. Public
 * only because the rules are built as a model of their own.
 *
 * @param count {@link #EVERY_PITCH}, or the book whose league leaves some out
 */
public record Threw(int row, String player, String count, LocalDate date, int pitches)
    implements Figure {
  /** The count that leaves nothing out. */
  public static final String EVERY_PITCH = "every-pitch";

  /** All of an outing. */
  public static Threw all(Outed outed) {
    return new Threw(outed.row(), outed.player(), EVERY_PITCH, outed.date(), outed.pitches());
  }

  /** What the league of {@code edition} counts of it, with {@code day} pitches in a day at most. */
  public static Threw byTheLeague(Outed outed, Edition edition, Limit day) {
    int most = day.printed() ? day.most() : outed.pitches();
    int counted = edition.leagueCount().of(outed.pitches(), outed.beforeLastBatter(), most);
    return new Threw(outed.row(), outed.player(), edition.books(), outed.date(), counted);
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("date", date);
    slots.put("pitches", pitches);
  }
}
