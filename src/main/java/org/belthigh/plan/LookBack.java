package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.SkillDecision;
import org.belthigh.history.Handed;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Phrase;

/**
 * What became of the plan that one player was handed last.
 *
 * <p>A day is done where at least three quarters of its tosses are logged, partly done where some
 * are. Drills of which nothing is written ask for no tosses here. What is not logged was perhaps
 * done all the same, and is called so. What was missed is not made up.
 *
 * @param handedOut first day of the plan that was handed out
 * @param days days of its first week, up to the day of the new plan, that asked for tosses
 * @param done of them done
 * @param partly of them partly done
 * @param sentence what was done, what changed and why
 */
public record LookBack(LocalDate handedOut, int days, int done, int partly, Phrase sentence) {
  /** Part of a day's tosses from which it counts as done; ours, common practice. */
  private static final double ENOUGH = 0.75;

  private static final int WEEK = 7;

  /** Days of which nothing is logged. */
  public int notLogged() {
    return days - done - partly;
  }

  /** What became of {@code handed} for one player whose decisions are now {@code decisions}. */
  static LookBack of(
      Handed handed,
      String player,
      ClubRecord known,
      List<SkillDecision> decisions,
      Curriculum curriculum,
      LocalDate from) {
    Map<LocalDate, Integer> asked = new TreeMap<>();
    LocalDate end =
        handed.from().plusDays(WEEK).isBefore(from) ? handed.from().plusDays(WEEK) : from;
    handed.sessions().stream()
        .filter(s -> s.player().equals(player) && s.date().isBefore(end))
        .filter(s -> logged(curriculum, s.drill()))
        .forEach(s -> asked.merge(s.date(), s.reps(), Integer::sum));
    int done = 0;
    int partly = 0;
    for (Map.Entry<LocalDate, Integer> day : asked.entrySet()) {
      int logged = logged(known, player, day.getKey());
      done += logged >= ENOUGH * day.getValue() ? 1 : 0;
      partly += logged > 0 && logged < ENOUGH * day.getValue() ? 1 : 0;
    }
    Phrase work =
        Phrase.of(
            "back.days",
            "days",
            asked.size(),
            "date",
            handed.from(),
            "done",
            done,
            "partly",
            partly,
            "none",
            asked.size() - done - partly);
    Phrase change = change(handed, player, decisions, curriculum);
    return new LookBack(
        handed.from(),
        asked.size(),
        done,
        partly,
        Phrase.of("back", "work", work, "change", change));
  }

  /** A drill that the curriculum no longer has was perhaps logged. */
  private static boolean logged(Curriculum curriculum, String drill) {
    return !curriculum.drills().containsKey(drill) || curriculum.drill(drill).logged();
  }

  private static int logged(ClubRecord known, String player, LocalDate day) {
    long tosses =
        known.tosses().stream()
            .filter(t -> t.player().equals(player) && t.date().equals(day))
            .map(t -> t.key())
            .distinct()
            .count();
    int tallied =
        known.tallies().stream()
            .filter(t -> t.player().equals(player) && t.date().equals(day))
            .mapToInt(t -> t.of())
            .sum();
    return (int) tosses + tallied;
  }

  private static Phrase change(
      Handed handed, String player, List<SkillDecision> decisions, Curriculum curriculum) {
    List<Phrase> changes = new ArrayList<>();
    for (SkillDecision now : decisions) {
      handed.steps().stream()
          .filter(s -> s.player().equals(player) && s.skill().equals(now.skill().id()))
          .findFirst()
          .flatMap(then -> change(then, now, curriculum))
          .ifPresent(changes::add);
    }
    return changes.isEmpty()
        ? Phrase.of("back.same")
        : Phrase.of("back.changes", "changes", changes);
  }

  private static Optional<Phrase> change(
      Handed.Stood then, SkillDecision now, Curriculum curriculum) {
    Step step = now.workOn();
    Phrase skill = Say.word("skill", now.skill());
    if (!then.step().equals(step.id())) {
      Object from = curriculum.step(then.step()).<Object>map(Step::name).orElse(then.step());
      return Optional.of(
          Phrase.of(
              "back.moved",
              "skill",
              skill,
              "from",
              from,
              "to",
              step.name(),
              "why",
              why(then, now)));
    }
    boolean wavers =
        now.outcome() == Outcome.FIRM_UP && !Outcome.FIRM_UP.id().equals(then.decision());
    return wavers
        ? Optional.of(Phrase.of("back.wavers", "skill", skill, "step", step.name()))
        : Optional.empty();
  }

  /** A proof of the old step, a coach's word, or neither, as when rows came in late. */
  private static Phrase why(Handed.Stood then, SkillDecision now) {
    Evidence evidence = now.evidence();
    Optional<LocalDate> proved =
        evidence.passed().stream()
            .filter(p -> p.step().equals(then.step()))
            .map(Evidence.Passed::on)
            .findFirst()
            .or(() -> now.step().id().equals(then.step()) ? evidence.provedOn() : Optional.empty());
    return proved
        .map(day -> Phrase.of("back.why.proved", "date", day))
        .or(
            () ->
                now.placement()
                    .map(p -> Phrase.of("back.why.placed", "by", p.by(), "date", p.date())))
        .orElse(Phrase.of("back.why.log"));
  }
}
