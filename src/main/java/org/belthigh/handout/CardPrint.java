package org.belthigh.handout;

import java.util.List;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Text;
import org.belthigh.plan.Card;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;

/** The card: one player, one week, one page, in the words of the family. */
final class CardPrint {
  private static final double PICTURE_HEIGHT = 168;
  private static final double DAYS_MM = 23;

  private final PlayerPlan player;
  private final Card card;
  private final String group;
  private final Voice voice;
  private final CardWords words;
  private final Fit fit;

  private CardPrint(PlayerPlan player, String group, Voice voice, Fit fit) {
    this.fit = fit;
    this.player = player;
    this.card = player.card();
    this.group = group;
    this.voice = voice;
    this.words = new CardWords(player, voice);
  }

  /** The card of {@code player}, with {@code footer} at the foot of each page. */
  static Section of(Plan plan, GroupPlan group, PlayerPlan player, Voice voice, String footer) {
    String title = voice.say("card.title", "player", voice.name(player.who()));
    return Fit.on(
        1,
        fit ->
            Section.of(
                    Paper.parse(plan.paper()),
                    fit.close() ? Style.READER_SNUG : Style.READER,
                    voice.pages(),
                    title,
                    new CardPrint(player, group.name(), voice, fit)::write)
                .footed(footer));
  }

  private void write(Flow flow) {
    flow.h1(voice.name(player.who()))
        .p(voice.say("card.week", "group", group, "first", card.first(), "last", card.last()));
    words.hold(flow);
    flow.h2(voice.say("card.aim")).lead(voice.say(card.aim()));
    week(flow);
    if (!card.things().isEmpty()) {
      things(flow);
    }
    also(flow);
    if (card.picture().isPresent()) {
      flow.columns(
          columns -> columns.fixed(ZonePicture.WIDE, this::picture).column(1, this::beside));
    } else {
      beside(flow);
    }
    words.arm(flow);
  }

  /** The cue, and what is other than usual this week; on one line where room is short. */
  private void week(Flow flow) {
    if (card.week().isPresent() && fit.tight()) {
      flow.p(words.cue().and("  " + voice.say(card.week().get())));
      return;
    }
    flow.p(words.cue());
    card.week().ifPresent(says -> flow.p(voice.say(says)));
  }

  private void things(Flow flow) {
    flow.h2(voice.say("card.do"))
        .table(
            table -> {
              table
                  .columns(Col.mm(DAYS_MM), Col.share(5), Col.share(3), Col.share(3))
                  .head(
                      voice.say("card.head.day"),
                      voice.say("card.head.what"),
                      voice.say("card.head.many"),
                      voice.say("card.head.good"))
                  .rowHeaders();
              card.things()
                  .forEach(
                      thing ->
                          table.row(
                              Cell.ticks(thing.days().stream().map(words::tick).toList()),
                              Cell.of(cell -> what(cell, thing)),
                              Cell.of(words.many(thing)),
                              Cell.of(voice.say(thing.goodEnough()))));
            });
  }

  private void what(Flow cell, Card.Thing thing) {
    cell.p(Text.bold(voice.say(thing.drill()))).p(words.how(thing));
  }

  private void also(Flow flow) {
    List<Text> days = words.also();
    if (!days.isEmpty()) {
      flow.h2(voice.say("card.also")).bullets(days);
    }
  }

  private ZonePicture picture() {
    return new ZonePicture(
        card.picture().orElseThrow(),
        ZonePicture.View.HITTER,
        ZonePicture.WIDE,
        fit.of(PICTURE_HEIGHT),
        voice);
  }

  private void picture(Flow flow) {
    flow.h2(voice.say("card.where"));
    picture().addTo(flow);
    if (!fit.tight()) {
      notes(flow);
    }
  }

  /** Under the picture; where room is short below the words beside it, which are fewer. */
  private void notes(Flow flow) {
    flow.p(picture().notes(player.who().bats()));
  }

  private void beside(Flow flow) {
    card.picture().ifPresent(picture -> flow.h2(voice.say("card.look")).p(words.striped()));
    if (!card.movesOn().isEmpty()) {
      flow.h2(voice.say("card.moves")).bullets(voice.all(card.movesOn()));
    }
    flow.h2(voice.say("card.well")).p(voice.say(card.wentWell()));
    if (card.picture().isPresent() && fit.tight()) {
      notes(flow);
    }
  }
}
