package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Evidence;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.RuleEntry;
import org.belthigh.catalogue.RuleText;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Ground;
import org.belthigh.decide.Hold;
import org.belthigh.decide.Reason;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.ClubRecord;
import org.belthigh.measure.GroupEstimate;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.Marks;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.model.AgeBand;
import org.belthigh.model.LocalText;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Phrase;
import org.belthigh.words.Words;

/** The chain from tosses to decision, for people and for machines. */
final class Explanation {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String ENGLISH = LocalText.FALLBACK;

  /** Places on each side of the middle of the scale. */
  private static final int HALF_SCALE = 20;

  private final Catalogue catalogue;
  private final Words words;
  private final ClubRecord record;
  private final LocalDate day;
  private final Map<String, PlayerMeasures> measures;

  /** What {@code record}, cut at {@code day}, leads to. */
  Explanation(Catalogue catalogue, Words words, ClubRecord record, LocalDate day) {
    this.catalogue = catalogue;
    this.words = words;
    this.record = record;
    this.day = day;
    this.measures =
        Measures.of(record).stream().collect(Collectors.toMap(PlayerMeasures::player, m -> m));
  }

  private String say(Phrase phrase) {
    return words.say(phrase, ENGLISH);
  }

  private AgeBand band(String player) {
    return AgeBand.of(record.player(player).ageOn(day));
  }

  /**
   * What a coordinator can read out to a parent: why the child is held, or what its arm may do, and
   * a sentence for each skill with what would settle it.
   */
  List<String> plain(
      String player, List<SkillDecision> decisions, List<Hold> holds, ArmStatus arm) {
    List<String> lines = new ArrayList<>();
    holds.stream()
        .collect(Collectors.groupingBy(Hold::whoEnds, LinkedHashMap::new, Collectors.toList()))
        .forEach((ends, same) -> lines.add(stopped(same) + " " + say(ends)));
    if (holds.isEmpty()) {
      lines.add(arm.because().stream().map(r -> say(r.phrase())).collect(Collectors.joining(" ")));
    }
    Curriculum curriculum = catalogue.curricula().get(record.club().curriculum());
    for (SkillDecision decision : decisions) {
      String settles = decision.settles().map(s -> " Missing: " + say(s) + ".").orElse("");
      lines.add(
          curriculum.ladders().get(decision.skill()).name().in(ENGLISH)
              + ": "
              + say(decision.because())
              + settles);
    }
    lines.add("The tosses, marks, rules and sources behind it: --all.");
    return lines;
  }

  /** The cause once, what else it stops, and whose word did not end it. */
  private String stopped(List<Hold> same) {
    Stream<Phrase> others = same.stream().skip(1).map(h -> Phrase.of("hold.also." + h.kind().id()));
    Stream<Phrase> notes = same.stream().flatMap(h -> h.notes().stream()).map(Reason::phrase);
    return Stream.of(Stream.of(same.get(0).because().phrase()), others, notes)
        .flatMap(phrases -> phrases)
        .map(this::say)
        .distinct()
        .collect(Collectors.joining(" "));
  }

  /** The chain in lines of plain text. */
  List<String> text(
      String player, List<SkillDecision> decisions, List<Hold> holds, List<Ground> grounds) {
    List<String> lines = new ArrayList<>();
    lines.add(
        player
            + " "
            + record.player(player).firstName()
            + ", age "
            + record.player(player).ageOn(day)
            + ", as of "
            + day);
    lines.add("");
    lines.add("Tosses logged");
    logged(player)
        .forEach(
            l ->
                lines.add(
                    "  "
                        + l.what()
                        + ", in "
                        + l.file()
                        + " "
                        + l.shownLines()
                        + ": "
                        + l.tosses()));
    lines.addAll(markedTwice(player));
    for (SkillDecision decision : decisions) {
      lines.add("");
      lines.addAll(skill(player, decision));
    }
    for (Hold hold : holds) {
      lines.add("");
      lines.add("On hold: " + hold.kind().id() + " since " + hold.from());
      lines.add("  " + say(hold.because().phrase()));
      hold.notes().forEach(n -> lines.add("  " + say(n.phrase())));
      lines.add("  " + say(hold.whoEnds()));
      lines.add(
          "  rule "
              + hold.because().rule()
              + ", source "
              + catalogue.source(hold.source()).title());
    }
    lines.add("");
    lines.add("Rules, the facts that they matched, and what they looked for");
    lines.addAll(grounds(grounds));
    return lines;
  }

