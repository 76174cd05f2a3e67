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
      flow.p(page.say("arms.how"));
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
  }

  private List<Text> cautions() {
    return page.say(sheet.cautions()).stream().map(Text::of).toList();
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
