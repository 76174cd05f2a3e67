package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Kinds of fault that can be planted in a finished plan: what each is, where, and how. */
final class PlantedKinds {
  /** One place in a plan: who or when a message must name, and the node that is made wrong. */
  record Spot(String named, ObjectNode node, ObjectNode owner) {}

  /** Plants in {@code plan} and answers what a message must name; empty where nothing fits. */
  interface Planting {
    Optional<String> plant(ObjectNode plan, SplittableRandom dice);
  }

  /**
   * One kind.
   *
   * @param said a regular expression of which a message must hold a part, in lower case
   */
  record Kind(String id, String what, String said, Planting how) {}

  private interface Places {
    List<Spot> in(ObjectNode plan);
  }

  private final List<Kind> kinds = new ArrayList<>();

  private PlantedKinds() {
    front();
    children();
    decisions();
    holds();
    days();
    items();
    practices();
    stations();
    said();
  }

  static List<Kind> all() {
    return List.copyOf(new PlantedKinds().kinds);
  }

  private void kind(
      String id,
      String what,
      String said,
      Places places,
      Predicate<Spot> fits,
      Consumer<Spot> wrong) {
    kinds.add(
        new Kind(
            id,
            what,
            said,
            (plan, dice) -> {
              List<Spot> spots = places.in(plan).stream().filter(fits).toList();
              if (spots.isEmpty()) {
                return Optional.empty();
              }
              Spot spot = spots.get(dice.nextInt(spots.size()));
              String before = plan.toString();
              wrong.accept(spot);
              sums(plan);
              return Optional.of(spot.named()).filter(n -> !plan.toString().equals(before));
            }));
  }

  /** Swings and minutes of each day are again those of its items. */
  private static void sums(ObjectNode plan) {
    for (Spot day : eachDay(plan)) {
      int swings = 0;
      int minutes = 0;
      for (JsonNode item : day.node().path("items")) {
        swings += item.path("swings").asInt();
        minutes += item.path("minutes").asInt();
      }
      if (!day.node().path("items").isEmpty() && !day.node().has("keep_sums")) {
        day.node().put("swings", swings).put("minutes", minutes);
      }
      day.node().remove("keep_sums");
    }
  }

  private static List<Spot> root(ObjectNode plan) {
    return List.of(new Spot("", plan, plan));
  }

  private static List<Spot> eachChild(ObjectNode plan) {
    List<Spot> spots = new ArrayList<>();
    plan.path("players")
        .forEach(p -> spots.add(new Spot(p.path("player").asText(), (ObjectNode) p, plan)));
    return spots;
  }

  private static Places of(Places outer, String key) {
    return plan -> {
      List<Spot> spots = new ArrayList<>();
      for (Spot spot : outer.in(plan)) {
        for (JsonNode node : spot.node().path(key)) {
          if (node instanceof ObjectNode inner) {
            spots.add(new Spot(spot.named(), inner, spot.node()));
          }
        }
      }
      return spots;
    };
  }

  private static List<Spot> eachDay(ObjectNode plan) {
    return of(PlantedKinds::eachChild, "days").in(plan);
  }

  private static List<Spot> eachPractice(ObjectNode plan) {
    List<Spot> spots = new ArrayList<>();
    plan.path("practices")
        .forEach(p -> spots.add(new Spot(p.path("date").asText(), (ObjectNode) p, plan)));
    return spots;
  }

