package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.belthigh.handout.PrintedPages;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheets of a group, as text with feet: what each must say of whom. */
class TeamPaperTest {
  private static final String FOOT = "Two Files · Under 10 · April 5, 2027 · page 1 of 1";

  private static final String DECISIONS =
      "'decisions':[{'skill':'see','step':'see-3','decision':'keep-going'},"
          + "{'skill':'drive','step':'drive-2','decision':'move-up'}]";

  @TempDir private Path folder;

  private Optional<ClubRecord> record = Optional.empty();
  private String language = "en";

  private String plan =
      "'players':[{'player':'a1','label':'Ada','group':'u10',"
          + DECISIONS
          + "},{'player':'c1','label':'Cy','group':'u10','decisions':[]},"
          + "{'player':'b1','label':'Bo','group':'u14','decisions':[]}]";

  private List<String> said(String text, Consumer<TeamPaper> check) throws Exception {
    return saidOf(check, text + "\n" + FOOT);
  }

  private List<String> saidOf(Consumer<TeamPaper> check, String... pages) throws Exception {
    PaperFindings findings = new PaperFindings("plan.json");
    check.accept(
        new TeamPaper(
            PrintedPlan.of(json(), CATALOGUE, record).orElseThrow(),
            Paper.of(
                "u10/x.pdf",
                new PrintedPages(
                    "",
                    language,
                    Stream.of(pages).map(t -> new PrintedPages.Page(t, 612, 792)).toList()),
                "Two Files"),
            "u10",
            findings));
    return findings.all().stream()
        .map(Problem::text)
        .map(t -> t.replaceFirst("^plan.json, u10/x.pdf(: |, )", "").replaceFirst("\\.?\n.*", ""))
        .toList();
  }

  private JsonNode json() throws Exception {
    return new ObjectMapper()
        .readTree(
            ("{'from':'2027-04-05','club':'Two Files','curriculum':'belthigh-2027'," + plan + "}")
                .replace('\'', '"'));
  }

  private static String step(String id) {
    return CATALOGUE.curricula().get("belthigh-2027").step(id).orElseThrow().name().in("en");
  }

  private static String drill(String id) {
    return CATALOGUE.curricula().get("belthigh-2027").drills().get(id).name().in("en");
  }

  private static String row(String label, String one, String two) {
    return "Overview\n"
        + label
        + " "
        + one
        + " "
        + step("see-3")
        + " "
        + two
        + " "
        + step("drive-2")
        + "\nCy nothing\n";
  }

  @Test
  void a_child_stands_on_the_overview_with_decisions_and_steps() throws Exception {
    assertThat(said(row("Ada", "keep going", "move up"), TeamPaper::overview)).isEmpty();
    assertThat(said(row("Ada", "keep going", "firm up"), TeamPaper::overview))
        .containsExactly(
            "a1: no row of Ada has its decisions and steps; each child of the group stands on the"
                + " overview, skill by skill");
    assertThat(said(row("Ida", "keep going", "move up"), TeamPaper::overview)).hasSize(1);
    assertThat(
            said(
                row("Ada", "keep going", "move up").replace(step("see-3"), "Something"),
                TeamPaper::overview))
        .hasSize(1);
  }

  @Test
  void what_stands_in_the_row_of_another_child_does_not_count() throws Exception {
    assertThat(
            said(
                row("Ada", "keep going", "move up").replace("move up", "\nCy move up"),
                TeamPaper::overview))
        .hasSize(1);
  }

  @Test
  void a_name_in_a_sentence_before_the_row_does_no_harm() throws Exception {
    assertThat(
            said(
                "Ask Ada first.\nCy too.\n" + row("Ada", "keep going", "move up"),
                TeamPaper::overview))
        .isEmpty();
  }

  @Test
  void what_is_known_of_a_later_day_stands_on_the_overview() throws Exception {
    plan += ",'later_rows':[{'player':'a1','says':'Ada: later.'},{'player':'b1','says':'Bo: no.'}]";
    String sheet = row("Ada", "keep going", "move up");

    assertThat(said("Ada: later.\n" + sheet, TeamPaper::overview)).isEmpty();
    assertThat(said(sheet, TeamPaper::overview))
        .containsExactly(
            "a1: it does not say \"Ada: later.\"; what is known of a later day stands on the"
                + " overview");
  }

  @Test
  void pages_are_whole_of_this_plan_and_of_this_group() throws Exception {
    record = Optional.of(new SmallClub(folder).record());
    assertThat(said("Sheet", TeamPaper::whole)).isEmpty();
    assertThat(saidOf(TeamPaper::whole, "Sheet\n" + FOOT.replace("of 1", "of 2")))
        .containsExactly(
            "its pages are not whole, or a foot is missing; each page is there, with its foot");
    assertThat(saidOf(TeamPaper::whole, "Sheet\n" + FOOT.replace("April 5", "April 12")))
        .containsExactly("a foot is not of 2027-04-05; each page says for which day it was made");
    assertThat(saidOf(TeamPaper::whole, "Sheet\n" + FOOT.replace("Under 10", "Under 14")))
        .containsExactly("it is a sheet of another group; each foot says Under 10");
    language = "de";
    assertThat(said("Sheet", TeamPaper::whole))
        .containsExactly("its language is 'de'; sheets are in en or es");
  }

