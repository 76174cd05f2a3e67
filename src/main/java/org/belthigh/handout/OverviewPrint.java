package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;
import org.belthigh.plan.DecisionLine;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Overview;
import org.belthigh.plan.Plan;
import org.belthigh.plan.SportYear;
import org.belthigh.words.Words;

/** The overview: one coordinator, one age group. Who needs a look comes first. */
final class OverviewPrint {
  private final TeamPage page;
  private final Overview overview;

  private OverviewPrint(TeamPage page) {
    this.page = page;
    this.overview = page.group().overview();
  }

  static Section of(Plan plan, GroupPlan group, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return page.section(
        page.paper().lying(),
        page.say("overview.title", "group", group.name()),
        page.say("overview.what"),
        page.say("overview.day", "date", plan.from()),
        new OverviewPrint(page)::write);
  }

  private void write(Flow flow) {
    flow.h1(page.say("overview.title", "group", page.group().name()));
    flow.lead(page.say("overview.totals") + ": " + totals());
    looks(flow);
    back(flow);
    ahead(flow);
    timeOff(flow);
    flow.h2(page.say("overview.players"));
    if (overview.rows().isEmpty()) {
      flow.p(page.say("overview.none"));
    } else {
      flow.table(this::players);
      flow.p(page.say("overview.marks"));
      why(flow);
      depends(flow);
    }
    setAside(flow);
  }

  private String totals() {
    return Arrays.stream(Outcome.values())
        .map(
            o ->
                page.say(
                    "overview.totals.line",
                    "count",
                    overview.totals().getOrDefault(o, 0),
                    "decision",
                    decision(o)))
        .collect(Collectors.joining(" · "));
  }

  private Phrase decision(Outcome outcome) {
    return Phrase.of("overview.total." + outcome.id());
  }

  private void looks(Flow flow) {
    flow.h2(page.say("overview.looks"));
    List<Text> looks =
        overview.rows().stream()
            .filter(r -> r.look().isPresent())
            .map(r -> Text.bold(page.name(r.who()) + ": ").and(page.say(r.look().orElseThrow())))
            .toList();
    if (looks.isEmpty()) {
      flow.p(page.say("overview.looks.none"));
    } else {
      flow.bullets(looks);
    }
  }

  private void back(Flow flow) {
    List<Text> lines =
        overview.rows().stream()
            .filter(r -> r.back().isPresent())
            .map(
                r ->
                    Text.bold(page.name(r.who()) + ": ")
                        .and(page.say(r.back().orElseThrow().sentence())))
            .toList();
    if (!lines.isEmpty()) {
      flow.h2(page.say("overview.back")).bullets(lines).p(page.say("overview.back.how"));
    }
  }

  /** What is other than usual in the planned weeks. */
  private void ahead(Flow flow) {
    if (!overview.ahead().isEmpty()) {
      flow.h2(page.say("overview.ahead"))
          .bullets(overview.ahead().stream().map(page::say).map(Text::of).toList());
    }
  }

  /** What would change the weeks after the next plan. */
  private void depends(Flow flow) {
    List<Text> depends =
        overview.rows().stream()
            .filter(r -> r.depends().isPresent())
            .map(r -> Text.bold(page.name(r.who()) + ": ").and(page.say(r.depends().orElseThrow())))
            .toList();
    if (!depends.isEmpty()) {
      flow.h2(page.say("overview.depends")).bullets(depends);
    }
  }

  private void players(Table table) {
    List<Col> columns = new ArrayList<>(List.of(Col.content()));
    List<String> head = new ArrayList<>(List.of(page.say("overview.player")));
    for (Skill skill : Skill.values()) {
      columns.add(Col.share(1));
      head.add(page.say("overview.skill." + skill.id()));
    }
    columns.add(Col.share(0.8));
    head.add(page.say("overview.holds"));
    table.columns(columns).head(head).rowHeaders();
    overview.rows().forEach(r -> row(table, r));
  }

  private void row(Table table, Overview.Row row) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(Text.bold(page.name(row.who())))));
    for (Skill skill : Skill.values()) {
      cells.add(
          row.decisions().stream()
              .filter(d -> d.skill() == skill)
              .findFirst()
              .map(d -> Cell.of(decision(d)))
              .orElse(Cell.blank()));
    }
    String holds = String.join("\n", page.say(row.holds()));
    cells.add(Cell.of(holds.isEmpty() ? page.say("overview.holds.none") : holds));
    table.row(cells);
  }

  private Text decision(DecisionLine line) {
    Text text =
        Text.bold(page.say(decision(line.outcome())))
            .and("\n" + page.say(line.stepName()))
            .and("\n" + seen(line));
    return line.nextName()
        .map(n -> text.and("\n" + page.say("overview.next", "step", n)))
        .orElse(text);
  }

  private String seen(DecisionLine line) {
    return line.lastSeen()
        .map(d -> page.say("overview.seen.last", "seen", line.seen(), "date", d))
        .orElse(page.say("overview.seen", "seen", line.seen()));
  }

  private void why(Flow flow) {
    flow.h2(page.say("overview.why"));
    flow.p(page.say("overview.why.how"));
    overview.marks().ifPresent(marks -> flow.p(page.say(marks)));
    for (Overview.Row row : overview.rows()) {
      flow.h3(page.name(row.who()));
      if (!row.why().isEmpty()) {
        flow.table(table -> why(table, row));
      }
      row.unseen().ifPresent(unseen -> flow.p(page.say(unseen)));
    }
  }

  private void why(Table table, Overview.Row row) {
    table.columns(Col.share(1), Col.mm(ReadingPicture.WIDTH_MM));
    for (Overview.Why why : row.why()) {
      Text text = Text.of(page.say(why.sentence()));
      List<ReadingPicture> pictures = new ArrayList<>();
      for (Evidence.Reading reading : why.readings()) {
        if (!reading.share().isEmpty()) {
          ReadingPicture picture = new ReadingPicture(page, reading);
          text = text.and((pictures.isEmpty() ? "\n" : " ") + picture.inWords());
          pictures.add(picture);
        }
      }
      table.row(Cell.of(text), Cell.of(flow -> pictures.forEach(p -> p.draw(flow))));
    }
  }

  /** Who is known to have passed the months of one sport in a year; else up to where we know. */
  private void timeOff(Flow flow) {
    if (overview.rows().isEmpty()) {
      return;
    }
    flow.h2(page.say("overview.year"));
    SportYear any = overview.rows().get(0).year();
    flow.p(
        page.say(
            "overview.year.how",
            "first",
            any.first().atDay(1),
            "last",
            any.last().atDay(1),
            "most",
            any.most()));
    List<Text> passed =
        overview.rows().stream()
            .filter(r -> r.year().passed())
            .map(
                r ->
                    Text.bold(page.name(r.who()) + ": ")
                        .and(page.say(r.year().remark().orElseThrow())))
            .toList();
    if (passed.isEmpty()) {
      int known = overview.rows().stream().mapToInt(r -> r.year().known()).max().getAsInt();
      flow.p(page.say("overview.year.none", "known", known));
    } else {
      flow.bullets(passed);
    }
  }

  private void setAside(Flow flow) {
    flow.h2(page.say("overview.aside"));
    if (overview.setAside().isEmpty()) {
      flow.p(page.say("overview.aside.none"));
    } else {
      flow.bullets(overview.setAside().stream().map(Text::of).toList());
    }
  }
}
