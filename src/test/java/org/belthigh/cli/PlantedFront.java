package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;

/** What stands at the head of a plan. */
final class PlantedFront extends KindList {
  PlantedFront() {
    Places root = KindList::root;
    kind(
        "club",
        "the club's name is another's",
        "club",
        root,
        s -> true,
        s -> s.node().put("club", "Elsewhere"));
    kind(
        "curriculum",
        "the curriculum is another",
        "curricul",
        root,
        s -> true,
        s -> s.node().put("curriculum", "other-2027"));
    kind(
        "books-none",
        "the rule books are emptied",
        "rule.?book",
        root,
        s -> s.filled("rule_books"),
        s -> s.node().putArray("rule_books"));
    kind(
        "books-other",
        "a rule book is another",
        "rule.?book",
        root,
        s -> true,
        s -> s.node().putArray("rule_books").add("no-such-book"));
    kind(
        "aside-none",
        "what was set aside is emptied",
        "set.?aside",
        root,
        s -> s.filled("set_aside"),
        s -> s.node().putArray("set_aside"));
    kind(
        "weeks-more",
        "more weeks than are planned",
        "week",
        root,
        s -> true,
        s -> s.node().put("weeks", s.number("weeks") + 1));
    kind(
        "from-moved",
        "the first day is a week earlier",
        "week|from|first|day",
        root,
        s -> true,
        s -> s.node().put("from", moved(s.text("from"), -7)));
    kind(
        "no-players",
        "nobody is planned for",
        "player|child|nobody",
        root,
        s -> s.filled("players"),
        s -> s.node().putArray("players"));
    kind(
        "later-none",
        "rows dated later are emptied",
        "later|row",
        root,
        s -> s.filled("later_rows"),
        s -> s.node().putArray("later_rows"));
    for (String key : List.of("players", "practices", "from", "weeks", "curriculum")) {
      kind(
          "no-key-" + key,
          "the key " + key + " is missing",
          key.replace("practices", "practice"),
          KindList::root,
          s -> s.node().has(key),
          s -> s.node().remove(key));
    }

    kind(
        "books-added",
        "a rule book that is not the club's is added",
        "rule.?book",
        root,
        s -> true,
        s -> s.node().withArray("rule_books").add("pony-2018"));
    kind(
        "curriculum-version",
        "the curriculum is of another edition",
        "curricul",
        root,
        s -> true,
        s -> s.node().put("curriculum", s.text("curriculum") + "9"));
    kind(
        "aside-false",
        "a row is said to be set aside that was not",
        "set.?aside",
        root,
        s -> true,
        s -> s.node().withArray("set_aside").add("logs/x.csv line 2: nothing."));
    kind(
        "later-false",
        "a later row is told that nobody wrote",
        "later",
        root,
        s -> true,
        s ->
            s.node()
                .withArray("later_rows")
                .addObject()
                .put("file", "wellness.csv")
                .put("line", 2)
                .put("date", s.text("from"))
                .put("player", children(s.node()).get(0).named())
                .put("what", "complaint")
                .put("says", "head-injury"));
    kind(
        "later-one",
        "one row dated later is not told",
        "later|row",
        root,
        s -> s.filled("later_rows") && onlyOnce(s.list("later_rows")),
        s -> s.list("later_rows").remove(0));
    kind(
        "groups-one",
        "all children of one group are left out",
        "left out|missing",
        of(root, "players"),
        s -> true,
        s -> s.siblings("players").removeAll());
    kind(
        "practices-none",
        "all practices are left out",
        "practice",
        root,
        s -> s.filled("practices"),
        s -> s.node().putArray("practices"));
    kind(
        "weeks-fewer",
        "fewer weeks than the days cover",
        "week|not planned|date",
        root,
        s -> s.number("weeks") > 1,
        s -> s.more("weeks", -1));
  }

  /** Whether no other row says the same as the first: made-up rows have no line of their own. */
  private static boolean onlyOnce(ArrayNode rows) {
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).equals(rows.get(0))) {
        return false;
      }
    }
    return true;
  }
}
