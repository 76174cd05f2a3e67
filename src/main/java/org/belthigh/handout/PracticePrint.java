package org.belthigh.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Columns;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Bats;
import org.belthigh.model.Feed;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.plan.DrillText;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.HeatBox;
import org.belthigh.plan.Label;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.words.Words;

/**
 * The practice sheet: one coach, one practice.
 *
 * <p>In the order a coach needs it: who may not do what, who belongs together, who is where when;
 * then what keeps everybody safe; then the drills, and what to do when things go otherwise.
 */
final class PracticePrint {
  private static final int MOST_PAGES = 2;

  /** Squads side by side; more go below. */
  private static final int ABREAST = 3;

  /** How the safety and the emergency box share the width. */
  private static final double SAFETY_SHARE = 3;

  private static final double EMERGENCY_SHARE = 2;

  private final TeamPage page;
  private final PracticeSheet sheet;
  private final Fit fit;
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Map<String, DrillText> drills = new LinkedHashMap<>();
  private final Map<String, PracticeSheet.PlayerCue> cues;

  private PracticePrint(TeamPage page, PracticeSheet sheet, Fit fit) {
    this.fit = fit;
    this.page = page;
    this.sheet = sheet;
    sheet
        .usualDrills()
        .forEach(
            d -> {
              numbers.put(d.id(), numbers.size() + 1);
              drills.put(d.id(), d);
            });
    this.cues = sheet.cues().stream().collect(Collectors.toMap(c -> c.who().id(), c -> c));
  }

  static Section of(Plan plan, GroupPlan group, PracticeSheet sheet, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return Fit.on(MOST_PAGES, fit -> new PracticePrint(page, sheet, fit).section());
  }

  /** The same sheet to be set in large type, where nothing is left out to save a page. */
  static Section large(Plan plan, GroupPlan group, PracticeSheet sheet, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return Fit.whole(MOST_PAGES, fit -> new PracticePrint(page, sheet, fit).section()).large();
  }

  private Section section() {
    return page.section(
        page.paper(),
        fit.close() ? Style.CLIPBOARD_SNUG : Style.CLIPBOARD,
        page.say("practice.title", "date", sheet.date()),
        page.say("practice.what"),
        page.say("practice.day", "date", sheet.date()),
        this::write);
  }

  private void write(Flow flow) {
    flow.h1(page.say("practice.title", "date", sheet.date())).lead(facts());
    sheet.notes().forEach(note -> flow.p(Text.bold(page.say(note))));
    held(flow);
    squads(flow);
    timetable(flow);
    if (fit.tight()) {
      otherwise(flow);
      flow.p(bring());
    }
    flow.columns(
        columns ->
            columns
                .column(
                    SAFETY_SHARE,
                    left -> left.hatchedBox(page.say("practice.safety"), this::safety))
                .column(
                    EMERGENCY_SHARE,
                    right -> {
                      right.hatchedBox(
                          page.say("practice.emergency"),
                          box -> page.say(sheet.emergency()).forEach(box::p));
                      if (fit.tight()) {
                        right.small(page.say("practice.hot") + ": " + heatNotes());
                      }
                    }));
    flow.together(
        part -> {
          if (fit != Fit.BARE) {
            part.h2(page.say("practice.setup"));
          }
          StationPicture.of(page, sheet).ifPresent(picture -> picture.draw(part));
          if (!fit.tight()) {
            part.p(bring());
          }
        });
    drills(flow);
    if (!fit.tight()) {
      otherwise(flow);
    }
    heat(flow);
  }

  /** The heat tables: the meter's rows and those of the heat index, each by itself. */
  private void heat(Flow flow) {
    if (fit.tight()) {
      Text meter = heatLine("practice.hot.meter", sheet.heat().meter());
      flow.p(meter.and(" ").and(heatLine("practice.hot.index", sheet.heat().index())));
      return;
    }
    flow.together(
        part -> {
          part.h2(page.say("practice.hot"));
          part.table(
              table -> {
                table.columns(Col.content(), Col.share(1), Col.share(1)).boxed().rowHeaders();
                table.head(
                    page.say("practice.hot.meter"),
                    page.say("practice.hot.do"),
                    page.say("practice.hot.others"));
                sheet.heat().meter().forEach(l -> heat(table, l));
              });
          part.table(
              table -> {
                table.columns(Col.content(), Col.share(1)).boxed().rowHeaders();
                table.head(page.say("practice.hot.index"), page.say("practice.hot.do"));
                sheet
                    .heat()
                    .index()
                    .forEach(l -> table.row(page.say(l.reading()), page.say(l.strictest())));
              });
          part.small(page.say(sheet.heat().mind()) + " " + heatNotes());
        });
  }

