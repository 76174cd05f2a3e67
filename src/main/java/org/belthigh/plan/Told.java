package org.belthigh.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.DrillKind;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;

/** Drills put into the words that sheets need. */
final class Told {
  /** How many of a thing one station needs, where it is not one: a pair of eyes at each end. */
  private static final Map<String, Integer> COUNT = Map.of(Gear.EYEWEAR, 2);

  private final Curriculum curriculum;
  private final DrillChoice choice;

  Told(Curriculum curriculum, DrillChoice choice) {
    this.curriculum = curriculum;
    this.choice = choice;
  }

  /** {@code drill} as it is done at {@code place} by hitters of {@code age}. */
  DrillText of(Drill drill, Place place, int age) {
    return of(drill, choice.ball(drill, place), place, feet(drill, age));
  }

  /** {@code drill} as it is done with {@code ball} from {@code feet} away. */
  DrillText of(Drill drill, Ball ball, Place place, int feet) {
    return of(drill, ball, place, feet, Cautions.of(drill, ball, place));
  }

  /** The same with the cautions of a place of its own, whose gear is then needed too. */
  DrillText of(Drill drill, Ball ball, Place place, int feet, List<Caution> cautions) {
    return new DrillText(
        drill.id(),
        drill.skill(),
        drill.name(),
        drill.setup(),
        drill.cue(),
        drill.write(),
        ball,
        drill.feed(),
        feet,
        drill.swing(),
        mix(drill),
        cautions.stream().map(Caution::says).toList(),
        gear(drill, ball, place, cautions),
        easier(drill, place),
        drill.harder().text(),
        drill.adapt());
  }

  /** How the rows of a drill are counted. */
  DrillKind kind(String drill) {
    return curriculum.drill(drill).kind();
  }

  /** Toss distance in feet; 0 for a tee or no toss. */
  static int feet(Drill drill, int age) {
    return drill.feet().getOrDefault(AgeBand.of(age), 0);
  }

  private static Phrase mix(Drill drill) {
    Drill.Mix mix = drill.mix();
    return switch (drill.feed()) {
      case NONE -> Phrase.of("mix.none");
      case TEE -> Phrase.of("mix.tee", parts(mix));
      default -> Phrase.of("mix.toss", parts(mix));
    };
  }

  /** Of ten, since nobody counts in hundredths on a field. */
  private static Object[] parts(Drill.Mix mix) {
    int[] tens = TossScript.counts(new int[] {mix.low(), mix.belt(), mix.high(), mix.ball()}, 10);
    return new Object[] {"low", tens[0], "belt", tens[1], "high", tens[2], "ball", tens[3]};
  }

  /** What {@code drill} needs there: its own list, and what the cautions beside it speak of. */
  private List<Gear> gear(Drill drill, Ball ball, Place place, List<Caution> cautions) {
    Stream<String> own =
        drill.gear().stream().map(g -> inHand(g, ball)).filter(g -> used(g, drill, ball, place));
    Stream<String> cautioned =
        curriculum.gear().keySet().stream()
            .filter(g -> cautions.stream().anyMatch(c -> c.gear().contains(g)));
    return Stream.concat(own, cautioned)
        .distinct()
        .map(g -> new Gear(g, curriculum.gear().get(g), COUNT.getOrDefault(g, 1)))
        .toList();
  }

  /** The easier form, unless it is another drill that cannot be done there. */
  private Optional<LocalText> easier(Drill drill, Place place) {
    boolean fits =
        drill.easier().drill().map(choice::drill).stream()
            .allMatch(d -> place == Place.HOME || choice.fits(d, place, true));
    return fits ? Optional.of(drill.easier().text()) : Optional.empty();
  }

  /** Foam takes the place of plastic where a family has no plastic or no room for it. */
  private static String inHand(String gear, Ball ball) {
    return gear.equals("plastic-balls") && ball == Ball.FOAM ? "foam-balls" : gear;
  }

  /** Balls that this place does not use, and the screens that no driveway has, are left out. */
  private static boolean used(String gear, Drill drill, Ball ball, Place place) {
    return switch (gear) {
      case "plastic-balls" -> ball == Ball.PLASTIC;
      case "foam-balls" -> ball == Ball.FOAM;
      case "tennis-balls" -> ball == Ball.TENNIS;
      case "ball-bucket" -> ball == Ball.BASEBALL || ball == Ball.SOFTBALL;
      case Gear.SCREEN -> place != Place.HOME;
      case Gear.EYEWEAR -> !Cautions.screened(drill, place);
      // the home sheet itself is written on
      case "clipboard" -> place != Place.HOME;
      default -> true;
    };
  }
}
