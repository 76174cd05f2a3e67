package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** What stands at the head of a plan. */
final class PlantedFront extends KindList {
  PlantedFront() {
    Places root = KindList::root;
    kind("club", "the club's name is another's", "club", root, s -> true, s -> s.node().put("club", "Elsewhere"));
    kind("curriculum", "the curriculum is another", "curricul", root, s -> true, s -> s.node().put("curriculum", "other-2027"));
    kind("books-none", "the rule books are emptied", "rule.?book", root, s -> s.filled("rule_books"), s -> s.node().putArray("rule_books"));
    kind("books-other", "a rule book is another", "rule.?book", root, s -> true, s -> s.node().putArray("rule_books").add("no-such-book"));
    kind("aside-none", "what was set aside is emptied", "set.?aside", root, s -> s.filled("set_aside"), s -> s.node().putArray("set_aside"));
    kind("weeks-more", "more weeks than are planned", "week", root, s -> true, s -> s.node().put("weeks", s.number("weeks") + 1));
    kind("from-moved", "the first day is a week earlier", "week|from|first|day", root, s -> true, s -> s.node().put("from", moved(s.text("from"), -7)));
    kind("no-players", "nobody is planned for", "player|child|nobody", root, s -> s.filled("players"), s -> s.node().putArray("players"));
    kind("later-none", "rows dated later are emptied", "later|row", root, s -> s.filled("later_rows"), s -> s.node().putArray("later_rows"));
    for (String key : List.of("players", "practices", "from", "weeks", "curriculum")) {
      kind("no-key-" + key, "the key " + key + " is missing", key, KindList::root, s -> s.node().has(key), s -> s.node().remove(key));
    }
    // MORE
  }
}