  /**
   * Which rule matched which facts, each conclusion once, with the words and source of the rule.
   */
  List<String> grounds(List<Ground> grounds) {
    List<String> lines = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (Ground ground : grounds) {
      lines.add("");
      tell(ground, "", lines, told);
    }
    return lines;
  }

  private void tell(Ground ground, String indent, List<String> lines, Set<String> told) {
    RuleText text = RuleText.of(catalogue.rule(ground.rule()));
    lines.add(indent + rule(ground.rule()));
    lines.add(indent + "  " + text.says());
    for (Ground.Fact fact : ground.facts()) {
      lines.add(indent + "  matched " + fact.text());
      if (fact.because().isPresent() && told.add(fact.text())) {
        tell(fact.because().get(), indent + "    ", lines, told);
      } else {
        fact.because().ifPresent(b -> lines.add(indent + "    by " + b.rule() + ", see above"));
      }
    }
    text.lookedFor().forEach(c -> lines.add(indent + "  looked for: " + c));
  }

  private List<String> markedTwice(String player) {
    Marks marks =
        Marks.of(record.tosses().stream().filter(t -> t.player().equals(player)).toList());
    MarkAgreement agreement = marks.agreement();
    if (agreement.tosses() == 0) {
      return List.of();
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "  %d of the tosses were marked by two people (%s), each counted half in a decision; "
                + "they agree on the spot of %d, on hard or not of %d of %d hits",
            agreement.tosses(),
            String.join(", ", marks.names()),
            agreement.zone().same().made(),
            agreement.hard().same().made(),
            agreement.hard().same().seen()));
  }

  /** Rows of one day and drill in one file, and how many tosses they count. */
  private record Logged(String what, String file, List<Integer> lines, int tosses) {
    Logged and(Logged other) {
      List<Integer> both = new ArrayList<>(lines);
      both.addAll(other.lines);
      return new Logged(what, file, both, tosses + other.tosses);
    }

    /** {@code lines 2 to 9, 12}. */
    String shownLines() {
      List<String> runs = new ArrayList<>();
      List<Integer> sorted = lines.stream().sorted().distinct().toList();
      for (int from = 0, to; from < sorted.size(); from = to + 1) {
        to = from;
        while (to + 1 < sorted.size() && sorted.get(to + 1) == sorted.get(to) + 1) {
          to++;
        }
        runs.add(sorted.get(from) + (to > from ? " to " + sorted.get(to) : ""));
      }
      return (sorted.size() == 1 ? "line " : "lines ") + String.join(", ", runs);
    }
  }

  /** Where each counted toss and tally stands, by day, drill and file. */
  private List<Logged> logged(String player) {
    Map<String, Logged> found = new TreeMap<>();
    record.tosses().stream()
        .filter(t -> t.player().equals(player))
        .forEach(t -> add(found, t.date() + " " + t.drill(), t.origin(), 1));
    record.tallies().stream()
        .filter(t -> t.player().equals(player))
        .forEach(t -> add(found, t.date() + " " + t.drill() + ", tally", t.origin(), t.of()));
    return List.copyOf(found.values());
  }

  private static void add(Map<String, Logged> found, String what, Origin origin, int tosses) {
    found.merge(
        what + " " + origin.file(),
        new Logged(what, origin.file(), List.of(origin.line()), tosses),
        Logged::and);
  }

  private List<String> skill(String player, SkillDecision decision) {
    List<String> lines = new ArrayList<>();
    lines.add(
        decision.skill().id()
            + ": "
            + decision.outcome().id()
            + ", step "
            + decision.step().id()
            + " \""
            + decision.step().name().in(ENGLISH)
            + "\"");
    lines.add("  " + say(decision.because()));
    decision
        .evidence()
        .passed()
        .forEach(p -> lines.add("  " + p.step() + " has been behind the player since " + p.on()));
    for (int i = 0; i < decision.evidence().bars().size(); i++) {
      lines.addAll(bar(player, bar(decision, i), decision.evidence().bars().get(i)));
    }
    decision.settles().ifPresent(p -> lines.add("  what would settle it: " + say(p)));
    decision.rules().forEach(id -> lines.add("  " + rule(id)));
    return lines;
  }

  /** The step's bar that the i-th reading is about; a switch hitter has a reading for each side. */
  private static Step.Bar bar(SkillDecision decision, int i) {
    int sides = decision.evidence().bars().size() / decision.step().bars().size();
    return decision.step().bars().get(i / sides);
  }

  private List<String> bar(
      String player, Step.Bar bar, org.belthigh.decide.Evidence.Reading reading) {
    List<String> lines = new ArrayList<>();
    String counted = reading.counted().id();
    lines.add(
        reading.share().isEmpty()
            ? "  " + counted + ": nothing counted at this step"
            : String.format(
                Locale.ROOT,
                "  %s: %d of %d = %.0f %% (95 %%: %.0f to %.0f %%)",
                counted,
                reading.share().made(),
                reading.share().seen(),
                100 * reading.share().value(),
                100 * reading.share().low(),
                100 * reading.share().high()));
    lines.add(
        "  mark " + threshold(bar.mark(), player) + ", floor " + threshold(bar.floor(), player));
    if (!reading.share().isEmpty()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  leaning on recent tosses: %.0f %% (95 %%: %.0f to %.0f %%), worth %.1f tosses",
              100 * reading.estimate().value(),
              100 * reading.estimate().low(),
              100 * reading.estimate().high(),
              reading.estimate().effective()));
    }
    comparable(reading).ifPresent(n -> lines.add("  " + n));
    beside(player, reading)
        .ifPresent(
            e ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  beside the club's age %s, all drills: %.0f %% when pulled towards their"
                            + " %.0f %% (%d players, worth %.1f tosses); no decision goes by it",
                        AgeBand.of(record.player(player).ageOn(record.club().seasonFirst())).id(),
                        100 * e.value(),
                        100 * e.groupMean(),
                        e.players(),
                        e.groupTosses())));
    lines.add(
        String.format(
            Locale.ROOT,
            "  proof for %.2f (%.2f at best; moves up at %.2f), against %.2f (firms up at %.2f)",
            reading.proof(),
            reading.best(),
            reading.markBar(),
            reading.against(),
            reading.floorBar()));
    lines.add("  " + scale(reading));
    return lines;
  }

  /** How many tosses were harder or easier than the step asks. */
  private static Optional<String> comparable(org.belthigh.decide.Evidence.Reading reading) {
    return reading.harder() + reading.easier() == 0
        ? Optional.empty()
        : Optional.of(
            reading.harder()
                + " of the tosses harder than the step asks, "
                + reading.easier()
                + " easier; mark and floor are shifted for them");
  }

  /** The share of that kind over all rows, beside those of the same age. */
  private Optional<GroupEstimate> beside(
      String player, org.belthigh.decide.Evidence.Reading reading) {
    MeasureKind kind =
        switch (reading.counted()) {
          case CALLS -> MeasureKind.ZONE_RECOGNITION;
          case TAKES -> MeasureKind.MIDDLE_TAKE;
          case CHASES -> MeasureKind.BALL_SWING;
          case HARD_HITS -> MeasureKind.COUNTDOWN;
          case SENT -> MeasureKind.FIELD_CALL;
        };
    return Optional.ofNullable(measures.get(player).inAgeBand().get(kind));
  }

  /** How close the test is to either boundary: {@code firm up |----o-----+----------| move up}. */
  private static String scale(org.belthigh.decide.Evidence.Reading reading) {
    StringBuilder line = new StringBuilder("-".repeat(2 * HALF_SCALE + 1));
    line.setCharAt(HALF_SCALE, '+');
    line.setCharAt(HALF_SCALE + (int) Math.round(reading.place() * HALF_SCALE), 'o');
    return "firm up |" + line + "| move up";
  }

  private String threshold(String id, String player) {
    Parameter.Dated value = catalogue.parameter(id).on(day);
    return String.format(
        Locale.ROOT,
        "%.0f %% (%s, %s)",
        100 * value.at(band(player)),
        id,
        value.evidence() == Evidence.JUDGEMENT
            ? "ours, common practice"
            : catalogue.source(value.source()).shortName());
  }

  private String rule(String id) {
    RuleEntry rule = catalogue.rule(id);
    return "rule "
        + id
        + ": "
        + rule.title()
        + " (source: "
        + catalogue.source(rule.source()).shortName()
        + ")";
  }

  /** The same as JSON. */
  ObjectNode json(
      String player, List<SkillDecision> decisions, List<Hold> holds, List<Ground> grounds) {
    ObjectNode root =
        NODES
            .objectNode()
            .put("player", player)
            .put("as_of", day.toString())
            .put("age", record.player(player).ageOn(day));
    ArrayNode logged = root.putArray("logged");
    for (Logged rows : logged(player)) {
      ObjectNode node =
          logged
              .addObject()
              .put("where", rows.what() + ", in " + rows.file())
              .put("tosses", rows.tosses())
              .put("file", rows.file());
      ArrayNode places = node.putArray("lines");
      rows.lines().stream().sorted().forEach(places::add);
    }
    ArrayNode skills = root.putArray("decisions");
    decisions.forEach(d -> skills.add(json(player, d)));
    ArrayNode stops = root.putArray("holds");
    holds.forEach(
        h ->
            stops
                .addObject()
                .put("kind", h.kind().id())
                .put("from", h.from().toString())
                .put("until", h.until().map(LocalDate::toString).orElse(null))
                .put("because", say(h.because().phrase()))
                .put("rule", h.because().rule())
                .put("source", h.source()));
    ArrayNode rules = root.putArray("grounds");
    grounds.forEach(ground -> rules.add(json(ground)));
    return root;
  }

  private ObjectNode json(Ground ground) {
    RuleEntry rule = catalogue.rule(ground.rule());
    ObjectNode node =
        NODES
            .objectNode()
            .put("rule", ground.rule())
            .put("source", rule.source())
            .put("concluded", ground.concluded());
    ArrayNode facts = node.putArray("matched");
    for (Ground.Fact fact : ground.facts()) {
      ObjectNode one = facts.addObject().put("fact", fact.text());
      fact.because().ifPresent(because -> one.set("by", json(because)));
    }
    ArrayNode sought = node.putArray("looked_for");
    RuleText.of(rule).lookedFor().forEach(sought::add);
    return node;
  }

  private ObjectNode json(String player, SkillDecision decision) {
    ObjectNode node =
        NODES
            .objectNode()
            .put("skill", decision.skill().id())
            .put("step", decision.step().id())
            .put("decision", decision.outcome().id())
            .put("next", decision.next().map(Step::id).orElse(null))
            .put("because", say(decision.because()))
            .put("settles", decision.settles().map(this::say).orElse(null));
    ArrayNode bars = node.putArray("measured");
    for (int i = 0; i < decision.evidence().bars().size(); i++) {
      bars.add(json(player, bar(decision, i), decision.evidence().bars().get(i)));
    }
    ArrayNode rules = node.putArray("rules");
    decision.rules().forEach(rules::add);
    return node;
  }

  private ObjectNode json(
      String player, Step.Bar bar, org.belthigh.decide.Evidence.Reading reading) {
    return NODES
        .objectNode()
        .put("counted", reading.counted().id())
        .put("made", reading.share().made())
        .put("seen", reading.share().seen())
        .put("harder", reading.harder())
        .put("easier", reading.easier())
        .put("mark", reading.mark())
        .put("mark_parameter", bar.mark())
        .put("floor", reading.floor())
        .put("floor_parameter", bar.floor())
        .put("source", catalogue.parameter(bar.mark()).on(day).source())
        .put("age_band", band(player).id())
        .put("proof", reading.proof())
        .put("best", reading.best())
        .put("against", reading.against())
        .put("estimate", reading.share().isEmpty() ? null : reading.estimate().value())
        .put("effective", reading.estimate().effective())
        .put("low", reading.share().isEmpty() ? null : reading.estimate().low())
        .put("high", reading.share().isEmpty() ? null : reading.estimate().high())
        .put("moves_up_at", reading.markBar())
        .put("firms_up_at", -reading.floorBar())
        .put("to_go", reading.toGo());
  }
}
