package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
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
 * <p>Nothing is remembered between two runs. A step that was proved more than the decision window
 * ago counts as moved up on that day, whether or not a plan was printed; the tosses that follow
 * count for the next one.
 */
final class Walk {
  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final Player player;
  private final Skill skill;
  private final LocalDate asOf;
  private final LocalDate windowStart;
  private final Weights weights;
  private final double error;
  private final int daysAsked;
  private final Map<Skill, Step> behind;

  private Step step;
  private Optional<Placement> placement = Optional.empty();
  private List<Tug> tugs;
  private Set<LocalDate> days;
  private LocalDate first;
  private LocalDate last;
  private LocalDate provedOn;
  private final List<Evidence.Passed> passed = new ArrayList<>();

  /**
   * A walk that has not begun.
   *
   * @param behind the steps that the player works on in skills walked before this one
   */
  Walk(
      Catalogue catalogue,
      Curriculum curriculum,
      Player player,
      Skill skill,
      LocalDate seasonFirst,
      LocalDate asOf,
      Map<Skill, Step> behind) {
    this.catalogue = catalogue;
    this.curriculum = curriculum;
    this.player = player;
    this.skill = skill;
    this.asOf = asOf;
    this.behind = behind;
    this.weights = Weights.on(catalogue, asOf);
    this.error = catalogue.parameter("decision-error").on(asOf).at(band(asOf));
    this.daysAsked = whole("decision-days");
    this.windowStart = asOf.minusDays(whole("decision-window-days"));
    enter(curriculum.ladders().get(skill).start(player.ageOn(seasonFirst)));
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
    days = new HashSet<>();
    first = null;
    last = null;
    provedOn = null;
  }

  /** A switch hitter is judged on each side where it matters: in hitting, not in seeing. */
  private List<Optional<Side>> sides() {
    boolean each = player.bats() == Bats.SWITCH && (skill == Skill.DRIVE || skill == Skill.SEND);
    return each
        ? List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT))
        : List.of(Optional.empty());
  }

  /** Walks through the player's days up to the day asked for. */
  Walk along(SortedMap<LocalDate, Journal.Day> days) {
    days.headMap(asOf.plusDays(1)).forEach(this::through);
    return this;
  }

  private void through(LocalDate day, Journal.Day log) {
    log.placements().stream().filter(p -> p.skill() == skill).forEach(this::place);
    Counting counting = new Counting(curriculum, step);
    AgeBand today = band(day);
    Marks marks = log.marks();
    for (Tug tug : tugs) {
      log.tosses().forEach(toss -> addToss(tug, counting, toss, marks.people(toss), today));
      log.tallies().forEach(tally -> addTally(tug, counting, tally));
    }
    if (tugs.stream().anyMatch(tug -> tug.counted(day))) {
      days.add(day);
      first = first == null ? day : first;
      last = day;
    }
    tugs.forEach(Tug::look);
    if (provedOn == null && settled()) {
      provedOn = day;
    }
    if (provedOn != null && day.isBefore(windowStart)) {
      moveOn(day);
    }
  }

  private void place(Placement word) {
    curriculum.step(word.step()).ifPresent(this::enter);
    placement = Optional.of(word);
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

  private boolean settled() {
    return days.size() >= daysAsked
        && fewestSeen() >= asked()
        && step.judged(player.ageOn(last))
        && tugs.stream().allMatch(t -> t.best() >= t.markBar());
  }

  private int fewestSeen() {
    return tugs.stream().mapToInt(Tug::seen).min().orElse(0);
  }

  /** Tosses asked for of each kind: two kinds share the step's number. */
  private int asked() {
    int kinds = tugs.size();
    return (step.tosses() + kinds - 1) / kinds;
  }

  private void moveOn(LocalDate day) {
    Optional<Step> next = curriculum.after(step).filter(this::open);
    if (next.isPresent()) {
      passed.add(new Evidence.Passed(step.id(), day));
      enter(next.get());
      placement = Optional.empty();
    }
  }

  private boolean open(Step next) {
    return next.fromAge() <= player.ageOn(asOf) && needsMet(next);
  }

  private boolean needsMet(Step next) {
    return missing(next).isEmpty();
  }

  /** What {@code next} needs and is not behind the player yet. */
  private List<Step> missing(Step next) {
    return next.needs().stream()
        .map(need -> curriculum.step(need).orElseThrow())
        .filter(need -> !isBehind(need))
        .toList();
  }

  /** What the step after this one needs and is not behind the player yet. */
  List<Step> missing() {
    return next().map(this::missing).orElse(List.of());
  }

  private boolean isBehind(Step need) {
    Step now = need.skill() == skill ? step : behind.get(need.skill());
    if (now == null) {
      now = curriculum.ladders().get(need.skill()).start(player.ageOn(asOf));
    }
    return need.skill() == skill ? need.rung() <= now.rung() : need.rung() < now.rung();
  }

  Step step() {
    return step;
  }

  Optional<Step> next() {
    return curriculum.after(step);
  }

  Optional<Placement> placement() {
    return placement;
  }

  /** The facts that the rules judge. */
  Standing standing() {
    Optional<Step> next = next();
    LocalDate lastDays = asOf.minusDays(whole("dip-days") - 1L);
    return new Standing(
        player.id(),
        skill,
        step.id(),
        fewestSeen(),
        asked(),
        days.size(),
        daysAsked,
        tugs.stream().mapToDouble(t -> t.best() - t.markBar()).min().orElse(0)
            + tugs.get(0).markBar(),
        tugs.get(0).markBar(),
        tugs.stream().mapToDouble(Tug::against).max().orElse(0),
        tugs.get(0).floorBar(),
        tugs.stream().allMatch(t -> t.proofBefore(lastDays) > 0),
        tugs.stream().mapToDouble(t -> -t.proofSince(lastDays)).max().orElse(0),
        catalogue.parameter("dip-proof").on(asOf).at(band(asOf)),
        step.judged(player.ageOn(asOf)),
        next.isEmpty(),
        next.filter(n -> n.fromAge() <= player.ageOn(asOf)).isPresent(),
        next.filter(this::needsMet).isPresent(),
        placement.isPresent());
  }

  Evidence evidence() {
    return new Evidence(
        tugs.stream().map(t -> t.reading(asOf, band(asOf))).toList(),
        days.size(),
        Optional.ofNullable(first),
        Optional.ofNullable(last),
        Optional.ofNullable(provedOn),
        passed);
  }
}