  private static void remove(Spot spot, String key) {
    ArrayNode list = (ArrayNode) spot.owner().get(key);
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i) == spot.node()) {
        list.remove(i);
        return;
      }
    }
  }

  private static String text(Spot spot, String key) {
    return spot.node().path(key).asText("");
  }

  private static int number(Spot spot, String key) {
    return spot.node().path(key).asInt();
  }

  private static boolean any(Spot spot) {
    return true;
  }

  private static boolean later(Spot spot) {
    return spot.node().hasNonNull("until");
  }

  private static String moved(String date, int days) {
    return LocalDate.parse(date).plusDays(days).toString();
  }

  private void front() {
    Places root = PlantedKinds::root;
    kind("club", "the club's name is another's", "club", root, s -> true, s -> s.node().put("club", "Elsewhere"));
    kind("curriculum", "the curriculum is another", "curricul", root, s -> true, s -> s.node().put("curriculum", "other-2027"));
    kind("books-none", "the rule books are emptied", "rule.?book", root, s -> !s.node().path("rule_books").isEmpty(), s -> s.node().putArray("rule_books"));
    kind("books-other", "a rule book is another", "rule.?book", root, s -> true, s -> s.node().putArray("rule_books").add("no-such-book"));
    kind("aside-none", "what was set aside is emptied", "set.?aside", root, s -> !s.node().path("set_aside").isEmpty(), s -> s.node().putArray("set_aside"));
    kind("weeks-more", "more weeks than are planned", "week", root, s -> true, s -> s.node().put("weeks", number(s, "weeks") + 1));
    kind("from-moved", "the first day is a week earlier", "week|from|first|day", root, s -> true, s -> s.node().put("from", moved(text(s, "from"), -7)));
    kind("no-players", "nobody is planned for", "player|child|nobody", root, s -> !s.node().path("players").isEmpty(), s -> s.node().putArray("players"));
    kind("later-none", "rows dated later are emptied", "later|row", root, s -> !s.node().path("later_rows").isEmpty(), s -> s.node().putArray("later_rows"));
  }

  private void children() {
    Places child = PlantedKinds::eachChild;
    kind("child-missing", "a child is left out", "miss|not in|left out|no plan|roster", child, PlantedKinds::any, s -> remove(s, "players"));
    kind("child-twice", "a child stands there twice", "twice|more than once|again", child, PlantedKinds::any, s -> ((ArrayNode) s.owner().get("players")).add(s.node().deepCopy()));
    kind("child-unknown", "a child of no roster", "roster|unknown|no such|not of", child, PlantedKinds::any, s -> s.node().put("player", s.named() + "-x"));
    kind("child-older", "a child is two years older than by birth", "age", child, PlantedKinds::any, s -> s.node().put("age", number(s, "age") + 2));
    kind("child-group", "a child stands in no group of the club", "group", child, PlantedKinds::any, s -> s.node().put("group", "g9"));
    kind("sport-emptied", "months of other sport are wrong", "month", child, s -> s.node().path("sport_months").has("most"), s -> ((ObjectNode) s.node().get("sport_months")).put("most", number(s, "most") + 40));
    kind("weeks-none", "a child's weeks are emptied", "week", child, s -> !s.node().path("weeks").isEmpty(), s -> s.node().putArray("weeks"));
    kind("days-none", "a child has no days", "day|practice", child, s -> !s.node().path("days").isEmpty(), s -> s.node().putArray("days"));
    kind("decisions-none", "a child has no decisions", "decision|skill", child, s -> !s.node().path("decisions").isEmpty(), s -> s.node().putArray("decisions"));
    kind("holds-none", "all holds of a child are removed", "hold|rest|ask|pitch|complain|throw", child, s -> !s.node().path("holds").isEmpty(), s -> s.node().putArray("holds"));
    kind("label", "a child's printed label is another's", "label|name", child, s -> s.node().has("label"), s -> s.node().put("label", "Nobody 99"));
    kind("cautions-card", "the card's cautions are emptied", "caution|card|arm", child, s -> !s.node().at("/cautions/card").isEmpty(), s -> ((ObjectNode) s.node().get("cautions")).putArray("card"));
    kind("cautions-home", "the home sheet's cautions are emptied", "caution|home", child, s -> !s.node().at("/cautions/home").isEmpty(), s -> ((ObjectNode) s.node().get("cautions")).putArray("home"));
    kind("home-gear", "what the home sheet asks for is emptied", "gear|need", child, s -> !s.node().path("home_gear").isEmpty(), s -> s.node().putArray("home_gear"));
    kind("arms-none", "the arm days are emptied", "arm", child, s -> !s.node().path("arms").isEmpty(), s -> s.node().putArray("arms"));
    Places arm = of(child, "arms");
    kind("arm-may", "an arm day says may pitch where it must not", "pitch|arm|throw", arm, s -> !text(s, "answer").equals("may-pitch"), s -> s.node().put("answer", "may-pitch").put("pitches_left", 20));
    kind("arm-left", "an arm day gives more pitches", "pitch", arm, s -> text(s, "answer").equals("may-pitch"), s -> s.node().put("pitches_left", number(s, "pitches_left") + 15));
    kind("arm-catch", "an arm day lets a child catch who must not", "catch", arm, s -> s.node().has("may_catch") && !s.node().path("may_catch").asBoolean(), s -> s.node().put("may_catch", true));
    kind("arm-missing", "an arm day is missing", "arm|pitch", arm, PlantedKinds::any, s -> remove(s, "arms"));
  }

  private void decisions() {
    Places decision = of(PlantedKinds::eachChild, "decisions");
    kind("decision-missing", "a decision is missing", "decision|skill", decision, PlantedKinds::any, s -> remove(s, "decisions"));
    kind("decision-unknown", "a decision that is none", "decision", decision, PlantedKinds::any, s -> s.node().put("decision", "leap-ahead"));
    kind("decision-up", "keep-going became move-up", "decision|move-up|decid", decision, s -> text(s, "decision").equals("keep-going"), s -> s.node().put("decision", "move-up"));
    kind("decision-loose", "firm-up became keep-going", "decision|firm-up|decid", decision, s -> text(s, "decision").equals("firm-up"), s -> s.node().put("decision", "keep-going"));
    kind("decision-step", "a decision is about a step of no curriculum", "step", decision, PlantedKinds::any, s -> s.node().put("step", "drive-99"));
    kind("decision-skill", "a decision is about an unknown skill", "skill", decision, PlantedKinds::any, s -> s.node().put("skill", "flying"));
    kind("decision-rule", "a decision names an unknown rule", "rule", decision, PlantedKinds::any, s -> s.node().putArray("rules").add("no.such.rule"));
    kind("decision-because", "a decision has no because", "because|reason", decision, PlantedKinds::any, s -> s.node().put("because", ""));
    kind("decision-false", "a decision's because is untrue", "because|reason", decision, PlantedKinds::any, s -> s.node().put("because", "The coach likes it."));
    kind("decision-seen", "more seen than logged", "seen|log", decision, s -> s.node().has("seen"), s -> s.node().put("seen", number(s, "seen") + 50));
  }

  private void holds() {
    Places hold = of(PlantedKinds::eachChild, "holds");
    kind("hold-missing", "one hold is removed", "hold|rest|ask|pitch|complain|throw", hold, PlantedKinds::any, s -> remove(s, "holds"));
    kind("hold-short", "a hold ends three days early", "until|end|hold|rest", hold, PlantedKinds::later, s -> s.node().put("until", moved(text(s, "until"), -3)));
    kind("hold-ended", "a hold without end gets one", "until|end|hold", hold, s -> !later(s), s -> s.node().put("until", text(s, "from")));
    kind("hold-late", "a hold begins two days late", "from|begin|hold", hold, PlantedKinds::any, s -> s.node().put("from", moved(text(s, "from"), 2)));
    kind("hold-source", "a hold has no source", "source", hold, PlantedKinds::any, s -> s.node().put("source", ""));
    kind("hold-because", "a hold has no because", "because|reason", hold, PlantedKinds::any, s -> s.node().put("because", ""));
    kind("hold-rule", "a hold names an unknown rule", "rule", hold, PlantedKinds::any, s -> s.node().put("rule", "no.such.rule"));
    kind("hold-kind", "a hold on everything is one on pitching", "hold|kind|everything", hold, s -> text(s, "kind").equals("everything"), s -> s.node().put("kind", "pitching"));
    kind("hold-who", "who ends a hold is not said", "who|end", hold, PlantedKinds::any, s -> s.node().put("who_ends", ""));
    kind("hold-by", "a hold may be ended by a coach", "end|who|role", hold, s -> !s.node().path("ended_by").isEmpty(), s -> s.node().putArray("ended_by").add("coach"));
  }

  private void days() {
    Places day = PlantedKinds::eachDay;
    kind("day-sum", "a day's swings are not those of its items", "swing", day, s -> !s.node().path("items").isEmpty(), s -> s.node().put("swings", number(s, "swings") + 9).put("keep_sums", true));
    kind("day-minutes", "a day's minutes are not those of its items", "minute", day, s -> !s.node().path("items").isEmpty(), s -> s.node().put("minutes", number(s, "minutes") + 30).put("keep_sums", true));
    kind("day-outside", "a day lies outside the weeks", "outside|week|date|day", day, PlantedKinds::any, s -> s.node().put("date", moved(text(s, "date"), 200)));
    kind("day-twice", "a day stands there twice", "twice|swing|again|more than", day, s -> number(s, "swings") > 0, s -> ((ArrayNode) s.owner().get("days")).add(s.node().deepCopy()));
    kind("day-game", "game day called practice", "game|practice|place", day, s -> text(s, "place").equals("game"), s -> s.node().put("place", "field"));
    kind("day-place", "home work called field work", "practice|place|field", day, s -> text(s, "place").equals("home"), s -> s.node().put("place", "field"));
    kind("day-provisional", "provisional is taken off", "provisional", day, s -> s.node().path("provisional").asBoolean(), s -> s.node().put("provisional", false));
    kind("day-note", "a day's note is removed", "note|light", day, s -> s.node().hasNonNull("note"), s -> s.node().putNull("note"));
    kind("day-throws", "a day asks for 500 throws", "throw", day, s -> s.node().has("throws"), s -> s.node().put("throws", 500));
    Places week = of(PlantedKinds::eachChild, "weeks");
    kind("week-kind", "a lighter week is called normal", "week", week, s -> text(s, "kind").equals("lighter"), s -> s.node().put("kind", "normal").putNull("says"));
    kind("week-says", "what a week says is removed", "week|light", week, s -> s.node().hasNonNull("says"), s -> s.node().putNull("says"));
  }

  private void items() {
    Places item = of(of(PlantedKinds::eachChild, "days"), "items");
    Predicate<Spot> swung = s -> number(s, "swings") > 0;
    kind("item-swings", "an item of 120 swings", "swing", item, swung, s -> s.node().put("swings", 120).put("reps", 120));
    kind("item-reps", "more swings than repetitions", "swing|rep", item, swung, s -> s.node().put("reps", 1));
    kind("item-drill", "a drill that is none", "drill", item, PlantedKinds::any, s -> s.node().put("drill", "no-such-drill"));
    kind("item-skill", "an item is for another skill", "skill|drive|step", item, s -> !text(s, "skill").equals("bunt"), s -> s.node().put("skill", "no-skill"));
    kind("item-step", "an item is for a step of no curriculum", "step", item, PlantedKinds::any, s -> s.node().put("step", "drive-99"));
    kind("item-feet", "a toss from four feet", "feet|ft|distance", item, s -> number(s, "feet") > 8, s -> s.node().put("feet", 4));
    kind("item-ball", "a hard ball where another was given", "ball", item, s -> List.of("foam", "plastic").contains(text(s, "ball")), s -> s.node().put("ball", "baseball"));
    kind("item-feed", "a feed that is none of the drill's", "feed", item, PlantedKinds::any, s -> s.node().put("feed", "cannon"));
    kind("item-live", "live pitching where there was a tee", "live|feed|drill", item, s -> text(s, "feed").equals("tee"), s -> s.node().put("feed", "live"));
    kind("item-minutes", "an item of three hours", "minute", item, PlantedKinds::any, s -> s.node().put("minutes", 180));
    kind("item-negative", "swings below zero", "swing|negative|-5", item, swung, s -> s.node().put("swings", -5));
  }

  private void practices() {
    Places practice = PlantedKinds::eachPractice;
    kind("practice-missing", "a practice is missing", "practice|miss", practice, PlantedKinds::any, s -> remove(s, "practices"));
    kind("practice-twice", "a practice stands there twice", "twice|again|more than once", practice, PlantedKinds::any, s -> ((ArrayNode) s.owner().get("practices")).add(s.node().deepCopy()));
    kind("practice-moved", "a practice is on a day of no practice", "practice|calendar|event", practice, PlantedKinds::any, s -> s.node().put("date", moved(s.named(), 300)));
    kind("practice-group", "a practice is of an unknown group", "group", practice, PlantedKinds::any, s -> s.node().put("group", "g9"));
    kind("practice-adults", "more adults than the calendar has", "adult", practice, PlantedKinds::any, s -> s.node().put("adults", number(s, "adults") + 4));
    kind("practice-minutes", "more hitting minutes than the practice has", "minute", practice, PlantedKinds::any, s -> s.node().put("hitting_minutes", 400));
    kind("practice-place", "cage work at a field", "place|cage", practice, s -> text(s, "place").equals("field"), s -> s.node().put("place", "cage"));
    kind("practice-gear", "the gear list is emptied", "gear|bring", practice, s -> !s.node().path("gear").isEmpty(), s -> s.node().putArray("gear"));
    kind("practice-cautions", "the safety box is emptied", "caution|safety", practice, s -> !s.node().path("cautions").isEmpty(), s -> s.node().putArray("cautions"));
    kind("practice-nothrow", "who may not throw is emptied", "throw", practice, s -> !s.node().path("no_throwing").isEmpty(), s -> s.node().putArray("no_throwing"));
    kind("practice-noswing", "who may not swing is emptied", "swing", practice, s -> !s.node().path("no_swinging").isEmpty(), s -> s.node().putArray("no_swinging"));
    kind("rotations-none", "the rotations are emptied", "rotation|station|turn", practice, s -> !s.node().path("rotations").isEmpty(), s -> s.node().putArray("rotations"));
    Places turn = of(practice, "rotations");
    kind("rotation-minute", "a rotation begins late", "rotation|minute", turn, s -> s.node().has("minute"), s -> s.node().put("minute", number(s, "minute") + 90));
    Places post = of(turn, "posts");
    kind("post-unknown", "a child of no roster hits at a station", "no-child|roster", post, s -> s.node().path("players").isArray(), s -> ((ArrayNode) s.node().get("players")).add("no-child"));
  }

  private void stations() {
    Places station = of(PlantedKinds::eachPractice, "stations");
    kind("stations-many", "seven stations", "station", PlantedKinds::eachPractice, s -> !s.node().path("stations").isEmpty(), s -> seven((ArrayNode) s.node().get("stations")));
    kind("station-twice", "a station stands there twice", "station", station, PlantedKinds::any, s -> ((ArrayNode) s.owner().get("stations")).add(s.node().deepCopy()));
    kind("station-missing", "a station is missing", "station|drill", station, PlantedKinds::any, s -> remove(s, "stations"));
    kind("station-screen", "a screen is taken from a station", "screen", station, s -> s.node().path("screen").asBoolean(), s -> s.node().put("screen", false));
    kind("station-adult", "the adult is taken from a station", "adult", station, s -> s.node().path("adult").asBoolean(), s -> s.node().put("adult", false).put("adults", 0));
    kind("station-drill", "a station has a drill that nobody does", "drill", station, s -> s.node().path("drills").isArray(), s -> ((ArrayNode) s.node().get("drills")).add("no-such-drill"));
    kind("station-feet", "a station's distance is four feet", "feet|ft", station, s -> number(s, "feet") > 8, s -> s.node().put("feet", 4));
    kind("station-ball", "a station's ball is another", "ball", station, s -> s.node().has("ball") && !text(s, "ball").equals("baseball"), s -> s.node().put("ball", "baseball"));
  }

  private static void seven(ArrayNode stations) {
    while (stations.size() < 7) {
      stations.add(((ObjectNode) stations.get(0).deepCopy()).put("station", stations.size() + 1));
    }
  }

  private void said() {
    for (String key : List.of("players", "practices", "from", "weeks", "curriculum")) {
      kind("no-key-" + key, "the key " + key + " is missing", key, PlantedKinds::root, s -> s.node().has(key), s -> s.node().remove(key));
    }
  }
}
