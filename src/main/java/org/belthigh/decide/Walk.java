package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.measure.CountdownScore;
import org.belthigh.measure.Marks;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Bats;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;

/**
 * One player's way up one ladder, walked again from the log: where it began, which steps are behind
 * the player, and what the tosses since then say about the present one.
 *
 * <p>Nothing is remembered between two runs, and nothing is judged here: a walk stops where the
 * rules must be asked, and goes on by their answer. A step that was proved more than the decision
 * window ago counts as moved up on that day, whether or not a plan was printed; the tosses that
 * follow count for the next one.
 */
final class Walk {
  /** What is asked next. */
  private enum Ask {
    /** How it stands at the end of a stretch: today, or when a coach chose a step. */
    END,
    /** On which days of the stretch the mark was proved. */
    DAYS,
    /** Nothing any more. */
    NOTHING
  }

  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final Player player;
  private final Skill skill;
  private final LocalDate asOf;
  private final LocalDate windowStart;
  private final Weights weights;
  private final double error;
  private final List<Map.Entry<LocalDate, Journal.Day>> log;
  private final List<Evidence.Passed> passed = new ArrayList<>();

  private int ahead;
  private Step step;
  private Optional<Placement> placement = Optional.empty();
  private List<Tug> tugs;
  private List<LocalDate> days;
  private Optional<LocalDate> provedOn;
  private Ask ask;
  private List<Object> question = List.of();
  private List<Verdict> spoken = List.of();

  /**
   * A walk up to its first question.
   *
   * @param days what the player logged, by day
   */
  Walk(
      Catalogue catalogue,
      Curriculum curriculum,
      Player player,
      Skill skill,
      LocalDate seasonFirst,
      LocalDate asOf,
      SortedMap<LocalDate, Journal.Day> days) {
    this.catalogue = catalogue;
    this.curriculum = curriculum;
    this.player = player;
    this.skill = skill;
    this.asOf = asOf;
    this.log = List.copyOf(days.headMap(asOf.plusDays(1)).entrySet());
    this.weights = Weights.on(catalogue, asOf);
    this.error = catalogue.parameter("decision-error").on(asOf).at(band(asOf));
    this.windowStart = asOf.minusDays(whole("decision-window-days"));
    enter(curriculum.ladders().get(skill).start(player.ageOn(seasonFirst)));
    goOn();
  }

  private int whole(String parameter) {
    return (int) catalogue.parameter(parameter).on(asOf).at(band(asOf));
  }

  private AgeBand band(LocalDate day) {
    return AgeBand.of(player.ageOn(day));
  }

  private void enter(Step next) {
    step = next;
    List<Optional<Side>> sides = sides();
    double floorError = error / (next.bars().size() * sides.size());
    tugs =
        next.bars().stream()
            .flatMap(
                bar ->
                    sides.stream().map(s -> new Tug(bar, s, catalogue, weights, error, floorError)))
            .toList();
    days = new ArrayList<>();
    provedOn = Optional.empty();
  }

