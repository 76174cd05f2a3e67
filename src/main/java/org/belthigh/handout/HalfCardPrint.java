package org.belthigh.handout;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Table;
import org.belthigh.handout.kit.Text;
import org.belthigh.plan.Card;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;

/**
 * The card on half a sheet, for a clipboard: headings run into their sentences, and spots stand in
 * words alone. In the type of a card where that fits, else in that of a clipboard.
 *
 * <p>It leaves out nothing that the card asks for or forbids. The picture is left to the whole
 * card, and so is what went well where it would run over.
 */
final class HalfCardPrint {
  private static final double DAYS_MM = 21;

  private final Card card;
  private final PlayerPlan player;
  private final String group;
  private final Voice voice;
  private final CardWords words;
  private final Fit fit;

  private HalfCardPrint(PlayerPlan player, String group, Voice voice, Fit fit) {
    this.player = player;
    this.card = player.card();
    this.group = group;
    this.voice = voice;
    this.words = new CardWords(player, voice);
    this.fit = fit;
  }

  /** The card of {@code player} on half a lying sheet, with {@code footer} at its foot. */
  static Section of(Plan plan, GroupPlan group, PlayerPlan player, Voice voice, String footer) {
    String title = voice.say("card.title", "player", voice.name(player.who()));
    return Fit.on(
        1,
        fit ->
            Section.of(
                    Paper.parse(plan.paper()).half(),
                    style(fit),
                    voice.pages(),
                    title,
                    new HalfCardPrint(player, group.name(), voice, fit)::write)
                .footed(footer));
  }

  private static Style style(Fit fit) {
    return switch (fit) {
      case ROOMY -> Style.READER_SNUG;
      case SNUG -> Style.CLIPBOARD;
      case TIGHT, BARE -> Style.CLIPBOARD_SNUG;
    };
  }

  private void write(Flow flow) {
    flow.h1(voice.name(player.who()))
        .p(voice.say("card.week", "group", group, "first", card.first(), "last", card.last()));
    words.hold(flow);
    flow.p(runIn("card.aim", voice.say(card.aim()))).p(words.cue());
    card.week().ifPresent(says -> flow.p(voice.say(says)));
    if (!card.things().isEmpty()) {
      flow.table(this::things);
    }
    also(flow);
    if (card.picture().isPresent()) {
      flow.p(runIn("card.look", words.look()));
    }
    if (!card.movesOn().isEmpty()) {
      String moves = card.movesOn().stream().map(voice::say).collect(joining(" "));
      flow.p(runIn("card.moves", moves));
    }
    if (fit != Fit.BARE) {
      flow.p(runIn("card.well", voice.say(card.wentWell())));
    }
    words.arm(flow);
  }

  private void things(Table table) {
    table
        .columns(Col.mm(DAYS_MM), Col.share(1))
        .head(voice.say("card.head.day"), voice.say("card.do"))
        .rowHeaders();
    for (Card.Thing thing : card.things()) {
      table.row(
          Cell.ticks(thing.days().stream().map(words::tick).toList()),
          Cell.of(cell -> what(cell, thing)));
    }
  }

  /** The drill, and what to do in it: below its name, or after it where room is short. */
  private void what(Flow cell, Card.Thing thing) {
    String drill = voice.say(thing.drill());
    String rest =
        voice.say(
            "card.half.thing",
            "how",
            words.how(thing),
            "many",
            words.many(thing),
            "good",
            voice.say(thing.goodEnough()));
    if (fit.tight()) {
      String ended = drill.matches(".*[?!.]") ? drill : drill + ".";
      cell.p(Text.bold(ended + " ").and(rest));
    } else {
      cell.p(Text.bold(drill)).p(rest);
    }
  }

  private void also(Flow flow) {
    List<Text> days = words.also();
    if (!days.isEmpty()) {
      Text line = Text.bold(voice.say("card.half.head", "head", voice.say("card.also")) + " ");
      for (int i = 0; i < days.size(); i++) {
        line = line.and(days.get(i)).and(i + 1 < days.size() ? "; " : ".");
      }
      flow.p(line);
    }
  }

  private Text runIn(String head, String says) {
    return Text.bold(voice.say("card.half.head", "head", voice.say(head)) + " ").and(says);
  }
}
