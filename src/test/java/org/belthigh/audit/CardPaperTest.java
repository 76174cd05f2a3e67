package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.handout.PrintedPages;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A card and its home sheet, as text with feet: Ada's week from April 5, with cards at home on the
 * 6th, tosses from 15 ft on the 8th, and 75 pitches on the first day (Pitch Smart 2018 at 10).
 */
class CardPaperTest {
  private static final String CARD =
      """
      Ada
      Week of April 5 to April 11
      Tue 6 Spot cards on the wall
      Thu 8 Quick strike or ball
      You may pitch on Monday, April 5: 75 pitches at most.
      Stay behind the net.
      """;
  private static final String HOME_6 =
      "Ada\nTue, April 6\nSpot cards on the wall\nAn adult stays.\n";
  private static final String HOME_8 =
      "Ada\nThu, April 8\nQuick strike or ball\nFrom 15 ft\n11 low\n12 high\nAn adult stays.\n";

  @TempDir private Path folder;

  private String holds = "";
  private String answer = "may-pitch";
  private String days =
      day("2027-04-06", "home", item("spot-cards", "none", 0))
          + ","
          + day("2027-04-08", "home", item("quick-strike-ball", "front-toss", 15));
  private Optional<ClubRecord> record = Optional.empty();
  private String cautions = "'card':['Stay behind the net.'],'home':['An adult stays.']";
  private boolean card = true;
  private boolean home = true;

  private static String item(String drill, String feed, int feet) {
    return "{'drill':'%s','feed':'%s','feet':%d,'reps':12}".formatted(drill, feed, feet);
  }

  private static String day(String date, String place, String items) {
    return "{'date':'%s','place':'%s','items':[%s]}".formatted(date, place, items);
  }

  private static String name(String drill) {
    return CATALOGUE.curricula().get("belthigh-2027").drills().get(drill).name().in("en");
  }

  /** The names of drills are those of the curriculum. */
  private static String page(String text, String date) {
    return text.replace("Spot cards on the wall", name("spot-cards"))
            .replace("Quick strike or ball", name("quick-strike-ball"))
        + "Two Files · "
        + date
        + ", 2027 · page 1 of 1";
  }

  private static List<String> sound() {
    return new ArrayList<>(
        List.of(page(CARD, "April 5"), page(HOME_6, "April 6"), page(HOME_8, "April 8")));
  }

  private List<String> said(List<String> pages) throws Exception {
    return said("en", pages);
  }

  private List<String> said(String language, List<String> pages) throws Exception {
    String ada =
        "{'player':'a1','label':'Ada','group':'u10','language':'en','holds':["
            + holds
            + "],'days':["
            + days
            + "],'arms':[{'date':'2027-04-05','answer':'"
            + answer
            + "','pitches_left':75}],'cautions':{"
            + cautions
            + "}}";
    JsonNode node =
        new ObjectMapper()
            .readTree(
                ("{'club':'Two Files','from':'2027-04-05','curriculum':'belthigh-2027',"
                        + "'players':["
                        + ada
                        + "]}")
                    .replace('\'', '"'));
    PrintedPlan plan = PrintedPlan.of(node, CATALOGUE, record).orElseThrow();
    Stream<PrintedPages.Page> read = pages.stream().map(t -> new PrintedPages.Page(t, 612, 792));
    Paper paper = Paper.of("card.pdf", new PrintedPages("", language, read.toList()), "Two Files");
    PaperFindings findings = new PaperFindings("plan.json");
    new CardPaper(plan, paper, node.at("/players/0"), findings).check(card, home);
    return findings.all().stream()
        .map(Problem::text)
        .map(t -> t.replaceFirst("^plan.json, card.pdf, a1: ", "").replaceFirst("\\.?\n.*", ""))
        .toList();
  }

  private List<String> wrong(int page, String was, String is) throws Exception {
    List<String> pages = sound();
    assertThat(pages.get(page)).contains(was);
    pages.set(page, pages.get(page).replace(was, is));
    return said(pages);
  }

  @Test
  void a_sound_card_is_not_spoken_of() throws Exception {
    assertThat(said(sound())).isEmpty();
  }

  @Test
  void each_page_is_headed_by_the_child() throws Exception {
    assertThat(wrong(1, "Ada", "Bo"))
        .containsExactly("page 2 is headed 'Bo'; each page of this sheet is headed Ada");
    assertThat(wrong(0, "Ada\n", "Of Ada\n")).hasSize(1);
  }

