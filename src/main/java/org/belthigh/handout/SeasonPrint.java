package org.belthigh.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Length;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Pen;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.plan.SeasonReport;

/** The season so far of one player, in the words of the family; two pages at the most. */
final class SeasonPrint {
  private static final int PAGES = 2;
  private static final double LOAD_MM = 46;
  private static final double LOAD_HEIGHT = 12;

  private final PlayerPlan player;
  private final SeasonReport report;
  private final Voice voice;
  private final Fit fit;

  private SeasonPrint(PlayerPlan player, SeasonReport report, Voice voice, Fit fit) {
    this.player = player;
    this.report = report;
    this.voice = voice;
    this.fit = fit;
  }

  /**
   * The report of {@code player}, with {@code footer} at the foot of each page.
   *
   * @throws IllegalStateException if the plan was made without season reports
   */
  static Section of(Plan plan, PlayerPlan player, Voice voice, String footer) {
    SeasonReport report =
        player
            .season()
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "the plan of " + player.who().id() + " was made without season reports"));
    String title = voice.say("season.title", "player", voice.name(player.who()));
    return Fit.on(
        PAGES,
        fit ->
            Section.of(
                    Paper.parse(plan.paper()),
                    fit.close() ? Style.READER_SNUG : Style.READER,
                    voice.pages(),
                    title,
                    new SeasonPrint(player, report, voice, fit)::write)
                .footed(footer));
  }

  private void write(Flow flow) {
    flow.h1(voice.say("season.title", "player", voice.name(player.who())))
        .p(voice.say("season.span", "first", report.first(), "last", report.last()));
    if (report.worked().isEmpty()) {
      flow.lead(voice.say("season.nothing"));
    } else {
      flow.h2(voice.say("season.worked")).table(this::worked);
      courses(flow);
    }
    flow.together(block -> block.h2(voice.say("season.ahead")).bullets(voice.all(report.ahead())));
    spots(flow);
    load(flow);
    flow.h2(voice.say("season.off"))
        .p(
            voice.say(
                "season.off.how",
                "most",
                player.year().most(),
                "known",
                player.year().known(),
                "source",
                player.year().source()));
    flow.small(voice.say(report.sources()));
  }

  private void worked(Table table) {
    table
        .columns(Col.share(2), Col.share(3), Col.content().centred(), Col.content().centred())
        .head(
            voice.say("season.skill"),
            voice.say("season.step"),
            voice.say("season.days"),
            voice.say("season.tosses"))
        .rowHeaders();
    for (SeasonReport.Worked worked : report.worked()) {
      table.row(
          Cell.of(Text.bold(voice.say("skill." + worked.skill().id()))),
          Cell.of(voice.say(worked.step())),
          Cell.of(String.valueOf(worked.days())),
          Cell.of(String.valueOf(worked.tosses())));
    }
  }

  private void courses(Flow flow) {
    List<SeasonReport.Course> courses = report.courses();
    if (courses.isEmpty()) {
      return;
    }
    flow.h2(voice.say("season.courses")).p(voice.say("season.courses.how"));
    for (int i = 0; i < courses.size(); i += 2) {
      List<SeasonReport.Course> two = courses.subList(i, Math.min(i + 2, courses.size()));
      flow.columns(
          columns -> {
            columns.column(1, left -> new CoursePicture(voice, two.get(0), fit).addTo(left));
            columns.column(
                1,
                right ->
                    two.stream()
                        .skip(1)
                        .forEach(c -> new CoursePicture(voice, c, fit).addTo(right)));
          });
    }
  }

  /** Then and now beside each other, a row for each side of the plate. */
  private void spots(Flow flow) {
    List<SeasonReport.Spots> all = report.spots();
    for (int i = 0; i < all.size(); i++) {
      SeasonReport.Spots spots = all.get(i);
      boolean first = i == 0;
      flow.together(
          block -> {
            if (first) {
              block.h2(voice.say("season.spots"));
              block.p(voice.say("season.spots.how." + spots.grain().id()));
            }
            block.columns(
                columns ->
                    columns
                        .column(1, left -> spots(left, "season.before", spots, spots.before()))
                        .column(1, right -> spots(right, "season.since", spots, spots.after())));
          });
    }
  }

  private void spots(Flow flow, String heading, SeasonReport.Spots spots, Map<Spot, Share> calls) {
    flow.h3(voice.say(heading, "side", side(spots), "day", spots.now()));
    new CallsPicture(voice, spots.side(), calls, fit).addTo(flow);
  }

  /** The side in a heading's words: said where it is not the only one of the hitter. */
  private String side(SeasonReport.Spots spots) {
    boolean only = player.who().bats().side().filter(s -> s == spots.side()).isPresent();
    return only ? "only" : spots.side().id();
  }

  private void load(Flow flow) {
    if (report.weeks().isEmpty()) {
      return;
    }
    flow.together(
        block -> {
          block.h2(voice.say("season.load")).p(voice.say("season.load.how")).table(this::load);
          report
              .mostPitches()
              .ifPresent(most -> block.p(voice.say("season.load.pitches", "pitches", most)));
        });
  }

  private void load(Table table) {
    boolean pitches = report.mostPitches().isPresent();
    List<Col> columns =
        new ArrayList<>(List.of(Col.content(), Col.mm(LOAD_MM + 2), Col.share(1).centred()));
    List<String> head =
        new ArrayList<>(
            List.of(
                voice.say("season.week"),
                voice.say("season.swings.bar"),
                voice.say("season.swings")));
    if (pitches) {
      columns.add(Col.share(1).centred());
      columns.add(Col.share(1).centred());
      head.add(voice.say("season.pitches"));
      head.add(voice.say("season.pitches.day"));
    }
    table.columns(columns).head(head).rowHeaders();
    for (SeasonReport.Week week : report.weeks()) {
      List<Cell> cells =
          new ArrayList<>(
              List.of(
                  Cell.of(voice.say("season.week.of", "day", week.first())),
                  Cell.of(cell -> bar(cell, week)),
                  Cell.of(
                      voice.say(
                          "season.swings.of",
                          "swings",
                          told(week.swings()),
                          "most",
                          week.most()))));
      if (pitches) {
        cells.add(Cell.of(told(week.pitches())));
        cells.add(Cell.of(told(week.dayMost())));
      }
      table.row(cells);
    }
  }

  /** A count, or a dash where nobody wrote one down. */
  private String told(OptionalInt count) {
    return count.isPresent() ? String.valueOf(count.getAsInt()) : voice.say("season.untold");
  }

  /** The swings of a week as a bar, and a tall line at the most there should be. */
  private void bar(Flow cell, SeasonReport.Week week) {
    double width = Length.mm(LOAD_MM);
    double height = fit.of(LOAD_HEIGHT);
    double whole =
        report.weeks().stream()
            .mapToInt(w -> Math.max(w.swings().orElse(0), w.most()))
            .max()
            .orElse(1);
    String alternate =
        voice.say("season.swings.alt", "swings", told(week.swings()), "most", week.most());
    cell.picture(
        width,
        height,
        alternate,
        pen -> {
          double scale = (width - 2) / whole;
          pen.line(0.5, 1, 0.5, height - 1, Pen.Stroke.THIN);
          pen.fill(0.5, 3, week.swings().orElse(0) * scale, height - 6);
          pen.line(week.most() * scale, 0, week.most() * scale, height, Pen.Stroke.THICK);
        });
  }
}
