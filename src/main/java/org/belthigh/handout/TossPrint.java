package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Phrase;
import org.belthigh.plan.DrillText;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.words.Words;

/** Where to toss to at each station, toss by toss: for the screen beside the bucket. */
final class TossPrint {
  /** Most tosses in a row of the table; a longer list has rows of about equal length. */
  private static final int ACROSS = 8;

  private static final int ACROSS_LARGE = 4;

  private final TeamPage page;
  private final int most;
  private final PracticeSheet sheet;
  private final Map<String, DrillText> drills = new LinkedHashMap<>();

  private TossPrint(TeamPage page, PracticeSheet sheet, int most) {
    this.page = page;
    this.most = most;
    this.sheet = sheet;
    sheet.usualDrills().forEach(d -> drills.put(d.id(), d));
  }

  /**
   * The sheet; only for a practice in which a person tosses.
   *
   * @param large whether the type is large, so that fewer words go side by side
   */
  static Section of(Plan plan, GroupPlan group, PracticeSheet sheet, Words words, boolean large) {
    TeamPage page = new TeamPage(plan, group, words);
    return page.section(
        page.paper(),
        Style.CLIPBOARD_SNUG,
        page.say("practice.toss.title", "date", sheet.date()),
        page.say("practice.toss.what"),
        page.say("practice.day", "date", sheet.date()),
        new TossPrint(page, sheet, large ? ACROSS_LARGE : ACROSS)::write);
  }

  private void write(Flow flow) {
    flow.h1(page.say("practice.toss.title", "date", sheet.date()));
    flow.p(page.say("practice.toss.how"));
    flow.p(page.say("practice.toss.miss"));
    for (PracticeSheet.Station station : sheet.stations()) {
      List<Stay> stays = stays(station);
      if (!stays.isEmpty()) {
        flow.h2(head(station));
        stays.forEach(stay -> flow.together(part -> stay(part, stay)));
      }
    }
  }

  /** One squad at one station. */
  private record Stay(PracticeSheet.Rotation rotation, PracticeSheet.Post post) {}

  private List<Stay> stays(PracticeSheet.Station station) {
    return sheet.rotations().stream()
        .flatMap(r -> r.posts().stream().map(p -> new Stay(r, p)))
        .filter(s -> s.post().station() == station.number())
        .filter(s -> s.post().hitters().stream().anyMatch(h -> !h.tosses().isEmpty()))
        .toList();
  }

  private String head(PracticeSheet.Station station) {
    return station
        .adult()
        .map(a -> page.say("practice.station.adult", "number", station.number(), "adult", a))
        .orElse(page.say("practice.station.alone", "number", station.number()));
  }

  private void stay(Flow flow, Stay stay) {
    int from = stay.rotation().from();
    String minutes =
        page.say(
            "practice.toss.stay",
            "from",
            from,
            "to",
            from + stay.rotation().minutes(),
            "squad",
            stay.post().squad(),
            "drill",
            page.say(drills.get(stay.post().drill()).name()));
    flow.p(Text.bold(minutes));
    flow.table(table -> lists(table, stay.post()));
  }

  private void lists(Table table, PracticeSheet.Post post) {
    int lines = (post.tossesEach() + most - 1) / most;
    int across = (post.tossesEach() + lines - 1) / lines;
    List<Col> columns = new ArrayList<>(List.of(Col.mm(30)));
    columns.addAll(Collections.nCopies(across, Col.share(1).centred()));
    List<String> head = new ArrayList<>(List.of(page.say("log.player")));
    IntStream.rangeClosed(1, across).mapToObj(String::valueOf).forEach(head::add);
    table.columns(columns).head(head).rowHeaders().boxed();
    for (PracticeSheet.Hitter hitter : post.hitters()) {
      for (int from = 0; from < hitter.tosses().size(); from += across) {
        table.row(row(hitter, from, across));
      }
    }
  }

  private List<Cell> row(PracticeSheet.Hitter hitter, int from, int across) {
    Text name = Text.bold(page.name(hitter.who()));
    String side = " " + page.say("practice.bats." + hitter.side().id());
    Text header =
        from == 0 ? name.and(side) : name.and(" " + page.say("practice.toss.on", "from", from + 1));
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(header)));
    List<Phrase> tosses = hitter.tosses();
    for (int i = from; i < from + across; i++) {
      cells.add(i < tosses.size() ? Cell.of(page.say(tosses.get(i))) : Cell.blank());
    }
    return cells;
  }
}
