package org.belthigh.handout;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** The first page of a packet: whose it is, for which week, and on which page everything begins. */
final class PacketCover {
  private static final int WEEK_END = 6;

  /**
   * A line of the contents.
   *
   * @param what kind of sheet
   * @param detail its day or its player; empty where there is only one
   * @param pages at least 1
   */
  record Entry(String what, String detail, int pages) {}

  private final TeamPage page;
  private final List<Entry> contents;
  private final int ownPages;

  private PacketCover(TeamPage page, List<Entry> contents, int ownPages) {
    this.page = page;
    this.contents = List.copyOf(contents);
    this.ownPages = ownPages;
  }

  /**
   * The cover of a packet that holds {@code contents} in this order.
   *
   * @param sized gives every sheet of the packet its size
   */
  static Section of(
      Plan plan, GroupPlan group, List<Entry> contents, Words words, UnaryOperator<Section> sized) {
    TeamPage page = new TeamPage(plan, group, words);
    int pages = sized.apply(new PacketCover(page, contents, 1).section()).pageCount();
    return sized.apply(new PacketCover(page, contents, pages).section());
  }

  private Section section() {
    String what = page.say("packet.title");
    return page.section(
            page.paper(),
            Style.READER,
            page.say("cover.title", "group", page.group().name()),
            what,
            page.say("packet.day", "day", page.plan().from()),
            this::write)
        .labelled(what + " ");
  }

  private void write(Flow flow) {
    flow.h1(page.say("cover.title", "group", page.group().name()))
        .lead(
            page.say(
                "cover.week",
                "club",
                page.plan().club(),
                "first",
                page.plan().from(),
                "last",
                page.plan().from().plusDays(WEEK_END)))
        .p(page.say("cover.made", "day", page.plan().from()))
        .p(Text.bold(page.say("cover.private")))
        .h2(page.say("cover.contents"));
    if (contents.isEmpty()) {
      flow.p(page.say("cover.empty"));
    } else {
      flow.table(this::contents);
    }
  }

  private void contents(Table table) {
    table
        .columns(Col.share(1), Col.share(1), Col.content().right())
        .head(page.say("cover.sheet"), page.say("cover.for"), page.say("cover.page"));
    int next = 1 + ownPages;
    String before = "";
    for (Entry entry : contents) {
      String what = Objects.equals(before, entry.what()) ? "" : entry.what();
      table.row(Cell.of(Text.bold(what)), Cell.of(entry.detail()), Cell.of(String.valueOf(next)));
      before = entry.what();
      next += entry.pages();
    }
  }
}