  @Test
  void only_a_whole_sheet_is_looked_into() throws Exception {
    saidOf(t -> assertThat(t.whole()).isTrue(), "Sheet\n" + FOOT);
    saidOf(t -> assertThat(t.whole()).isFalse(), "Sheet\n" + FOOT.replace("of 1", "of 2"));
    saidOf(t -> assertThat(t.whole()).isFalse(), "Sheet\n" + FOOT.replace("April 5", "April 6"));
    language = "de";
    saidOf(t -> assertThat(t.whole()).isFalse(), "Sheet\n" + FOOT);
  }

  private void arms(String ada, String cy) {
    plan =
        "'players':[{'player':'a1','label':'Ada','group':'u10','arms':["
            + ada
            + "]},"
            + "{'player':'c1','label':'Cy','group':'u10','arms':["
            + cy
            + "]}]";
  }

  private static final String MAY = "{'answer':'may-pitch','pitches_left':%d}";

  @ParameterizedTest
  @CsvSource({
    "up to 75 up to 75 no pitching ask first, true",
    "up to 75 up to 75 no pitching ask first up to 9 by the note, true",
    "up to 75 up to 66 no pitching ask first, false",
    "up to 66 up to 75 no pitching ask first, false",
    "up to 75 no pitching no pitching ask first, false",
    "up to 75 up to 75 up to 75 ask first, false",
    "up to 75 up to 75 no pitching no pitching, false",
    "up to 75 up to 75 no pitching, false"
  })
  void the_arm_sheet_says_for_each_day_what_the_plan_says(String row, boolean same)
      throws Exception {
    String may = MAY.formatted(75);
    arms(may + "," + may + ",{'answer':'no-pitching'},{'answer':'ask-first'}", "");

    List<String> said = said("Ada " + row + "\nCy no pitching", TeamPaper::arms);
    assertThat(said.isEmpty()).isEqualTo(same);
    assertThat(said).allMatch(t -> t.startsWith("a1: the row of Ada has ["));
  }

  @Test
  void each_child_who_pitches_has_a_row() throws Exception {
    arms(MAY.formatted(75), "");
    assertThat(said("Cy no pitching", TeamPaper::arms))
        .containsExactly("a1: Ada has no row; each child who pitches stands on the arm sheet");
  }

  @ParameterizedTest
  @CsvSource({"up to 1, true", "up to 75, true", "up to Sunday, false", "rest, false"})
  void who_may_not_pitch_has_no_number(String row, boolean told) throws Exception {
    arms("", "{'answer':'no-pitching'}");
    assertThat(said("Ada rest\nCy " + row, TeamPaper::arms).isEmpty()).isEqualTo(!told);
  }

  @Test
  void who_may_not_pitch_needs_no_row() throws Exception {
    arms("", "{'answer':'no-pitching'}");
    assertThat(said("Nobody", TeamPaper::arms)).isEmpty();
  }

  private void practice(String more) {
    plan =
        "'players':[{'player':'a1','label':'Ada','group':'u10','holds':[]},"
            + "{'player':'c1','label':'Cy','group':'u10','holds':"
            + "[{'kind':'everything','from':'2027-04-01','until':null}]}],"
            + "'practices':[{'group':'u10','date':'2027-04-06','where':'Heron Field',"
            + "'stations':[{'drills':['tee-belt-high']}],"
            + "'cautions':['Helmets on.'],'gear':[{'what':'tee','count':1}],"
            + "'no_throwing':['a1'],'no_swinging':[],"
            + "'rotations':[{'posts':[{'job':'hits','players':['a1']},"
            + "{'job':'helps','players':['c1']}]}]"
            + more
            + "}]";
  }

  private static String sheet() {
    return "Tuesday, April 6, Heron Field\n"
        + drill("tee-belt-high")
        + ": Ada\nNo throwing: Ada\nNot today: Cy\nAsk each player: well?\nHelmets on.\nBring: "
        + CATALOGUE.curricula().get("belthigh-2027").gear().get("tee").in("en")
        + " (1)";
  }

  private List<String> practice(String was, String is) throws Exception {
    assertThat(sheet()).contains(was);
    String text = sheet().replace(was, is);
    JsonNode node = json().at("/practices/0");
    return said(text, t -> t.practice(node));
  }

  @Test
  void a_sound_practice_sheet_is_not_spoken_of() throws Exception {
    practice("");
    assertThat(practice("", "")).isEmpty();
  }

