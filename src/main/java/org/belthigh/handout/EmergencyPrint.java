package org.belthigh.handout;

import java.util.List;
import java.util.Optional;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.Phrase;
import org.belthigh.plan.EmergencySheet;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** The emergency sheet: one place, one page. What is not known is a line to write on. */
final class EmergencyPrint {
  private static final double WHO_MM = 78;

  private final TeamPage page;
  private final EmergencySheet sheet;
  private final Fit fit;

  private EmergencyPrint(TeamPage page, EmergencySheet sheet, Fit fit) {
    this.page = page;
    this.sheet = sheet;
    this.fit = fit;
  }

  static List<Section> of(Plan plan, GroupPlan group, Words words) {
    TeamPage page = new TeamPage(plan, group, words);
    return group.emergency().stream().map(sheet -> section(page, sheet)).toList();
  }

  private static Section section(TeamPage page, EmergencySheet sheet) {
    String place = sheet.place().orElse(page.say("emergency.any"));
    return Fit.on(
        1,
        fit ->
            page.section(
                page.paper(),
                fit.close() ? Style.READER_SNUG : Style.READER,
                page.say("emergency.title", "place", place),
                page.say("emergency.what"),
                place,
                new EmergencyPrint(page, sheet, fit)::write));
  }

  private void write(Flow flow) {
    flow.h1(
        sheet
            .place()
            .map(place -> page.say("emergency.title", "place", place))
            .orElse(page.say("emergency.what")));
    flow.hatchedBox("", this::call);
    flow.h2(page.say("emergency.steps"));
    flow.numbers(sheet.steps().stream().map(this::marked).toList());
    flow.h2(page.say("emergency.jobs"));
    flow.table(this::jobs);
    flow.h2(page.say("emergency.after")).checks(all(sheet.afterwards()));
    sheet.note().ifPresent(note -> flow.p(page.say("emergency.tell", "note", note)));
    flow.small(String.join(" ", page.say(sheet.sources())));
  }

  /** What is said on the phone: the number, the address, the way in. */
  private void call(Flow box) {
    if (sheet.call().isPresent()) {
      box.lead(Text.bold(page.say("emergency.number", "call", sheet.call().get())));
    } else {
      box.writing(page.say("emergency.number.blank"), 1);
    }
    said(box, "emergency.address", sheet.address());
    if (sheet.address().isEmpty() && !fit.tight()) {
      box.writing(page.say("emergency.street"), 1);
    }
    said(box, "emergency.way", sheet.way());
    said(box, "emergency.aed.at", sheet.aed());
    box.p(page.say("emergency.phone"));
  }

  private void said(Flow flow, String key, Optional<String> text) {
    String label = page.say(key);
    text.ifPresentOrElse(
        t -> flow.p(Text.of(label + " ").and(Text.bold(t))), () -> flow.writing(label, 1));
  }

  private void jobs(Table table) {
    table
        .columns(Col.share(1), Col.mm(WHO_MM))
        .head(page.say("emergency.job"), page.say("emergency.person"))
        .rowHeaders()
        .boxed()
        .writable();
    table.row(job(page.say("emergency.job.calls")), Cell.of(sheet.who().orElse("")));
    for (Phrase job : sheet.jobs()) {
      table.row(job(page.say(job)), Cell.blank());
    }
  }

  private static Cell job(String words) {
    return Cell.of(Text.of(words));
  }

  private Text marked(Phrase step) {
    return Text.marked(page.say(step));
  }

  private List<Text> all(List<Phrase> phrases) {
    return page.say(phrases).stream().map(Text::of).toList();
  }
}
