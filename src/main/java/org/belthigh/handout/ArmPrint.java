package org.belthigh.handout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import org.belthigh.model.Phrase;
import org.belthigh.plan.ArmSheet;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** The arm sheet: who may pitch and catch on each day of the week, and how to work it out again. */
final class ArmPrint {
  /** What our own rule adds to the days of rest; it stands above the table. */
  private static final Phrase REST = Phrase.of("arm.rest");

  /** Pitchers side by side on the page of a tournament day. */
  private static final int ABREAST = 3;

  private final TeamPage page;
  private final ArmSheet sheet;

  private ArmPrint(TeamPage page) {
    this.page = page;
    this.sheet = page.group().arms();
  }

  static Section of(Plan plan, GroupPlan group, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return page.section(
        page.paper().lying(),
        page.say("arms.title"),
        page.say("arms.what"),
        week(page),
        new ArmPrint(page)::write);
  }

  private static String week(TeamPage page) {
    List<java.time.LocalDate> days = page.group().arms().days();
    return page.say("arms.week", "from", days.get(0), "to", days.get(days.size() - 1));
  }

  private void write(Flow flow) {
    flow.h1(page.say("arms.title") + ": " + week(page));
    if (sheet.rows().isEmpty()) {
      flow.lead(page.say("arms.none"));
    } else {
      String ours = sheet.cautions().contains(REST) ? " " + page.say(REST) : "";
      flow.p(page.say("arms.how") + ours);
      flow.table(this::week);
    }
    flow.columns(
        columns ->
            columns
                .column(
                    2,
                    left ->
                        left.hatchedBox(page.say("arms.cautions"), box -> box.bullets(cautions())))
                .column(3, this::pocket));
    sheet.tournament().forEach(day -> gameByGame(flow, day));
  }

  /** A page for a tournament day, with its own pocket table: it may hang alone in the dugout. */
  private void gameByGame(Flow flow, ArmSheet.GameDay day) {
    flow.pageBreak().h2(page.say("arms.games.day", "date", day.day()));
    if (day.pitchers().isEmpty()) {
      flow.lead(page.say("arms.games.nobody"));
      return;
    }
    flow.p(page.say("arms.games.how"));
    List<Text> cautions = page.say(day.cautions()).stream().map(Text::of).toList();
    flow.columns(c -> c.column(2, left -> left.bullets(cautions)).column(3, this::pocket));
    List<ArmSheet.Pitcher> pitchers = day.pitchers();
    for (int from = 0; from < pitchers.size(); from += ABREAST) {
      List<ArmSheet.Pitcher> row =
          pitchers.subList(from, Math.min(from + ABREAST, pitchers.size()));
      flow.together(block -> block.columns(columns -> abreast(columns, row)));
    }
  }

  private void abreast(Columns columns, List<ArmSheet.Pitcher> pitchers) {
    for (int i = 0; i < ABREAST; i++) {
      List<ArmSheet.Pitcher> here = pitchers.subList(Math.min(i, pitchers.size()), pitchers.size());
      columns.column(1, column -> here.stream().limit(1).forEach(p -> games(column, p)));
    }
  }

  /** One pitcher's lines: what was thrown in each game, the day's total, what is left. */
  private void games(Flow column, ArmSheet.Pitcher pitcher) {
    column.h3(
        page.say(
            "arms.games." + pitcher.cell().answer().id(),
            "name",
            page.name(pitcher.who()),
            "pitches",
            pitcher.cell().pitches() + pitcher.reported()));
    column.p(
        pitcher
            .knownTo()
            .map(d -> page.say("arms.games.known", "day", page.say("arms.day", "date", d)))
            .orElse(page.say("arms.known.never")));
    column.table(table -> games(table, pitcher));
  }

  private void games(Table table, ArmSheet.Pitcher pitcher) {
    Col column = Col.share(1).centred();
    table
        .columns(column, column, column, column)
        .head(
            page.say("arms.games.game"),
            page.say("arms.games.pitches"),
            page.say("arms.games.total"),
            page.say("arms.games.left"))
        .rowHeaders()
        .boxed()
        .writable();
    int total = 0;
    for (ArmSheet.Game game : pitcher.games()) {
      total += game.pitches().orElse(0);
      boolean known = game.pitches().isPresent();
      boolean latest = known && total == pitcher.reported();
      table.row(
          game.name(),
          known ? String.valueOf(game.pitches().getAsInt()) : "",
          known ? String.valueOf(total) : "",
          latest && pitcher.cell().answer() != ArmSheet.Answer.ASK
              ? String.valueOf(pitcher.cell().pitches())
              : "");
    }
    table.row(page.say("arms.games.rest"), "", page.say("arms.games.again"), "");
  }

