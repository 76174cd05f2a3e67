package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.model.Origin;

/**
 * A report that matters for safety and could not be read. It must not vanish: the player it may be
 * about is treated as "ask first" until the row is put right.
 *
 * @param player empty where that could not be told: it may be anyone
 * @param date empty where that could not be told: it may be any day
 */
public record Unread(What what, Optional<String> player, Optional<LocalDate> date, Origin origin) {
  /** What the report was about. */
  public enum What {
    /** Throwing. */
    OUTING,
    /** Health. */
    WELLNESS
  }

  /** Whether it may be about that player. */
  public boolean concerns(String playerId) {
    return player.isEmpty() || player.get().equals(playerId);
  }
}
