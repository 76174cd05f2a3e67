package org.belthigh.handout;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Columns;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Text;
import org.belthigh.handout.kit.Tick;
import org.belthigh.model.Feed;
import org.belthigh.plan.HomeSheet;
import org.belthigh.plan.Label;
import org.belthigh.plan.Plan;

/** The home sheet: what a parent needs for one session in the driveway, on one page. */
final class HomePrint {
  /** Heights in points. */
  private static final double MAP = 140;

  private static final double PICTURE = 140;

  /** Columns of the script: four would break "ball: away" in two. */
  private static final int PARTS = 3;

  private static final double WRITE_MM = 12;

  private final Label who;
  private final HomeSheet sheet;
  private final Voice voice;
  private final Fit fit;

  private HomePrint(Label who, HomeSheet sheet, Voice voice, Fit fit) {
    this.fit = fit;
    this.who = who;
    this.sheet = sheet;
    this.voice = voice;
  }

  /** One session's sheet, with {@code footer} at the foot of each page. */
  static Section of(Plan plan, Label who, HomeSheet sheet, Voice voice, String footer) {
    return Fit.on(1, fit -> new HomePrint(who, sheet, voice, fit).section(plan, footer));
  }

  /** The same sheet to be set in large type, where nothing is left out to save a page. */
  static Section large(Plan plan, Label who, HomeSheet sheet, Voice voice, String footer) {
    return Fit.whole(1, fit -> new HomePrint(who, sheet, voice, fit).section(plan, footer)).large();
  }

  private Section section(Plan plan, String footer) {
    return Section.of(
            Paper.parse(plan.paper()),
            fit.close() ? Style.READER_SNUG : Style.READER,
            voice.pages(),
            voice.say("home.title", "player", voice.name(who), "day", sheet.date()),
            this::write)
        .footed(footer);
  }

  private void write(Flow flow) {
    flow.h1(voice.say("home.name", "player", voice.name(who), "day", sheet.date()));
    Text setup =
        Text.bold(voice.say(sheet.drill().name()) + ": ").and(voice.say(sheet.drill().setup()));
    if (sheet.script().isEmpty()) {
      flow.p(setup);
    } else if (fit.tight()) {
      flow.p(setup.and(" ").and(gear()));
    } else {
      flow.p(setup).p(gear());
    }
    if (!sheet.drill().swing()) {
      flow.p(Text.bold(voice.say("home.no-swings")));
    }
    flow.columns(columns -> columns.column(1, this::doing).fixed(ZonePicture.NARROW, this::seeing));
    if (!sheet.script().isEmpty()) {
      script(flow);
    }
    Optional<Text> smaller =
        Optional.of(sheet.smaller())
            .filter(lines -> !lines.isEmpty())
            .map(
                lines ->
                    runIn(
                        "home.smaller", String.join(" ", lines.stream().map(voice::say).toList())));
    Text stop = runIn("home.stop", sheet.stop().stream().map(voice::say).collect(joining(" ")));
    Text after = runIn("home.after", voice.say(sheet.afterwards()));
    Optional<Text> easier = sheet.easier().map(e -> runIn("home.easier", voice.say(e)));
    if (fit.tight()) {
      Text notes = Text.of(picture().notes(who.bats()));
      Text ends = fit == Fit.BARE ? stop : stop.and("  ").and(after);
      Text must = smaller.map(s -> s.and("  ").and(ends)).orElse(ends);
      Text all = easier.filter(e -> fit != Fit.BARE).map(must.and("  ")::and).orElse(must);
      flow.p(fit == Fit.BARE ? all : all.and("  ").and(notes));
    } else {
      smaller.ifPresent(flow::p);
      flow.p(stop).p(after);
      easier.ifPresent(flow::p);
    }
  }

  private Text gear() {
    String things = sheet.needs().stream().map(g -> voice.say(g.says())).collect(joining(" · "));
    return runIn("home.need.line", things + ".");
  }

  private Text runIn(String title, String words) {
    return Text.bold(voice.say(title) + " ").and(words);
  }

  private void doing(Flow flow) {
    flow.hatchedBox(
        voice.say("home.before"),
        box -> box.checks(voice.all(sheet.checks())).small(voice.say("home.source")));
    String minutes = voice.say("home.minutes", "minutes", sheet.minutes());
    if (sheet.script().isEmpty()) {
      unscripted(flow, minutes);
    } else {
      flow.h2(voice.say("home.how", "minutes", minutes));
      if (fit.tight()) {
        // the one thing to say stands on the card too
        long said = fit == Fit.BARE ? sheet.howTo().size() - 1L : sheet.howTo().size();
        flow.p(sheet.howTo().stream().limit(said).map(voice::say).collect(joining(" ")));
      } else {
        flow.bullets(voice.all(sheet.howTo()));
      }
    }
  }

  private void seeing(Flow flow) {
    SetUpMap map = new SetUpMap(sheet, fit.of(MAP), voice);
    if (!map.isEmpty()) {
      flow.h2(voice.say("home.map"));
      map.addTo(flow);
    }
    picture().addTo(flow);
    if (!fit.tight()) {
      flow.p(picture().notes(who.bats()));
    }
  }

  private ZonePicture picture() {
    ZonePicture.View view =
        sheet.script().isEmpty() ? ZonePicture.View.HITTER : ZonePicture.View.TOSSER;
    return new ZonePicture(sheet.picture(), view, ZonePicture.NARROW, fit.of(PICTURE), voice);
  }

  private void script(Flow flow) {
    List<HomeSheet.ScriptToss> script = sheet.script();
    int part = (script.size() + PARTS - 1) / PARTS;
    flow.h2(voice.say("home.script"))
        .p(voice.say("home.legend", "tick", answer(0), "write", answer(1)))
        .columns(
            columns -> {
              for (int from = 0; from < script.size(); from += part) {
                part(columns, script.subList(from, Math.min(from + part, script.size())));
              }
            });
  }

  private void part(Columns columns, List<HomeSheet.ScriptToss> tosses) {
    columns.column(
        1,
        flow ->
            flow.table(
                table -> {
                  table
                      .columns(Col.share(1), Col.content().centred(), Col.mm(WRITE_MM))
                      .head(voice.say("home.toss"), voice.say("home.yes"), voice.say("home.went"))
                      .rowHeaders()
                      .boxed()
                      .writable();
                  tosses.forEach(toss -> table.row(target(toss), tick(toss), Cell.blank()));
                }));
  }

  private Cell target(HomeSheet.ScriptToss toss) {
    return Cell.of(Text.bold(toss.number() + " ").and(voice.say(toss.target())));
  }

  private Cell tick(HomeSheet.ScriptToss toss) {
    String says = voice.say("home.tick", "number", toss.number(), "mark", answer(0));
    return Cell.ticks(List.of(Tick.bare(says)));
  }

  private String answer(int index) {
    return voice.say(sheet.answers().get(index));
  }

  /** A drill that nobody tosses for: its own way of writing down in place of a script. */
  private void unscripted(Flow flow, String minutes) {
    List<Text> gear = sheet.needs().stream().map(g -> Text.of(voice.say(g.says()))).toList();
    flow.h2(voice.say("home.need"))
        .bullets(gear)
        .bullets(voice.all(sheet.howTo()))
        .h2(voice.say("home.say", "minutes", minutes))
        .p(Text.bold(voice.say(sheet.drill().cue())))
        .h2(voice.say("home.write"))
        .p(
            voice.say(sheet.drill().write())
                + (sheet.drill().feed() == Feed.TEE ? " " + voice.say("home.write.pause") : ""))
        .writing(voice.say("home.result"), 3);
  }
}
