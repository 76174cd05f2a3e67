package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Runs the cases of {@code rules/progress/tests}, which coaches can read. */
class ProgressRulesTest {
  @TestFactory
  Stream<DynamicContainer> cases_hold() {
    return RuleCase.files("progress").stream().map(this::file);
  }

  private DynamicContainer file(Path file) {
    List<ProgressCase> cases = ProgressCase.read(file);
    return DynamicContainer.dynamicContainer(
        file.getFileName().toString(),
        Stream.concat(
            cases.stream().map(c -> DynamicTest.dynamicTest(c.name(), c::check)),
            Stream.of(
                DynamicTest.dynamicTest(
                    "fires in one case and not in another", () -> bothWays(file, cases)))));
  }

  private static void bothWays(Path file, List<ProgressCase> cases) {
    String rule = file.getFileName().toString().replace(".yaml", "");
    if (!RuleCase.CATALOGUE.rules().containsKey(rule)) {
      return;
    }
    RuleBase rules = RuleBase.shared();
    assertThat(cases).as(rule).anyMatch(c -> c.fired(rules).contains(rule));
    assertThat(cases).as(rule).anyMatch(c -> !c.fired(rules).contains(rule));
  }
}
