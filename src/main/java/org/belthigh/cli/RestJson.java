package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.belthigh.decide.ArmStatus;
import org.belthigh.model.Phrase;

/**
 * What {@code rest --json} prints. Beside the fixed keys: {@code ask_first}; where that is true,
 * {@code if_nothing_thrown} beside each answer, which is a no; {@code stricter_of_both_ages}, by
 * calendar age and league age; {@code to_last_batter}, what the league allows, where a rule book
 * leaves out pitches to the last batter, else null.
 */
final class RestJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private RestJson() {}

  /**
   * The whole document.
   *
   * @param on the day asked about
   * @param ruleBooks ids of the club's rule books, the strictest of which holds
   * @param players in roster order
   * @param words makes a sentence of a phrase
   */
  static ObjectNode of(
      LocalDate on,
      List<String> ruleBooks,
      List<ArmStatus> players,
      Function<Phrase, String> words) {
    ObjectNode root =
        NODES.objectNode().put("on", on.toString()).put("rule_book", String.join(", ", ruleBooks));
    ArrayNode list = root.putArray("players");
    players.forEach(player -> list.add(player(player, words)));
    return root;
  }

  private static ObjectNode player(ArmStatus status, Function<Phrase, String> words) {
    ObjectNode node = NODES.objectNode().put("player", status.player());
    said(node, status.answer());
    node.put("may_catch", status.mayCatch());
    date(node, "known_to", status.knownTo());
    ArrayNode because = node.putArray("because");
    status.because().forEach(reason -> because.add(words.apply(reason.phrase())));
    node.put("ask_first", status.askFirst());
    said(node.putObject("stricter_of_both_ages"), status.bothAges());
    if (status.lastBatter().isPresent()) {
      said(node.putObject("to_last_batter"), status.lastBatter().get());
    } else {
      node.putNull("to_last_batter");
    }
    ArrayNode rules = node.putArray("rules");
    status.because().forEach(reason -> rules.add(reason.rule()));
    return node;
  }

  /** The answer, and beside it what a yes would allow; null where nobody has to be asked. */
  private static void said(ObjectNode node, ArmStatus.Answer answer) {
    answer(node, answer);
    if (answer.ifNothingThrown().isPresent()) {
      answer(node.putObject("if_nothing_thrown"), answer.ifNothingThrown().get());
    } else {
      node.putNull("if_nothing_thrown");
    }
  }

  private static void answer(ObjectNode node, ArmStatus.Answer answer) {
    node.put("may_pitch", answer.mayPitch()).put("pitches_left", answer.pitchesLeft());
    date(node, "eligible_from", answer.eligibleFrom());
  }

  private static void date(ObjectNode node, String key, Optional<LocalDate> date) {
    if (date.isPresent()) {
      node.put(key, date.get().toString());
    } else {
      node.putNull(key);
    }
  }
}
