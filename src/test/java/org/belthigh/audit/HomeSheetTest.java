package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.april;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What a home sheet says for safety and asks for, by drill, ball, distance and place. The distances
 * are ours (common practice).
 */
class HomeSheetTest extends OneChild {
  private static final String[] EVERY = {
    "home.check.light", "home.check.pain", "home.stop.pain", "home.stop.tired", "home.stop.dark"
  };
  private static final double FEET_PER_METRE = 3.280839895;

  @BeforeEach
  void card() throws Exception {
    says("card", of("arm.ask", "arm.anywhere"));
    family("yard", "plastic foam");
  }

  private void family(String space, String gear) throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches,home_space,home_gear",
        "a1,Ada,2017-01-05,R,u10,yes," + space + "," + gear,
        "b1,Bo,2013-02-05,R,u14,yes,yard,");
  }

  private static Phrase feet(String limit) {
    int feet = LIMITS.whole(limit, 10);
    return Phrase.of("distance", "feet", feet, "metres", feet / FEET_PER_METRE);
  }

  private static final Phrase DRY = Phrase.of("home.smaller.dry", "reach", feet("bat-reach-feet"));

  private static Phrase less(String key) {
    return Phrase.of(key, "free", feet("foam-clear-feet"));
  }

  /** The sheet has the sentences of each session and these. */
  private List<String> with(List<Phrase> more, String... keys) throws Exception {
    List<Phrase> all = new ArrayList<>(List.of(of(EVERY)));
    all.addAll(List.of(of(keys)));
    all.addAll(more);
    says("home", all.toArray(Phrase[]::new));
    return cautions();
  }

  @Test
  void off_the_tee_with_plastic_balls() throws Exception {
    session("tee-belt-high", "plastic", 0);
    String[] keys = {
      "home.check.adult",
      "home.check.ground",
      "home.check.ball.plastic",
      "home.check.helmet",
      "home.check.ring.tee",
      "home.smaller.picture"
    };

    assertThat(with(List.of(less("home.smaller.foam"), DRY), keys)).isEmpty();
    assertThat(with(List.of(DRY), keys)).singleElement().asString().contains("does not say");
    family("yard", "plastic");
    assertThat(with(List.of(DRY), keys)).as("without foam balls").isEmpty();
  }

  @Test
  void off_the_tee_with_foam_balls() throws Exception {
    session("tee-belt-high", "foam", 0);

    assertThat(
            with(
                List.of(less("home.smaller.easy"), DRY),
                "home.check.adult",
                "home.check.ground",
                "home.check.ball.foam",
                "home.check.helmet",
                "home.check.ring.tee",
                "home.smaller.picture"))
        .isEmpty();
  }

  private List<String> tossed(String ring) throws Exception {
    return with(
        List.of(less("home.smaller.foam"), DRY),
        "home.check.adult",
        "home.check.ground",
        "home.check.ball.plastic",
        "home.check.eyes",
        "home.check.helmet",
        ring,
        "home.smaller.watch");
  }

  @Test
  void a_toss_comes_from_inside_or_from_outside_the_ring() throws Exception {
    int ring = LIMITS.whole("bat-ring-feet", 10);
    session("front-toss-home", "plastic", ring - 1);
    assertThat(tossed("home.check.ring.inside")).isEmpty();
    assertThat(tossed("home.check.ring.outside")).hasSize(2);
    session("front-toss-home", "plastic", ring);
    assertThat(tossed("home.check.ring.outside")).isEmpty();
    session("front-toss-home", "plastic", 0);
    assertThat(tossed("home.check.ring.tee")).as("nothing is tossed").hasSize(1);
  }

  @Test
  void who_watches_tosses_wears_helmet_and_eyewear_and_swings_nothing() throws Exception {
    session("stand-in-call", "plastic", 15);

    assertThat(
            with(
                List.of(),
                "home.check.adult",
                "home.check.ground",
                "home.check.ball.plastic",
                "home.check.eyes",
                "home.check.helmet"))
        .isEmpty();
  }

  @Test
  void a_swing_without_a_ball_needs_room_for_the_bat_alone() throws Exception {
    session("swing-and-stand", "none", 0);

    assertThat(
            with(
                List.of(),
                "home.check.adult",
                "home.check.ground",
                "home.check.helmet",
                "home.check.ring.tee",
                "home.smaller.picture"))
        .isEmpty();
  }

  @Test
  void in_the_days_after_a_clearance_the_grown_up_has_more_to_look_at() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-03,a1,cleared,arm-pain,physician");
    says(
        "card",
        Phrase.of("hold.back", "last", april(9)),
        Phrase.of("arm.ask"),
        Phrase.of("arm.anywhere"));
    session("spot-cards", "none", 0);
    assertThat(with(List.of(), "home.check.adult.back", "home.check.ground")).isEmpty();

    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-09");
    assertThat(with(List.of(), "home.check.adult.back", "home.check.ground")).isEmpty();
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-10");
    assertThat(with(List.of(), "home.check.adult", "home.check.ground")).isEmpty();
  }

  @Test
  void sheets_are_of_the_first_week_and_of_home_alone() throws Exception {
    session("spot-cards", "none", 0);
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-11");
    assertThat(cautions()).as("the last of its days").isNotEmpty();
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-12");
    assertThat(cautions()).isEmpty();
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-06").put("place", "field");
    assertThat(cautions()).isEmpty();
  }

  @Test
  void a_drill_that_the_curriculum_lacks_calls_for_nothing() throws Exception {
    session("no-such-drill", "plastic", 15);

    assertThat(cautions()).isEmpty();
    assertThat(gear()).isEmpty();
  }

  @Test
  void a_card_with_work_says_that_practices_are_assumed() throws Exception {
    club.noCalendar();
    assertThat(cautions()).as("no work").isEmpty();
    ObjectNode day = ada.putArray("days").addObject().put("date", "2027-04-06");
    day.put("place", "field").putArray("items").addObject().put("drill", "tee-belt-high");
    assertThat(cautions()).singleElement().asString().contains("cautions of the card");
    says("card", of("day.assumed", "arm.ask", "arm.anywhere"));
    assertThat(cautions()).isEmpty();
    day.put("date", "2027-04-13");
    assertThat(cautions()).as("work of the second week").hasSize(1);
  }

  @Test
  void a_complaint_of_a_later_week_is_not_on_this_weeks_card() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-12,a1,illness,,");
    ObjectNode hold = ada.withArray("holds").addObject();
    hold.put("rule", "HLD-006").put("kind", "everything").put("from", "2027-04-12");
    Phrase cause = Phrase.of("HLD-006", "player", "Ada", "date", april(12));
    says("card", cause, Phrase.of("arm.ask"), Phrase.of("arm.anywhere"));
    assertThat(cautions()).isEmpty();

    club.with("wellness.csv", WELLNESS, "2027-04-11,a1,illness,,");
    hold.put("from", "2027-04-11");
    says(
        "card",
        cause.with("date", april(11)),
        Phrase.of("arm.stopped"),
        Phrase.of("hold.ends.illness"));
    assertThat(cautions()).as("the last day of this week").isEmpty();
  }

  @Test
  void words_that_end_another_complaint_than_the_one_held_are_not_on_the_card() throws Exception {
    club.with(
        "wellness.csv",
        WELLNESS,
        "2027-04-01,a1,arm-pain,,",
        "2027-04-01,a1,illness,,",
        "2027-04-02,a1,cleared,arm-pain,parent");
    ObjectNode hold = ada.withArray("holds").addObject();
    hold.put("rule", "HLD-006").put("kind", "everything").put("from", "2027-04-01");
    says(
        "card",
        Phrase.of("HLD-006", "player", "Ada", "date", april(1)),
        Phrase.of("arm.stopped"),
        Phrase.of("hold.ends.illness"));
    assertThat(cautions()).isEmpty();

    hold.put("rule", "HLD-002").put("kind", "throwing");
    Phrase parent =
        Phrase.of("HLD-008", "player", "Ada", "date", april(2), "by", Phrase.of("role.parent"));
    says(
        "card",
        Phrase.of("HLD-002", "player", "Ada", "date", april(1)),
        parent,
        Phrase.of("arm.stopped"),
        Phrase.of("hold.ends.arm-pain"));
    assertThat(cautions()).isEmpty();
  }

  private void asks(Map<String, Integer> gear) {
    ada.putArray("home_gear");
    gear.forEach(
        (what, count) ->
            ada.withArray("home_gear").addObject().put("what", what).put("count", count));
  }

  @Test
  void each_end_of_a_toss_has_a_pair_of_eyewear() throws Exception {
    session("front-toss-home", "plastic", 15);
    Map<String, Integer> due =
        new TreeMap<>(Map.of("bat", 1, "helmet", 1, "plate", 1, "plastic-balls", 1, "eyewear", 2));
    asks(due);
    assertThat(gear()).isEmpty();
    due.put("eyewear", 1);
    asks(due);
    assertThat(gear())
        .singleElement()
        .asString()
        .startsWith("a1, home_gear: 1 of eyewear asked for; its drills at home need 2");
    ada.withArray("home_gear").addObject().put("what", "bat").put("count", 1);
    assertThat(gear()).contains("a1, home_gear: bat is asked for twice; each thing stands once");
  }

  @Test
  void with_foam_balls_no_plastic_ones_are_asked_for_and_no_screen_ever() throws Exception {
    session("countdown", "foam", 15);
    asks(Map.of("bat", 1, "helmet", 1, "plate", 1, "foam-balls", 1, "eyewear", 2));
    assertThat(gear()).isEmpty();
    session("countdown", "plastic", 15);
    asks(Map.of("bat", 1, "helmet", 1, "plate", 1, "plastic-balls", 1, "eyewear", 2));
    assertThat(gear()).isEmpty();
  }

  @Test
  void a_helmet_is_for_whoever_swings_or_stands_where_something_is_tossed() throws Exception {
    session("spot-cards", "none", 0);
    asks(Map.of("cards", 1));
    assertThat(gear()).isEmpty();
    session("swing-and-stand", "none", 0);
    asks(Map.of("bat", 1, "helmet", 1));
    assertThat(gear()).isEmpty();
    session("catch-the-strikes", "foam", 15);
    asks(Map.of("foam-balls", 1, "helmet", 1, "plate", 1, "eyewear", 2));
    assertThat(gear()).isEmpty();
  }

  @Test
  void gear_is_asked_for_the_first_week_at_home_alone() throws Exception {
    session("spot-cards", "none", 0);
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-11");
    assertThat(gear()).hasSize(1);
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-12");
    assertThat(gear()).isEmpty();
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-04-06").put("place", "cage");
    assertThat(gear()).isEmpty();
  }
}
