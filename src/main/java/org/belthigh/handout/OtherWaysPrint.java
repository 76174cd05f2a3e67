package org.belthigh.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Feed;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.plan.DrillText;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.words.Words;

/**
 * The same practice when one adult came alone, or when it rains: who is where, and what is safe.
 */
final class OtherWaysPrint {
  /** A station with a bat has more to say than one where all watch. */
  private static final double WITH_ADULT = 1.5;

  private final TeamPage page;
  private final PracticeSheet sheet;
  private final Map<String, DrillText> drills = new LinkedHashMap<>();

  private OtherWaysPrint(TeamPage page, PracticeSheet sheet) {
    this.page = page;
    this.sheet = sheet;
    sheet.otherDrills().forEach(d -> drills.put(d.id(), d));
  }

  /** The sheet; only for a practice that has another way. */
  static Section of(Plan plan, GroupPlan group, PracticeSheet sheet, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return page.section(
        page.paper(),
        Style.CLIPBOARD_SNUG,
        page.say("practice.other.title", "date", sheet.date()),
        page.say("practice.other.what"),
        page.say("practice.day", "date", sheet.date()),
        new OtherWaysPrint(page, sheet)::write);
  }

  private void write(Flow flow) {
    flow.h1(page.say("practice.other.title", "date", sheet.date()));
    flow.p(page.say("practice.other.how"));
    flow.hatchedBox(page.say("practice.safety"), this::safety);
    way(flow, "practice.one-adult", sheet.oneAdult());
    way(flow, "practice.rain", sheet.rain());
    List<DrillText> usual = sheet.usualDrills();
    List<DrillText> further = sheet.otherDrills().stream().filter(d -> !usual.contains(d)).toList();
    if (!further.isEmpty()) {
      flow.h2(page.say("practice.other.drills"));
      further.forEach(d -> flow.p(drill(d)));
    }
  }

  private void safety(Flow box) {
    Map<Phrase, List<String>> byLine = new LinkedHashMap<>();
    for (DrillText drill : drills.values()) {
      drill
          .safety()
          .forEach(
              s -> byLine.computeIfAbsent(s, k -> new ArrayList<>()).add(page.say(drill.name())));
    }
    List<Text> lines = new ArrayList<>();
    sheet.safety().forEach(s -> lines.add(Text.of(page.say(s))));
    byLine.forEach(
        (line, which) ->
            lines.add(
                which.size() == drills.size()
                    ? Text.of(page.say(line))
                    : Text.bold(String.join(", ", which) + ": ").and(page.say(line))));
    box.bullets(lines).small(page.say("practice.safety.source"));
  }

  private void way(Flow flow, String title, PracticeSheet.OtherWay way) {
    flow.h2(page.say(title)).p(String.join(" ", page.say(way.says())));
    for (PracticeSheet.Squad squad : way.squads()) {
      flow.p(
          Text.bold(page.say("practice.group", "letter", squad.letter()) + ": ")
              .and(page.names(squad.players())));
    }
    if (!way.rotations().isEmpty()) {
      flow.table(table -> timetable(table, way));
    }
  }

  private void timetable(Table table, PracticeSheet.OtherWay way) {
    List<Col> columns = new ArrayList<>(List.of(Col.content()));
    List<String> head = new ArrayList<>(List.of(page.say("practice.other.minute")));
    for (PracticeSheet.Station station : way.stations()) {
      columns.add(Col.share(station.adult().isPresent() ? WITH_ADULT : 1));
      head.add(
          station
              .adult()
              .map(a -> page.say("practice.station.adult", "number", station.number(), "adult", a))
              .orElse(page.say("practice.station.alone", "number", station.number())));
    }
    table.columns(columns).head(head).rowHeaders().boxed();
    way.rotations().forEach(r -> table.row(row(r, way)));
  }

  private List<Cell> row(PracticeSheet.Rotation rotation, PracticeSheet.OtherWay way) {
    int to = rotation.from() + rotation.minutes();
    String minutes = page.say("practice.other.minutes", "from", rotation.from(), "to", to);
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(Text.bold(minutes))));
    for (PracticeSheet.Station station : way.stations()) {
      cells.add(
          rotation.posts().stream()
              .filter(p -> p.station() == station.number())
              .findFirst()
              .map(p -> Cell.of(post(p, way.place())))
              .orElse(Cell.blank()));
    }
    return cells;
  }

  private Text post(PracticeSheet.Post post, Place place) {
    Text squad = Text.bold(page.say("practice.post", "squad", post.squad()) + " ");
    DrillText drill = drills.get(post.drill());
    if (drill == null) {
      return squad.and(
          page.say(
              place == Place.CAGE ? "practice.timetable.writes" : "practice.timetable.fields"));
    }
    Text does = squad.and(page.say(drill.name()));
    return post.swingsEach() == 0
        ? does
        : does.and(", " + page.say("practice.other.swings", "swings", post.swingsEach()));
  }

  private Text drill(DrillText drill) {
    String mix = drill.feed() == Feed.NONE ? "" : " " + page.say(drill.mix()) + ".";
    return Text.bold(page.say(drill.name()) + " ·")
        .and(" " + page.say(drill.setup()) + mix + "  ")
        .and(Text.bold(page.say("practice.drill.say")))
        .and(" " + page.say(drill.cue()) + "  ")
        .and(Text.bold(page.say("practice.drill.write")))
        .and(" " + page.say(drill.write()));
  }
}
