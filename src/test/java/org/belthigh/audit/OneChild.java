package org.belthigh.audit;

import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.WORDS;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** One child of a plan, of whose sheets and cautions each test says something. */
abstract class OneChild {
  static final ObjectMapper JSON = new ObjectMapper();
  static final String OUTINGS = "date,player,pitches,kind";
  static final String WELLNESS = "date,player,kind,clears,by";

  @TempDir private Path folder;
  SmallClub club;
  final ObjectNode plan = JSON.createObjectNode();
  final ObjectNode ada = plan.putArray("players").addObject();

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
    ada.put("player", "a1").put("label", "Ada").put("language", "en");
    ada.putArray("holds");
    ada.putArray("days");
    ada.putArray("home_gear");
    ada.putObject("cautions").putArray("card");
    ada.withObject("/cautions").putArray("home");
  }

  final List<String> said(Consumer<Given> check) throws Exception {
    ClubRecord whole = club.whole();
    Given given =
        new Given(
            SmallClub.plan(SmallClub.ada()),
            plan,
            whole.upTo(SmallClub.FROM),
            whole,
            CATALOGUE,
            LIMITS,
            SmallClub.findings());
    check.accept(given);
    return SmallClub.said(given.findings());
  }

  final List<String> cautions() throws Exception {
    return said(g -> g.children().forEach(new CautionCheck(g, WORDS)::check));
  }

  final List<String> gear() throws Exception {
    return said(g -> g.children().forEach(new HomeGearCheck(g)::check));
  }

  final ArrayNode says(String sheet, Phrase... phrases) {
    ArrayNode list = ada.withObject("/cautions").putArray(sheet);
    List.of(phrases).forEach(p -> list.add(WORDS.say(p, ada.path("language").asText())));
    return list;
  }

  static Phrase[] of(String... keys) {
    return List.of(keys).stream().map(Phrase::of).toArray(Phrase[]::new);
  }

  /** A session on the Tuesday of the first week. */
  final void session(String drill, String ball, int feet) {
    ObjectNode day = ada.putArray("days").addObject().put("date", "2027-04-06");
    ObjectNode item = day.put("place", "home").putArray("items").addObject();
    item.put("drill", drill).put("ball", ball).put("feet", feet);
  }

  final void roster(String adaBorn, String pitches) throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches,home_space",
        "a1,Ada," + adaBorn + ",R,u10," + pitches + ",hallway",
        "b1,Bo,2013-02-05,R,u14,yes,yard");
  }
}
