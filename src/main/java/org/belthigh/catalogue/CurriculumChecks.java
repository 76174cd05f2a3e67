package org.belthigh.catalogue;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/** What the parts of a curriculum must be to each other, and to the parameters they name. */
final class CurriculumChecks {
  /** Youngest age at which all nine spots may be asked for. Ours, common practice. */
  private static final int NINE_SPOTS_FROM = 11;

  /** Age from which a toss without a screen keeps its distance. Ours, common practice. */
  private static final int UNSCREENED_FROM = 13;

  private static final Set<Feed> TOSSED =
      Set.of(Feed.FLIP, Feed.FRONT_TOSS, Feed.OVERHAND, Feed.MACHINE);
  private static final Set<Feed> FROM_THE_FRONT =
      Set.of(Feed.FRONT_TOSS, Feed.OVERHAND, Feed.MACHINE);
  private static final Set<Ball> HARD = Set.of(Ball.BASEBALL, Ball.SOFTBALL);

  private final Curriculum curriculum;
  private final Map<String, Parameter> parameters;
  private final Places places;
  private final Set<String> stepIds = new TreeSet<>();

  CurriculumChecks(Curriculum curriculum, Map<String, Parameter> parameters, Places places) {
    this.curriculum = curriculum;
    this.parameters = parameters;
    this.places = places;
    steps().forEach(s -> stepIds.add(s.id()));
  }

  private List<Step> steps() {
    return List.of(Skill.values()).stream()
        .flatMap(skill -> curriculum.ladders().get(skill).steps().stream())
        .toList();
  }

  /** Notes every fault. */
  void run() {
    curriculum.ladders().values().forEach(this::startAges);
    for (Step step : steps()) {
      step.needs().forEach(n -> places.resolve("step", step.id(), "needs", "step", n, stepIds));
      needsItself(step);
      ages(step);
      drillsOf(step);
      measured(step);
      step.bars().forEach(bar -> bar(step, bar));
    }
    curriculum.drills().values().stream()
        .sorted((a, b) -> a.id().compareTo(b.id()))
        .forEach(this::drill);
  }

  private void startAges(Curriculum.Ladder ladder) {
    int due = CurriculumFile.YOUNGEST;
    for (Step step : ladder.steps()) {
      if (step.startFrom().isEmpty()) {
        continue;
      }
      if (step.startFrom().getAsInt() != due) {
        places.refuse(
            "step",
            step.id(),
            "start_ages",
            "players begin here from age " + step.startFrom().getAsInt(),
            "along a ladder start ages cover 7 to 18 without gap or overlap, so here from " + due,
            "Correct the start ages of this step or of the one before.");
      }
      due = step.startTo().orElseThrow() + 1;
    }
    if (due != CurriculumFile.OLDEST + 1) {
      places.refuse(
          "skill",
          ladder.skill().id(),
          "ladder",
          "nobody of age " + due + " finds a step to begin on",
          "along a ladder start ages cover 7 to 18 without gap or overlap",
          "Give a step start_ages that reach " + CurriculumFile.OLDEST + ".");
    }
  }

  private void needsItself(Step step) {
    if (reaches(step, step.id(), new HashSet<>())) {
      places.refuse(
          "step",
          step.id(),
          "needs",
          "the step comes before itself",
          "what a step needs lies lower on its ladder, or on another without a way back",
          "Take one of " + step.needs() + " out.");
    }
  }

  /** Whether {@code wanted} lies below {@code from}, by needs or as an earlier rung. */
  private boolean reaches(Step from, String wanted, Set<String> seen) {
    Set<String> below = new TreeSet<>(from.needs());
    if (from.rung() > 1) {
      below.add(curriculum.ladders().get(from.skill()).steps().get(from.rung() - 2).id());
    }
    for (String id : below) {
      Optional<Step> step = curriculum.step(id);
      if (id.equals(wanted)
          || (step.isPresent() && seen.add(id) && reaches(step.get(), wanted, seen))) {
        return true;
      }
    }
    return false;
  }

  private void ages(Step step) {
    if (step.startFrom().isPresent() && step.startFrom().getAsInt() < step.fromAge()) {
      places.refuse(
          "step",
          step.id(),
          "start_ages",
          "players begin here from age " + step.startFrom().getAsInt(),
          "the step is not asked for before age " + step.fromAge(),
          "Lower from_age, or let the younger begin on another step.");
    }
    if (step.grain().filter(g -> g == Grain.NINE).isPresent() && step.fromAge() < NINE_SPOTS_FROM) {
      places.refuse(
          "step",
          step.id(),
          "from_age",
          "all nine spots are asked for from age " + step.fromAge(),
          "nine spots are asked for from age " + NINE_SPOTS_FROM + " on",
          "Raise from_age, or ask for a height or a side only.");
    }
  }

