package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.belthigh.decide.RuleMutant.Kind;
import org.belthigh.decide.RuleMutantTrial.Fate;
import org.drools.model.SingleConstraint;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.PredicateInformation;
import org.drools.model.impl.DeclarationImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** That the mistakes of {@link RuleMutants} are made as they are called, in a few rules. */
class RuleMutantsTest {
  @ParameterizedTest
  @EnumSource
  void cases_of_a_pack_come_out_as_they_say_without_a_mistake(RulePack pack) {
    RuleBase rules = pack.asWritten();

    pack.cases("").forEach(one -> one.check().accept(rules));
  }

  @Test
  void all_mistakes_of_one_rule() {
    assertThat(RulePack.HOLD.mutants("HLD-012").stream().map(RuleMutant::toString))
        .containsExactly(
            "pattern 2 Open, constraint 1: player == $player | join loosened",
            "pattern 2 Open, constraint 1: player == $player | turned into its opposite",
            "pattern 2 Open, constraint 2: date <= $day | join loosened",
            "pattern 2 Open, constraint 2: date <= $day | turned into its opposite",
            "pattern 2 Open, constraint 2: date <= $day | border moved by one",
            "pattern 3 not SymptomFreeEnds, constraint 1: kind == $kind | join loosened",
            "pattern 3 not SymptomFreeEnds, constraint 1: kind == $kind | turned into its opposite",
            "pattern 3 not (SymptomFreeEnds) | not and exists changed over",
            "pattern 3 not (SymptomFreeEnds) | whole part dropped",
            "whole rule removed");
  }

  @Test
  void parts_within_parts_are_dropped_where_the_rest_does_without_them() {
    assertThat(dropped("HLD-013"))
        .containsExactly(
            "pattern 3 or exists MayEnd",
            "pattern 2 or exists (Clearance and MayEnd)",
            "pattern 4 or exists SymptomFree",
            "pattern 5 or exists SymptomFreeEnds",
            "pattern 4 or exists (SymptomFree and SymptomFreeEnds)",
            "pattern 2 exists (Clearance and MayEnd) or exists (SymptomFree and SymptomFreeEnds)");
    assertThat(dropped("HLD-001")).as("of what it asks for later").isEmpty();
  }

  private static List<String> dropped(String rule) {
    return RulePack.HOLD.mutants(rule).stream()
        .filter(m -> m.kind() == Kind.PART_DROPPED)
        .map(RuleMutant::where)
        .toList();
  }

  @Test
  void every_mistake_of_one_rule_is_found() {
    assertThat(RuleMutantTrial.of(RulePack.HOLD, "HLD-012"))
        .hasSize(10)
        .allMatch(trial -> trial.fate() == Fate.KILLED);
  }

  /** A changed rule differs in nothing else, or it would be found for the wrong reason. */
  @ParameterizedTest
  @CsvSource({"HLD-008, TURNED", "HLD-013, TURNED", "HLD-013, NOT_AND_EXISTS"})
  void what_is_turned_twice_is_as_it_was(String rule, Kind kind) {
    List<RuleMutant> mutants = RulePack.HOLD.mutants(rule);
    for (int i = 0; i < mutants.size(); i++) {
      if (mutants.get(i).kind() == kind) {
        RuleBase rules = RulePack.HOLD.with(rule, i, i);

        RulePack.HOLD.cases(rule).forEach(one -> one.check().accept(rules));
      }
    }
  }

  private record Pair(int seen, int asked) {}

  private static SingleConstraint written(String text, Predicate1<Pair> asked) {
    Predicate1<Pair> told =
        new Predicate1<>() {
          @Override
          public boolean test(Pair pair) throws Exception {
            return asked.test(pair);
          }

          @Override
          public PredicateInformation predicateInformation() {
            return new PredicateInformation(text);
          }
        };
    return new SingleConstraint1<>(new DeclarationImpl<>(Pair.class, "$p"), told);
  }

  @Test
  void the_border_between_two_values_of_one_fact_is_moved_by_one() throws Exception {
    SingleConstraint less = written("seen < asked", p -> p.seen() < p.asked());
    SingleConstraint atLeast = written("$p.seen >= asked", p -> p.seen() >= p.asked());

    assertThat(answers(less)).containsExactly(true, true, false);
    assertThat(answers(atLeast)).containsExactly(false, false, true);
  }

  /** For one too few, just enough and one too many, with the border moved. */
  private static List<Boolean> answers(SingleConstraint constraint) throws Exception {
    Comparison comparison = Comparison.of(constraint).orElseThrow();
    return List.of(
        comparison.borderMoved().test(new Pair(1, 2)),
        comparison.borderMoved().test(new Pair(2, 2)),
        comparison.borderMoved().test(new Pair(3, 2)));
  }

  @Test
  void what_compares_no_order_has_no_border() {
    assertThat(Comparison.of(written("seen == asked", p -> p.seen() == p.asked())))
        .isEqualTo(Optional.empty());
    assertThat(Comparison.of(written("seen < unknown", p -> true))).isEqualTo(Optional.empty());
  }
}
