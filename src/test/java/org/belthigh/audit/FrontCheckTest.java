package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;

import java.nio.file.Path;
import java.util.List;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose plan it is, by which books, and what of the club folder was set aside. */
class FrontCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  private static String front() {
    return "'club':'Two Files','curriculum':'belthigh-2027 "
        + CATALOGUE.curricula().get("belthigh-2027").version()
        + "','rule_books':['pitch-smart-2018'],'set_aside':[]";
  }

  private List<String> said(String was, String is) throws Exception {
    assertThat(front()).contains(was);
    return Beside.said(
        Beside.given(club, "{" + front().replace(was, is) + "}"), g -> new FrontCheck(g).check());
  }

  @Test
  void it_is_of_this_club_and_this_curriculum() throws Exception {
    assertThat(said("", "")).isEmpty();
    assertThat(said("Two Files", "Three Files"))
        .containsExactly("club: 'Three Files' stands there; the club folder has 'Two Files'");
    assertThat(said("belthigh-2027 ", "belthigh-2026 "))
        .singleElement()
        .asString()
        .startsWith("curriculum: 'belthigh-2026 ");
    assertThat(said(" " + CATALOGUE.curricula().get("belthigh-2027").version(), " 1999"))
        .singleElement()
        .asString()
        .startsWith("curriculum: 'belthigh-2027 1999' stands there");
  }

  @Test
  void each_book_of_the_club_stands_there_once_and_is_one() throws Exception {
    assertThat(said("'pitch-smart-2018'", ""))
        .containsExactly(
            "rule_books: pitch-smart-2018 is missing in []; the club plays by [pitch-smart-2018]");
    assertThat(said("'pitch-smart-2018'", "'pitch-smart-2018','our-own'"))
        .contains("rule_books: 'our-own' is no rule book; books have an id");
    assertThat(said("'pitch-smart-2018'", "'pitch-smart-2018','pitch-smart-2018'"))
        .containsExactly(
            "rule_books: a book stands twice in [pitch-smart-2018, pitch-smart-2018]; each stands"
                + " once");
  }

  @Test
  void whatever_was_set_aside_is_told_and_nothing_else() throws Exception {
    club.with("wellness.csv", "date,player,kind,clears,by", "2027-04-01,z9,illness,,");
    List<Problem> faults = club.whole().problems();
    assertThat(faults).hasSize(1);
    String text = faults.get(0).text().replace("\n", "\\n").replace("'", "\u2019");

    assertThat(said("", ""))
        .containsExactly(
            "set_aside: nothing is said of "
                + faults.get(0).text().lines().findFirst().orElseThrow().replace(folder + "/", "")
                + "; whatever of the club folder was set aside is told");
    assertThat(said("'set_aside':[]", "'set_aside':['" + text + "']"))
        .as("told otherwise: one is missing and one is not known")
        .hasSize(2)
        .anyMatch(t -> t.endsWith("the club folder has no such fault now"));
  }

  @Test
  void what_is_no_fault_now_is_not_told() throws Exception {
    assertThat(said("'set_aside':[]", "'set_aside':['A row of old.']"))
        .containsExactly("set_aside: 'A row of old.'; the club folder has no such fault now");
  }
}