  private void drillsOf(Step step) {
    if (step.drills().isEmpty()) {
      places.refuse(
          "step",
          step.id(),
          "drills",
          "the step has no drill",
          "each step has at least one drill",
          "Name a drill of the skill " + step.skill().id() + ".");
    }
    for (String id : step.drills()) {
      places.resolve("step", step.id(), "drills", "drill", id, curriculum.drills().keySet());
      Drill drill = curriculum.drills().get(id);
      if (drill != null && drill.skill() != step.skill()) {
        places.refuse(
            "step",
            step.id(),
            "drills",
            "drill '" + id + "' belongs to the skill " + drill.skill().id(),
            "a step's drills belong to its own skill, " + step.skill().id(),
            "Name another drill, or correct the drill's skill.");
      }
    }
  }

  private void measured(Step step) {
    Step.Measured due =
        switch (step.skill()) {
          case SEE -> Step.Measured.ZONE_CALL;
          case CHOOSE -> Step.Measured.TAKES_AND_CHASES;
          case DRIVE -> Step.Measured.HARD_HIT;
          case SEND -> Step.Measured.FIELD_CALL;
        };
    if (step.measured() != due) {
      places.refuse(
          "step",
          step.id(),
          "measure",
          "a step of the skill " + step.skill().id() + " is counted as " + step.measured().id(),
          "steps of this skill are counted as " + due.id(),
          "Write 'measure: " + due.id() + "'.");
    }
    if (step.drills().stream().map(curriculum.drills()::get).noneMatch(d -> proves(d, due))) {
      places.refuse(
          "step",
          step.id(),
          "drills",
          "no drill of the step is counted as " + due.id(),
          "at least one drill of a step has rows that count for it",
          "Add a drill that proves the step.");
    }
  }

  private static boolean proves(Drill drill, Step.Measured measured) {
    return drill != null
        && switch (measured) {
          case ZONE_CALL -> drill.kind() == DrillKind.ZONE_CALL;
          case FIELD_CALL -> drill.kind() == DrillKind.FIELD_CALL;
          case HARD_HIT, TAKES_AND_CHASES -> drill.swing();
        };
  }

  private void bar(Step step, Step.Bar bar) {
    places.resolve("step", step.id(), "mark", "parameter", bar.mark(), parameters.keySet());
    places.resolve("step", step.id(), "floor", "parameter", bar.floor(), parameters.keySet());
    Parameter mark = parameters.get(bar.mark());
    Parameter floor = parameters.get(bar.floor());
    if (mark == null || floor == null) {
      return;
    }
    boolean fewerIsBetter =
        bar.counted() == Step.Counted.TAKES || bar.counted() == Step.Counted.CHASES;
    for (AgeBand band : AgeBand.values()) {
      double high = newest(fewerIsBetter ? floor : mark).at(band);
      double low = newest(fewerIsBetter ? mark : floor).at(band);
      if (high <= low) {
        places.refuse(
            "step",
            step.id(),
            "mark",
            bar.mark() + " and " + bar.floor() + " do not part at ages " + band.id(),
            "the mark lies " + (fewerIsBetter ? "below" : "above") + " the floor at every age",
            "Correct one of the two parameters.");
      }
    }
  }

  private static Parameter.Dated newest(Parameter parameter) {
    return parameter.on(LocalDate.MAX);
  }

  private void drill(Drill drill) {
    drill
        .gear()
        .forEach(
            g ->
                places.resolve("drill", drill.id(), "gear", "gear", g, curriculum.gear().keySet()));
    variant(drill, "easier", drill.easier());
    variant(drill, "harder", drill.harder());
    used(drill);
    ballAtHome(drill);
    swings(drill);
    helmet(drill);
    tossedByAnAdult(drill);
    hardBallScreened(drill);
    unscreenedToss(drill);
    time(drill);
  }

  private void variant(Drill drill, String key, Drill.Variant variant) {
    Set<String> known = curriculum.drills().keySet();
    variant.drill().ifPresent(d -> places.resolve("drill", drill.id(), key, "drill", d, known));
  }

