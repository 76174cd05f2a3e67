package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.april;
import static org.belthigh.audit.SmallClub.day;
import static org.belthigh.audit.SmallClub.swings;
import static org.belthigh.audit.SmallClub.tee;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan has each date once, one decision a skill, and sums that add up. */
class FormCheckTest {
  private static final List<String> FOUR = List.of("see", "choose", "drive", "send");

  private static FinishedPlan.Dated rest(int day) {
    return new FinishedPlan.Dated(april(day), "rest", 0, 0, 0, List.of());
  }

  /** The two weeks, with {@code days} in the place of theirs. */
  private static List<FinishedPlan.Dated> weeks(FinishedPlan.Dated... days) {
    List<FinishedPlan.Dated> all = new ArrayList<>();
    for (int d = 5; d < 19; d++) {
      all.add(rest(d));
    }
    for (FinishedPlan.Dated day : days) {
      all.replaceAll(d -> d.date().equals(day.date()) ? day : d);
    }
    return all;
  }

  private static List<String> said(List<String> skills, List<FinishedPlan.Dated> days) {
    FinishedPlan.Person person =
        new FinishedPlan.Person("a1", "u10", 10, skills, List.of(), days, false);
    Findings findings = SmallClub.findings();
    new FormCheck(SmallClub.plan(person), findings).check(person);
    return SmallClub.said(findings);
  }

  @Test
  void fourteen_days_with_sums_that_add_up_are_in_order() {
    assertThat(said(FOUR, weeks(swings(6, 9)))).isEmpty();
  }

  @Test
  void each_skill_has_one_decision() {
    assertThat(said(List.of("see", "drive", "send"), weeks()))
        .containsExactly(
            "a1: decisions for [drive, see, send]; each player has one for see, choose, drive and"
                + " send");
    assertThat(said(List.of("see", "choose", "drive", "send", "see"), weeks()))
        .containsExactly("a1: a second decision for see; one decision a skill");
  }

  @Test
  void each_date_of_the_weeks_stands_once_and_no_other() {
    List<FinishedPlan.Dated> days = new ArrayList<>(weeks());
    days.remove(0);
    days.remove(days.size() - 1);
    days.add(rest(4));
    days.add(rest(19));
    days.add(rest(6));

    assertThat(said(FOUR, days))
        .containsExactly(
            "a1 2027-04-04: the date is not planned; dates are " + FROM + " to 2027-04-18",
            "a1 2027-04-19: the date is not planned; dates are " + FROM + " to 2027-04-18",
            "a1 2027-04-06: the date stands twice; each date stands once",
            "a1: no entry for 2027-04-05; every date of the planned weeks has one",
            "a1: no entry for 2027-04-18; every date of the planned weeks has one");
  }

  @Test
  void minutes_and_swings_of_a_day_are_those_of_its_items() {
    FinishedPlan.Dated off =
        new FinishedPlan.Dated(april(6), "field", 7, 8, 0, List.of(tee("baseball", 9, 8)));

    assertThat(said(FOUR, weeks(off)))
        .containsExactly(
            "a1 2027-04-06: minutes is 7, its items add up to 8; a day's minutes are the sum of its"
                + " items'",
            "a1 2027-04-06: swings is 8, its items add up to 9; a day's swings are the sum of its"
                + " items'");
    assertThat(off.allMinutes()).as("whichever is more").isEqualTo(8);
    assertThat(off.allSwings()).isEqualTo(9);
    FinishedPlan.Dated more = new FinishedPlan.Dated(april(6), "field", 70, 80, 0, off.items());
    assertThat(more.allMinutes()).isEqualTo(70);
    assertThat(more.allSwings()).isEqualTo(80);
  }

  @Test
  void a_day_of_rest_has_no_work_and_no_day_has_throws() {
    assertThat(said(FOUR, weeks(day(6, "rest", 8, tee("none", 9, 8)))))
        .containsExactly("a1 2027-04-06: work on a day of rest; a day of rest has no work");
    assertThat(said(FOUR, weeks(new FinishedPlan.Dated(april(6), "rest", 0, 0, 1, List.of()))))
        .containsExactly(
            "a1 2027-04-06: 1 full-effort throws are planned; a hitting plan asks for no throws,"
                + " least of all on a rest day");
  }

  @Test
  void a_place_is_one_that_is_known() {
    assertThat(said(FOUR, weeks(day(6, "street", 8, tee("none", 9, 8)))))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-06: the place is 'street'; places are ");
  }

  @Test
  void there_are_as_many_tosses_as_swings_or_more() {
    FinishedPlan.Work work = new FinishedPlan.Work("tee-belt-high", "none", "tee", 0, 8, 9, 8);

    assertThat(said(FOUR, weeks(day(6, "field", 8, work))))
        .containsExactly(
            "a1 2027-04-06: tee-belt-high has 9 swings of 8 tosses; there are no more swings than"
                + " tosses");
  }
}
