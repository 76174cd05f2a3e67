package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** What the lists of kinds share: places in a plan, and ways to make one of them wrong. */
abstract class KindList {
  /**
   * One place in a plan.
   *
   * @param named who or what a message must name
   * @param node what is made wrong
   * @param owner the object in which it stands
   */
  record Spot(String named, ObjectNode node, ObjectNode owner) {
    String text(String key) {
      return node.path(key).asText("");
    }

    int number(String key) {
      return node.path(key).asInt();
    }

    boolean is(String key, String text) {
      return text(key).equals(text);
    }

    /** Whether a list has something in it. */
    boolean filled(String key) {
      return !node.path(key).isEmpty();
    }

    ArrayNode list(String key) {
      return (ArrayNode) node.get(key);
    }

    ArrayNode siblings(String key) {
      return (ArrayNode) owner.get(key);
    }

    void more(String key, int by) {
      node.put(key, number(key) + by);
    }

    /** Takes the place out of its owner's list: itself, and none that is equal to it. */
    @SuppressWarnings("ReferenceEquality")
    void remove(String key) {
      ArrayNode list = siblings(key);
      for (int i = 0; i < list.size(); i++) {
        if (list.get(i) == node) {
          list.remove(i);
          return;
        }
      }
    }

    /** Puts it into its owner's list once more. */
    void twice(String key) {
      siblings(key).add(node.deepCopy());
    }
  }

  /** Where a kind may be planted. */
  interface Places {
    List<Spot> in(ObjectNode plan);
  }

  private final List<Planted> kinds = new ArrayList<>();

  final List<Planted> kinds() {
    return List.copyOf(kinds);
  }

  final void add(Planted kind) {
    kinds.add(kind);
  }

  final void kind(
      String id,
      String what,
      String said,
      Places places,
      Predicate<Spot> fits,
      Consumer<Spot> wrong) {
    add(
        new Planted(
            id,
            what,
            said,
            (stage, dice) -> {
              List<Spot> spots = places.in(stage.plan).stream().filter(fits).toList();
              if (spots.isEmpty()) {
                return Optional.empty();
              }
              Spot spot = spots.get(dice.nextInt(spots.size()));
              String before = stage.plan.toString();
              wrong.accept(spot);
              sums(stage.plan);
              return Optional.of(spot.named()).filter(n -> !stage.plan.toString().equals(before));
            }));
  }

  /** Swings and minutes of each day are again those of its items. */
  private static void sums(ObjectNode plan) {
    for (Spot day : days(plan)) {
      int swings = 0;
      int minutes = 0;
      for (JsonNode item : day.node().path("items")) {
        swings += item.path("swings").asInt();
        minutes += item.path("minutes").asInt();
      }
      if (day.filled("items") && !day.node().has("keep_sums")) {
        day.node().put("swings", swings).put("minutes", minutes);
      }
      day.node().remove("keep_sums");
    }
  }

  static boolean any(Spot spot) {
    return true;
  }

  static List<Spot> root(ObjectNode plan) {
    return List.of(new Spot("", plan, plan));
  }

  static List<Spot> children(ObjectNode plan) {
    List<Spot> spots = new ArrayList<>();
    plan.path("players")
        .forEach(p -> spots.add(new Spot(p.path("player").asText(), (ObjectNode) p, plan)));
    return spots;
  }

  static List<Spot> days(ObjectNode plan) {
    return of(KindList::children, "days").in(plan);
  }

  static List<Spot> items(ObjectNode plan) {
    return of(KindList::days, "items").in(plan);
  }

  /** Practices are named by group and date. */
  static List<Spot> practices(ObjectNode plan) {
    List<Spot> spots = new ArrayList<>();
    plan.path("practices")
        .forEach(
            p ->
                spots.add(
                    new Spot(
                        p.path("group").asText() + " " + p.path("date").asText(),
                        (ObjectNode) p,
                        plan)));
    return spots;
  }

  static List<Spot> stations(ObjectNode plan) {
    return of(KindList::practices, "stations").in(plan);
  }

  /** The objects of a list in each of those places, under the same name. */
  static Places of(Places outer, String key) {
    return plan -> {
      List<Spot> spots = new ArrayList<>();
      for (Spot spot : outer.in(plan)) {
        for (JsonNode node : spot.node().path(key)) {
          if (node instanceof ObjectNode inner) {
            spots.add(new Spot(spot.named(), /* node= */ inner, /* owner= */ spot.node()));
          }
        }
      }
      return spots;
    };
  }

  static String moved(String date, int days) {
    return LocalDate.parse(date).plusDays(days).toString();
  }
}
