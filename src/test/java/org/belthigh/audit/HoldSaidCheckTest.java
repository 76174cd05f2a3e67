package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.WORDS;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a hold says of itself: rule, source, reason, who ends it, and that the club folder calls for
 * it. Which rule stands for which complaint is what {@code rules/hold/rules.yaml} says.
 */
class HoldSaidCheckTest {
  private static final String HEADS =
      "'athletic-trainer','nurse-practitioner','physician','physician-assistant'";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  private void wellness(String... rows) throws Exception {
    List<String> lines = new ArrayList<>(List.of("date,player,kind,clears,by"));
    lines.addAll(List.of(rows));
    club.with("wellness.csv", lines.toArray(String[]::new));
  }

  private static String source(String rule) {
    return LIMITS.plainName(CATALOGUE.rules().get(rule).source());
  }

  private static String hold(String rule, String kind, String from, String endedBy) {
    String because =
        WORDS.say(Phrase.of(rule, "player", "Ada", "date", LocalDate.parse(from)), "en");
    return "{'kind':'%s','from':'%s','until':null,'rule':'%s','source':'%s','because':'%s','who_ends':'A physician.','ended_by':[%s]}"
        .formatted(kind, from, rule, source(rule), because, endedBy);
  }

  private static String head() {
    return hold("HLD-001", "everything", "2027-04-03", HEADS);
  }

  private static String rest() {
    return "{'kind':'throwing','from':'2027-04-04','until':'2027-04-06','rule':'ARM-004','source':'%s','because':'Ada threw 36 on Apr 3.','who_ends':'It ends.','ended_by':[]}"
        .formatted(source("HLD-001"));
  }

  private List<String> ada(String hold) throws Exception {
    return Beside.ofAda(
            club, "'holds':[" + hold + "]", (g, c) -> new HoldSaidCheck(g, WORDS).check(c))
        .stream()
        .map(t -> t.replaceFirst("^a1, hold on [a-z]*: ", ""))
        .toList();
  }

  private List<String> head(String was, String is) throws Exception {
    wellness("2027-04-03,a1,head-injury,,");
    assertThat(head()).contains(was);
    return ada(head().replace(was, is));
  }

  @ParameterizedTest
  @CsvSource({
    "HLD-001, everything, head-injury",
    "HLD-002, throwing, arm-pain",
    "HLD-003, swinging, arm-pain",
    "HLD-004, throwing, back-pain",
    "HLD-005, swinging, back-pain",
    "HLD-006, everything, illness",
    "HLD-010, throwing, other-pain",
    "HLD-011, swinging, other-pain"
  })
  void each_complaint_has_its_rules_and_what_they_stop(String rule, String kind, String complaint)
      throws Exception {
    wellness("2027-04-03,a1," + complaint + ",,");
    String may =
        switch (complaint) {
          case "head-injury" -> HEADS;
          case "arm-pain", "back-pain" -> HEADS + ",'physical-therapist'";
          default -> HEADS + ",'physical-therapist','parent','coach'";
        };
    String hold = hold(rule, kind, "2027-04-03", may);
    assertThat(ada(hold)).isEmpty();

    String other = kind.equals("throwing") ? "swinging" : "throwing";
    assertThat(ada(hold.replace("'kind':'" + kind, "'kind':'" + other)))
        .contains("by " + rule + "; that rule is on " + kind);

    wellness("2027-04-03,a1," + (complaint.equals("illness") ? "arm-pain" : "illness") + ",,");
    assertThat(ada(hold))
        .contains("a hold for " + complaint + "; no such complaint is open in the club folder");
  }

  @Test
  void it_begins_on_the_first_day_that_nobody_has_ended() throws Exception {
    assertThat(head("2027-04-03", "2027-04-02"))
        .containsExactly("it begins on 2027-04-02; head-injury was reported on 2027-04-03");
    wellness("2027-04-03,a1,head-injury,,", "2027-04-04,a1,cleared,head-injury,physician");
    assertThat(ada(head()))
        .contains("a hold for head-injury; no such complaint is open in the club folder");
    wellness("2027-04-03,b1,head-injury,,");
    assertThat(ada(head())).as("another child's").isNotEmpty();
  }