  @Test
  void it_says_day_place_and_what_is_done() throws Exception {
    practice("");
    assertThat(practice("April 6", "April 7"))
        .containsExactly("it is not of 2027-04-06; it is headed by its day");
    assertThat(practice("Heron Field", "Mill Lane"))
        .containsExactly("the place is not Heron Field; it says where it is");
    assertThat(practice(drill("tee-belt-high"), "Something"))
        .containsExactly(
            "'" + drill("tee-belt-high") + "' is missing; each station says what is done");
    assertThat(practice("Helmets on.", ""))
        .containsExactly(
            "it does not say \"Helmets on.\"; each caution stands on it word for word");
  }

  @Test
  void it_says_what_to_bring() throws Exception {
    practice("");
    plan = plan.replace("'what':'tee'", "'what':'machine'");
    String machine = CATALOGUE.curricula().get("belthigh-2027").gear().get("machine").in("en");
    assertThat(practice("", ""))
        .containsExactly("'" + machine + " (1)' is missing; it says what to bring");
    plan = plan.replace("'what':'machine','count':1", "'what':'tee','count':2");
    assertThat(practice("", "")).as("one of two").hasSize(1);
    plan = plan.replace("'what':'tee','count':2", "'what':'machine','count':1");
    plan = plan.replace("'what':'machine'", "'what':'rocket'");
    assertThat(practice("", "")).as("nothing has that name").isEmpty();
  }

  @Test
  void each_child_stands_in_its_squad_and_where_it_must_not_throw_or_take_part() throws Exception {
    practice("");
    String box = "; the box before the practice has each child where the plan has it";
    assertThat(practice("No throwing: Ada\n", ""))
        .containsExactly(
            "a1: Ada stands on it 1 times, and not 2; each child stands in its squad, and where it"
                + " must not throw, swing or take part",
            "a1: Ada does not stand in the list of those who do not throw" + box);
    assertThat(practice("Cy", "Di"))
        .hasSize(2)
        .anyMatch(t -> t.startsWith("c1: Cy stands on it 0 times, and not 1"))
        .contains("c1: Cy does not stand in the list of those who are off" + box);
    plan = plan.replace("'no_swinging':[]", "'no_swinging':['a1']");
    assertThat(practice("", ""))
        .hasSize(2)
        .anyMatch(t -> t.startsWith("a1: Ada stands on it 2 times, and not 3"))
        .contains("a1: Ada does not stand in the list of those who do not swing" + box);
  }

  @ParameterizedTest
  @CsvSource({
    "No throwing: Ada, No throwing: Cy, 'a1: Ada does not', 'c1: Cy stands in'",
    "Not today: Cy, No swings: Cy, 'c1: Cy does not', 'c1: Cy stands in'",
    "Not today: Cy, Not today: Ada, 'c1: Cy does not', 'a1: Ada stands in'"
  })
  void a_child_in_the_list_of_another_stop_is_told(String was, String is, String lacks, String has)
      throws Exception {
    practice("");
    assertThat(practice(was, is))
        .anyMatch(t -> t.startsWith(lacks + " stand in the list of those who"))
        .anyMatch(t -> t.startsWith(has + " the list of those who"));
  }

  @Test
  void other_ways_have_their_sheet() throws Exception {
    practice(",'ways':[{'way':'rain','stations':[{'drills':['spot-cards']}]}]");
    assertThat(practice("", ""))
        .hasSize(2)
        .anyMatch(t -> t.startsWith("a sheet of it is missing"))
        .anyMatch(t -> t.startsWith("'" + drill("spot-cards") + "' is missing"));
    assertThat(
            saidOf(
                t -> {
                  try {
                    t.practice(json().at("/practices/0"));
                  } catch (Exception e) {
                    throw new IllegalStateException(e);
                  }
                },
                sheet() + "\n" + FOOT,
                drill("spot-cards") + "\n" + FOOT))
        .isEmpty();
  }

  @Test
  void the_emergency_sheet_has_the_numbers_and_places_of_the_club() throws Exception {
    SmallClub club = new SmallClub(folder);
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file,
        Files.readString(file)
            + "places:\n  - {id: field, name: Heron Field, kind: field, address: \"4 Inlet Road\"}\n"
            + "emergency: {call: \"911\", who: coach}\n");
    record = Optional.of(club.record());

    assertThat(said("Call 911\nHeron Field\n4 Inlet Road", TeamPaper::emergency)).isEmpty();
    assertThat(said("Nothing", TeamPaper::emergency))
        .containsExactly(
            "the number to call '911' is missing; it has the numbers and places of club.yaml",
            "the place 'Heron Field' is missing; it has the numbers and places of club.yaml",
            "the address '4 Inlet Road' is missing; it has the numbers and places of club.yaml");
    record = Optional.empty();
    assertThat(said("Nothing", TeamPaper::emergency)).as("without the club folder").isEmpty();
  }
}
