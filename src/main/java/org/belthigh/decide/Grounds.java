package org.belthigh.decide;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;

/** Why, from the engine itself: which facts matched which rule, and what those facts rest on. */
public final class Grounds {
  private final Holds holds;
  private final Arms arms;
  private final Progress progress;
  private final RuleBase rules;

  /** The grounds of what {@code catalogue} leads to. */
  public Grounds(Catalogue catalogue) {
    this.rules = RuleBase.shared();
    this.holds = new Holds(catalogue, rules);
    this.arms = new Arms(catalogue, rules);
    this.progress = new Progress(catalogue, rules);
  }

  /** All that was concluded about {@code player} for {@code day}: stops, arm, then skills. */
  public List<Ground> of(ClubRecord record, String player, LocalDate day) {
    ClubRecord known = record.upTo(day);
    return Stream.of(
            holds.facts(known, day), arms.facts(known, player, day), progress.facts(known, day))
        .flatMap(facts -> grounds(facts, player, day))
        .toList();
  }

  private Stream<Ground> grounds(List<?> facts, String player, LocalDate day) {
    Map<Object, Because> because = new LinkedHashMap<>();
    rules.why(facts).forEach(one -> because.put(one.concluded(), one));
    return because.values().stream()
        .filter(one -> isAbout(one.concluded(), player, day))
        .sorted(java.util.Comparator.comparing(Because::rule))
        .map(one -> ground(one, because));
  }

  private static Ground ground(Because one, Map<Object, Because> because) {
    return new Ground(
        one.rule(),
        FactText.of(one.concluded()),
        one.matched().stream()
            .filter(Record.class::isInstance)
            .map(
                fact ->
                    new Ground.Fact(
                        FactText.of(fact),
                        Optional.ofNullable(because.get(fact)).map(b -> ground(b, because))))
            .toList());
  }

  /** Whether that is an answer about the player and the day, and no step on the way to one. */
  private static boolean isAbout(Object concluded, String player, LocalDate day) {
    if (concluded instanceof HoldVerdict hold) {
      return hold.open().player().equals(player);
    } else if (concluded instanceof LostVerdict lost) {
      return lost.report().player().equals(player);
    } else if (concluded instanceof ClearanceVerdict word) {
      return word.player().equals(player);
    } else if (concluded instanceof ArmVerdict arm) {
      Question about = arm.about();
      return about.player().equals(player)
          && about.day().equals(day)
          && about.by().reckoning() == Reckoning.BOOK;
    } else if (concluded instanceof ProgressVerdict progress) {
      return progress.about().player().equals(player);
    }
    return concluded instanceof ReportVerdict
        || concluded instanceof DayVerdict
        || concluded instanceof YearVerdict;
  }
}
