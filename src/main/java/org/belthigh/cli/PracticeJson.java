package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.belthigh.plan.DrillText;
import org.belthigh.plan.Gear;
import org.belthigh.plan.Label;
import org.belthigh.plan.LogSheet;
import org.belthigh.plan.PracticeSheet;

/** What {@code plan.json} says of a practice beside who tosses: the timetable and the gear. */
final class PracticeJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private PracticeJson() {}

  /** Who is where, from which minute on, for how long. */
  static ArrayNode rotations(List<PracticeSheet.Rotation> rotations) {
    ArrayNode nodes = NODES.arrayNode();
    for (PracticeSheet.Rotation rotation : rotations) {
      ArrayNode posts =
          nodes
              .addObject()
              .put("minute", rotation.from())
              .put("minutes", rotation.minutes())
              .putArray("posts");
      for (PracticeSheet.Post post : rotation.posts()) {
        List<Label> squad = post.hitters().stream().map(PracticeSheet.Hitter::who).toList();
        post(posts, post.station(), squad, post.drill(), job(post));
        if (!post.helpers().isEmpty()) {
          post(posts, post.station(), post.helpers(), "", "helps");
        }
      }
    }
    return nodes;
  }

  private static String job(PracticeSheet.Post post) {
    if (post.drill().isEmpty()) {
      return "fields";
    }
    return post.swingsEach() > 0 ? "hits" : "watches";
  }

  private static void post(
      ArrayNode posts, int station, List<Label> players, String drill, String job) {
    ObjectNode node = posts.addObject().put("station", station);
    node.set("players", ids(players));
    node.put("drill", drill.isEmpty() ? null : drill).put("job", job);
  }

  /**
   * How each drill of a station is done, and what must stand there; {@code feed}, {@code ball} and
   * {@code feet} are those of the first drill.
   */
  static void uses(
      ObjectNode node,
      PracticeSheet sheet,
      PracticeSheet.Station station,
      List<PracticeSheet.Rotation> rotations) {
    List<String> here =
        rotations.stream()
            .flatMap(r -> r.posts().stream())
            .filter(p -> p.station() == station.number())
            .map(PracticeSheet.Post::drill)
            .distinct()
            .toList();
    List<DrillText> drills = sheet.drills().stream().filter(d -> here.contains(d.id())).toList();
    DrillText first = drills.isEmpty() ? null : drills.get(0);
    node.put("feed", first == null ? null : first.feed().id())
        .put("ball", first == null ? null : first.ball().id())
        .put("feet", first == null ? 0 : first.feet());
    ArrayNode uses = node.putArray("uses");
    drills.forEach(
        d ->
            uses.addObject()
                .put("drill", d.id())
                .put("feed", d.feed().id())
                .put("ball", d.ball().id())
                .put("feet", d.feet()));
    node.set("gear", most(drills.stream().flatMap(d -> d.gear().stream())));
  }

  /** Of each thing the most that is asked for at one time. */
  static ArrayNode most(Stream<Gear> gear) {
    Map<String, Gear> most = new LinkedHashMap<>();
    gear.forEach(g -> most.merge(g.id(), g, (a, b) -> a.count() < b.count() ? b : a));
    return gear(List.copyOf(most.values()));
  }

  /** Things and their number. */
  static ArrayNode gear(List<Gear> gear) {
    ArrayNode nodes = NODES.arrayNode();
    gear.forEach(g -> nodes.addObject().put("what", g.id()).put("count", g.count()));
    return nodes;
  }

  /** The players' ids. */
  static ArrayNode ids(List<Label> labels) {
    ArrayNode nodes = NODES.arrayNode();
    labels.forEach(label -> nodes.add(label.id()));
    return nodes;
  }

  /** The log sheets that belong to a practice: one for each of its counted drills. */
  static ArrayNode logs(List<LogSheet> logs, PracticeSheet sheet) {
    List<String> done = sheet.usualDrills().stream().map(DrillText::id).toList();
    ArrayNode nodes = NODES.arrayNode();
    logs.stream()
        .filter(log -> done.contains(log.drill().id()))
        .forEach(
            log ->
                nodes
                    .addObject()
                    .put("drill", log.drill().id())
                    .set("hitters", ids(log.players())));
    return nodes;
  }
}
