package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One drill of a step, again and again at home: three sessions are the guidance of the plan, and
 * nine in a row are let pass. See-5 has cards, which need nothing, beside its tosses.
 */
class VarietyCheckTest {
  private static final String TOSSES = "see-5/stand-in-spot";
  private static final String CARDS = "see-5/spot-cards";

  @TempDir private Path folder;

  private List<String> home(List<String> items) throws Exception {
    return days("home", items);
  }

  private List<String> days(String place, List<String> items) throws Exception {
    List<String> days = new ArrayList<>();
    for (String item : items) {
      String[] parts = item.split("/", 2);
      days.add(
          "{'place':'%s','items':[{'step':'%s','drill':'%s'}]}"
              .formatted(place, parts[0], parts[1]));
    }
    return Beside.ofAda(
        new SmallClub(folder),
        "'days':[" + String.join(",", days) + "]",
        (g, c) -> new VarietyCheck(g).check(c));
  }

  private static List<String> times(int times, String item) {
    return Collections.nCopies(times, item);
  }

  private static List<String> row(List<String> one, List<String> two) {
    List<String> both = new ArrayList<>(one);
    both.addAll(two);
    return both;
  }

  @Test
  void nine_in_a_row_are_let_pass_and_ten_are_told_once() throws Exception {
    assertThat(home(times(9, TOSSES))).isEmpty();
    assertThat(home(times(12, TOSSES)))
        .containsExactly(
            "a1, stand-in-spot: more than 9 times running at home; see-5 has other drills for that"
                + " place (ours, common practice)");
    assertThat(home(times(10, TOSSES))).hasSize(1);
  }

  @Test
  void another_drill_between_ends_the_row() throws Exception {
    assertThat(home(row(times(9, TOSSES), row(times(1, CARDS), times(9, TOSSES))))).isEmpty();
    assertThat(home(row(times(1, CARDS), times(10, TOSSES)))).hasSize(1);
  }

  @Test
  void each_step_has_its_own_row() throws Exception {
    assertThat(home(row(times(6, TOSSES), times(6, "see-4/stand-in-spot")))).isEmpty();
  }

  @Test
  void at_a_practice_the_drills_are_those_of_a_group() throws Exception {
    assertThat(days("field", times(20, TOSSES))).isEmpty();
  }

  @Test
  void where_the_step_has_nothing_else_that_needs_nothing_it_goes_on() throws Exception {
    assertThat(home(times(20, CARDS))).as("its other drills are tossed").isEmpty();
    assertThat(home(times(20, "see-1/stand-in-call"))).as("so are all of see-1").isEmpty();
    assertThat(home(times(20, "see-99/stand-in-call"))).as("no such step").isEmpty();
  }
}
