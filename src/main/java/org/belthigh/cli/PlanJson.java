package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.LaterRow;
import org.belthigh.model.Phrase;
import org.belthigh.plan.ArmLine;
import org.belthigh.plan.Day;
import org.belthigh.plan.DecisionLine;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.HoldLine;
import org.belthigh.plan.Item;
import org.belthigh.plan.Label;
import org.belthigh.plan.LookBack;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlannedWeek;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.plan.SportYear;
import org.belthigh.words.Words;

/** What {@code plan.json} says: the fixed keys, and a few more. */
final class PlanJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Words words;
  private final String language;

  private PlanJson(Words words, String language) {
    this.words = words;
    this.language = language;
  }

  /** The whole document, its sentences in the club's language. */
  static ObjectNode of(Plan plan, Words words) {
    return new PlanJson(words, plan.language()).plan(plan);
  }

  private ObjectNode plan(Plan plan) {
    ObjectNode root =
        NODES
            .objectNode()
            .put("club", plan.club())
            .put("from", plan.from().toString())
            .put("weeks", plan.weeks())
            .put("curriculum", plan.curriculum());
    ArrayNode books = root.putArray("rule_books");
    plan.ruleBooks().forEach(books::add);
    ObjectNode asked = root.putObject("asked");
    asked.putArray("groups");
    asked.putArray("players");
    asked.putArray("books");
    asked.putNull("language");
    ArrayNode players = root.putArray("players");
    plan.players().forEach(p -> players.add(player(p)));
    ArrayNode practices = root.putArray("practices");
    for (GroupPlan group : plan.groups()) {
      group.practices().forEach(p -> practices.add(practice(group, p)));
    }
    ArrayNode later = root.putArray("later_rows");
    plan.laterRows().forEach(row -> later.add(later(row, plan)));
    ArrayNode setAside = root.putArray("set_aside");
    plan.setAside().forEach(p -> setAside.add(p.text()));
    root.putArray("prints");
    root.putArray(PrintedFiles.KEY);
    return root;
  }

  /**
   * A report dated after the plan's day: where it stands and whom it is about, no cause. What it
   * says is the line of the overview, which is one for all reports of its kind about one player.
   */
  private ObjectNode later(LaterRow row, Plan plan) {
    List<LaterRow> alike =
        plan.laterRows().stream()
            .filter(r -> r.what() == row.what() && r.player().equals(row.player()))
            .toList();
    String name = row.player().map(plan::name).orElse("");
    String anyone = row.player().isPresent() ? "" : "anyone.";
    Phrase says =
        Phrase.of("later." + anyone + row.what().id(), "player", name)
            .with("day", plan.from())
            .with("date", alike.get(0).date())
            .with("rows", alike.size());
    return NODES
        .objectNode()
        .put("file", row.origin().file())
        .put("line", row.origin().line())
        .put("date", row.date().toString())
        .put("player", row.player().orElse(null))
        .put("what", row.what().id())
        .put("says", words.say(says, language));
  }

  /** Who stands where: enough to see that every bat has a grown-up beside it. */
  private ObjectNode practice(GroupPlan group, PracticeSheet sheet) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("group", group.id())
            .put("date", sheet.date().toString())
            .put("kind", "practice")
            .put("place", sheet.ground().id())
            .put("where", sheet.place())
            .put("start", sheet.start().map(LocalTime::toString).orElse(null))
            .put("minutes", sheet.minutes())
            .put("hitting_minutes", sheet.hittingMinutes())
            .put("adults", sheet.adults());
    node.set("stations", stations(sheet, sheet.stations(), sheet.rotations()));
    node.set("rotations", PracticeJson.rotations(sheet.rotations()));
    node.set("gear", PracticeJson.gear(sheet.gear()));
    node.set("cautions", sentences(sheet.cautions(), language));
    node.set("no_throwing", PracticeJson.ids(sheet.noThrowing()));
    node.set("no_swinging", PracticeJson.ids(sheet.noSwinging()));
    node.put("toss_lists", sheet.tossed());
    node.set("logs", PracticeJson.logs(group.logs(), sheet));
    ArrayNode ways = node.putArray("ways");
    way(ways, "one-adult", sheet, sheet.oneAdult());
    way(ways, "rain", sheet, sheet.rain());
    return node;
  }

  /** Another way, where it has a timetable of its own: who swings how often then. */
  private static void way(
      ArrayNode ways, String name, PracticeSheet sheet, PracticeSheet.OtherWay way) {
    if (way.rotations().isEmpty()) {
      return;
    }
    ObjectNode node =
        ways.addObject()
            .put("way", name)
            .put("place", way.place().id())
            .put("adults", way.adults());
    node.set("stations", stations(sheet, way.stations(), way.rotations()));
    ObjectNode swings = node.putObject("swings");
    sheet.swings(way.rotations()).forEach(swings::put);
  }

  private static ArrayNode stations(
      PracticeSheet sheet,
      List<PracticeSheet.Station> stations,
      List<PracticeSheet.Rotation> rotations) {
    ArrayNode nodes = NODES.arrayNode();
    for (PracticeSheet.Station station : stations) {
      ObjectNode node =
          nodes
              .addObject()
              .put("station", station.number())
              .put("adult", station.adult().isPresent())
              .put("adults", station.adult().isPresent() ? 1 : 0)
              .put("screen", station.screen());
      ArrayNode drills = node.putArray("drills");
      rotations.stream()
          .flatMap(r -> r.posts().stream())
          .filter(p -> p.station() == station.number() && !p.drill().isEmpty())
          .map(PracticeSheet.Post::drill)
          .distinct()
          .forEach(drills::add);
      PracticeJson.uses(node, sheet, station, rotations);
    }
    return nodes;
  }

  private ArrayNode sentences(List<Phrase> phrases, String language) {
    ArrayNode nodes = NODES.arrayNode();
    phrases.stream().map(p -> words.say(p, language)).distinct().forEach(nodes::add);
    return nodes;
  }

  private ObjectNode player(PlayerPlan player) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("player", player.who().id())
            .put("group", player.who().group())
            .put("age", player.who().age())
            .put("label", label(player.who()))
            .put("language", player.who().language());
    ArrayNode decisions = node.putArray("decisions");
    player.decisions().forEach(d -> decisions.add(decision(d)));
    ArrayNode holds = node.putArray("holds");
    player.holds().forEach(h -> holds.add(hold(h)));
    node.set("sport_months", year(player.year()));
    node.set("last_plan", player.back().map(this::back).orElse(null));
    ArrayNode weeks = node.putArray("weeks");
    player.weeks().forEach(w -> weeks.add(week(w)));
    node.put("depends_on", player.depends().map(p -> words.say(p.both(), language)).orElse(null));
    ArrayNode days = node.putArray("days");
    player.days().forEach(d -> days.add(day(d)));
    ArrayNode arms = node.putArray("arms");
    player.arms().forEach(a -> arms.add(arm(a)));
    node.set("cautions", cautions(player));
    node.set(
        "home_gear", PracticeJson.most(player.home().stream().flatMap(h -> h.needs().stream())));
    return node;
  }

  /** How the card names the child. */
  private String label(Label who) {
    return who.number().isPresent()
        ? words.say(
            Phrase.of("card.name", "player", who.name(), "number", who.number().getAsInt()),
            who.language())
        : who.name();
  }

  private static ObjectNode arm(ArmLine line) {
    return NODES
        .objectNode()
        .put("date", line.date().toString())
        .put("answer", line.answer().id())
        .put("pitches_left", line.pitchesLeft())
        .put("may_catch", line.mayCatch())
        .put("known_to", text(line.knownTo()));
  }

  /** What the child's own sheets say for safety, in the language that they are printed in. */
  private ObjectNode cautions(PlayerPlan player) {
    ObjectNode node = NODES.objectNode();
    String family = player.who().language();
    node.set("card", sentences(player.card().cautions(), family));
    List<Phrase> home = player.home().stream().flatMap(h -> h.cautions().stream()).toList();
    node.set("home", sentences(home, family));
    return node;
  }

  private ObjectNode week(PlannedWeek week) {
    return NODES
        .objectNode()
        .put("first", week.first().toString())
        .put("kind", week.kind().id())
        .put("says", week.says().map(p -> words.say(p, language)).orElse(null));
  }

  private ObjectNode back(LookBack back) {
    return NODES
        .objectNode()
        .put("from", back.handedOut().toString())
        .put("days", back.days())
        .put("done", back.done())
        .put("partly", back.partly())
        .put("not_logged", back.notLogged())
        .put("sentence", words.say(back.sentence(), language));
  }

  private ObjectNode year(SportYear year) {
    return NODES
        .objectNode()
        .put("from", year.first().toString())
        .put("to", year.last().toString())
        .put("known", year.known())
        .put("most", year.most())
        .put("remark", year.remark().map(p -> words.say(p, language)).orElse(null));
  }

  private ObjectNode decision(DecisionLine line) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("skill", line.skill().id())
            .put("step", line.step())
            .put("decision", line.outcome().id())
            .put("next", line.next().orElse(null))
            .put("because", words.say(line.because(), language));
    ArrayNode rules = node.putArray("rules");
    line.rules().forEach(rules::add);
    node.put("seen", line.seen());
    node.put("last_seen", text(line.lastSeen()));
    node.put("settles", line.settles().map(p -> words.say(p, language)).orElse(null));
    return node;
  }

  private ObjectNode hold(HoldLine line) {
    ObjectNode node = NODES.objectNode();
    node.put("kind", line.kind())
        .put("from", line.from().toString())
        .put("until", text(line.until()))
        .put("because", words.say(line.because(), language))
        .put("rule", line.rule())
        .put("source", line.source())
        .put("who_ends", words.say(line.whoEnds(), language));
    ArrayNode endedBy = node.putArray("ended_by");
    line.endedBy().forEach(endedBy::add);
    return node;
  }

  private ObjectNode day(Day day) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("date", day.date().toString())
            .put("place", day.place().id())
            .put("minutes", day.minutes())
            .put("swings", day.swings())
            .put("throws", day.throwsAsked());
    ArrayNode items = node.putArray("items");
    day.items().forEach(i -> items.add(item(i)));
    node.put("provisional", day.provisional());
    node.put("note", day.note().map(p -> words.say(p, language)).orElse(null));
    return node;
  }

  private static ObjectNode item(Item item) {
    return NODES
        .objectNode()
        .put("drill", item.drill())
        .put("skill", item.skill().id())
        .put("step", item.step())
        .put("ball", item.ball().id())
        .put("feed", item.feed().id())
        .put("feet", item.feet())
        .put("reps", item.reps())
        .put("swings", item.swings())
        .put("minutes", item.minutes());
  }

  private static String text(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse(null);
  }
}
