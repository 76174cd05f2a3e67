package org.belthigh.handout;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Text;
import org.belthigh.handout.kit.Tick;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;
import org.belthigh.plan.ArmBox;
import org.belthigh.plan.Card;
import org.belthigh.plan.Day;
import org.belthigh.plan.PlayerPlan;

/** What a card says, on a whole page or on half of one, in the words of the family. */
record CardWords(PlayerPlan player, Voice voice) {
  private Card card() {
    return player.card();
  }

  /** What is on hold, first of all; nothing where nothing is. */
  void hold(Flow flow) {
    if (!card().hold().isEmpty()) {
      flow.hatchedBox(
          voice.say("card.first"),
          box -> card().hold().forEach(line -> box.p(Text.bold(voice.say(line)))));
    }
  }

  /** In a week without work there is nothing to say to oneself: the cue is a wish. */
  Text cue() {
    String words = voice.say(card().cue());
    return card().things().isEmpty()
        ? Text.of(words + ".")
        : Text.of(voice.say("card.cue") + " ").and(Text.bold(words));
  }

  /** A box to tick for a day. */
  Tick tick(LocalDate day) {
    return new Tick(voice.say("card.day", "day", day), voice.say("card.done", "day", day));
  }

  /** Where a thing is done, with which ball, from how far. */
  String how(Card.Thing thing) {
    return voice.say(
        "card.how", "place", voice.say("card.place." + thing.place().id()), "feed", feed(thing));
  }

  private String feed(Card.Thing thing) {
    return voice.say(
        "card.feed." + thing.feed().id(),
        "ball",
        voice.say("card.ball." + thing.ball().id()),
        "distance",
        voice.distance(thing.feet()));
  }

  /** How many tosses, swings or times. */
  String many(Card.Thing thing) {
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
  List<Text> also() {
    return player.days().stream()
        .filter(d -> !d.date().isBefore(card().first()) && !d.date().isAfter(card().last()))
        .filter(d -> d.items().isEmpty() && d.place() != Place.REST && d.note().isPresent())
        .map(this::also)
        .toList();
  }

  private Text also(Day day) {
    String date = voice.say("card.day", "day", day.date());
    return Text.bold(date).and(" " + voice.say(day.note().orElseThrow()));
  }

  /** The spots to look for, in words alone. */
  String look() {
    return spots().isEmpty() ? voice.say("picture.look.all") : spots() + ".";
  }

  /** The same beside the picture, which has them striped. */
  String striped() {
    return spots().isEmpty()
        ? voice.say("picture.look.all")
        : voice.say("picture.look", "spots", spots());
  }

  private String spots() {
    return card().picture().orElseThrow().lookFor().stream()
        .map(spot -> voice.say("target." + spot))
        .collect(joining("; "));
  }

  /** When to throw again, up to which day that is known, and where it is from. */
  void arm(Flow flow) {
    ArmBox arm = card().arm();
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
