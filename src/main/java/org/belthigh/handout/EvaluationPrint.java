package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Spot;
import org.belthigh.plan.EvaluationSheet;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/**
 * The evaluation day: one page that says how it runs, and for each of two evaluators the boxes to
 * fill in, a block a hitter.
 */
final class EvaluationPrint {
  private static final int EVALUATORS = 2;
  private static final int GUESTS = 2;
  private static final double LABEL_MM = 34;
  private static final double ABOVE = 10;
  private static final double BELOW = 4;

  private final TeamPage page;
  private final EvaluationSheet sheet;

  private EvaluationPrint(TeamPage page) {
    this.page = page;
    this.sheet = page.group().evaluation();
  }

  static List<Section> of(Plan plan, GroupPlan group, Words words) {
    EvaluationPrint print = new EvaluationPrint(new TeamPage(plan, group, words));
    List<Section> sections = new ArrayList<>(List.of(print.lead()));
    for (int i = 1; i <= EVALUATORS; i++) {
      sections.add(print.marks(i));
    }
    return sections;
  }

  private String day() {
    return sheet
        .day()
        .map(day -> page.say("evaluation.day", "day", day))
        .orElse(page.say("evaluation.day.open"));
  }

  private Section lead() {
    return Fit.on(
        1,
        fit ->
            page.section(
                page.paper(),
                fit.close() ? Style.CLIPBOARD_SNUG : Style.CLIPBOARD,
                page.say("evaluation.title"),
                page.say("evaluation.what"),
                day(),
                this::how));
  }

  private void how(Flow flow) {
    flow.h1(page.say("evaluation.title")).lead(page.say("evaluation.aim"));
    flow.columns(
        columns ->
            columns
                .column(1, left -> date(left))
                .column(1, right -> right.writing(page.say("evaluation.tosser"), 1)));
    flow.columns(
        columns ->
            columns.column(1, left -> evaluator(left, 1)).column(1, right -> evaluator(right, 2)));
    flow.h2(page.say("evaluation.stations")).numbers(all("bat", "next", "watch"));
    flow.space(ABOVE);
    flow.columns(
        columns ->
            columns
                .column(1, this::script)
                .column(
                    1,
                    right -> {
                      right
                          .h2(page.say("evaluation.spots"))
                          .table(table -> SpotTable.write(page, table));
                      right.p(page.say("evaluation.spots.how"));
                      safety(right);
                    }));
    flow.h2(page.say("evaluation.write")).bullets(all("says", "does", "how", "alone"));
    flow.h2(page.say("evaluation.type")).p(page.say("evaluation.type.how"));
    example(flow);
  }

  private void safety(Flow flow) {
    flow.hatchedBox(
        page.say("evaluation.safety"),
        box ->
            box.bullets(all("ask", "ring." + feed(), "stop", "bring." + feed()))
                .small(page.say("evaluation.source")));
  }

  private void date(Flow flow) {
    sheet
        .day()
        .ifPresentOrElse(
            day -> flow.p(Text.of(page.say("log.date") + " ").and(Text.bold(day()))),
            () -> flow.writing(page.say("log.date"), 1));
  }

  private void evaluator(Flow flow, int number) {
    flow.writing(page.say("evaluation.evaluator", "number", number), 1);
  }

  private String feed() {
    return sheet.screen() ? "screen" : "open";
  }

  private List<Text> all(String... names) {
    return Stream.of(names).map(n -> Text.marked(page.say("evaluation.how." + n))).toList();
  }

  private void script(Flow flow) {
    flow.h2(page.say("evaluation.script"));
    flow.table(
        table -> {
          table
              .columns(Col.content().centred(), Col.share(1), Col.content().centred())
              .head(
                  page.say("evaluation.toss"),
                  page.say("evaluation.where"),
                  page.say("evaluation.number"))
              .rowHeaders();
          for (int i = 0; i < sheet.script().size(); i++) {
            Spot spot = sheet.script().get(i);
            table.row(String.valueOf(i + 1), page.say("target." + spot.id()), number(spot));
          }
        });
  }

  /** As a log file has it. */
  private String number(Spot spot) {
    return spot.strike() ? String.valueOf(spot.number()) : page.say("target.ball");
  }

  /** Two rows of a log file, made up, under the names that its columns have in every language. */
  private static void example(Flow flow) {
    flow.p(Text.bold("date,player,drill,toss,zone,called,swing,hit,timing,by"))
        .p("2027-03-06,p01,zone-call,1,5,5,yes,hard,on,A")
        .p("2027-03-06,p01,zone-call,2,ball,8,no,,,A");
  }

  private Section marks(int evaluator) {
    String title = page.say("evaluation.marks", "number", evaluator);
    return page.section(
        page.paper(), title, page.say("evaluation.what"), day(), flow -> marks(flow, title));
  }

  private void marks(Flow flow, String title) {
    flow.h1(title).p(page.say("evaluation.marks.how"));
    flow.columns(
        columns ->
            columns
                .column(1, left -> date(left))
                .column(1, right -> right.writing(page.say("evaluation.name"), 1)));
    for (int i = 0; i < sheet.hitters().size(); i++) {
      hitter(flow, i + 1, sheet.hitters().get(i));
    }
    for (int i = 1; i <= GUESTS; i++) {
      block(flow, String.valueOf(sheet.hitters().size() + i), page.say("log.guest"), true);
    }
  }

  private void hitter(Flow flow, int number, EvaluationSheet.Hitter hitter) {
    String name = page.name(hitter.who());
    switch (hitter.may()) {
      case SWING -> block(flow, String.valueOf(number), name, true);
      case CALL -> block(flow, String.valueOf(number), name, false);
      case NOTHING ->
          flow.p(Text.bold(number + "  " + name + ": ").and(page.say("evaluation.not-today")));
    }
  }

  private void block(Flow flow, String number, String name, boolean swings) {
    flow.together(
        one -> {
          one.table(
              table -> {
                List<Col> columns = new ArrayList<>(List.of(Col.mm(LABEL_MM)));
                List<String> head = new ArrayList<>(List.of(number + "  " + name));
                sheet.script().forEach(spot -> columns.add(Col.share(1).centred()));
                sheet.script().forEach(spot -> head.add(number(spot)));
                table.columns(columns).head(head).rowHeaders().boxed().writable();
                line(table, page.say("evaluation.says"));
                if (swings) {
                  line(table, page.say("evaluation.does"));
                }
              });
          one.p(swings ? "" : page.say("evaluation.calls-only"));
          if (swings) {
            one.ticks(ticks());
          }
          one.space(BELOW);
        });
  }

  private String[] ticks() {
    return Stream.of("early", "on", "late", "steady", "tips", "stays", "away")
        .map(t -> page.say("evaluation.tick." + t))
        .toArray(String[]::new);
  }

  private void line(Table table, String label) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(label)));
    cells.addAll(Collections.nCopies(sheet.script().size(), Cell.blank()));
    table.row(cells);
  }
}
