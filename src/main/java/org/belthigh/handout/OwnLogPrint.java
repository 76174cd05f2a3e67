package org.belthigh.handout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Bats;
import org.belthigh.plan.OwnLog;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;

/** The blank log of one player: a week, a part for each drill, a box for each toss. */
final class OwnLogPrint {
  /** Boxes in a line. */
  private static final int BOXES = 12;

  /** Room for a day and, by hand, for a date. */
  private static final double DAY_MM = 24;

  private final PlayerPlan player;
  private final OwnLog log;
  private final Voice voice;
  private final Fit fit;

  private OwnLogPrint(PlayerPlan player, Voice voice, Fit fit) {
    this.player = player;
    this.log = player.log();
    this.voice = voice;
    this.fit = fit;
  }

  /** The log sheet of {@code player}, with {@code footer} at the foot of each page. */
  static Section of(Plan plan, PlayerPlan player, Voice voice, String footer) {
    return Fit.on(1, fit -> new OwnLogPrint(player, voice, fit).section(plan, footer));
  }

  private Section section(Plan plan, String footer) {
    Style style = fit.close() ? Style.READER_SNUG : Style.READER;
    return Section.of(Paper.parse(plan.paper()), style, voice.pages(), title(), this::write)
        .footed(footer);
  }

  private String title() {
    return voice.say("own-log.title", "player", voice.name(player.who()));
  }

  private void write(Flow flow) {
    flow.h1(title())
        .p(voice.say("own-log.week", "first", log.first(), "last", log.last()))
        .p(how())
        .writing(voice.say("own-log.who"), 1);
    log.drills().forEach(drill -> flow.together(part -> drill(part, drill)));
    if (spareLines() > 0) {
      flow.together(this::other);
    }
    flow.p(voice.say("home.afterwards"));
  }

  /** How to write, where the spots are, and that a switch hitter says the side. */
  private String how() {
    List<String> how = new ArrayList<>(List.of(voice.say("own-log.how"), voice.say("log.spots")));
    if (bothSides()) {
      how.add(voice.say("own-log.both-sides.how"));
    }
    return String.join(" ", how);
  }

  private boolean bothSides() {
    return player.who().bats() == Bats.SWITCH;
  }

  /** What stands before the boxes; for a switch hitter the two sides behind it. */
  private String before(String day) {
    return bothSides() ? voice.say("log.both-sides", "name", day) : day;
  }

  private void drill(Flow flow, OwnLog.Drill drill) {
    String title =
        voice.say("own-log.drill", "drill", voice.say(drill.name()), "boxes", drill.tosses());
    String marks = String.join(" ", drill.marks().stream().map(voice::say).toList());
    if (fit == Fit.BARE) {
      flow.columns(
          columns -> columns.column(2, left -> left.h2(title)).column(3, right -> right.p(marks)));
    } else {
      flow.h2(title).p(marks);
    }
    flow.table(
        table -> {
          head(table);
          drill.days().forEach(day -> lines(table, voice.say("card.day", "day", day), drill));
        });
  }

  /** A day's lines: the first says which day, the others from which toss on. */
  private void lines(Table table, String day, OwnLog.Drill drill) {
    table.row(line(Text.bold(before(day))));
    for (int from = BOXES + 1; from <= drill.tosses(); from += BOXES) {
      table.row(line(Text.of(before(voice.say("own-log.more", "first", from)))));
    }
  }

  /** For a drill that nobody planned: fewer where room is short. */
  private int spareLines() {
    return switch (fit) {
      case ROOMY -> 3;
      case SNUG -> 2;
      case TIGHT -> 1;
      case BARE -> 0;
    };
  }

  private void other(Flow flow) {
    flow.h2(voice.say("own-log.other"))
        .writing(voice.say("own-log.other.drill"), 1)
        .table(
            table -> {
              head(table);
              for (int i = 0; i < spareLines(); i++) {
                table.row(line(Text.of(before(voice.say("own-log.day") + ":"))));
              }
            });
  }

  private void head(Table table) {
    List<Col> columns = new ArrayList<>(List.of(Col.mm(DAY_MM)));
    columns.addAll(Collections.nCopies(BOXES, Col.share(1).centred()));
    columns.add(Col.content().centred());
    List<String> head = new ArrayList<>(List.of(voice.say("own-log.day")));
    IntStream.rangeClosed(1, BOXES).mapToObj(String::valueOf).forEach(head::add);
    head.add(voice.say("log.total"));
    table.columns(columns).head(head).rowHeaders().boxed().writable();
  }

  private static List<Cell> line(Text name) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.of(name)));
    cells.addAll(Collections.nCopies(BOXES + 1, Cell.blank()));
    return cells;
  }
}
