package org.belthigh.plan;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.zip.CRC32;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Column;
import org.belthigh.model.Field;
import org.belthigh.model.Row;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/**
 * The order in which one who tosses goes through the spots.
 *
 * <p>Drawn by a {@link TossLaw} from a seed that is made of the player and the day, so that the
 * same sheet can be printed again.
 */
final class TossScript {
  /** A field is called at most so often in a row; of common practice. */
  private static final int SAME_FIELD = 3;

  /** Of four belt-high tosses three suit the field that was called; the fourth is to be let go. */
  private static final int SUIT = 3;

  private static final int SUIT_OF = 4;

  /** Until this age only left, centre and right are called; of common practice. */
  private static final int FEW_FIELDS = 12;

  private TossScript() {}

  /** {@code tosses} spots in order for {@code seed}, any text. */
  static List<Spot> of(Drill.Mix mix, int tosses, String seed) {
    return of(TossLaw.of(mix, tosses), seed);
  }

  /** Spots in order for {@code seed}, any text, drawn by {@code law}. */
  static List<Spot> of(TossLaw law, String seed) {
    return law.draw(new SplittableRandom(seed(seed)));
  }

  /**
   * One toss of the field-call drill.
   *
   * @param field called before the toss
   * @param suits whether the spot suits it, so that it is to be hit
   */
  record Called(Field field, Spot spot, boolean suits) {}

  /**
   * The fields to call and where to toss for each: the heights as {@code law} has them; most of the
   * belt-high ones suit the field, some do not and are to be let go.
   *
   * @param age of the hitter: three fields until {@value #FEW_FIELDS}, then five
   * @param side where the hitter stands at a toss, 0 for the first
   * @param sent how often the hitter sent it to each field: what goes wrong is called more often
   */
  static List<Called> called(
      TossLaw law,
      Drill.Fields which,
      int age,
      IntFunction<Side> side,
      Map<Field, Share> sent,
      String seed) {
    SplittableRandom random = new SplittableRandom(seed(seed));
    List<Called> calls = new ArrayList<>();
    int run = 0;
    for (Spot spot : law.draw(random)) {
      Side here = side.apply(calls.size());
      Field last = calls.isEmpty() ? null : calls.get(calls.size() - 1).field();
      List<Field> fields = fields(which, age, here);
      List<Field> open =
          run < SAME_FIELD || fields.size() == 1
              ? fields
              : fields.stream().filter(f -> f != last).toList();
      Field field = one(open, sent, random);
      run = field == last ? run + 1 : 1;
      Spot aimed = spot.beltHigh() ? belt(field, here, random) : spot;
      calls.add(new Called(field, aimed, field.wants(aimed, here)));
    }
    return List.copyOf(calls);
  }

  private static Field one(List<Field> open, Map<Field, Share> sent, SplittableRandom random) {
    double[] weights = open.stream().mapToDouble(f -> WeakSpots.weight(f, sent)).toArray();
    double left = random.nextDouble() * Arrays.stream(weights).sum();
    int drawn = 0;
    while (drawn < weights.length - 1 && left >= weights[drawn]) {
      left -= weights[drawn];
      drawn++;
    }
    return open.get(drawn);
  }

  private static List<Field> fields(Drill.Fields which, int age, Side side) {
    Field pull = side == Side.RIGHT ? Field.LEFT : Field.RIGHT;
    Field opposite = side == Side.RIGHT ? Field.RIGHT : Field.LEFT;
    return switch (which) {
      case PULL -> List.of(pull);
      case OPPOSITE -> List.of(opposite);
      case ANY ->
          age <= FEW_FIELDS
              ? List.of(Field.LEFT, Field.CENTER, Field.RIGHT)
              : List.of(Field.values());
    };
  }

  private static Spot belt(Field field, Side side, SplittableRandom random) {
    boolean suiting = random.nextInt(SUIT_OF) < SUIT;
    Map<Boolean, List<Spot>> spots =
        java.util.stream.Stream.of(Column.values())
            .map(c -> Spot.at(Row.BELT, c))
            .collect(java.util.stream.Collectors.partitioningBy(s -> field.wants(s, side)));
    List<Spot> from = suiting || spots.get(false).isEmpty() ? spots.get(true) : spots.get(false);
    return from.get(random.nextInt(from.size()));
  }

  /** A seed from any text. */
  static long seed(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }

  /** Whole counts in the proportion of {@code percent}, by largest remainder, ties to the first. */
  static int[] counts(int[] percent, int total) {
    int[] counts = new int[percent.length];
    int given = 0;
    for (int i = 0; i < percent.length; i++) {
      counts[i] = percent[i] * total / 100;
      given += counts[i];
    }
    while (given < total) {
      int best = 0;
      for (int i = 1; i < percent.length; i++) {
        if (percent[i] * total - counts[i] * 100 > percent[best] * total - counts[best] * 100) {
          best = i;
        }
      }
      counts[best]++;
      given++;
    }
    return counts;
  }
}
