package org.belthigh.handout;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.handout.kit.Cell;
import org.belthigh.handout.kit.Col;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.handout.kit.Text;
import org.belthigh.handout.kit.Tick;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;
import org.belthigh.plan.ArmBox;
import org.belthigh.plan.Card;
import org.belthigh.plan.Day;
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
  private final Fit fit;

  private CardPrint(PlayerPlan player, String group, Voice voice, Fit fit) {
    this.fit = fit;
    this.player = player;
    this.card = player.card();
    this.group = group;
    this.voice = voice;
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
                    voice.locale(),
                    title,
                    new CardPrint(player, group.name(), voice, fit)::write)
                .footed(footer));
  }

  private void write(Flow flow) {
    flow.h1(voice.name(player.who()))
        .p(voice.say("card.week", "group", group, "first", card.first(), "last", card.last()));
    hold(flow);
    flow.h2(voice.say("card.aim")).lead(voice.say(card.aim()));
    week(flow);
    if (!card.things().isEmpty()) {
      things(flow);
    }
    also(flow);
    if (card.picture().isPresent()) {
      flow.columns(
          columns -> columns.fixed(ZonePicture.WIDE, this::picture).column(1, this::words));
    } else {
      words(flow);
    }
    arm(flow, card.arm());
  }

  /** The cue, and what is other than usual this week; on one line where room is short. */
  private void week(Flow flow) {
    if (card.week().isPresent() && fit.tight()) {
      flow.p(cue().and("  " + voice.say(card.week().get())));
      return;
    }
    flow.p(cue());
    card.week().ifPresent(says -> flow.p(voice.say(says)));
  }

  /** In a week without work there is nothing to say to oneself: the cue is a wish. */
  private Text cue() {
    String words = voice.say(card.cue());
    return card.things().isEmpty()
        ? Text.of(words + ".")
        : Text.of(voice.say("card.cue") + " ").and(Text.bold(words));
  }

  private void hold(Flow flow) {
    if (!card.hold().isEmpty()) {
      flow.hatchedBox(
          voice.say("card.first"),
          box -> card.hold().forEach(line -> box.p(Text.bold(voice.say(line)))));
    }
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
                              Cell.ticks(thing.days().stream().map(this::tick).toList()),
                              Cell.of(cell -> what(cell, thing)),
                              Cell.of(many(thing)),
                              Cell.of(voice.say(thing.goodEnough()))));
            });
  }

  private Tick tick(LocalDate day) {
    return new Tick(voice.say("card.day", "day", day), voice.say("card.done", "day", day));
  }

  private void what(Flow cell, Card.Thing thing) {
    cell.p(Text.bold(voice.say(thing.drill())));
    cell.p(
        voice.say(
            "card.how",
            "place",
            voice.say("card.place." + thing.place().id()),
            "feed",
            feed(thing)));
  }

  private String feed(Card.Thing thing) {
    return voice.say(
        "card.feed." + thing.feed().id(),
        "ball",
        voice.say("card.ball." + thing.ball().id()),
        "distance",
        voice.distance(thing.feet()));
  }

  private String many(Card.Thing thing) {
    boolean still = thing.feed() == Feed.NONE || thing.feed() == Feed.TEE;
    if (still && thing.swings() > 0) {
      return voice.say("card.many.swings", "swings", thing.swings());
    }
    if (thing.ball() == Ball.NONE || still) {
      return voice.say("card.many.times", "reps", thing.reps());
    }
    return thing.swings() == 0
        ? voice.say("card.many.watch", "reps", thing.reps())
        : voice.say("card.many.tosses", "reps", thing.reps(), "swings", thing.swings());
  }

  /** Games, and practices without hitting work, so that the week is whole. */
  private void also(Flow flow) {
    List<Text> days =
        player.days().stream()
            .filter(d -> !d.date().isBefore(card.first()) && !d.date().isAfter(card.last()))
            .filter(d -> d.items().isEmpty() && d.place() != Place.REST && d.note().isPresent())
            .map(this::also)
            .toList();
    if (!days.isEmpty()) {
      flow.h2(voice.say("card.also")).bullets(days);
    }
  }

  private Text also(Day day) {
    String date = voice.say("card.day", "day", day.date());
    return Text.bold(date).and(" " + voice.say(day.note().orElseThrow()));
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

  private void words(Flow flow) {
    card.picture().ifPresent(picture -> look(flow));
    if (!card.movesOn().isEmpty()) {
      flow.h2(voice.say("card.moves")).bullets(voice.all(card.movesOn()));
    }
    flow.h2(voice.say("card.well")).p(voice.say(card.wentWell()));
    if (card.picture().isPresent() && fit.tight()) {
      notes(flow);
    }
  }

  private void look(Flow flow) {
    List<String> spots =
        card.picture().orElseThrow().lookFor().stream().map(s -> voice.say("target." + s)).toList();
    flow.h2(voice.say("card.look"))
        .p(
            spots.isEmpty()
                ? voice.say("picture.look.all")
                : voice.say("picture.look", "spots", String.join("; ", spots)));
  }

  private void arm(Flow flow, ArmBox arm) {
    flow.hatchedBox(
        voice.say("card.arm"),
        box ->
            box.bullets(
                    voice.all(Stream.concat(arm.lines().stream(), arm.ends().stream()).toList()))
                .p(
                    Text.bold(
                        arm.knownTo()
                            .map(day -> voice.say("card.known", "day", day))
                            .orElse(voice.say("card.known.none"))))
                .small(voice.say(arm.source())));
  }
}
