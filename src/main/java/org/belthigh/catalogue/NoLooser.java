package org.belthigh.catalogue;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Skill;

/**
 * What a club's own curriculum must not loosen: it is held against the curricula that travel with
 * the program. No ball comes from nearer, no protection is left out, nothing is asked for at a
 * younger age than there.
 */
final class NoLooser {
  private static final Set<String> PROTECTION = Set.of("helmet", "eyewear", "screen", "net");
  private static final Set<Ball> HARD = Set.of(Ball.BASEBALL, Ball.SOFTBALL);

  private final Curriculum own;
  private final Collection<Curriculum> known;
  private final Places places;

  NoLooser(Curriculum own, Collection<Curriculum> known, Places places) {
    this.own = own;
    this.known = known;
    this.places = places;
  }

  /** Notes every fault. */
  void run() {
    own.drills().values().stream().sorted((a, b) -> a.id().compareTo(b.id())).forEach(this::drill);
    for (Skill skill : Skill.values()) {
      own.ladders().get(skill).steps().forEach(this::grain);
    }
  }

  private void drill(Drill drill) {
    List<Drill> like = drills().filter(other -> alike(drill, other)).toList();
    if (like.isEmpty()) {
      places.refuse(
          "drill",
          drill.id(),
          "feed",
          "no drill is known that is fed by " + drill.feed().id() + " in this way",
          "a drill must have feed, swing, screen and ball of one that travels with the program",
          "Maybe add the screen, or name another feed or ball.");
      return;
    }
    feet(drill, like);
    protection(drill, like);
    caution(drill, like);
    adults(drill, like);
    age(drill);
  }

  /** Whether two drills ask for the same care. */
  private static boolean alike(Drill one, Drill other) {
    return one.feed() == other.feed()
        && one.swing() == other.swing()
        && hard(one) == hard(other)
        && one.gear().contains("screen") == other.gear().contains("screen");
  }

  private static boolean hard(Drill drill) {
    return drill.balls().values().stream().anyMatch(HARD::contains);
  }

  private Stream<Drill> drills() {
    return known.stream().flatMap(curriculum -> curriculum.drills().values().stream());
  }

  private void feet(Drill drill, List<Drill> like) {
    for (AgeBand band : AgeBand.values()) {
      int least = like.stream().mapToInt(d -> d.feet().getOrDefault(band, 0)).min().orElseThrow();
      int feet = drill.feet().getOrDefault(band, 0);
      if (feet < least) {
        places.refuse(
            "drill",
            drill.id(),
            "feet",
            "at ages " + band.id() + " the ball comes from " + feet + " ft",
            "a club's own curriculum must not come nearer than " + least + " ft there",
            "Write " + least + " or more.");
      }
    }
  }

  private void protection(Drill drill, List<Drill> like) {
    Set<String> always = new TreeSet<>(PROTECTION);
    like.forEach(d -> always.retainAll(d.gear()));
    always.removeAll(drill.gear());
    if (!always.isEmpty()) {
      places.refuse(
          "drill",
          drill.id(),
          "gear",
          "it lacks " + String.join(", ", always),
          "every drill of this kind must have it",
          "Add it to the gear.");
    }
  }

  private void caution(Drill drill, List<Drill> like) {
    if (like.stream().noneMatch(d -> d.safety() == drill.safety())) {
      places.refuse(
          "drill",
          drill.id(),
          "safety",
          "the caution is that of " + drill.safety().id(),
          "drills of this kind must have the caution " + like.get(0).safety().id(),
          "Write 'safety: " + like.get(0).safety().id() + "'.");
    }
  }

  private void adults(Drill drill, List<Drill> like) {
    int least = like.stream().mapToInt(Drill::adults).min().orElseThrow();
    if (drill.adults() < least) {
      places.refuse(
          "drill",
          drill.id(),
          "people",
          drill.adults() + " adults are there",
          "drills of this kind must have " + least + " or more",
          "Correct the number of adults.");
    }
  }

  private void age(Drill drill) {
    OptionalInt least =
        known.stream()
            .flatMapToInt(
                c ->
                    c.drills().values().stream()
                        .filter(d -> d.feed() == drill.feed() && hard(d) == hard(drill))
                        .flatMapToInt(d -> youngest(c, d.id()).stream()))
            .min();
    OptionalInt own = youngest(this.own, drill.id());
    if (drill.feed() != Feed.NONE
        && least.isPresent()
        && own.isPresent()
        && own.getAsInt() < least.getAsInt()) {
      places.refuse(
          "drill",
          drill.id(),
          "feed",
          "a step asks for it from age " + own.getAsInt(),
          "with this feed and ball it must not be asked for before age " + least.getAsInt(),
          "Raise from_age of that step, or name an easier drill there.");
    }
  }

  /** The youngest age at which a step asks for a drill, or for one that it stands in for. */
  private static OptionalInt youngest(Curriculum curriculum, String drill) {
    Set<String> names = new HashSet<>(Set.of(drill));
    curriculum.drills().values().stream()
        .filter(
            d ->
                Stream.of(d.easier(), d.harder())
                    .anyMatch(v -> v.drill().filter(drill::equals).isPresent()))
        .forEach(d -> names.add(d.id()));
    return curriculum.ladders().values().stream()
        .flatMap(ladder -> ladder.steps().stream())
        .filter(step -> step.drills().stream().anyMatch(names::contains))
        .mapToInt(Step::fromAge)
        .min();
  }

  private void grain(Step step) {
    OptionalInt least =
        known.stream()
            .flatMap(c -> c.ladders().get(step.skill()).steps().stream())
            .filter(s -> s.grain().equals(step.grain()))
            .mapToInt(Step::fromAge)
            .min();
    if (least.isPresent() && step.fromAge() < least.getAsInt()) {
      places.refuse(
          "step",
          step.id(),
          "from_age",
          "it is asked for from age " + step.fromAge(),
          "a step of this kind must not be asked for before age " + least.getAsInt(),
          "Raise from_age.");
    }
  }
}
