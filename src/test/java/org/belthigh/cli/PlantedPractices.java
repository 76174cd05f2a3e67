package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;

/** Practices and who is where. */
final class PlantedPractices extends KindList {
  PlantedPractices() {
    Places practice = KindList::practices;
    kind(
        "practice-missing",
        "a practice is missing",
        "the practice is missing",
        practice,
        KindList::any,
        s -> s.remove("practices"));
    kind(
        "practice-twice",
        "a practice stands there twice",
        "the practice stands twice",
        practice,
        KindList::any,
        s -> s.twice("practices"));
    kind(
        "practice-moved",
        "a practice is on a day of no practice",
        "the practice is missing|the day is not planned",
        practice,
        KindList::any,
        s -> s.node().put("date", moved(s.text("date"), 300)));
    kind(
        "practice-group",
        "a practice is of an unknown group",
        "the practice is missing",
        practice,
        KindList::any,
        s -> s.node().put("group", "g9"));
    kind(
        "practice-adults",
        "more adults than the calendar has",
        "adults is \\d+; by the calendar",
        practice,
        KindList::any,
        s -> s.node().put("adults", s.number("adults") + 4));
    kind(
        "practice-minutes",
        "more hitting minutes than the practice has",
        "hitting_minutes is 400; by the calendar",
        practice,
        KindList::any,
        s -> s.node().put("hitting_minutes", 400));
    kind(
        "practice-place",
        "cage work at a field",
        "place is .cage.; by the calendar",
        practice,
        s -> s.is("place", "field"),
        s -> s.node().put("place", "cage"));
    kind(
        "practice-gear",
        "the gear list is emptied",
        "the gear list has \\d+ of",
        practice,
        s -> s.filled("gear"),
        s -> s.node().putArray("gear"));
    kind(
        "practice-cautions",
        "the safety box is emptied",
        "do(es)? not say",
        practice,
        s -> s.filled("cautions"),
        s -> s.node().putArray("cautions"));
    kind(
        "practice-nothrow",
        "who may not throw is emptied",
        "not listed under no_throwing",
        practice,
        s -> s.filled("no_throwing"),
        s -> s.node().putArray("no_throwing"));
    kind(
        "practice-noswing",
        "who may not swing is emptied",
        "not listed under no_swinging",
        practice,
        s -> s.filled("no_swinging"),
        s -> s.node().putArray("no_swinging"));
    kind(
        "rotations-none",
        "the rotations are emptied",
        "there is no rotation",
        practice,
        s -> s.filled("rotations"),
        s -> s.node().putArray("rotations"));
    Places turn = of(practice, "rotations");
    kind(
        "rotation-minute",
        "a rotation begins late",
        "rotations (up to minute|are not of one length)",
        turn,
        s -> s.node().has("minute"),
        s -> s.node().put("minute", s.number("minute") + 90));
    Places post = of(turn, "posts");
    kind(
        "post-unknown",
        "a child of no roster hits at a station",
        "no-child: no such child",
        post,
        s -> s.node().path("players").isArray(),
        s -> s.list("players").add("no-child"));

    kind(
        "practice-way",
        "what is done in rain is left out",
        "its other ways are",
        practice,
        s -> s.node().path("ways").toString().contains("rain"),
        s -> s.list("ways").removeAll());
    kind(
        "practice-where",
        "a practice is at another place",
        "where is .the far meadow.; by the calendar",
        practice,
        s -> !s.text("where").isEmpty(),
        s -> s.node().put("where", "The far meadow"));
    kind(
        "practice-start",
        "a practice begins at another hour",
        "start is .05:05.; by the calendar",
        practice,
        KindList::any,
        s -> s.node().put("start", "05:05"));
    kind(
        "practice-length",
        "a practice is longer by an hour",
        " minutes is \\d+; by the calendar",
        practice,
        KindList::any,
        s -> s.more("minutes", 60));
    kind(
        "practice-kind",
        "a practice is called a game",
        "kind is .game.",
        practice,
        s -> s.node().has("kind"),
        s -> s.node().put("kind", "game"));
    kind(
        "practice-shorter",
        "fewer hitting minutes than the calendar has",
        "hitting_minutes is \\d+; by the calendar",
        practice,
        s -> s.number("hitting_minutes") > 10,
        s -> s.more("hitting_minutes", -9));
    kind(
        "practice-fewer",
        "fewer adults than the calendar has",
        "adults is \\d+; by the calendar",
        practice,
        s -> s.number("adults") > 1,
        s -> s.more("adults", -1));
    kind(
        "practice-gear-one",
        "the gear list lacks one thing",
        "the gear list has \\d+ of",
        practice,
        s -> s.filled("gear"),
        s -> s.list("gear").remove(0));
    kind(
        "practice-gear-less",
        "the gear list has one too few",
        "the gear list has \\d+ of",
        gear(),
        s -> s.number("count") > 1,
        s -> s.more("count", -1));
    kind(
        "practice-caution",
        "one line of the safety box is left out",
        "do(es)? not say",
        practice,
        s -> s.filled("cautions"),
        s -> s.list("cautions").remove(0));
    kind(
        "practice-caution-last",
        "the last line of the safety box is left out",
        "do not say: heat index",
        practice,
        s -> s.filled("cautions"),
        s -> s.list("cautions").remove(s.list("cautions").size() - 1));
    kind(
        "practice-nothrow-one",
        "one child who may not throw is left out",
        "not listed under no_throwing",
        practice,
        s -> s.filled("no_throwing"),
        s -> s.list("no_throwing").remove(0));
    kind(
        "practice-nothrow-more",
        "a child who may throw is listed as one who may not",
        "no-child: listed under no_throwing",
        practice,
        s -> s.node().path("no_throwing").isArray(),
        s -> s.list("no_throwing").add("no-child"));
    kind(
        "practice-toss-lists",
        "toss lists are said to be there, or not",
        "toss_lists is",
        practice,
        s -> s.node().has("toss_lists"),
        s -> s.node().put("toss_lists", !s.node().path("toss_lists").asBoolean()));
    kind(
        "logs-none",
        "the log sheets are emptied",
        "log sheets of the drills \\[\\]",
        practice,
        s -> s.filled("logs"),
        s -> s.node().putArray("logs"));
    kind(
        "logs-drill",
        "a log sheet of a drill that nobody does",
        "log sheets of the drills .*no-such-drill",
        of(practice, "logs"),
        KindList::any,
        s -> s.node().put("drill", "no-such-drill"));
    kind(
        "rotation-long",
        "a rotation lasts an hour",
        "rotations (up to minute|are not of one length)",
        turn,
        KindList::any,
        s -> s.node().put("minutes", 60));
    kind(
        "rotation-missing",
        "one rotation is left out",
        "rotations are not of one length|its own day has these drills|its squads and drills ask for",
        turn,
        KindList::any,
        s -> s.remove("rotations"));
    kind(
        "post-two",
        "a child is at two stations at once",
        "in two places at once",
        turn,
        s -> s.node().path("posts").size() > 1 && !s.node().at("/posts/0/players").isEmpty(),
        s -> ((ArrayNode) s.node().at("/posts/1/players")).add(s.node().at("/posts/0/players/0")));
    kind(
        "post-missing",
        "a child is at no station",
        "at no station|help; who may not|no squad has the child",
        post,
        s -> s.filled("players"),
        s -> s.list("players").remove(0));
    kind(
        "post-station",
        "a post is at a station that is not there",
        "(squads are at the stations|helpers are at the station) .*17",
        post,
        KindList::any,
        s -> s.node().put("station", 17));
    kind(
        "post-drill",
        "a post does a drill of no station",
        "its squad .* in no-such-drill",
        post,
        s -> s.node().hasNonNull("drill"),
        s -> s.node().put("drill", "no-such-drill"));
    kind(
        "post-job",
        "who fields hits",
        "its squad hits",
        post,
        s -> s.is("job", "fields") || s.is("job", "helps"),
        s -> s.node().put("job", "hits"));
    kind(
        "post-all",
        "one station for all",
        "nobody is at station|in a squad that bats",
        turn,
        s -> s.node().path("posts").size() > 1,
        PlantedPractices::together);
    kind(
        "post-held",
        "a child who may not swing hits",
        "in a squad that bats",
        practice,
        s ->
            s.filled("no_swinging") && !s.node().at("/rotations/0/posts/0/players").isMissingNode(),
        s ->
            ((ArrayNode) s.node().at("/rotations/0/posts/0/players"))
                .add(s.list("no_swinging").get(0)));
  }

  private static Places gear() {
    return of(KindList::practices, "gear");
  }

  private static void together(Spot turn) {
    for (int i = 1; i < turn.list("posts").size(); i++) {
      ArrayNode players = (ArrayNode) turn.list("posts").get(i).path("players");
      ((ArrayNode) turn.node().at("/posts/0/players")).addAll(players.deepCopy());
      players.removeAll();
    }
  }
}