  /** A switch hitter is judged on each side where it matters: in hitting, not in seeing. */
  private List<Optional<Side>> sides() {
    boolean each = player.bats() == Bats.SWITCH && (skill == Skill.DRIVE || skill == Skill.SEND);
    return each
        ? List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT))
        : List.of(Optional.empty());
  }

  /** Goes on through the log, up to a coach's word or the end. */
  private void goOn() {
    while (ahead < log.size() && words().isEmpty()) {
      through(log.get(ahead++));
    }
    ask = Ask.END;
    if (days.isEmpty() && ahead < log.size()) {
      place();
    }
  }

  private List<Placement> words() {
    return log.get(ahead).getValue().placements().stream().filter(p -> p.skill() == skill).toList();
  }

  /** A coach chose a step: what comes from now on counts for it. */
  private void place() {
    for (Placement word : words()) {
      curriculum.step(word.step()).ifPresent(this::enter);
      placement = Optional.of(word);
    }
    through(log.get(ahead++));
    goOn();
  }

  private void through(Map.Entry<LocalDate, Journal.Day> entry) {
    LocalDate day = entry.getKey();
    Counting counting = new Counting(curriculum, step);
    AgeBand today = band(day);
    Marks marks = entry.getValue().marks();
    for (Tug tug : tugs) {
      entry
          .getValue()
          .tosses()
          .forEach(toss -> addToss(tug, counting, toss, marks.people(toss), today));
      entry.getValue().tallies().forEach(tally -> addTally(tug, counting, tally));
    }
    if (tugs.stream().anyMatch(tug -> tug.counted(day))) {
      days.add(day);
      tugs.forEach(tug -> tug.look(day));
    }
  }

  private void addToss(Tug tug, Counting counting, Toss toss, int people, AgeBand today) {
    if (!tug.takes(toss.side())) {
      return;
    }
    boolean called = tug.counted() == Step.Counted.CALLS;
    double part = 1.0 / people;
    counting
        .success(tug.counted(), toss)
        .ifPresent(
            good ->
                tug.add(
                    good ? part : 0,
                    part,
                    toss.date(),
                    today,
                    counting.harder(toss, weights.difficulty(), today),
                    weights.of(toss, called)));
  }

  private void addTally(Tug tug, Counting counting, Tally tally) {
    boolean ours =
        counting.counts(tug.counted(), tally.measure(), tally.drill())
            && tally.side().map(tug::takes).orElse(true);
    if (!ours) {
      return;
    }
    LocalDate day = tally.date();
    int harder = counting.harder(tally.drill());
    if (tally.measure() == MeasureKind.COUNTDOWN) {
      double atMark = score(tally, tug.chanceAtMark(day, band(day), harder));
      double atFloor = score(tally, tug.chanceAtFloor(day, band(day), harder));
      // the score alone leaves the last ball open: 2n - start hard hits, or one fewer
      int hard = Math.max(0, 2 * tally.made() - tally.of());
      double ratio = Math.log(atMark / atFloor);
      tug.add(ratio, hard, tally.made(), day, harder, weights.tally());
    } else {
      boolean faults =
          tally.measure() == MeasureKind.MIDDLE_TAKE || tally.measure() == MeasureKind.BALL_SWING;
      int good = faults ? tally.of() - tally.made() : tally.made();
      tug.add(good, tally.of(), day, band(day), harder, weights.tally());
    }
  }

  private static double score(Tally tally, double hard) {
    return CountdownScore.probability(tally.of(), tally.made(), hard);
  }

  /** Whether there is anything left to ask. */
  boolean asks() {
    return ask != Ask.NOTHING;
  }

  /** Whether the next step needs a step of {@code other}'s ladder. */
  boolean needs(Skill other) {
    return next().stream().flatMap(this::needs).anyMatch(need -> need.skill() == other);
  }

  private Stream<Step> needs(Step of) {
    return of.needs().stream().map(need -> curriculum.step(need).orElseThrow());
  }

  /**
   * What is asked, as facts.
   *
   * @param before the walks of skills before this one; of others it counts where a player begins
   */
  List<Object> facts(Map<Skill, Walk> before) {
    List<Object> facts = new ArrayList<>();
    if (ask == Ask.DAYS) {
      for (int i = 0; i < days.size(); i++) {
        standing(facts, days.get(i), i);
      }
    } else {
      standing(facts, ahead < log.size() ? days.get(days.size() - 1) : asOf, days.size() - 1);
    }
    facts.add(new StepAsks(step.id(), tugs.size(), asked()));
    facts.add(new JudgedFrom(step.id(), step.judgedFrom().orElse(0)));
    next().ifPresent(next -> following(facts, next, before));
    question = ask == Ask.END ? List.copyOf(facts) : question;
    return facts;
  }

  /** The facts of the last question about the end of a stretch: today, once nothing is asked. */
  List<Object> question() {
    return question;
  }

  /** How it stood at the end of {@code day}, after the tosses of so many days. */
  private void standing(List<Object> facts, LocalDate day, int index) {
    facts.add(
        new Standing(
            player.id(),
            skill,
            step.id(),
            step.rung(),
            day,
            player.ageOn(day),
            player.ageOn(asOf),
            band(asOf),
            tugs.size(),
            index + 1,
            placement.isPresent()));
    LocalDate lastDays = day.minusDays(whole("dip-days") - 1L);
    for (int kind = 0; kind < tugs.size(); kind++) {
      Tug tug = tugs.get(kind);
      Tug.Look look = tug.look(index, day);
      facts.add(
          new Proof(
              player.id(),
              skill,
              day,
              kind,
              look.seen(),
              look.best(),
              look.against(),
              tug.proofBefore(lastDays),
              -tug.proofWithin(lastDays, day)));
    }
  }

  private void following(List<Object> facts, Step next, Map<Skill, Walk> before) {
    facts.add(new NextStep(step.id(), next.id(), next.fromAge()));
    needs(next)
        .filter(need -> need.skill() != skill)
        .forEach(
            need -> {
              facts.add(new Needs(next.id(), need.id(), need.skill(), need.rung()));
              facts.add(new Reached(player.id(), skill, need.skill(), rung(need.skill(), before)));
            });
  }

  private int rung(Skill of, Map<Skill, Walk> before) {
    Walk walk = before.get(of);
    return walk == null
        ? curriculum.ladders().get(of).start(player.ageOn(asOf)).rung()
        : walk.step.rung();
  }

  /** Tosses asked for of each kind: two kinds share the step's number. */
  private int asked() {
    int kinds = tugs.size();
    return (step.tosses() + kinds - 1) / kinds;
  }

  /** What the rules say to {@link #facts}. */
  void answer(List<Verdict> verdicts) {
    if (ask == Ask.DAYS) {
      provedOn = first(verdicts, ProgressVerdict::proved);
      first(verdicts, v -> v.outcome() == Outcome.MOVE_UP)
          .filter(day -> day.isBefore(windowStart))
          .ifPresentOrElse(this::moveOn, this::endOfStretch);
      return;
    }
    spoken = List.copyOf(verdicts);
    if (!days.isEmpty() && first(verdicts, ProgressVerdict::proved).isPresent()) {
      ask = Ask.DAYS;
    } else {
      endOfStretch();
    }
  }

  private static Optional<LocalDate> first(
      List<Verdict> verdicts, Predicate<ProgressVerdict> which) {
    return verdicts.stream()
        .filter(ProgressVerdict.class::isInstance)
        .map(ProgressVerdict.class::cast)
        .filter(which)
        .map(v -> v.about().day())
        .min(LocalDate::compareTo);
  }

  private void endOfStretch() {
    if (ahead < log.size()) {
      place();
    } else {
      ask = Ask.NOTHING;
    }
  }

  private void moveOn(LocalDate day) {
    passed.add(new Evidence.Passed(step.id(), day));
    enter(next().orElseThrow());
    placement = Optional.empty();
    ahead = (int) log.stream().filter(e -> !e.getKey().isAfter(day)).count();
    goOn();
  }

  /** What the rules said last, about the day of the plan. */
  List<Verdict> spoken() {
    return spoken;
  }

  Step step() {
    return step;
  }

  Optional<Step> next() {
    return curriculum.after(step);
  }

  /** The steps that the next one needs. */
  List<Step> needed() {
    return next().stream().flatMap(this::needs).toList();
  }

  Optional<Placement> placement() {
    return placement;
  }

  Evidence evidence() {
    return new Evidence(
        tugs.stream().map(t -> t.reading(asOf, band(asOf))).toList(),
        days.size(),
        days.stream().findFirst(),
        days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() - 1)),
        provedOn,
        passed);
  }
}
