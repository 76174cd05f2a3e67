package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each sheet that was asked for is listed, is there and is the one that was written. The digests
 * are those that {@code sha256sum} gives for the words "abc" (the example of FIPS 180-2).
 */
class PaperListTest {
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  private final Map<String, String> lying = new TreeMap<>();
  private final List<String> listed = new ArrayList<>();
  private String asked = "";
  private String more = "";
  private Map<String, JsonNode> there;

  private void sheet(String path) {
    lying.put(path, "abc");
    listed.add(file(path, 3, ABC, "null"));
  }

  private static String file(String path, int bytes, String digest, String player) {
    return "{'path':'%s','bytes':%d,'sha256':'%s','player':%s}"
        .formatted(path, bytes, digest, player);
  }

  private List<String> said() throws Exception {
    return said(
        "{'from':'2027-04-05','curriculum':'belthigh-2027 2027.1','prints':["
            + asked
            + "],'files':["
            + String.join(",", listed)
            + "]"
            + more
            + "}");
  }

  private List<String> said(String json) throws Exception {
    JsonNode node = new ObjectMapper().readTree(json.replace('\'', '"'));
    PaperFindings findings = new PaperFindings("plan.json");
    Papers papers =
        new Papers() {
          @Override
          public SortedSet<String> paths() {
            return new TreeSet<>(lying.keySet());
          }

          @Override
          public Optional<byte[]> bytes(String path) {
            return Optional.ofNullable(lying.get(path))
                .map(t -> t.getBytes(StandardCharsets.UTF_8));
          }
        };
    PrintedPlan plan = PrintedPlan.of(node, CATALOGUE, Optional.empty()).orElseThrow();
    there = new PaperList(plan, papers, findings).check();
    return findings.all().stream()
        .map(Problem::text)
        .map(t -> t.replaceFirst("^plan.json, ", "").replaceFirst("\\.?\n.*", ""))
        .toList();
  }

  private void ada(String days) {
    more = ",'players':[{'player':'a1','group':'u10','days':[" + days + "]}]";
  }

  @Test
  void sheets_that_are_there_as_they_were_written_are_handed_on() throws Exception {
    asked = "'overview'";
    ada("");
    sheet("u10/overview.pdf");

    assertThat(said()).isEmpty();
    assertThat(there).containsOnlyKeys("u10/overview.pdf");
  }

  @Test
  void a_sheet_that_is_gone_is_told_with_the_child_whose_it_is() throws Exception {
    asked = "'card'";
    ada("");
    String path = "u10/cards/a1-week-2027-04-05.pdf";
    listed.add(file(path, 3, ABC, "'a1'"));

    assertThat(said())
        .containsExactly(
            path + ", a1: the sheet is not there; every sheet that was printed is kept");
    assertThat(there).isEmpty();
  }

  @Test
  void a_sheet_of_another_length_or_digest_is_told_and_looked_into_all_the_same() throws Exception {
    asked = "'overview'";
    ada("");
    sheet("u10/overview.pdf");
    lying.put("u10/overview.pdf", "abcd");
    assertThat(said())
        .containsExactly(
            "u10/overview.pdf: it has 4 bytes, and not 3; a sheet stays as it was printed");
    assertThat(there).hasSize(1);

    lying.put("u10/overview.pdf", "abd");
    assertThat(said())
        .singleElement()
        .asString()
        .startsWith("u10/overview.pdf: its digest is another than that of the sheet");
    assertThat(there).hasSize(1);
  }

  @Test
  void a_sheet_is_listed_once() throws Exception {
    asked = "'overview'";
    ada("");
    sheet("u10/overview.pdf");
    sheet("u10/overview.pdf");

    assertThat(said())
        .containsExactly("u10/overview.pdf: it stands twice in files; each print is listed once");
  }

  @Test
  void a_sheet_that_this_plan_did_not_print_is_remarked_on() throws Exception {
    asked = "'overview'";
    ada("");
    sheet("u10/overview.pdf");
    lying.put("u10/old.pdf", "abc");

    assertThat(said())
        .singleElement()
        .asString()
        .startsWith("u10/old.pdf: this plan did not print it");
  }

