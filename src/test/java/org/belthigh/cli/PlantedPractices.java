package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;

/** Practices and who is where. */
final class PlantedPractices extends KindList {
  PlantedPractices() {
    Places practice = KindList::practices;
    kind(
        "practice-missing",
        "a practice is missing",
        "practice|miss",
        practice,
        KindList::any,
        s -> s.remove("practices"));
    kind(
        "practice-twice",
        "a practice stands there twice",
        "twice|again|more than once",
        practice,
        KindList::any,
        s -> s.twice("practices"));
    kind(
        "practice-moved",
        "a practice is on a day of no practice",
        "practice|calendar|event",
        practice,
        KindList::any,
        s -> s.node().put("date", moved(s.text("date"), 300)));
    kind(
        "practice-group",
        "a practice is of an unknown group",
        "group",
        practice,
        KindList::any,
        s -> s.node().put("group", "g9"));
    kind(
        "practice-adults",
        "more adults than the calendar has",
        "adult",
        practice,
        KindList::any,
        s -> s.node().put("adults", s.number("adults") + 4));
    kind(
        "practice-minutes",
        "more hitting minutes than the practice has",
        "minute",
        practice,
        KindList::any,
        s -> s.node().put("hitting_minutes", 400));
    kind(
        "practice-place",
        "cage work at a field",
        "place|cage",
        practice,
        s -> s.is("place", "field"),
        s -> s.node().put("place", "cage"));
    kind(
        "practice-gear",
        "the gear list is emptied",
        "gear|bring",
        practice,
        s -> s.filled("gear"),
        s -> s.node().putArray("gear"));
    kind(
        "practice-cautions",
        "the safety box is emptied",
        "caution|safety",
        practice,
        s -> s.filled("cautions"),
        s -> s.node().putArray("cautions"));
    kind(
        "practice-nothrow",
        "who may not throw is emptied",
        "throw",
        practice,
        s -> s.filled("no_throwing"),
        s -> s.node().putArray("no_throwing"));
    kind(
        "practice-noswing",
        "who may not swing is emptied",
        "swing",
        practice,
        s -> s.filled("no_swinging"),
        s -> s.node().putArray("no_swinging"));
    kind(
        "rotations-none",
        "the rotations are emptied",
        "rotation|station|turn",
        practice,
        s -> s.filled("rotations"),
        s -> s.node().putArray("rotations"));
    Places turn = of(practice, "rotations");
    kind(
        "rotation-minute",
        "a rotation begins late",
        "rotation|minute",
        turn,
        s -> s.node().has("minute"),
        s -> s.node().put("minute", s.number("minute") + 90));
    Places post = of(turn, "posts");
    kind(
        "post-unknown",
        "a child of no roster hits at a station",
        "no-child|roster",
        post,
        s -> s.node().path("players").isArray(),
        s -> s.list("players").add("no-child"));

    kind(
        "practice-way",
        "what is done in rain is left out",
        "rain|way",
        practice,
        s -> s.node().path("ways").toString().contains("rain"),
        s -> s.list("ways").removeAll());
    kind(
        "practice-where",
        "a practice is at another place",
        "where|place",
        practice,
        s -> !s.text("where").isEmpty(),
        s -> s.node().put("where", "The far meadow"));
    kind(
        "practice-start",
        "a practice begins at another hour",
        "start|begin|hour",
        practice,
        KindList::any,
        s -> s.node().put("start", "05:05"));
    kind(
        "practice-length",
        "a practice is longer by an hour",
        "minute",
        practice,
        KindList::any,
        s -> s.more("minutes", 60));
    kind(
        "practice-kind",
        "a practice is called a game",
        "kind|game",
        practice,
        s -> s.node().has("kind"),
        s -> s.node().put("kind", "game"));
    kind(
        "practice-shorter",
        "fewer hitting minutes than the calendar has",
        "minute",
        practice,
        s -> s.number("hitting_minutes") > 10,
        s -> s.more("hitting_minutes", -9));
    kind(
        "practice-fewer",
        "fewer adults than the calendar has",
        "adult",
        practice,
        s -> s.number("adults") > 1,
        s -> s.more("adults", -1));
    kind(
        "practice-gear-one",
        "the gear list lacks one thing",
        "gear|bring|brought|asked|listed",
        practice,
        s -> s.filled("gear"),
        s -> s.list("gear").remove(0));
    kind(
        "practice-gear-less",
        "the gear list has one too few",
        "gear|bring|brought|asked|listed",
        gear(),
        s -> s.number("count") > 1,
        s -> s.more("count", -1));
    kind(
        "practice-caution",
        "one line of the safety box is left out",
        "caution|safety",
        practice,
        s -> s.filled("cautions"),
        s -> s.list("cautions").remove(0));
    kind(
        "practice-caution-last",
        "the last line of the safety box is left out",
        "caution|safety",
        practice,
        s -> s.filled("cautions"),
        s -> s.list("cautions").remove(s.list("cautions").size() - 1));
    kind(
        "practice-nothrow-one",
        "one child who may not throw is left out",
        "throw",
        practice,
        s -> s.filled("no_throwing"),
        s -> s.list("no_throwing").remove(0));
    kind(
        "practice-nothrow-more",
        "a child who may throw is listed as one who may not",
        "throw",
        practice,
        s -> s.node().path("no_throwing").isArray(),
        s -> s.list("no_throwing").add("no-child"));
    kind(
        "practice-toss-lists",
        "toss lists are said to be there, or not",
        "toss",
        practice,
        s -> s.node().has("toss_lists"),
        s -> s.node().put("toss_lists", !s.node().path("toss_lists").asBoolean()));
    kind(
        "logs-none",
        "the log sheets are emptied",
        "log",
        practice,
        s -> s.filled("logs"),
        s -> s.node().putArray("logs"));
    kind(
        "logs-drill",
        "a log sheet of a drill that nobody does",
        "log|drill",
        of(practice, "logs"),
        KindList::any,
        s -> s.node().put("drill", "no-such-drill"));
    kind(
        "rotation-long",
        "a rotation lasts an hour",
        "rotation|minute",
        turn,
        KindList::any,
        s -> s.node().put("minutes", 60));
    kind(
        "rotation-missing",
        "one rotation is left out",
        "rotation|station|turn|drill",
        turn,
        KindList::any,
        s -> s.remove("rotations"));
    kind(
        "post-two",
        "a child is at two stations at once",
        "twice|two|both|at once|same time",
        turn,
        s -> s.node().path("posts").size() > 1 && !s.node().at("/posts/0/players").isEmpty(),
        s -> ((ArrayNode) s.node().at("/posts/1/players")).add(s.node().at("/posts/0/players/0")));
    kind(
        "post-missing",
        "a child is at no station",
        "no-?where|no post|missing|no station|rotation|not there|left out",
        post,
        s -> s.filled("players"),
        s -> s.list("players").remove(0));
    kind(
        "post-station",
        "a post is at a station that is not there",
        "station",
        post,
        KindList::any,
        s -> s.node().put("station", 17));
    kind(
        "post-drill",
        "a post does a drill of no station",
        "drill",
        post,
        s -> s.node().hasNonNull("drill"),
        s -> s.node().put("drill", "no-such-drill"));
    kind(
        "post-job",
        "who fields hits",
        "job|hits|helps|drill",
        post,
        s -> s.is("job", "fields") || s.is("job", "helps"),
        s -> s.node().put("job", "hits"));
    kind(
        "post-all",
        "one station for all",
        "station",
        turn,
        s -> s.node().path("posts").size() > 1,
        PlantedPractices::together);
    kind(
        "post-held",
        "a child who may not swing hits",
        "swing",
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
