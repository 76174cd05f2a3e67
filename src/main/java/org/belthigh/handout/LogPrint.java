package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Bats;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Label;
import org.belthigh.plan.LogSheet;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** The blank log sheets: one drill a sheet, a line a player, a box a toss. */
final class LogPrint {
  private static final int GUESTS = 4;
  private static final int GUESTS_TIGHT = 2;

  private final TeamPage page;
  private final LogSheet sheet;

  private LogPrint(TeamPage page, LogSheet sheet) {
    this.page = page;
    this.sheet = sheet;
  }

  static List<Section> of(Plan plan, GroupPlan group, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return group.logs().stream().map(sheet -> new LogPrint(page, sheet).section()).toList();
  }

  private Section section() {
    String drill = page.say(sheet.drill().name());
    return Fit.on(
        1,
        fit ->
            page.section(
                page.paper(),
                fit.close() ? Style.CLIPBOARD_SNUG : Style.CLIPBOARD,
                page.say("log.title", "drill", drill),
                page.say("log.what"),
                drill,
                flow -> write(flow, fit)));
  }

  private void write(Flow flow, Fit fit) {
    flow.h1(page.say("log.title", "drill", page.say(sheet.drill().name())));
    flow.lead(String.join(" ", page.say(sheet.marks())));
    flow.columns(
        columns ->
            columns
                .column(3, this::how)
                .column(2, right -> right.table(table -> SpotTable.write(page, table))));
    flow.columns(
        columns ->
            columns
                .column(1, left -> left.writing(page.say("log.date"), 1))
                .column(1, right -> right.writing(page.say("log.coach"), 1)));
    flow.table(table -> table(table, fit));
    flow.p(page.say("log.afterwards"));
  }

  /** Who writes, and all that whoever types the sheet later needs to know. */
  private void how(Flow flow) {
    flow.p(page.say(sheet.who()));
    if (sheet.players().stream().anyMatch(p -> p.bats() == Bats.SWITCH)) {
      flow.p(page.say("log.both-sides.how"));
    }
    flow.p(page.say(sheet.typed()));
    flow.p(page.say("log.spots.near"));
    flow.p(page.say("log.type", "id", sheet.drill().id()));
  }

  /** The name; for a switch hitter the two sides behind it, one of which is circled. */
  private String name(Label player) {
    String name = page.name(player);
    return player.bats() == Bats.SWITCH ? page.say("log.both-sides", "name", name) : name;
  }

  private void table(Table table, Fit fit) {
    List<Col> columns = new ArrayList<>(List.of(Col.content()));
    columns.addAll(Collections.nCopies(sheet.tosses(), Col.share(1).centred()));
    columns.add(Col.content().centred());
    List<String> head = new ArrayList<>(List.of(page.say("log.player")));
    IntStream.rangeClosed(1, sheet.tosses()).mapToObj(String::valueOf).forEach(head::add);
    head.add(page.say("log.total"));
    table.columns(columns).head(head).rowHeaders().boxed().writable();
    sheet.players().forEach(p -> table.row(line(Text.bold(name(p)))));
    for (int i = 0; i < (fit.tight() ? GUESTS_TIGHT : GUESTS); i++) {
      table.row(line(Text.of(page.say("log.guest"))));
    }
  }

  private List<Cell> line(Text name) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(name)));
    cells.addAll(Collections.nCopies(sheet.tosses() + 1, Cell.blank()));
    return cells;
  }
}
