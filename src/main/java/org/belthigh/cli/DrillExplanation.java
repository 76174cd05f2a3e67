package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.decide.Reason;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Player;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.plan.DrillAnswer;
import org.belthigh.words.Words;

/** Why not this drill: for people, in lines that can be read out to a parent, and for machines. */
final class DrillExplanation {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String ENGLISH = LocalText.FALLBACK;

  private final Catalogue catalogue;
  private final Words words;
  private final Player player;
  private final LocalDate day;
  private final DrillAnswer answer;

  DrillExplanation(
      Catalogue catalogue, Words words, Player player, LocalDate day, DrillAnswer answer) {
    this.catalogue = catalogue;
    this.words = words;
    this.player = player;
    this.day = day;
    this.answer = answer;
  }

  /**
   * The id of the drill that {@code text} names: an id, or a name in any language.
   *
   * @throws NothingDone if the curriculum has none
   */
  static String named(Curriculum curriculum, String text) {
    return Intake.drill(curriculum, text)
        .map(Drill::id)
        .orElseThrow(
            () ->
                new NothingDone(
                    "drill '"
                        + text
                        + "' is not in the curriculum "
                        + curriculum.id()
                        + "; a drill is named by its id or its name there.\n"
                        + Intake.nearestDrill(curriculum, text)
                            .map(near -> "Maybe '" + near + "' is meant.")
                            .orElse("Maybe docs/drills.md, which lists them all, helps.")));
  }

  private String say(Phrase phrase) {
    return words.say(phrase, ENGLISH);
  }

  /**
   * A line for the drill, one for practice and one for home.
   *
   * @param all whether the rules and their sources are named
   */
  List<String> lines(boolean all) {
    List<String> lines = new ArrayList<>();
    lines.add(
        say(
            Phrase.of(
                "why-not.asked",
                "drill",
                answer.drill().name(),
                "id",
                answer.drill().id(),
                "player",
                player.firstName(),
                "date",
                day)));
    lines.add(
        answer
            .practice()
            .map(this::line)
            .orElseGet(() -> say(Phrase.of("why-not.no-practice", "date", answer.looked()))));
    lines.add(line(answer.home()));
    if (all) {
      settings()
          .flatMap(setting -> setting.against().stream())
          .map(Reason::rule)
          .distinct()
          .sorted()
          .map(this::rule)
          .forEach(lines::add);
    }
    return lines;
  }

  private Stream<DrillAnswer.Setting> settings() {
    return Stream.concat(answer.practice().stream(), Stream.of(answer.home()));
  }

  private String line(DrillAnswer.Setting setting) {
    return say(setting.where())
        + ": "
        + said(setting).map(this::say).collect(Collectors.joining(" "));
  }

  /** What is said of one place, sentence by sentence. */
  private static Stream<Phrase> said(DrillAnswer.Setting setting) {
    List<Phrase> said = new ArrayList<>();
    if (setting.against().isEmpty()) {
      said.add(Phrase.of("why-not.open"));
    }
    setting.against().stream().map(Reason::phrase).forEach(said::add);
    said.addAll(setting.notes());
    setting.before().stream().map(DrillAnswer.Before::why).forEach(said::add);
    if (setting.more() > 0) {
      said.add(Phrase.of("why-not.more", "more", setting.more()));
    }
    return said.stream();
  }

  /** The same as JSON. */
  ObjectNode json() {
    ObjectNode root =
        NODES
            .objectNode()
            .put("player", player.id())
            .put("as_of", day.toString())
            .put("age", player.ageOn(day))
            .put("drill", answer.drill().id())
            .put("name", answer.drill().name().in(ENGLISH))
            .put("looked_to", answer.looked().toString());
    ArrayNode places = root.putArray("places");
    settings().forEach(setting -> places.add(json(setting)));
    return root;
  }

  private ObjectNode json(DrillAnswer.Setting setting) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("place", setting.place().id())
            .put("date", setting.day().toString())
            .put("may_be_chosen", setting.against().isEmpty());
    ArrayNode against = node.putArray("against");
    setting
        .against()
        .forEach(
            reason ->
                against
                    .addObject()
                    .put("because", say(reason.phrase()))
                    .put("rule", reason.rule())
                    .put("source", catalogue.rule(reason.rule()).source()));
    ArrayNode notes = node.putArray("notes");
    setting.notes().forEach(note -> notes.add(say(note)));
    ArrayNode before = node.putArray("before");
    setting
        .before()
        .forEach(b -> before.addObject().put("drill", b.drill().id()).put("why", say(b.why())));
    node.put("more_before", setting.more());
    return node;
  }

  private String rule(String id) {
    return "  rule "
        + id
        + ": "
        + catalogue.rule(id).title()
        + " (source: "
        + catalogue.source(catalogue.rule(id).source()).shortName()
        + ")";
  }
}
