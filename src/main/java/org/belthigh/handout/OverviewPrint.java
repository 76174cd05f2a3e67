package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.decide.Outcome;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
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
  private static final double NAME_MM = 42;
  private static final double BELOW = 8;

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
        Style.CLIPBOARD_SNUG,
        page.say("overview.title", "group", group.name()),
        page.say("overview.what"),
        page.say("overview.day", "date", plan.from()),
        new OverviewPrint(page)::write);
  }

  private void write(Flow flow) {
    flow.h1(page.say("overview.title", "group", page.group().name()));
    later(flow);
    flow.lead(page.say("overview.totals") + ": " + totals()).space(BELOW);
    flow.columns(
        columns ->
            columns
                .column(1, this::looks)
                .column(
                    1.7,
                    right -> {
                      ahead(right);
                      timeOff(right);
                    }));
    back(flow);
    flow.h2(page.say("overview.players"));
    if (overview.rows().isEmpty()) {
      flow.p(page.say("overview.none"));
    } else {
      flow.p(page.say("overview.players.how")).table(this::players);
      flow.p(page.say("overview.marks"));
      why(flow);
    }
    setAside(flow);
  }

  /** What is dated after the plan's day, before anything else. */
  private void later(Flow flow) {
    if (!overview.later().isEmpty()) {
      flow.bullets(overview.later().stream().map(line -> Text.bold(page.say(line))).toList());
    }
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

  private void players(Table table) {
    List<Col> columns = new ArrayList<>(List.of(Col.mm(NAME_MM)));
    List<String> head = new ArrayList<>(List.of(page.say("overview.player")));
    for (Skill skill : Skill.values()) {
      columns.add(Col.share(1));
      head.add(page.say("overview.skill." + skill.id()));
    }
    table.columns(columns).head(head).rowHeaders();
    overview.rows().forEach(r -> row(table, r));
  }

  private void row(Table table, Overview.Row row) {
    String holds = String.join("\n", page.say(row.holds()));
    Text name = Text.bold(page.name(row.who()));
    List<Cell> cells =
        new ArrayList<>(List.of(Cell.of(holds.isEmpty() ? name : name.and("\n" + holds))));
    for (Skill skill : Skill.values()) {
      cells.add(
          row.decisions().stream()
              .filter(d -> d.skill() == skill)
              .findFirst()
              .map(d -> Cell.of(decision(d)))
              .orElse(Cell.blank()));
    }
    table.row(cells);
  }

  private Text decision(DecisionLine line) {
    Text text =
        Text.bold(page.say(decision(line.outcome())))
            .and(seen(line))
            .and("\n" + page.say(line.stepName()));
    return line.nextName()
        .map(n -> text.and("\n" + page.say("overview.next", "step", n)))
        .orElse(text);
  }

  /** How much was seen and when; nothing where nothing was. */
  private String seen(DecisionLine line) {
    return line.lastSeen()
        .map(d -> page.say("overview.seen", "seen", line.seen(), "date", d))
        .orElse("");
  }

  private void why(Flow flow) {
    flow.h2(page.say("overview.why"));
    flow.p(page.say("overview.why.how"));
    overview.marks().ifPresent(marks -> flow.p(page.say(marks)));
    overview.provisional().ifPresent(since -> flow.p(page.say(since)));
    flow.table(
        table -> {
          table.columns(Col.share(1), Col.mm(ReadingPicture.WIDTH_MM));
          overview.rows().forEach(row -> why(table, row));
        });
  }

  /**
   * A row a skill with pictures, one for all the others and for what the later weeks depend on; the
   * player's name before the first.
   */
  private void why(Table table, Overview.Row row) {
    Text lead = Text.bold(page.name(row.who()) + ". ");
    for (Overview.Why why : row.why()) {
      if (!why.readings().isEmpty()) {
        ReadingPicture picture = new ReadingPicture(page, why.readings());
        table.row(Cell.of(lead.and(page.say(why.sentence()))), Cell.of(picture::draw));
        lead = Text.EMPTY;
      }
    }
    List<Phrase> others =
        Stream.concat(
                row.why().stream().filter(w -> w.readings().isEmpty()).map(Overview.Why::sentence),
                row.unseen().stream())
            .toList();
    Text rest = lead.and(String.join(" ", page.say(others)));
    if (row.depends().isPresent()) {
      rest =
          rest.and(others.isEmpty() ? "" : " ")
              .and(Text.bold(page.say("overview.later") + " "))
              .and(page.say(row.depends().get()));
    }
    if (!rest.isBlank()) {
      table.row(Cell.of(rest).span(2));
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
            any.most(),
            "source",
            any.source()));
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
      flow.bullets(overview.setAside().stream().map(a -> Text.of(a.replace("\n", " "))).toList());
    }
  }
}
