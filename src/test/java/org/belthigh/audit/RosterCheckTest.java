package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who was asked for stands in the plan once, and nobody else does. */
class RosterCheckTest {
  private static final String BOTH = "'players':[{'player':'a1'},{'player':'b1'}]";

  @TempDir private Path folder;

  private List<String> said(String json) throws Exception {
    return Beside.said(
        Beside.given(new SmallClub(folder), "{" + json + "}"), g -> new RosterCheck(g).check());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'groups':['u10'],'players':[] | b1",
        "'groups':[],'players':['b1'] | a1",
        "'groups':['u14'],'players':['b1'] | a1"
      })
  void a_child_that_was_not_asked_for_is_told(String asked, String extra) throws Exception {
    assertThat(said("'asked':{" + asked + "}," + BOTH))
        .singleElement()
        .asString()
        .startsWith(extra + ": the child was not asked for; the plan was asked for");
  }

  @Test
  void where_nobody_was_named_all_were_asked_for() throws Exception {
    assertThat(said("'asked':{'groups':[],'players':[]}," + BOTH)).isEmpty();
    assertThat(said("'asked':{'groups':[],'players':[]},'players':[{'player':'b1'}]"))
        .containsExactly(
            "a1: the child of u10 is left out; each child that was asked for has an entry");
  }

  @Test
  void a_child_of_a_group_that_was_asked_for_is_missed_and_one_of_another_is_not()
      throws Exception {
    assertThat(said("'asked':{'groups':['u14'],'players':[]},'players':[]"))
        .singleElement()
        .asString()
        .startsWith("b1: the child of u14 is left out");
  }
}
