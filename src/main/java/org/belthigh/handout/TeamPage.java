package org.belthigh.handout;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.belthigh.handout.kit.Flow;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Label;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/**
 * What the prints for coaches and the coordinator share: the club's language and paper, how a
 * player is named, the footer.
 */
record TeamPage(Plan plan, GroupPlan group, Words words) {
  /** Paper as the club has it, standing. */
  Paper paper() {
    return Paper.parse(plan.paper());
  }

  String say(String key, Object... namesAndValues) {
    return say(Phrase.of(key, namesAndValues));
  }

  String say(Phrase phrase) {
    return words.say(phrase, plan.language());
  }

  String say(LocalText text) {
    return text.in(plan.language());
  }

  List<String> say(List<Phrase> phrases) {
    return phrases.stream().map(this::say).toList();
  }

  /** First name and shirt number, kept on one line. */
  String name(Label label) {
    return label.number().isPresent()
        ? say("team.player.numbered", "name", label.name(), "number", label.number().getAsInt())
        : label.name();
  }

  String names(List<Label> labels) {
    return labels.stream().map(this::name).collect(Collectors.joining(", "));
  }

  /**
   * A print of this group.
   *
   * @param what the kind of print, for the footer
   * @param when the week or the day it is about, for the footer
   */
  Section section(Paper paper, String title, String what, String when, Consumer<Flow> content) {
    return section(paper, Style.CLIPBOARD, title, what, when, content);
  }

  /** As {@link #section(Paper, String, String, String, Consumer)}, in a style of its own. */
  Section section(
      Paper paper, Style style, String title, String what, String when, Consumer<Flow> content) {
    return Section.of(paper, style, new Voice(words, plan.language()).pages(), title, content)
        .footed(
            say(
                "team.footer",
                "club",
                plan.club(),
                "group",
                group.name(),
                "what",
                what,
                "when",
                when,
                "day",
                plan.from(),
                "curriculum",
                plan.curriculum(),
                "books",
                String.join("; ", plan.ruleBooks())));
  }
}
