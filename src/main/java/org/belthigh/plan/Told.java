package org.belthigh.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
        safety(drill, ball, place),
        gear(drill, ball, place),
        drill.easier().text(),
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

  private static List<Phrase> safety(Drill drill, Ball ball, Place place) {
    String where = place == Place.HOME ? "home" : "field";
    List<Phrase> lines = new ArrayList<>();
    if (drill.swing()) {
      lines.add(Phrase.of("safety.swing"));
    }
    boolean bare = !drill.swing() && ball == Ball.NONE;
    lines.add(Phrase.of(bare ? "safety.bare" : "safety." + drill.safety().id() + "." + where));
    return lines;
  }

  private List<Gear> gear(Drill drill, Ball ball, Place place) {
    Map<String, LocalText> names = curriculum.gear();
    // "before you start" has the helmet of who bats at home, and the sheet itself is written on
    Set<String> said =
        place != Place.HOME
            ? Set.of()
            : drill.swing() ? Set.of("helmet", "clipboard") : Set.of("clipboard");
    return drill.gear().stream()
        .map(g -> inHand(g, ball))
        .distinct()
        .filter(g -> !said.contains(g))
        .filter(g -> used(g, ball, place))
        .map(g -> new Gear(g, names.get(g), 1))
        .toList();
  }

  /** Foam takes the place of plastic where a family has no plastic or no room for it. */
  private static String inHand(String gear, Ball ball) {
    return gear.equals("plastic-balls") && ball == Ball.FOAM ? "foam-balls" : gear;
  }

  /** Balls that this place does not use, and the screens that no driveway has, are left out. */
  private static boolean used(String gear, Ball ball, Place place) {
    return switch (gear) {
      case "plastic-balls" -> ball == Ball.PLASTIC;
      case "foam-balls" -> ball == Ball.FOAM;
      case "tennis-balls" -> ball == Ball.TENNIS;
      case "ball-bucket" -> ball == Ball.BASEBALL || ball == Ball.SOFTBALL;
      case "screen" -> place != Place.HOME;
      case "eyewear" -> place == Place.HOME || ball == Ball.PLASTIC || ball == Ball.TENNIS;
      default -> true;
    };
  }
}
