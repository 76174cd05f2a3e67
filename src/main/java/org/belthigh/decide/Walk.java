package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.measure.CountdownScore;
import org.belthigh.model.AgeBand;
import org.belthigh.model.MeasureKind;
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
  private final double error;
  private final int daysAsked;
  private final Map<Skill, Step> behind;

  private Step step;
  private Optional<Placement> placement = Optional.empty();
  private List<Tug> tugs;
  private Set<LocalDate> days;
  private LocalDate first;
  private LocalDate last;
  private boolean proved;
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
    double floorError = error / next.bars().size();
    tugs = next.bars().stream().map(b -> new Tug(b, catalogue, error, floorError)).toList();
    days = new HashSet<>();
    first = null;
    last = null;
    proved = false;
  }

  /** Walks through the log, day by day, up to the day asked for. */
  Walk along(ClubRecord record) {
    SortedMap<LocalDate, Day> log = new TreeMap<>();
    record.tosses().stream()
        .filter(t -> t.player().equals(player.id()))
        .forEach(t -> log.computeIfAbsent(t.date(), d -> new Day()).tosses.add(t));
    record.tallies().stream()
        .filter(t -> t.player().equals(player.id()))
        .forEach(t -> log.computeIfAbsent(t.date(), d -> new Day()).tallies.add(t));
    record.placements().stream()
        .filter(p -> p.player().equals(player.id()) && p.skill() == skill)
        .forEach(p -> log.computeIfAbsent(p.date(), d -> new Day()).placements.add(p));
    log.headMap(asOf.plusDays(1)).forEach(this::through);
    return this;
  }

  private static final class Day {
    private final List<Toss> tosses = new ArrayList<>();
    private final List<Tally> tallies = new ArrayList<>();
    private final List<Placement> placements = new ArrayList<>();
  }

  private void through(LocalDate day, Day log) {
    log.placements.forEach(this::place);
    Counting counting = new Counting(curriculum, step);
    int before = seen();
    for (Tug tug : tugs) {
      log.tosses.forEach(toss -> addToss(tug, counting, toss));
      log.tallies.forEach(tally -> addTally(tug, counting, tally));
    }
    if (seen() > before) {
      days.add(day);
      first = first == null ? day : first;
      last = day;
    }
    tugs.forEach(Tug::look);
    proved |= settled();
    if (proved && !day.isAfter(windowStart)) {
      moveOn(day);
    }
  }

  private void place(Placement word) {
    curriculum.step(word.step()).ifPresent(this::enter);
    placement = Optional.of(word);
  }

  private void addToss(Tug tug, Counting counting, Toss toss) {
    counting
        .success(tug.counted(), toss)
        .ifPresent(good -> tug.add(good ? 1 : 0, 1, toss.date(), band(toss.date())));
  }

  private void addTally(Tug tug, Counting counting, Tally tally) {
    if (!counting.counts(tug.counted(), tally.measure(), tally.drill())) {
      return;
    }
    LocalDate day = tally.date();
    AgeBand band = band(day);
    if (tally.measure() == MeasureKind.COUNTDOWN) {
      double atMark = CountdownScore.probability(tally.of(), tally.made(), tug.mark(day, band));
      double atFloor = CountdownScore.probability(tally.of(), tally.made(), tug.floor(day, band));
      // the score alone leaves the last ball open: 2n - start hard hits, or one fewer
      tug.add(Math.log(atMark / atFloor), Math.max(0, 2 * tally.made() - tally.of()), tally.made());
    } else {
      boolean counted =
          tally.measure() == MeasureKind.MIDDLE_TAKE || tally.measure() == MeasureKind.BALL_SWING;
      int good = counted ? tally.of() - tally.made() : tally.made();
      tug.add(good, tally.of(), day, band);
    }
  }

  private int seen() {
    return tugs.stream().mapToInt(Tug::seen).sum();
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
    int kinds = step.bars().size();
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
        tugs.stream().mapToDouble(t -> -t.proof()).max().orElse(0),
        tugs.get(0).floorBar(),
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
        passed);
  }
}