  private String heatNotes() {
    return String.join(" ", page.say(sheet.heat().notes()));
  }

  /** The rows one after the other, where there is no room for a table. */
  private Text heatLine(String title, List<HeatBox.Line> lines) {
    Text text = Text.bold(page.say(title) + ":");
    for (HeatBox.Line line : lines) {
      List<String> says = new ArrayList<>(List.of(page.say(line.strictest())));
      if (fit != Fit.BARE) {
        says.addAll(page.say(line.others()));
      }
      text =
          text.and(" ")
              .and(Text.bold(page.say(line.reading()) + ": "))
              .and(String.join("; ", says) + ".");
    }
    return text;
  }

  private void heat(Table table, HeatBox.Line line) {
    table.row(
        page.say(line.reading()),
        page.say(line.strictest()),
        line.others().isEmpty()
            ? page.say("practice.hot.agree")
            : String.join("\n", page.say(line.others())));
  }

  private Text bring() {
    return Text.bold(page.say("practice.equipment"))
        .and(": " + String.join(" · ", page.say(sheet.equipment())));
  }

  /** When things go otherwise; where room is short it fills the foot of the first page. */
  private void otherwise(Flow flow) {
    Map<String, List<Phrase>> otherwise = new LinkedHashMap<>();
    if (fit == Fit.BARE && sheet.otherWays().size() == 2) {
      otherwise.put("practice.either", List.of(Phrase.of("practice.other.take")));
    } else {
      if (fit != Fit.BARE || sheet.adults() > 1) {
        otherwise.put("practice.one-adult", otherwise(sheet.oneAdult()));
      }
      otherwise.put("practice.rain", otherwise(sheet.rain()));
    }
    otherwise.put("practice.changes", sheet.guests());
    otherwise.put("practice.weather", weather());
    if (fit.tight()) {
      otherwise.forEach(
          (title, lines) ->
              flow.p(Text.bold(page.say(title) + " ").and(String.join(" ", page.say(lines)))));
    } else {
      flow.columns(
          columns ->
              otherwise.forEach(
                  (title, lines) ->
                      columns.column(
                          1, column -> column.h2(page.say(title)).bullets(texts(lines)))));
    }
  }

  private List<Text> texts(List<Phrase> phrases) {
    return page.say(phrases).stream().map(Text::of).toList();
  }

  /** Where the heat tables are set close, what not to mix up stands here. */
  private List<Phrase> weather() {
    List<Phrase> weather = new ArrayList<>(sheet.weather());
    if (fit.tight()) {
      weather.add(sheet.heat().mind());
    }
    return weather;
  }

  /** What is said of another way here; its timetable has a sheet of its own. */
  private static List<Phrase> otherwise(PracticeSheet.OtherWay way) {
    List<Phrase> says = new ArrayList<>(way.says());
    if (!way.rotations().isEmpty()) {
      says.add(Phrase.of("practice.other.see"));
    }
    return says;
  }

  private String facts() {
    Phrase place =
        sheet.place().isBlank()
            ? Phrase.of("practice.where.blank")
            : Phrase.of("practice.where", "place", sheet.place());
    Phrase where =
        sheet
            .start()
            .map(s -> Phrase.of("practice.where.at", "place", place, "start", s))
            .orElse(place);
    return page.say(
        Phrase.of("practice.facts", "where", where, "adults", sheet.adults())
            .with("hitting", sheet.hittingMinutes())
            .with("minutes", sheet.minutes()));
  }

  private void held(Flow flow) {
    List<Text> lines = new ArrayList<>();
    line(lines, "practice.held.today", sheet.notToday(), "");
    line(
        lines,
        "practice.held.throwing",
        sheet.noThrowing().stream().filter(l -> !sheet.armRests().contains(l)).toList(),
        page.say("practice.held.throwing.how"));
    line(lines, "practice.held.rests", sheet.armRests(), page.say("practice.held.rests.how"));
    line(lines, "practice.held.pitch", sheet.askFirst(), page.say("practice.held.pitch.how"));
    line(lines, "practice.held.swinging", sheet.noSwinging(), helping());
    line(lines, "practice.held.resting", sheet.resting(), page.say("practice.held.resting.how"));
    for (PracticeSheet.Fewer fewer : sheet.fewerSwings()) {
      lines.add(
          Text.bold(page.say("practice.held.fewer") + ": " + page.name(fewer.who()))
              .and(" – " + page.say("practice.held.fewer.how", "swings", fewer.swings())));
    }
    if (lines.isEmpty()) {
      lines.add(Text.of(page.say("practice.held.all")));
    }
    lines.add(Text.of(page.say("practice.held.ask")));
    flow.hatchedBox(page.say("practice.held"), box -> lines.forEach(box::p));
  }

