package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of the plan before this one. */
class LookBackCheckTest {
  private static final String SOUND =
      "'from':'2027-03-29','days':5,'done':2,'partly':1,'not_logged':2,'sentence':'Two of five.'";

  @TempDir private Path folder;

  private List<String> ada(String keys) throws Exception {
    return Beside.ofAda(new SmallClub(folder), keys, (g, c) -> new LookBackCheck(g).check(c));
  }

  private List<String> wrong(String was, String is) throws Exception {
    assertThat(SOUND).contains(was);
    return ada("'last_plan':{" + SOUND.replace(was, is) + "}");
  }

  @Test
  void it_stands_there_or_nothing_was_handed_out() throws Exception {
    assertThat(ada("'last_plan':{" + SOUND + "}")).isEmpty();
    assertThat(ada("'last_plan':null")).isEmpty();
    assertThat(ada(""))
        .containsExactly("a1: nothing is said of the plan before; last_plan is there, or null");
  }

  @Test
  void each_of_its_days_was_done_partly_done_or_not_logged() throws Exception {
    assertThat(wrong("'done':2", "'done':3"))
        .containsExactly("a1, last_plan: 6 days of 5; each day is one of the three");
    assertThat(wrong("'partly':1", "'partly':0")).hasSize(1);
    assertThat(wrong("'not_logged':2", "'not_logged':1")).hasSize(1);
    assertThat(
            ada(
                "'last_plan':{'from':'2027-03-29','done':0,'partly':0,'not_logged':0,"
                    + "'sentence':'None.'}"))
        .as("no number of days is not 0 days")
        .hasSize(1);
  }

  @Test
  void it_was_handed_out_before_this_plan_begins() throws Exception {
    assertThat(wrong("2027-03-29", "2027-04-04")).isEmpty();
    assertThat(wrong("2027-03-29", "2027-04-05"))
        .containsExactly("a1, last_plan: it is of 2027-04-05; it was before this plan");
    assertThat(wrong("2027-03-29", "last week")).hasSize(1);
  }

  @Test
  void a_sentence_says_it() throws Exception {
    assertThat(wrong("Two of five.", " "))
        .containsExactly("a1, last_plan: nothing is said of it; it has its sentence");
  }
}