  @Test
  void it_is_in_the_language_of_the_child() throws Exception {
    assertThat(said("es", sound()))
        .contains("it is in language 'es'; the child's sheets are in en");
    assertThat(said("de", sound()))
        .containsExactly("it is in language 'de'; the child's sheets are in en");
  }

  @Test
  void the_label_is_that_of_the_roster() throws Exception {
    record = Optional.of(new SmallClub(folder).record());
    assertThat(said(sound())).isEmpty();

    record =
        Optional.of(
            new SmallClub(folder)
                .with("roster.csv", "id,first_name,born,bats,group", "a1,Ida,2017-01-05,R,u10")
                .record());
    assertThat(said(sound())).containsExactly("it is headed 'Ada'; the roster has Ida");

    record =
        Optional.of(
            new SmallClub(folder)
                .with(
                    "roster.csv",
                    "id,first_name,born,bats,number,group",
                    "a1,Ada,2017-01-05,R,7,u10")
                .record());
    assertThat(said(sound())).as("without its number").hasSize(1);
  }

  @Test
  void the_card_and_a_sheet_for_each_home_day_are_there() throws Exception {
    assertThat(said(sound().subList(0, 2)))
        .containsExactly(
            "it holds 2 sheets, and not 3; the card and a sheet for each home day are there, page by"
                + " page");
    assertThat(wrong(2, "page 1 of 1", "page 1 of 2"))
        .singleElement()
        .asString()
        .startsWith("its pages are not whole, or a foot is missing");
    home = false;
    assertThat(said(sound())).hasSize(1);
    assertThat(said(sound().subList(0, 1))).as("no home sheets were asked for").isEmpty();
    home = true;
    card = false;
    assertThat(said(sound().subList(1, 3))).as("no card was asked for").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"April 5, April 12", "April 11, April 18"})
  void the_card_is_of_the_week(String was, String is) throws Exception {
    assertThat(wrong(0, was + (was.endsWith("11") ? "\n" : " to"), is + "\n"))
        .containsExactly("the card is not that of the week; its week is 2027-04-05 to 2027-04-11");
  }

  @ParameterizedTest
  @CsvSource({"0, 5", "1, 6", "2, 8"})
  void each_page_says_for_which_day_it_was_made(int page, int day) throws Exception {
    assertThat(wrong(page, "April " + day + ", 2027", "April " + day + ", 2026"))
        .containsExactly(
            "a foot is not of 2027-04-0" + day + "; each page says for which day it was made");
  }

  @Test
  void cautions_stand_on_it_word_for_word() throws Exception {
    assertThat(wrong(0, "Stay behind the net.", "Stay."))
        .containsExactly(
            "the card does not say \"Stay behind the net.\"; each caution stands on it word for"
                + " word");
    List<String> pages = sound();
    pages.replaceAll(p -> p.replace("An adult stays.", ""));
    assertThat(said(pages))
        .singleElement()
        .asString()
        .startsWith("the home sheets do not say \"An adult stays.\"");
  }

  @Test
  void the_card_has_the_drills_done_at_home_and_no_other() throws Exception {
    assertThat(wrong(0, name("spot-cards"), "Cards"))
        .contains("the card lacks '" + name("spot-cards") + "'; it has each drill done at home");
    assertThat(wrong(0, "You may", name("tee-belt-high") + "\nYou may"))
        .containsExactly(
            "the card asks for '"
                + name("tee-belt-high")
                + "'; it has the drills of its week and no other");
    assertThat(wrong(0, "You may", "Fri 9 " + name("tee-belt-high") + "\nYou may")).hasSize(1);
    assertThat(wrong(0, "You may", "Not " + name("tee-belt-high") + " now\nYou may"))
        .as("a name within a sentence asks for nothing")
        .isEmpty();
  }

  @Test
  void a_card_of_practices_has_at_least_two_of_their_drills() throws Exception {
    days =
        day("2027-04-06", "field", item("spot-cards", "none", 0))
            + ","
            + day("2027-04-08", "field", item("quick-strike-ball", "front-toss", 15));
    assertThat(said(sound().subList(0, 1))).isEmpty();
    List<String> one = List.of(sound().get(0).replace(name("spot-cards"), "Cards"));
    assertThat(said(one))
        .containsExactly("the card has 1 drills of its week; it has up to three things to do");
  }

  @Test
  void the_arm_box_is_as_free_as_the_plan_and_no_freer() throws Exception {
    answer = "no-pitching";
    assertThat(said(sound()))
        .containsExactly("the card lets the child pitch; the plan says no-pitching");
    answer = "may-pitch";
    assertThat(wrong(0, "You may pitch on Monday, April 5: 75 pitches at most.", "Rest."))
        .containsExactly("the card does not let the child pitch; the plan says may-pitch");
    assertThat(wrong(0, "75 pitches", "85 pitches"))
        .containsExactly("the card allows 85 pitches; the plan has 75 on 2027-04-05");
    assertThat(wrong(0, ": 75 pitches at most", ""))
        .containsExactly("the card allows no number of pitches; the plan has 75 on 2027-04-05");
    answer = "ask-first";
    assertThat(wrong(0, "You may pitch on Monday, April 5: 75 pitches at most.", "Ask first."))
        .isEmpty();
  }

  @Test
  void where_throwing_is_stopped_later_in_the_week_the_stricter_box_stands() throws Exception {
    holds = "{'kind':'throwing','from':'2027-04-11','until':null}";
    assertThat(wrong(0, "You may pitch on Monday, April 5: 75 pitches at most.", "No throwing."))
        .isEmpty();
    holds = "{'kind':'throwing','from':'2027-04-12','until':null}";
    assertThat(wrong(0, "You may pitch on Monday, April 5: 75 pitches at most.", "No throwing."))
        .hasSize(1);
  }

  @Test
  void a_held_child_is_told_so_and_asked_for_no_swing() throws Exception {
    holds = "{'kind':'swinging','from':'2027-04-01','until':null}";
    days = day("2027-04-06", "field", item("tee-belt-high", "tee", 0));
    List<String> page =
        List.of(
            sound()
                .get(0)
                .replace(name("spot-cards"), name("tee-belt-high"))
                .replace(name("quick-strike-ball"), "Nothing"));
    assertThat(said(page))
        .containsExactly(
            "a held child is asked for '" + name("tee-belt-high") + "'; no swing is allowed");
    holds = "{'kind':'swinging','from':'2027-04-01','until':'2027-04-10'}";
    assertThat(said(page)).as("a day of the week is free").isEmpty();
    cautions = "'card':[],'home':[]";
    assertThat(said(page))
        .containsExactly("nothing is said of the hold; the card of a child on hold says so");
    holds = "{'kind':'throwing','from':'2027-04-11','until':null}";
    assertThat(said(page))
        .containsExactly(
            "the card lets the child pitch; the plan says that throwing is stopped",
            "nothing is said of the hold; the card of a child on hold says so");
    holds = "{'kind':'throwing','from':'2027-04-12','until':null}";
    assertThat(said(page)).as("after the week of the card").isEmpty();
  }

  @Test
  void a_home_sheet_is_of_its_day_with_drill_distance_and_each_toss() throws Exception {
    assertThat(wrong(1, "Tue, April 6", "Tue, April 7"))
        .containsExactly("a home sheet is not of 2027-04-06; each home day has its sheet");
    assertThat(wrong(2, name("quick-strike-ball"), "Something"))
        .singleElement()
        .asString()
        .startsWith("the home sheet of 2027-04-08 lacks '" + name("quick-strike-ball") + "'");
    assertThat(wrong(2, "From 15 ft", "From 16 ft"))
        .singleElement()
        .asString()
        .startsWith("the home sheet of 2027-04-08 lacks the distance of 15");
    assertThat(wrong(2, "12 high", ""))
        .singleElement()
        .asString()
        .startsWith("the home sheet of 2027-04-08 lacks toss number 12");
  }

  @Test
  void a_tee_has_no_list_of_tosses() throws Exception {
    days =
        day("2027-04-06", "home", item("spot-cards", "none", 0))
            + ","
            + day("2027-04-08", "home", item("quick-strike-ball", "tee", 15));
    assertThat(wrong(2, "12 high", "")).isEmpty();
  }

  @Test
  void a_day_on_hold_has_no_home_sheet() throws Exception {
    holds = "{'kind':'everything','from':'2027-04-08','until':'2027-04-08'}";
    assertThat(said(sound())).contains("there is a home sheet of 2027-04-08; that day is on hold");
  }
}