  private void used(Drill drill) {
    boolean inStep = steps().stream().anyMatch(s -> s.drills().contains(drill.id()));
    boolean inVariant =
        curriculum.drills().values().stream()
            .flatMap(d -> Stream.of(d.easier(), d.harder()))
            .anyMatch(v -> v.drill().filter(drill.id()::equals).isPresent());
    if (!inStep && !inVariant) {
      places.refuse(
          "drill",
          drill.id(),
          "id",
          "no step and no other drill names '" + drill.id() + "'",
          "each drill is used",
          "Name it in a step of the skill " + drill.skill().id() + ", or take it out.");
    }
  }

  private void time(Drill drill) {
    double most = drill.minutes() * drill.perMinute();
    if (drill.reps() > most) {
      places.refuse(
          "drill",
          drill.id(),
          "reps",
          drill.reps() + " tosses in " + drill.minutes() + " minutes",
          "at " + drill.perMinute() + " a minute there is time for " + (int) most,
          "Correct reps, minutes or per_minute.");
    }
  }

  private void ballAtHome(Drill drill) {
    if (drill.at(Place.HOME) && !drill.balls().get(Place.HOME).atHome()) {
      places.refuse(
          "drill",
          drill.id(),
          "ball",
          "at home a " + drill.balls().get(Place.HOME).id() + " is used",
          "at home the ball is plastic, foam or none",
          "Write 'home: plastic', or take home out of the places.");
    }
  }

  private void swings(Drill drill) {
    if (drill.swing() && drill.adults() < 1) {
      places.refuse(
          "drill",
          drill.id(),
          "people",
          "a bat is swung and no adult is there",
          "wherever a bat is swung there is at least 1 adult",
          "Write 'people: {adults: 1, helpers: …}'.");
    }
    boolean agree = drill.swing() ? drill.swings() > 0 : drill.swings() == 0;
    if (!agree || drill.swings() > drill.reps()) {
      places.refuse(
          "drill",
          drill.id(),
          "swings",
          drill.swings() + " swings of " + drill.reps() + " tosses, with swing: " + drill.swing(),
          "swings are 1 to the number of tosses, or 0 where no bat is swung",
          "Correct swing, reps or swings.");
    }
  }

  private void helmet(Drill drill) {
    if ((drill.swing() || TOSSED.contains(drill.feed())) && !drill.gear().contains("helmet")) {
      places.refuse(
          "drill",
          drill.id(),
          "gear",
          "no helmet is among it",
          "wherever a bat is swung or a ball comes the hitter wears a helmet",
          "Add helmet to the gear.");
    }
  }

  private void tossedByAnAdult(Drill drill) {
    if (!drill.swing() && TOSSED.contains(drill.feed()) && drill.adults() < 1) {
      places.refuse(
          "drill",
          drill.id(),
          "people",
          "the ball comes by " + drill.feed().id() + " and no adult is there",
          "an adult tosses; children do not toss to a hitter",
          "Write 'people: {adults: 1, helpers: …}'.");
    }
  }

  private void hardBallScreened(Drill drill) {
    boolean hard = drill.balls().values().stream().anyMatch(HARD::contains);
    if (hard && TOSSED.contains(drill.feed()) && !screened(drill)) {
      places.refuse(
          "drill",
          drill.id(),
          "gear",
          "a hard ball is tossed and no screen is among it",
          "who tosses a hard ball stands behind a screen",
          "Add screen to the gear, or name a soft ball.");
    }
  }

  private static boolean screened(Drill drill) {
    return drill.gear().contains("screen");
  }

  /** From 13 on a toss without a screen comes from a distance; no driveway has a screen. */
  private void unscreenedToss(Drill drill) {
    boolean unscreened = drill.at(Place.HOME) || !screened(drill);
    if (!unscreened || !FROM_THE_FRONT.contains(drill.feed())) {
      return;
    }
    for (AgeBand band : AgeBand.values()) {
      int feet = drill.feet().getOrDefault(band, 0);
      int least = (int) newest(parameters.get("unscreened-toss-feet")).at(band);
      if (band.from() >= UNSCREENED_FROM && feet < least) {
        places.refuse(
            "drill",
            drill.id(),
            "feet",
            "at ages " + band.id() + " the ball comes from " + feet + " ft without a screen",
            "at 13 and older it comes from " + least + " ft or more",
            "Write " + least + " there, or add screen to the gear and take home out.");
      }
    }
  }
}
