package org.belthigh.decide;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Runs the cases that coaches can read, {@code rules/arm/tests} and {@code rules/hold/tests}. */
class SafetyRulesTest {
  @TestFactory
  Stream<DynamicContainer> cases_hold() {
    return Stream.of("arm", "hold").flatMap(pack -> RuleCase.files(pack).stream()).map(this::file);
  }

  private DynamicContainer file(Path file) {
    List<RuleCase> cases = RuleCase.read(file);
    return DynamicContainer.dynamicContainer(
        file.toString(), cases.stream().map(c -> DynamicTest.dynamicTest(c.name(), c::check)));
  }
}