  private void line(List<Text> lines, String key, List<Label> who, String how) {
    if (!who.isEmpty()) {
      lines.add(
          Text.bold(page.say(key) + ": " + page.names(who)).and(how.isEmpty() ? "" : " – " + how));
    }
  }

  /** Where those who may not swing help. */
  private String helping() {
    return sheet.rotations().stream()
        .flatMap(r -> r.posts().stream())
        .filter(p -> !p.helpers().isEmpty())
        .findFirst()
        .map(p -> page.say("practice.held.swinging.helps", "station", p.station()))
        .orElse("");
  }

  private void squads(Flow flow) {
    if (sheet.squads().isEmpty()) {
      return;
    }
    boolean switches =
        sheet.squads().stream()
            .flatMap(s -> s.players().stream())
            .anyMatch(p -> p.bats() == Bats.SWITCH);
    flow.h2(page.say("practice.groups"));
    flow.p(
        page.say("practice.groups.how")
            + (switches ? " " + page.say("practice.groups.switch") : ""));
    for (int i = 0; i < sheet.squads().size(); i += ABREAST) {
      List<PracticeSheet.Squad> abreast =
          sheet.squads().subList(i, Math.min(i + ABREAST, sheet.squads().size()));
      flow.columns(columns -> abreast.forEach(squad -> column(columns, squad)));
    }
  }

  private void column(Columns columns, PracticeSheet.Squad squad) {
    columns.column(
        1,
        flow ->
            flow.h3(page.say("practice.group", "letter", squad.letter()))
                .bullets(squad.players().stream().map(this::player).toList()));
  }

  private Text player(Label who) {
    Text text = Text.bold(page.name(who)).and(" " + page.say("practice.bats." + who.bats().id()));
    PracticeSheet.PlayerCue cue = cues.get(who.id());
    if (cue == null) {
      return text;
    }
    Text with = text.and(" · " + page.say(cue.cue()));
    return cue.needs().map(n -> with.and(Text.bold(" (" + n + ")"))).orElse(with);
  }

  private void timetable(Flow flow) {
    if (sheet.rotations().isEmpty()) {
      return;
    }
    flow.h2(page.say("practice.timetable"));
    if (fit != Fit.BARE) {
      flow.writing(page.say("practice.timetable.start"), 1);
    }
    flow.table(
        table -> {
          table.columns(columns()).head(head()).rowHeaders().boxed();
          sheet.rotations().forEach(r -> row(table, r));
        });
    boolean moves = sheet.stations().size() > 1;
    Text next = Text.of(page.say(moves ? "practice.timetable.move" : "practice.timetable.stay"));
    for (Text writers : writers()) {
      next = next.and("  ").and(writers);
    }
    flow.p(next);
  }

  private List<Col> columns() {
    List<Col> columns = new ArrayList<>(List.of(Col.content()));
    sheet.stations().forEach(s -> columns.add(Col.share(1)));
    return columns;
  }

  private List<String> head() {
    List<String> head = new ArrayList<>(List.of(page.say("practice.round")));
    sheet.stations().forEach(s -> head.add(station(s)));
    return head;
  }

  private String station(PracticeSheet.Station station) {
    return station
        .adult()
        .map(a -> page.say("practice.station.adult", "number", station.number(), "adult", a))
        .orElse(page.say("practice.station.alone", "number", station.number()));
  }

  private void row(Table table, PracticeSheet.Rotation rotation) {
    List<Cell> cells = new ArrayList<>();
    cells.add(
        Cell.of(
            Text.bold(
                page.say(
                    "practice.round.minutes",
                    "number",
                    rotation.number(),
                    "from",
                    rotation.from(),
                    "to",
                    rotation.from() + rotation.minutes()))));
    for (PracticeSheet.Station station : sheet.stations()) {
      Optional<PracticeSheet.Post> post =
          rotation.posts().stream().filter(p -> p.station() == station.number()).findFirst();
      cells.add(post.map(p -> Cell.of(post(p))).orElse(Cell.blank()));
    }
    table.row(cells);
  }

  private Text post(PracticeSheet.Post post) {
    Text squad = Text.bold(page.say("practice.post", "squad", post.squad()));
    DrillText drill = drills.get(post.drill());
    return drill == null
        ? squad.and(
            " "
                + page.say(
                    sheet.ground() == Place.CAGE
                        ? "practice.timetable.writes"
                        : "practice.timetable.fields"))
        : squad
            .and(" " + numbers.get(drill.id()) + " " + page.say(drill.name()))
            .and("\n" + dose(post, drill));
  }