  @Test
  void a_complaint_inside_the_planned_weeks_holds_from_its_day_on() throws Exception {
    wellness("2027-04-18,a1,head-injury,,");
    assertThat(ada(hold("HLD-001", "everything", "2027-04-18", HEADS))).isEmpty();

    wellness("2027-04-19,a1,head-injury,,");
    assertThat(ada(hold("HLD-001", "everything", "2027-04-19", HEADS)))
        .contains("a hold for head-injury; no such complaint is open in the club folder");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'physician-assistant' | 'physician-assistant','coach'",
        "'physician-assistant' | 'physician-assistant','physical-therapist'",
        "'athletic-trainer', | "
      })
  void who_may_end_it_is_as_the_club_folders_page_says(String was, String is) throws Exception {
    assertThat(head(was, is == null ? "" : is))
        .singleElement()
        .asString()
        .startsWith("it may be ended by [")
        .endsWith(
            "head-injury is ended by [athletic-trainer, nurse-practitioner, physician,"
                + " physician-assistant]");
  }

  @Test
  void free_of_symptoms_may_stand_beside_the_roles() throws Exception {
    wellness("2027-04-03,a1,illness,,");
    assertThat(
            ada(
                hold(
                    "HLD-006",
                    "everything",
                    "2027-04-03",
                    HEADS + ",'physical-therapist','parent','coach','symptom-free'")))
        .isEmpty();
  }

  @Test
  void its_source_is_the_one_of_its_rule() throws Exception {
    String own = source("HLD-001");
    assertThat(head("'source':'" + own, "'source':'A friend"))
        .contains(
            "the source is 'A friend'; each hold names one of the catalogue",
            "the source is 'A friend'; HLD-001: " + own);
    String other =
        CATALOGUE.sources().values().stream()
            .map(s -> s.shortName())
            .filter(s -> !s.equals(own))
            .findFirst()
            .orElseThrow();
    assertThat(head("'source':'" + own, "'source':'" + other))
        .containsExactly("the source is '" + other + "'; HLD-001: " + own);
  }

  @Test
  void its_rule_is_one_of_holds_or_rest() throws Exception {
    assertThat(head("HLD-001", "HLD-999"))
        .containsExactly("the rule 'HLD-999'; there is none such");
    assertThat(head("HLD-001", "PRG-001"))
        .singleElement()
        .asString()
        .startsWith("the rule PRG-001 of ")
        .endsWith("a hold has its own");
  }

  @ParameterizedTest
  @CsvSource({
    "Ada took, Bo took",
    "'Sat, Apr 3', 'Sun, Apr 4'",
    "'Sat, Apr 3', 'Sat, Apr 30'",
    "until a doctor, until a coach"
  })
  void its_reason_is_the_sentence_of_its_rule(String was, String is) throws Exception {
    assertThat(head(was, is))
        .singleElement()
        .asString()
        .startsWith("because is '")
        .contains(is)
        .endsWith(
            "it is 'Ada took a hit to the head on Sat, Apr 3. No practice and no game until"
                + " a doctor or athletic trainer says yes.'");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " "})
  void it_says_who_ends_it(String says) throws Exception {
    assertThat(head("'A physician.'", "'" + says + "'"))
        .containsExactly("nothing says who ends it; whoever may end a hold is named");
  }

  @Test
  void it_ends_no_earlier_than_it_begins() throws Exception {
    wellness("2027-04-03,a1,head-injury,,");
    assertThat(ada(head().replace("'until':null", "'until':'2027-04-02'")))
        .contains("it ends on 2027-04-02; it begins on 2027-04-03");
    assertThat(ada(head().replace("'until':null", "'until':'2027-04-03'")))
        .noneMatch(t -> t.contains("it ends on"));
  }

  @Test
  void a_lost_report_is_a_reason_where_one_was_lost() throws Exception {
    String lost =
        hold("HLD-009", "everything", "2027-04-05", "")
            .replace("Ada was hurt on Apr 3.", "Ada: ask first.");
    assertThat(ada(lost))
        .containsExactly("a report that was lost; every health report of the club could be read");

    wellness("2027-04-03,a1,arm-pane,,");
    assertThat(ada(lost)).isEmpty();
    wellness("2027-04-03,b1,arm-pane,,");
    assertThat(ada(lost)).as("about another child").isNotEmpty();
  }

  @Test
  void rest_is_of_a_child_who_pitched() throws Exception {
    club.with("throws.csv", "date,player,pitches,kind", "2027-04-03,a1,36,game");
    assertThat(ada(rest())).isEmpty();

    club.with("throws.csv", "date,player,pitches,kind", "2027-04-03,a1,0,game");
    assertThat(ada(rest()))
        .anyMatch(t -> t.equals("rest of a pitcher; the club folder has no pitches of a1"));
    club.with("throws.csv", "date,player,pitches,kind", "2027-04-03,b1,36,game");
    assertThat(ada(rest())).isNotEmpty();
  }

  @Test
  void it_is_of_throwing_ends_by_its_date_and_by_nobody() throws Exception {
    club.with("throws.csv", "date,player,pitches,kind", "2027-04-03,a1,36,game");
    String unlike = "a rest that is not of throwing, or has no end; rest ends by its date";
    assertThat(ada(rest().replace("'throwing'", "'swinging'"))).contains(unlike);
    assertThat(ada(rest().replace("'until':'2027-04-06'", "'until':null"))).contains(unlike);
    assertThat(ada(rest().replace("'ended_by':[]", "'ended_by':['coach']")))
        .containsExactly("somebody may end a rest; rest ends by its date, and nobody ends it");
  }
}
