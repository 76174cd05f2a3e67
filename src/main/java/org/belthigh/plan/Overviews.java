package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.LaterRow;
import org.belthigh.intake.Toss;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.Marks;
import org.belthigh.model.Phrase;
import org.belthigh.model.Problem;

/** The coordinator's view of a group. */
final class Overviews {
  private static final int STALE_DAYS = 14;

  private Overviews() {}

  static Overview of(
      List<PlayerPlan> players,
      ClubRecord record,
      Doses doses,
      LocalDate on,
      List<LaterRow> later) {
    Map<Outcome, Integer> totals = new EnumMap<>(Outcome.class);
    for (Outcome outcome : Outcome.values()) {
      totals.put(outcome, 0);
    }
    players.stream()
        .flatMap(p -> p.decisions().stream())
        .forEach(d -> totals.merge(d.outcome(), 1, Integer::sum));
    return new Overview(
        later(players, on, later),
        players.stream().map(p -> row(p, on)).toList(),
        ahead(players, doses),
        players.stream().flatMap(p -> p.depends().stream()).findFirst().map(Checkpoint::since),
        totals,
        marks(players, record, on),
        record.problems().stream().filter(Problem::isFault).map(Problem::text).toList());
  }

  /** One line for each player and kind of report that is dated after the plan's day. */
  private static List<Phrase> later(List<PlayerPlan> players, LocalDate on, List<LaterRow> later) {
    List<Phrase> lines = new ArrayList<>();
    for (LaterRow.What what : LaterRow.What.values()) {
      List<LaterRow> rows = later.stream().filter(r -> r.what() == what).toList();
      for (PlayerPlan player : players) {
        Optional<String> id = Optional.of(player.who().id());
        List<LaterRow> own = rows.stream().filter(r -> r.player().equals(id)).toList();
        line(Phrase.of("later." + what.id(), "player", player.who().name()), on, own)
            .ifPresent(lines::add);
      }
      List<LaterRow> anyone = rows.stream().filter(r -> r.player().isEmpty()).toList();
      line(Phrase.of("later.anyone." + what.id()), on, anyone).ifPresent(lines::add);
    }
    return lines;
  }

  private static Optional<Phrase> line(Phrase says, LocalDate on, List<LaterRow> rows) {
    return rows.stream()
        .findFirst()
        .map(row -> says.with("day", on).with("date", row.date()).with("rows", rows.size()));
  }

  private static List<Phrase> ahead(List<PlayerPlan> players, Doses doses) {
    Stream<Phrase> weeks =
        players.stream()
            .flatMap(p -> p.weeks().stream())
            .flatMap(w -> w.ahead().stream())
            .distinct();
    return Stream.concat(weeks, full(players, doses.hoursSource())).toList();
  }

  /** The practices without hitting for some, which only the calendar can mend, and why. */
  private static Stream<Phrase> full(List<PlayerPlan> players, String source) {
    return Stream.of(Idle.values())
        .flatMap(why -> idle(players, why.day(), why.ahead()))
        .map(p -> p.with("source", source));
  }

  private static Stream<Phrase> idle(List<PlayerPlan> players, Phrase why, String says) {
    Map<LocalDate, Integer> idle = new TreeMap<>();
    players.stream()
        .flatMap(p -> p.days().stream())
        .filter(d -> d.note().filter(why::equals).isPresent())
        .forEach(d -> idle.merge(d.date(), 1, Integer::sum));
    return idle.entrySet().stream()
        .map(s -> Phrase.of(says, "date", s.getKey(), "players", s.getValue()));
  }

  private static Optional<Phrase> marks(List<PlayerPlan> players, ClubRecord record, LocalDate on) {
    Set<String> ids = players.stream().map(p -> p.who().id()).collect(Collectors.toSet());
    List<Toss> tosses =
        record.tosses().stream()
            .filter(t -> ids.contains(t.player()) && t.date().isBefore(on))
            .toList();
    MarkAgreement agreement = Marks.of(tosses).agreement();
    if (agreement.tosses() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Phrase.of(
            "marks.agree",
            "tosses",
            agreement.tosses(),
            "zone",
            agreement.zone().same().made(),
            "kappa",
            agreement.zone().kappa().orElse(1),
            "hits",
            agreement.hard().same().seen(),
            "hard",
            agreement.hard().same().made()));
  }

  private static Overview.Row row(PlayerPlan player, LocalDate on) {
    List<Overview.Why> why =
        player.decisions().stream()
            .filter(d -> d.seen() > 0)
            .map(d -> new Overview.Why(why(d), readings(d)))
            .toList();
    List<Phrase> unseen =
        player.decisions().stream()
            .filter(d -> d.seen() == 0)
            .map(d -> Say.word("skill", d.skill()))
            .toList();
    return new Overview.Row(
        player.who(),
        player.decisions(),
        player.holds().stream().map(HoldLine::open).toList(),
        look(player, on),
        why,
        unseen.isEmpty()
            ? Optional.empty()
            : Optional.of(Phrase.of("why.unseen", "skills", unseen)),
        player.depends().map(Checkpoint::what),
        player.year(),
        player.back());
  }

  /** The shares of a decision that one can be more or less sure of. */
  private static List<Evidence.Reading> readings(DecisionLine line) {
    boolean judged =
        switch (line.outcome()) {
          case MOVE_UP, FIRM_UP -> true;
          case KEEP_GOING -> line.settles().isPresent();
          case NOT_SEEN_ENOUGH -> false;
        };
    return judged ? line.readings().stream().filter(r -> !r.share().isEmpty()).toList() : List.of();
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
    Optional<Phrase> back = week(player, PlannedWeek.Kind.BACK, "look.back");
    if (back.isPresent()) {
      return back;
    }
    Optional<LocalDate> last =
        player.decisions().stream().flatMap(d -> d.lastSeen().stream()).max(LocalDate::compareTo);
    if (last.isEmpty()) {
      return Optional.of(Phrase.of("look.nothing"));
    }
    if (last.get().isBefore(on.minusDays(STALE_DAYS))) {
      return Optional.of(Phrase.of("look.stale", "date", last.get()));
    }
    Optional<Phrase> easy = week(player, PlannedWeek.Kind.EASY, "look.easy");
    if (easy.isPresent()) {
      return easy;
    }
    return player.decisions().stream()
        .filter(d -> d.outcome() == Outcome.FIRM_UP)
        .findFirst()
        .map(d -> Phrase.of("look.firm-up", "step", d.stepName()));
  }

  /** What a week of that kind says to the coordinator; empty where the player has none. */
  private static Optional<Phrase> week(PlayerPlan player, PlannedWeek.Kind kind, String says) {
    return player.weeks().stream()
        .filter(w -> w.kind() == kind)
        .flatMap(w -> w.says().stream())
        .map(phrase -> new Phrase(says, phrase.values()))
        .findFirst();
  }
}
