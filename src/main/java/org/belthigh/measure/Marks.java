package org.belthigh.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.belthigh.intake.Toss;
import org.belthigh.model.Hit;

/**
 * Tosses that two or more people marked, each without seeing the other's marks, as on an evaluation
 * day.
 *
 * <p>The rows of one toss share player, date, drill, round and toss number, and differ in who wrote
 * them. The counts take all rows as they stand; a decision takes each toss once, an equal part from
 * each.
 */
public final class Marks {
  private final Map<Toss.Key, List<Toss>> shared = new HashMap<>();
  private final MarkAgreement agreement;

  private Marks(List<Toss> tosses) {
    Agreement zone = new Agreement();
    Agreement swing = new Agreement();
    Agreement hard = new Agreement();
    int first = 0;
    for (int i = 1; i <= tosses.size(); i++) {
      if (i < tosses.size() && sameToss(tosses.get(first), tosses.get(i))) {
        continue;
      }
      if (i - first > 1) {
        List<Toss> marks = List.copyOf(tosses.subList(first, i));
        shared.put(marks.get(0).key(), marks);
        compare(marks.get(0), marks.get(1), zone, swing, hard);
      }
      first = i;
    }
    agreement = new MarkAgreement(agreed(zone), agreed(swing), agreed(hard));
  }

  /**
   * The marks among {@code tosses}.
   *
   * @param tosses in the record's order, in which the rows of one toss stand side by side
   */
  public static Marks of(List<Toss> tosses) {
    return new Marks(tosses);
  }

  /** The cheap questions first: few tosses are marked twice. */
  private static boolean sameToss(Toss one, Toss other) {
    return one.order() == other.order()
        && !one.by().equals(other.by())
        && one.key().equals(other.key());
  }

  private static void compare(
      Toss one, Toss other, Agreement zone, Agreement swing, Agreement hard) {
    add(zone, one, other, toss -> toss.zone().id());
    add(swing, one, other, toss -> Boolean.toString(toss.swing()));
    if (one.hit().isPresent() && other.hit().isPresent()) {
      add(hard, one, other, toss -> Boolean.toString(toss.hit().get() == Hit.HARD));
    }
  }

  private static void add(Agreement agreement, Toss one, Toss other, Function<Toss, String> mark) {
    agreement.add(mark.apply(one), mark.apply(other));
  }

  private static MarkAgreement.Agreed agreed(Agreement agreement) {
    return new MarkAgreement.Agreed(agreement.right(), agreement.kappa());
  }

  /** How many people marked {@code toss}; 1 where it was only one. */
  public int people(Toss toss) {
    return shared.isEmpty() ? 1 : shared.getOrDefault(toss.key(), List.of(toss)).size();
  }

  /** Who marked tosses that somebody else marked too, by name in the order of the alphabet. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    shared.values().forEach(marks -> marks.forEach(toss -> names.add(toss.by())));
    return names.stream().distinct().sorted().toList();
  }

  /** How far the marks of two people agree; those of a third are left out. */
  public MarkAgreement agreement() {
    return agreement;
  }
}