  private String dose(PracticeSheet.Post post, DrillText drill) {
    int tosses = post.tossesEach();
    int swings = post.swingsEach();
    if (swings == 0) {
      return page.say(
          drill.feed() == Feed.NONE ? "practice.post.turns" : "practice.post.tosses",
          "tosses",
          tosses);
    }
    return swings == tosses
        ? page.say("practice.post.swings", "swings", swings)
        : page.say("practice.post.both", "tosses", tosses, "swings", swings);
  }

  /** Who writes, once for all stations that share it. */
  private List<Text> writers() {
    Map<Phrase, List<Integer>> stations = new LinkedHashMap<>();
    for (PracticeSheet.Station station : sheet.stations()) {
      sheet.rotations().stream()
          .flatMap(r -> r.posts().stream())
          .filter(p -> p.station() == station.number())
          .map(PracticeSheet.Post::writes)
          .distinct()
          .forEach(w -> stations.computeIfAbsent(w, k -> new ArrayList<>()).add(station.number()));
    }
    List<Text> texts = new ArrayList<>();
    stations.forEach(
        (writes, where) ->
            texts.add(
                Text.bold(page.say("practice.writes") + " " + where(where) + ": ")
                    .and(page.say(writes))));
    return texts;
  }

  private String where(List<Integer> stations) {
    return stations.size() == sheet.stations().size()
        ? page.say("practice.writes.all")
        : page.say("practice.writes.some", "count", stations.size(), "stations", stations);
  }

  private void safety(Flow box) {
    List<Text> lines = new ArrayList<>();
    sheet.safety().forEach(s -> lines.add(Text.of(page.say(s))));
    Map<Phrase, List<Integer>> byLine = new LinkedHashMap<>();
    for (DrillText drill : sheet.usualDrills()) {
      drill
          .safety()
          .forEach(
              s -> byLine.computeIfAbsent(s, k -> new ArrayList<>()).add(numbers.get(drill.id())));
    }
    byLine.forEach((line, which) -> lines.add(safetyLine(line, which)));
    box.bullets(lines).small(page.say("practice.safety.source"));
  }

  private Text safetyLine(Phrase line, List<Integer> which) {
    String rule = page.say(line);
    return which.size() == sheet.usualDrills().size()
        ? Text.of(rule)
        : Text.bold(
                page.say("practice.safety.drills", "count", which.size(), "drills", which) + ": ")
            .and(rule);
  }

  private void drills(Flow flow) {
    if (sheet.usualDrills().isEmpty()) {
      return;
    }
    flow.h2(page.say("practice.drills"));
    boolean needs = sheet.cues().stream().anyMatch(c -> c.needs().isPresent());
    IntStream.range(0, sheet.usualDrills().size())
        .forEach(i -> flow.together(part -> drill(part, sheet.usualDrills().get(i), i + 1, needs)));
  }

  private void drill(Flow flow, DrillText drill, int number, boolean needs) {
    String name = number + " " + page.say(drill.name()) + " · " + with(drill);
    String mix = drill.feed() == Feed.NONE ? "" : " " + page.say(drill.mix()) + ".";
    Text setup = Text.of(page.say(drill.setup()) + mix);
    Text words = words(drill, needs);
    if (fit.tight()) {
      flow.p(Text.bold(name + ".").and(" ").and(setup).and("  ").and(words));
    } else {
      flow.h3(name).p(setup).p(words);
    }
  }

  private Text words(DrillText drill, boolean needs) {
    Text words =
        Text.bold(page.say("practice.drill.say"))
            .and(" " + page.say(drill.cue()) + "  ")
            .and(Text.bold(page.say("practice.drill.write")))
            .and(" " + marks(drill));
    Text all =
        drill
            .easier()
            .filter(e -> fit != Fit.BARE)
            .map(
                e ->
                    words
                        .and("  ")
                        .and(Text.bold(page.say("practice.drill.easier")))
                        .and(" " + page.say(e)))
            .orElse(words);
    return drill
        .adapt()
        .filter(a -> needs)
        .map(
            a ->
                all.and("  ")
                    .and(Text.bold(page.say("practice.drill.needs")))
                    .and(" " + page.say(a)))
        .orElse(all);
  }

  /** What to write: the marks of the log sheet, where the drill has one. */
  private String marks(DrillText drill) {
    return page.group().logs().stream()
        .filter(log -> log.drill().id().equals(drill.id()))
        .findFirst()
        .map(log -> String.join(" ", page.say(log.marks())))
        .orElse(page.say(drill.write()));
  }

  private String with(DrillText drill) {
    String ball = page.say("practice.ball." + drill.ball().id());
    return drill.feed() == Feed.NONE
        ? ball
        : page.say("practice.drill.with", "ball", ball, "distance", drill.distance());
  }
}