  private List<Text> cautions() {
    return sheet.cautions().stream()
        .filter(c -> !c.equals(REST))
        .map(c -> Text.of(page.say(c)))
        .toList();
  }

  private void week(Table table) {
    List<Col> columns = new ArrayList<>(List.of(Col.content()));
    List<String> head = new ArrayList<>(List.of(page.say("arms.player")));
    for (int i = 0; i < sheet.days().size(); i++) {
      columns.add(Col.share(1));
      head.add(day(i));
    }
    columns.add(Col.content());
    columns.add(Col.share(1.2));
    head.add(page.say("arms.known"));
    head.add(page.say("arms.note"));
    table.columns(columns).head(head).rowHeaders().boxed();
    sheet.rows().forEach(r -> row(table, r));
  }

  private String day(int index) {
    Phrase day = Phrase.of("arms.day", "date", sheet.days().get(index));
    return page.say(
        sheet
            .events()
            .get(index)
            .map(e -> Phrase.of("arms.day.event", "day", day, "event", e))
            .orElse(day));
  }

  private void row(Table table, ArmSheet.Row row) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(Text.bold(page.name(row.who())))));
    row.cells().forEach(c -> cells.add(cell(row, c)));
    cells.add(
        Cell.of(
            row.knownTo()
                .map(d -> page.say("arms.day", "date", d))
                .orElse(page.say("arms.known.never"))));
    cells.add(Cell.of(page.say(row.note())));
    table.row(cells);
  }

  /** The answers, and below them room to write what was thrown. */
  private Cell cell(ArmSheet.Row row, ArmSheet.Cell cell) {
    List<Text> lines = new ArrayList<>();
    if (row.pitches()) {
      lines.add(pitching(cell));
    }
    if (row.catches()) {
      lines.add(Text.of(page.say(cell.mayCatch() ? "arms.catch.yes" : "arms.catch.no")));
    }
    Text answers = lines.stream().reduce((a, b) -> a.and("\n").and(b)).orElse(Text.EMPTY);
    return Cell.of(flow -> flow.p(answers).space(Style.WRITING_LINE - 10));
  }

  private Text pitching(ArmSheet.Cell cell) {
    String line = page.say("arms.pitch." + cell.answer().id(), "pitches", cell.pitches());
    return cell.answer() == ArmSheet.Answer.MAY ? Text.bold(line) : Text.of(line);
  }

  private void pocket(Flow flow) {
    flow.h2(page.say("arms.table")).p(page.say("arms.table.how"));
    Map<List<String>, List<ArmSheet.PocketTable>> alike = new LinkedHashMap<>();
    sheet.tables().forEach(t -> alike.computeIfAbsent(ranges(t), k -> new ArrayList<>()).add(t));
    alike.forEach((ranges, tables) -> flow.table(t -> pocketTable(t, ranges, tables)));
    String sources =
        sheet.tables().stream()
            .map(t -> page.say(t.source()))
            .distinct()
            .collect(Collectors.joining("; "));
    if (!sources.isEmpty()) {
      flow.small(page.say("arms.table.source", "source", sources));
    }
  }

  private void pocketTable(Table table, List<String> ranges, List<ArmSheet.PocketTable> tables) {
    List<Col> columns = new ArrayList<>(List.of(Col.content(), Col.share(1).centred()));
    IntStream.range(0, ranges.size()).forEach(i -> columns.add(Col.share(1).centred()));
    List<String> head =
        new ArrayList<>(List.of(page.say("arms.table.age"), page.say("arms.table.most")));
    boolean weekly = tables.stream().anyMatch(t -> t.weeklyMax().isPresent());
    if (weekly) {
      columns.add(Col.share(1).centred());
      head.add(page.say("arms.table.week"));
    }
    head.addAll(ranges);
    table.columns(columns).head(head).rowHeaders().boxed();
    Set<List<String>> seen = new HashSet<>();
    for (ArmSheet.PocketTable pocket : tables) {
      List<String> cells =
          new ArrayList<>(List.of(page.say(pocket.ages()), String.valueOf(pocket.dailyMax())));
      if (weekly) {
        cells.add(pocket.weeklyMax().stream().mapToObj(String::valueOf).findFirst().orElse("–"));
      }
      pocket.rest().forEach(r -> cells.add(String.valueOf(r.days())));
      if (seen.add(List.copyOf(cells))) {
        table.row(cells.toArray(String[]::new));
      }
    }
  }

  private List<String> ranges(ArmSheet.PocketTable table) {
    return table.rest().stream()
        .map(
            r ->
                r.to().isPresent()
                    ? page.say("arms.table.range", "from", r.from(), "to", r.to().getAsInt())
                    : page.say("arms.table.range.open", "from", r.from()))
        .toList();
  }
}
