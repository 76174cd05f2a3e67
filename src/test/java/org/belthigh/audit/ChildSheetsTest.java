package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.WORDS;
import static org.belthigh.audit.SmallClub.april;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Consumer;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.Test;

/** What a child's sheets say for safety, and what its home work asks for. */
class ChildSheetsTest extends OneChild {
  @Test
  void a_resting_arm_is_told_when_it_may_pitch_again_and_nothing_else() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-04,a1,30,game");
    Phrase from = Phrase.of("arm.from", "date", april(6));
    ArrayNode card = says("card", from, Phrase.of("arm.rest"), Phrase.of("arm.anywhere"));
    assertThat(cautions()).isEmpty();

    card.set(0, JSON.getNodeFactory().textNode("The arm is free."));
    assertThat(cautions())
        .hasSize(2)
        .anyMatch(t -> t.contains("it does not say: Your arm rests."))
        .anyMatch(t -> t.contains("cautions of the card: it says: The arm is free."));

    says("card", from, Phrase.of("arm.anywhere"));
    assertThat(cautions()).singleElement().asString().contains("Rest days");
  }

  @Test
  void a_free_arm_is_told_how_many_pitches_and_a_silent_one_to_ask() throws Exception {
    says("card", of("arm.ask", "arm.anywhere"));
    assertThat(cautions()).isEmpty();

    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game");
    Phrase may = Phrase.of("arm.may", "date", april(5), "pitches", 75);
    says("card", may, Phrase.of("arm.anywhere"));
    assertThat(cautions()).isEmpty();

    says("card", may.with("pitches", 80), Phrase.of("arm.anywhere"));
    assertThat(cautions()).hasSize(2).anyMatch(t -> t.contains("75 pitches at most"));
  }

  private void armBox(Phrase... phrases) {
    ArrayNode card = says("card", phrases);
    card.add(WORDS.say(Phrase.of("arm.anywhere"), ada.path("language").asText()));
  }

  private static Phrase may(int pitches) {
    return Phrase.of("arm.may", "date", april(5), "pitches", pitches);
  }

  @Test
  void a_report_lost_of_either_kind_is_no_for_an_answer() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game", "2027-04-02,b1,many,game");
    armBox(may(75));
    assertThat(cautions()).as("lost of another child").isEmpty();

    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game", "2027-04-02,a1,many,game");
    armBox(Phrase.of("arm.no"));
    assertThat(cautions()).isEmpty();
    armBox(may(75));
    assertThat(cautions()).hasSize(2);

    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game");
    club.with("wellness.csv", WELLNESS, "2027-04-02,a1,what,,");
    armBox(Phrase.of("arm.no"));
    assertThat(cautions()).isEmpty();
  }

  @Test
  void an_arm_that_was_silent_for_longer_than_the_number_of_days_is_asked_about() throws Exception {
    int ask = LIMITS.whole("ask-after-days", 10);
    club.with("throws.csv", OUTINGS, april(5).minusDays(ask) + ",a1,0,game");
    armBox(may(75));
    assertThat(cautions()).isEmpty();

    club.with("throws.csv", OUTINGS, april(5).minusDays(ask + 1) + ",a1,0,game");
    armBox(Phrase.of("arm.ask"));
    assertThat(cautions()).isEmpty();
  }

  @Test
  void an_arm_without_a_free_day_is_told_no_whether_silent_or_not() throws Exception {
    club.books("wbsc-youth");
    armBox(Phrase.of("arm.no"));
    assertThat(cautions()).isEmpty();

    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game");
    assertThat(cautions()).isEmpty();
  }

  @Test
  void before_the_first_row_of_a_book_no_is_right_and_so_is_the_birthday() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game");
    roster("2020-04-09", "yes");
    armBox(Phrase.of("arm.no"));
    assertThat(cautions()).isEmpty();
    armBox(Phrase.of("arm.from", "date", april(9)), Phrase.of("arm.rest"));
    assertThat(cautions()).isEmpty();

    roster("2017-01-05", "yes");
    armBox(Phrase.of("arm.no"));
    assertThat(cautions()).as("a free arm that is told no").hasSize(2);
  }

  @Test
  void who_does_not_pitch_is_told_that_alone() throws Exception {
    roster("2017-01-05", "no");
    says("card", Phrase.of("arm.not-a-pitcher"));
    assertThat(cautions()).isEmpty();
    armBox(Phrase.of("arm.not-a-pitcher"));
    assertThat(cautions()).hasSize(1);
  }

  @Test
  void no_table_is_borrowed_for_softball() throws Exception {
    club.softball();
    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game");
    armBox(Phrase.of("arm.no"));
    assertThat(cautions()).isEmpty();
  }

  @Test
  void a_complaint_is_said_with_whose_word_ends_it_and_whose_does_not() throws Exception {
    club.with(
        "wellness.csv", WELLNESS, "2027-04-01,a1,head-injury,,", "2027-04-03,a1,symptom-free,,");
    ada.withArray("holds")
        .addObject()
        .put("rule", "HLD-001")
        .put("kind", "everything")
        .put("from", "2027-04-01")
        .putNull("until");
    Phrase cause = Phrase.of("HLD-001", "player", "Ada", "date", april(1));
    Phrase idle = Phrase.of("HLD-012", "player", "Ada", "date", april(3));
    ada.put("language", "es");
    plan.putObject("asked").put("language", "es");
    says("card", cause, idle, Phrase.of("arm.stopped"), Phrase.of("hold.ends.head-injury"));
    assertThat(cautions()).isEmpty();

    says("card", cause, Phrase.of("arm.stopped"), Phrase.of("hold.ends.head-injury"));
    assertThat(cautions()).singleElement().asString().contains("no termina esta pausa");
    says("card", cause, idle, Phrase.of("arm.stopped"), Phrase.of("hold.ends.illness"));
    assertThat(cautions()).hasSize(2);
  }

  @Test
  void home_sheets_say_what_their_drill_and_the_place_call_for() throws Exception {
    says("card", of("arm.ask", "arm.anywhere"));
    session("spot-cards", "none", 0);
    String[] bare = {
      "home.check.adult",
      "home.check.hall",
      "home.check.light",
      "home.check.pain",
      "home.stop.pain",
      "home.stop.tired",
      "home.stop.dark"
    };
    says("home", of(bare));
    assertThat(cautions()).isEmpty();

    says("home", of(List.of(bare).subList(1, bare.length).toArray(String[]::new)));
    assertThat(cautions())
        .singleElement()
        .asString()
        .contains("cautions of the home sheets")
        .contains("An adult stays here the whole time.");

    session("tee-belt-high", "foam", 0);
    says("home", of(bare));
    assertThat(cautions())
        .anyMatch(t -> t.contains("The hitter wears a helmet."))
        .anyMatch(t -> t.contains("Only foam balls."))
        .anyMatch(t -> t.contains("Only the hitter is inside the ring."));
  }

  @Test
  void home_gear_is_what_the_drill_needs_and_as_much_of_it() throws Exception {
    session("tee-belt-high", "foam", 0);
    List<String> wanted = gear();
    assertThat(wanted).anyMatch(t -> t.contains("0 of tee asked for; its drills at home need 1"));
    assertThat(wanted).anyMatch(t -> t.contains("0 of helmet asked for"));
    wanted.forEach(
        t -> {
          String what = t.replaceFirst(".*: 0 of (\\S+) asked for.*", "$1");
          ada.withArray("home_gear").addObject().put("what", what).put("count", 1);
        });
    assertThat(gear()).isEmpty();

    ((ObjectNode) ada.at("/home_gear/0")).put("count", 8);
    assertThat(gear()).singleElement().asString().contains("8 of");
    ((ObjectNode) ada.at("/home_gear/0")).put("count", 1);
    ada.withArray("home_gear").addObject().put("what", "machine").put("count", 1);
    assertThat(gear()).singleElement().asString().contains("1 of machine asked for");
  }

  @Test
  void a_sheet_is_in_the_language_of_the_family_or_the_one_that_was_asked_for() throws Exception {
    ada.put("language", "es");
    Consumer<Given> sheets = g -> g.children().forEach(new SheetCheck(g, WORDS)::check);
    assertThat(said(sheets)).anyMatch(t -> t.contains("in the language 'es'; it is 'en'"));

    plan.putObject("asked").put("language", "es");
    assertThat(said(sheets)).noneMatch(t -> t.contains("in the language"));
  }

  private List<String> catches(String day) throws Exception {
    ada.putArray("arms").addObject().put("date", day).put("may_catch", true);
    return said(g -> g.children().forEach(new CatchCheck(g)::check));
  }

  @Test
  void who_pitched_on_a_planned_day_does_not_catch_on_it() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-07,a1,5,game");

    assertThat(catches("2027-04-06")).isEmpty();
    assertThat(catches("2027-04-07")).singleElement().asString().contains("after 5 pitches");
  }

  @Test
  void nor_does_who_is_no_catcher() throws Exception {
    ada.put("player", "b1");

    assertThat(catches("2027-04-06")).singleElement().asString().contains("no catcher");
  }

  private List<String> books(String found, String asked) throws Exception {
    JsonNode books = JSON.readTree(found.replace('\'', '"'));
    plan.put("club", "Two Files").put("curriculum", "x").set("rule_books", books);
    plan.putObject("asked").set("books", JSON.readTree(asked.replace('\'', '"')));
    ClubRecord held = Given.held(club.record(), plan, CATALOGUE);
    Given given =
        new Given(
            SmallClub.plan(SmallClub.ada()),
            plan,
            held,
            held,
            CATALOGUE,
            LIMITS,
            SmallClub.findings());
    new FrontCheck(given).check();
    return SmallClub.said(given.findings()).stream().filter(t -> t.contains("rule_books")).toList();
  }

  @Test
  void rule_books_are_the_clubs_and_those_that_were_asked_for() throws Exception {
    assertThat(books("['pitch-smart-2018']", "[]")).isEmpty();
    assertThat(books("['pitch-smart-2018','pony-2018']", "['pony-2018']")).isEmpty();
    assertThat(books("['pitch-smart-2018','pony-2018']", "[]"))
        .singleElement()
        .asString()
        .contains("no other was asked for");
    assertThat(books("['pitch-smart-2018']", "['pony-2018']"))
        .singleElement()
        .asString()
        .contains("pony-2018 is missing");
    assertThat(books("['pitch-smart-2018']", "['no-such']"))
        .singleElement()
        .asString()
        .contains("is no rule book");
  }

  @Test
  void what_was_set_aside_is_the_same_from_wherever_the_folder_is_named() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-07,a1,many,game");
    String text = club.whole().problems().get(0).text();
    plan.put("club", "Two Files").putArray("set_aside").add("../elsewhere/" + text);
    Consumer<Given> front = g -> new FrontCheck(g).check();
    assertThat(said(front)).noneMatch(t -> t.contains("set_aside"));

    plan.putArray("set_aside").add(text.replace("many", "more"));
    assertThat(said(front)).filteredOn(t -> t.contains("set_aside")).hasSize(2);
  }

  @Test
  void a_book_that_was_asked_for_binds_arms_too() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-01,a1,0,game");
    ObjectNode arm = ada.putArray("arms").addObject().put("date", "2027-04-05");
    arm.put("answer", "may-pitch").put("pitches_left", 75).put("known_to", "2027-04-01");
    plan.putObject("asked").putArray("books").add("wbsc-youth");
    ClubRecord held = Given.held(club.record(), plan, CATALOGUE);
    Given given =
        new Given(
            SmallClub.plan(SmallClub.ada()),
            plan,
            held,
            held,
            CATALOGUE,
            LIMITS,
            SmallClub.findings());
    given.children().forEach(new ArmsCheck(given)::check);

    assertThat(SmallClub.said(given.findings())).anyMatch(t -> t.contains("wbsc-youth"));
  }

  private List<String> later() throws Exception {
    return said(g -> new LaterRowsCheck(g).check());
  }

  @Test
  void later_rows_are_those_of_the_club_folder_with_what_they_are() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-07,a1,5,game", "2027-04-08,a1,what,game");
    assertThat(later()).anyMatch(t -> t.contains("2027-04-07 about a1, outing"));

    plan.putArray("later_rows");
    for (int line = 2; line < 4; line++) {
      plan.withArray("later_rows")
          .addObject()
          .put("file", "throws.csv")
          .put("line", line)
          .put("date", "2027-04-0" + (line + 5))
          .put("player", "a1")
          .put("what", "outing")
          .put("says", "x");
    }
    assertThat(later()).isEmpty();
    plan.withArray("later_rows").addObject().put("file", "y").put("date", "2027-04-09");
    assertThat(later()).anyMatch(t -> t.contains("has no such row"));
  }

  @Test
  void no_work_stands_on_a_day_off_from_the_sport() throws Exception {
    session("spot-cards", "none", 0);
    ((ObjectNode) ada.at("/days/0")).put("date", "2027-06-08").put("note", "x");
    ada.putArray("weeks");
    Consumer<Given> weeks = g -> g.children().forEach(new WeekCheck(g)::check);
    assertThat(said(weeks)).anyMatch(t -> t.contains("a day off from the sport"));

    club.calendar("2027-06-12,u10,practice,,,");
    assertThat(said(weeks)).noneMatch(t -> t.contains("a day off from the sport"));
  }
}
