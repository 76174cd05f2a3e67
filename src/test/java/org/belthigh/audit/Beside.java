package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.belthigh.intake.ClubRecord;

/** What a check beside the club folder is given, made of a club of two and a part of a plan. */
final class Beside {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Beside() {}

  /**
   * A plan of which only {@code json} is said, in single quotes, of the club as it is on the first
   * day.
   */
  static Given given(SmallClub club, String json, FinishedPlan.Person... people) throws Exception {
    JsonNode node = JSON.readTree(json.replace('\'', '"'));
    ClubRecord whole = club.whole();
    return new Given(
        SmallClub.plan(people),
        node,
        whole.upTo(SmallClub.FROM),
        whole,
        SmallClub.CATALOGUE,
        SmallClub.LIMITS,
        SmallClub.findings());
  }

  /** What one check says of Ada, of whom the plan says {@code keys}: {@code 'days':[…]}. */
  static List<String> ofAda(SmallClub club, String keys, BiConsumer<Given, Given.Child> check)
      throws Exception {
    return of(club, "a1", keys, check);
  }

  /** The same of Bo, who is 14. */
  static List<String> ofBo(SmallClub club, String keys, BiConsumer<Given, Given.Child> check)
      throws Exception {
    return of(club, "b1", keys, check);
  }

  private static List<String> of(
      SmallClub club, String id, String keys, BiConsumer<Given, Given.Child> check)
      throws Exception {
    String json = "{'players':[{'player':'" + id + "'" + (keys.isEmpty() ? "" : "," + keys) + "}]}";
    Given given = given(club, json, SmallClub.ada(), SmallClub.bo());
    given.children().forEach(child -> check.accept(given, child));
    return SmallClub.said(given.findings());
  }

  /** What one check says of the whole plan. */
  static List<String> said(Given given, Consumer<Given> check) {
    check.accept(given);
    return SmallClub.said(given.findings());
  }
}
