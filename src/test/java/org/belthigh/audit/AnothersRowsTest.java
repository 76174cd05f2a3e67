package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was reported of one child says nothing of another: Bo threw, caught, hurts and has lost
 * rows; Ada was last heard of on the first of April, and is free.
 */
class AnothersRowsTest {
  private static final String FREE =
      "'arms':[{'date':'2027-04-05','answer':'may-pitch','pitches_left':75,'may_catch':true,"
          + "'known_to':'2027-04-01'}]";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club =
        new SmallClub(folder)
            .with(
                "roster.csv",
                "id,first_name,born,bats,group,pitches,catches",
                "a1,Ada,2017-01-05,R,u10,yes,yes",
                "b1,Bo,2013-02-05,R,u14,yes,yes")
            .with(
                "throws.csv",
                "date,player,pitches,kind,innings_caught",
                "2027-04-01,a1,0,game,",
                "2027-04-04,b1,90,game,6",
                "2027-04-05,b1,90,game,6",
                "2027-04-05,b1,many,game,")
            .with(
                "wellness.csv",
                "date,player,kind,clears,by",
                "2027-04-01,b1,arm-pain,,",
                "2027-04-02,b1,what,,",
                "2027-04-03,b1,cleared,head-injury,physician");
  }

  @Test
  void her_arm_is_free() throws Exception {
    List<String> arms = Beside.ofAda(club, FREE, (g, c) -> new ArmsCheck(g).check(c));

    assertThat(arms).allMatch(s -> s.contains("each day of the first week"));
    assertThat(Beside.ofAda(club, FREE, (g, c) -> new CatchCheck(g).check(c))).isEmpty();
  }

  @Test
  void no_hold_is_due_to_her() throws Exception {
    assertThat(Beside.ofAda(club, "'holds':[]", (g, c) -> new HoldDaysCheck(g).check(c))).isEmpty();
    assertThat(Beside.ofBo(club, "'holds':[]", (g, c) -> new HoldDaysCheck(g).check(c)))
        .isNotEmpty();
  }

  @Test
  void her_work_is_not_held() throws Exception {
    FinishedPlan.Person ada = SmallClub.ada(SmallClub.home(6, 8, 8));
    FinishedPlan plan = SmallClub.plan(ada);
    Findings findings = SmallClub.findings();
    new HoldCheck(
            findings,
            SmallClub.LIMITS,
            Optional.of(club.whole()),
            SmallClub.owed(Optional.of(club.record())))
        .check(plan, ada);

    assertThat(SmallClub.said(findings)).isEmpty();
  }

  @Test
  void her_card_says_that_she_may_pitch() throws Exception {
    String card =
        "'language':'en','cautions':{'card':['%s','%s'],'home':[]}"
            .formatted(
                SmallClub.WORDS.say(
                    Phrase.of("arm.may", "date", SmallClub.FROM, "pitches", 75), "en"),
                SmallClub.WORDS.say(Phrase.of("arm.anywhere"), "en"));

    assertThat(Beside.ofAda(club, card, (g, c) -> new CautionCheck(g, SmallClub.WORDS).check(c)))
        .isEmpty();
  }
}
