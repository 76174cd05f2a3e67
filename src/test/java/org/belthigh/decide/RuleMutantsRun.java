package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.belthigh.decide.RuleMutantTrial.Fate;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Makes every small mistake of {@link RuleMutants} in every rule and counts those that the cases of
 * {@code rules/PACK/tests} find: {@code mvn -Pmutation test}, or one pack alone, {@code mvn
 * -Pmutation test -Drules.pack=hold}. It prints a table and every mistake that was not found. No
 * part of the ordinary tests.
 */
class RuleMutantsRun {
  private static final int AIM_PERCENT = 90;

  @ParameterizedTest
  @EnumSource
  void cases_find_the_mistakes(RulePack pack) {
    String asked = System.getProperty("rules.pack", "all");
    Assumptions.assumeTrue(asked.equals("all") || asked.equals(pack.id()));
    List<RuleMutantTrial> all = new ArrayList<>();
    System.out.println("| " + pack.id() + " | mistakes | found | by no answer | not built |");
    System.out.println("|---|---|---|---|---|");
    for (String rule : pack.rules()) {
      List<RuleMutantTrial> trials = RuleMutantTrial.of(pack, rule);
      System.out.println(row(rule, trials));
      all.addAll(trials);
    }
    System.out.println(row("all", all));
    print(all, Fate.SURVIVED);
    print(all, Fate.NOT_BUILT);
    messages(all, Fate.NOT_BUILT);
    messages(all, Fate.KILLED_BY_EXCEPTION);
    assertThat(percent(all)).as("percent of mistakes found").isGreaterThanOrEqualTo(AIM_PERCENT);
  }

  private static String row(String name, List<RuleMutantTrial> trials) {
    long exceptions = count(trials, Fate.KILLED_BY_EXCEPTION);
    long found = exceptions + count(trials, Fate.KILLED);
    long notBuilt = count(trials, Fate.NOT_BUILT);
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d (%d %%) | %d | %d |",
        name,
        trials.size() - notBuilt,
        found,
        percent(trials),
        exceptions,
        notBuilt);
  }

  /** Of those that could be built, rounded down. */
  private static long percent(List<RuleMutantTrial> trials) {
    long built = trials.size() - count(trials, Fate.NOT_BUILT);
    long missed = count(trials, Fate.SURVIVED);
    return built == 0 ? 100 : (built - missed) * 100 / built;
  }

  private static long count(List<RuleMutantTrial> trials, Fate fate) {
    return trials.stream().filter(t -> t.fate() == fate).count();
  }

  private static void print(List<RuleMutantTrial> trials, Fate fate) {
    trials.stream()
        .filter(t -> t.fate() == fate)
        .forEach(t -> System.out.println(fate + " | " + t.rule() + " | " + t.mutant()));
  }

  /** What was said instead of an answer, and how often. */
  private static void messages(List<RuleMutantTrial> trials, Fate fate) {
    trials.stream()
        .filter(t -> t.fate() == fate)
        .collect(
            Collectors.groupingBy(RuleMutantTrial::detail, TreeMap::new, Collectors.counting()))
        .forEach((message, n) -> System.out.println(fate + " | " + n + " | " + message));
  }
}
