package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.decide.Outcome;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Phrase;
import org.belthigh.model.Problem;

/** The coordinator's view of a group. */
final class Overviews {
  private static final int STALE_DAYS = 14;

  private Overviews() {}

  static Overview of(List<PlayerPlan> players, ClubRecord record, LocalDate on) {
    Map<Outcome, Integer> totals = new EnumMap<>(Outcome.class);
    for (Outcome outcome : Outcome.values()) {
      totals.put(outcome, 0);
    }
    players.stream()
        .flatMap(p -> p.decisions().stream())
        .forEach(d -> totals.merge(d.outcome(), 1, Integer::sum));
    return new Overview(
        players.stream().map(p -> row(p, on)).toList(),
        totals,
        record.problems().stream().filter(Problem::isFault).map(Problem::text).toList());
  }

  private static Overview.Row row(PlayerPlan player, LocalDate on) {
    List<Phrase> why = new ArrayList<>();
    for (DecisionLine line : player.decisions()) {
      if (line.outcome() == Outcome.KEEP_GOING || line.outcome() == Outcome.FIRM_UP) {
        why.add(why(line));
      }
    }
    List<Phrase> unseen =
        player.decisions().stream()
            .filter(d -> d.outcome() == Outcome.NOT_SEEN_ENOUGH)
            .map(d -> Say.word("skill", d.skill()))
            .toList();
    if (!unseen.isEmpty()) {
      why.add(Phrase.of("why.unseen", "skills", unseen));
    }
    return new Overview.Row(
        player.who(),
        player.decisions(),
        player.holds().stream().map(HoldLine::open).toList(),
        look(player, on),
        why,
        player.year());
  }

  private static Phrase why(DecisionLine line) {
    Phrase because =
        Phrase.of("why", "skill", Say.word("skill", line.skill()), "because", line.because());
    return line.settles()
        .map(more -> Phrase.of("why.more", "why", because, "more", more))
        .orElse(because);
  }

  /** Why a player needs a look: a hold first, then nothing logged, then a step that wavers. */
  private static Optional<Phrase> look(PlayerPlan player, LocalDate on) {
    boolean open = player.holds().stream().anyMatch(h -> h.until().isEmpty());
    if (open) {
      return Optional.of(Phrase.of("look.hold"));
    }
    Optional<LocalDate> last =
        player.decisions().stream().flatMap(d -> d.lastSeen().stream()).max(LocalDate::compareTo);
    if (last.isEmpty()) {
      return Optional.of(Phrase.of("look.nothing"));
    }
    if (last.get().isBefore(on.minusDays(STALE_DAYS))) {
      return Optional.of(Phrase.of("look.stale", "date", last.get()));
    }
    return player.decisions().stream()
        .filter(d -> d.outcome() == Outcome.FIRM_UP)
        .findFirst()
        .map(d -> Phrase.of("look.firm-up", "step", d.stepName()));
  }
}
