package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Each object of a plan has all its keys, and lists where lists belong: the keys that {@code
 * docs/schemas/plan.schema.json} requires. What is missing is told; nothing is taken for empty.
 */
final class KeysCheck {
  private static final Shape GEAR = keys("what count");
  private static final Shape STATIONS =
      keys("station adult screen drills adults feed ball feet uses gear")
          .lists("uses", keys("drill feed ball feet"))
          .lists("gear", GEAR);
  private static final Shape ROTATIONS =
      keys("minute minutes posts").lists("posts", keys("station players drill job"));
  private static final Shape WAYS =
      keys("way place adults stations swings").lists("stations", STATIONS);
  private static final Shape PRACTICES =
      keys("group date kind place where start minutes hitting_minutes adults stations rotations")
          .and("gear cautions no_throwing no_swinging toss_lists logs ways")
          .lists("stations", STATIONS)
          .lists("rotations", ROTATIONS)
          .lists("gear", GEAR)
          .lists("logs", keys("drill hitters"))
          .lists("ways", WAYS);
  private static final Shape DAYS =
      keys("date place minutes swings throws items provisional note")
          .lists("items", keys("drill skill step ball feed feet reps swings minutes"));
  private static final Shape PLAYERS =
      keys("player group age label language decisions holds sport_months last_plan weeks")
          .and("depends_on days arms cautions home_gear")
          .lists("decisions", keys("skill step decision next because rules seen last_seen settles"))
          .lists("holds", keys("kind from until because rule source who_ends ended_by"))
          .part("sport_months", keys("from to known most remark"))
          .lists("weeks", keys("first kind says"))
          .lists("days", DAYS)
          .lists("arms", keys("date answer pitches_left may_catch known_to"))
          .part("cautions", keys("card home"))
          .lists("home_gear", GEAR);
  private static final Shape PLAN =
      keys("club from weeks curriculum rule_books asked players practices later_rows set_aside")
          .and("prints files")
          .part("asked", keys("groups players books language"))
          .lists("players", PLAYERS)
          .lists("practices", PRACTICES)
          .lists("later_rows", keys("file line date player what says"))
          .lists("files", keys("path bytes sha256 sheet group player date"));

  private final Given given;

  KeysCheck(Given given) {
    this.given = given;
  }

  /** An object: its keys, and what stands under some of them. */
  private record Shape(List<String> keys, Map<String, Shape> parts, Set<String> lists) {
    Shape and(String more) {
      List<String> all = new ArrayList<>(keys);
      all.addAll(Arrays.asList(more.split(" ")));
      return new Shape(List.copyOf(all), parts, lists);
    }

    Shape part(String key, Shape shape) {
      Map<String, Shape> more = new LinkedHashMap<>(parts);
      more.put(key, shape);
      return new Shape(keys, more, lists);
    }

    Shape lists(String key, Shape shape) {
      Set<String> more = new TreeSet<>(lists);
      more.add(key);
      return new Shape(keys, part(key, shape).parts, more);
    }
  }

  private static Shape keys(String keys) {
    return new Shape(Arrays.asList(keys.split(" ")), Map.of(), Set.of());
  }

  void check() {
    object("plan", given.json(), PLAN);
  }

  private void object(String where, JsonNode node, Shape shape) {
    for (String key : shape.keys()) {
      if (!node.has(key)) {
        given.fault(where, "the key " + key + " is missing", "it is always there");
      }
    }
    shape.parts().forEach((key, part) -> part(where, node, key, part, shape.lists()));
  }

  private void part(String where, JsonNode node, String key, Shape part, Set<String> lists) {
    JsonNode inner = node.path(key);
    if (inner.isMissingNode()) {
      return;
    }
    if (!lists.contains(key)) {
      object(at(where, key), inner, part);
    } else if (!inner.isArray()) {
      given.fault(where, key + " is " + inner, "a list stands there");
    } else {
      for (int i = 0; i < inner.size(); i++) {
        object(named(where, key, i, inner.get(i)), inner.get(i), part);
      }
    }
  }

  private static String at(String where, String key) {
    return where.equals("plan") ? key : where + ", " + key;
  }

  /** Children by their id, practices by group and day, all else by its place in the list. */
  private static String named(String where, String key, int index, JsonNode node) {
    return switch (key) {
      case "players" -> node.path("player").asText();
      case "practices" -> node.path("group").asText() + " " + node.path("date").asText();
      case "days", "arms" -> at(where, key) + " " + node.path("date").asText();
      default -> at(where, key) + " " + (index + 1);
    };
  }

  /** All keys with the way to them, such as {@code players.holds.kind}. */
  static Set<String> all() {
    return all("", PLAN);
  }

  private static Set<String> all(String way, Shape shape) {
    Set<String> all = new TreeSet<>();
    shape.keys().forEach(key -> all.add(way + key));
    shape.parts().forEach((key, part) -> all.addAll(all(way + key + ".", part)));
    return all;
  }
}