  @ParameterizedTest
  @CsvSource({
    "overview, u10/overview.pdf",
    "arm, u10/arm.pdf",
    "emergency, u10/emergency.pdf",
    "guide, u10/guide.pdf",
    "evaluation, u10/evaluation.pdf",
    "packet, u10/packet.pdf",
    "clipboard, u10/clipboard.pdf",
    "card, u10/cards/a1-week-2027-04-05.pdf",
    "season, u10/season/a1-2027-04-05.pdf",
    "own-log, u10/own-log/a1-2027-04-05.pdf"
  })
  void what_was_asked_for_is_listed(String print, String path) throws Exception {
    ada("");
    asked = "'" + print + "'";
    assertThat(said())
        .singleElement()
        .asString()
        .startsWith(path)
        .contains("the plan does not list this sheet")
        .matches(t -> t.contains(", a1:") == path.contains("a1-"));

    sheet(path);
    assertThat(said()).isEmpty();

    listed.clear();
    lying.clear();
    asked = "'log'";
    assertThat(said()).as("and nothing else is owed").isEmpty();
  }

  @Test
  void a_practice_has_its_sheet_and_its_toss_list_and_its_logs() throws Exception {
    more =
        ",'practices':[{'group':'u10','date':'2027-04-06','toss_lists':true,'logs':[{'drill':'x'}]},"
            + "{'group':'u10','date':'2027-04-08','toss_lists':false,'logs':[]}]";
    asked = "'practice','log'";

    assertThat(said())
        .extracting(t -> t.substring(0, t.indexOf(":")))
        .containsExactly(
            "u10/log.pdf",
            "u10/practice-2027-04-06.pdf",
            "u10/tosses-2027-04-06.pdf",
            "u10/practice-2027-04-08.pdf");
    asked = "'overview'";
    sheet("u10/overview.pdf");
    assertThat(said()).isEmpty();
    more = more.replace("[{'drill':'x'}]", "[]");
    asked = "'overview','log'";
    assertThat(said()).as("no log sheets are needed").isEmpty();
  }

  @Test
  void home_sheets_are_owed_where_there_is_work_at_home() throws Exception {
    asked = "'home'";
    ada("{'date':'2027-04-06','place':'home','items':[{'drill':'spot-cards'}]}");
    assertThat(said())
        .singleElement()
        .asString()
        .startsWith("u10/cards/a1-week-2027-04-05.pdf, a1");
    ada("{'date':'2027-04-06','place':'home','items':[]}");
    assertThat(said()).as("no work").isEmpty();
    ada("{'date':'2027-04-12','place':'home','items':[{'drill':'spot-cards'}]}");
    assertThat(said()).as("in the second week").isEmpty();
    ada("{'date':'2027-04-04','place':'home','items':[{'drill':'spot-cards'}]}");
    assertThat(said()).as("before it").isEmpty();
    ada("{'date':'2027-04-06','place':'field','items':[{'drill':'spot-cards'}]}");
    assertThat(said()).as("at a practice").isEmpty();
  }

  @Test
  void no_clipboard_is_owed_for_nobody() throws Exception {
    asked = "'clipboard'";
    more = ",'practices':[{'group':'u10','date':'2027-04-06'}]";

    assertThat(said()).isEmpty();
  }

  @Test
  void a_plan_says_what_it_printed() throws Exception {
    String start = "{'from':'2027-04-05','curriculum':'belthigh-2027'";
    assertThat(said(start + ",'files':[]}"))
        .containsExactly(
            "files: the plan does not say what it printed; a plan lists what was asked for under"
                + " prints, and each sheet under files");
    assertThat(said(start + ",'prints':['overview']}")).hasSize(1);
    assertThat(said(start + ",'prints':[],'files':[]}"))
        .containsExactly("prints: nothing was asked for; a plan prints at least one kind of sheet");
  }
}
