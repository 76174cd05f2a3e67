package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.model.AgeBand;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;

/**
 * The decisions of a whole club: every player and skill ends with exactly one.
 *
 * <p>Tosses become proof in Java, proof becomes a decision in the rules, and where several rules
 * speak, the order in {@code rules/precedence.yaml} chooses.
 */
public final class Progress {
  private static final double HALF = 0.5;

  /** Two kinds of tosses, each on two sides. */
  private static final int MOST_KINDS = 4;

  private final Catalogue catalogue;
  private final RuleBase rules;

  /** Loads the rules ahead of time; without it they are loaded when they are needed. */
  public static void warm() {
    RuleBase.warm();
  }

  /** The decisions that {@code catalogue} leads to. */
  public Progress(Catalogue catalogue) {
    this(catalogue, RuleBase.shared());
  }

  /** The decisions that other rules would lead to. */
  Progress(Catalogue catalogue, RuleBase rules) {
    this.catalogue = catalogue;
    this.rules = rules;
  }

  /**
   * Decides for every player of the record.
   *
   * @param record the club's files; rows after {@code asOf} are not counted
   * @return by player id in roster order; four decisions each, in the order of the skills
   * @throws IllegalStateException if a player and skill ended without a decision
   */
  public Map<String, List<SkillDecision>> decide(ClubRecord record, LocalDate asOf) {
    Map<Player, Map<Skill, Walk>> walks = walked(record.upTo(asOf), asOf);
    Map<String, List<SkillDecision>> decisions = new LinkedHashMap<>();
    walks.forEach(
        (player, own) ->
            decisions.put(
                player.id(),
                own.entrySet().stream()
                    .map(walk -> decision(player, walk.getKey(), walk.getValue()))
                    .toList()));
    return decisions;
  }

  /** Every walk to its end. */
  private Map<Player, Map<Skill, Walk>> walked(ClubRecord known, LocalDate asOf) {
    Map<Player, Map<Skill, Walk>> walks = walks(known, asOf);
    List<Object> thresholds = thresholds(known, asOf);
    for (List<Asked> asked = asked(walks); !asked.isEmpty(); asked = asked(walks)) {
      answer(asked, rules.fire(facts(thresholds, asked)));
    }
    return walks;
  }

  /** What the rules are given about the day itself. */
  List<Object> facts(ClubRecord record, LocalDate asOf) {
    ClubRecord known = record.upTo(asOf);
    Set<Object> facts = new LinkedHashSet<>(thresholds(known, asOf));
    walked(known, asOf)
        .values()
        .forEach(own -> own.values().forEach(walk -> facts.addAll(walk.question())));
    return List.copyOf(facts);
  }

  /** A walk that waits for the rules, and those of the same player that came before it. */
  private record Asked(String player, Skill skill, Walk walk, Map<Skill, Walk> before) {
    String key() {
      return Progress.key(player, skill);
    }
  }

  private static String key(String player, Skill skill) {
    return player + '|' + skill;
  }

  private Map<Player, Map<Skill, Walk>> walks(ClubRecord record, LocalDate asOf) {
    Curriculum curriculum = catalogue.curricula().get(record.club().curriculum());
    Journal journal = new Journal(record);
    LocalDate first = record.club().seasonFirst();
    Map<Player, Map<Skill, Walk>> walks = new LinkedHashMap<>();
    for (Player player : record.players()) {
      Map<Skill, Walk> own = new EnumMap<>(Skill.class);
      for (Skill skill : Skill.values()) {
        own.put(
            skill,
            new Walk(catalogue, curriculum, player, skill, first, asOf, journal.of(player.id())));
      }
      walks.put(player, own);
    }
    return walks;
  }

  /** Every walk that asks something, unless what it needs to know is still being asked. */
  private static List<Asked> asked(Map<Player, Map<Skill, Walk>> walks) {
    List<Asked> asked = new ArrayList<>();
    walks.forEach(
        (player, own) -> {
          Map<Skill, Walk> before = new EnumMap<>(Skill.class);
          own.forEach(
              (skill, walk) -> {
                boolean waits =
                    before.entrySet().stream()
                        .anyMatch(b -> b.getValue().asks() && walk.needs(b.getKey()));
                if (walk.asks() && !waits) {
                  asked.add(new Asked(player.id(), skill, walk, new EnumMap<>(before)));
                }
                before.put(skill, walk);
              });
        });
    return asked;
  }

  private static List<Object> facts(List<Object> thresholds, List<Asked> asked) {
    Set<Object> facts = new LinkedHashSet<>(thresholds);
    asked.forEach(one -> facts.addAll(one.walk().facts(one.before())));
    return List.copyOf(facts);
  }

  private List<Object> thresholds(ClubRecord record, LocalDate asOf) {
    List<Object> thresholds = new ArrayList<>();
    record.players().stream()
        .map(player -> AgeBand.of(player.ageOn(asOf)))
        .distinct()
        .forEach(band -> thresholds(thresholds, band, asOf));
    return thresholds;
  }

  private void thresholds(List<Object> thresholds, AgeBand band, LocalDate asOf) {
    double error = number("decision-error", band, asOf);
    thresholds.add(new Threshold(Threshold.DAYS, band, 1, number("decision-days", band, asOf)));
    thresholds.add(new Threshold(Threshold.MARK, band, 1, -Math.log(error)));
    thresholds.add(new Threshold(Threshold.DIP, band, 1, number("dip-proof", band, asOf)));
    for (int kinds = 1; kinds <= MOST_KINDS; kinds++) {
      thresholds.add(new Threshold(Threshold.FLOOR, band, kinds, -Math.log(error / kinds)));
    }
  }

  private double number(String parameter, AgeBand band, LocalDate asOf) {
    return catalogue.parameter(parameter).on(asOf).at(band);
  }

  private static void answer(List<Asked> asked, List<Verdict> verdicts) {
    Map<String, List<Verdict>> spoken = new HashMap<>();
    for (Verdict verdict : verdicts) {
      Standing about =
          verdict instanceof ProgressVerdict progress
              ? progress.about()
              : ((NotJudged) verdict).standing();
      spoken
          .computeIfAbsent(key(about.player(), about.skill()), k -> new ArrayList<>())
          .add(verdict);
    }
    asked.forEach(one -> one.walk().answer(spoken.getOrDefault(one.key(), List.of())));
  }

  private SkillDecision decision(Player player, Skill skill, Walk walk) {
    List<ProgressVerdict> ranked =
        walk.spoken().stream()
            .filter(ProgressVerdict.class::isInstance)
            .map(ProgressVerdict.class::cast)
            .sorted(Comparator.comparingInt(v -> rank(v.rule())))
            .toList();
    if (ranked.isEmpty()) {
      throw new IllegalStateException(
          "No rule decided for player " + player.id() + " and skill " + skill.id());
    }
    ProgressVerdict chosen = ranked.get(0);
    boolean open =
        chosen.outcome() != Outcome.MOVE_UP
            && walk.spoken().stream().noneMatch(NotJudged.class::isInstance);
    Evidence evidence = walk.evidence();
    return new SkillDecision(
        player.id(),
        skill,
        walk.step(),
        chosen.outcome(),
        walk.next().filter(next -> chosen.outcome() == Outcome.MOVE_UP),
        because(chosen.rule(), player, walk, evidence),
        open ? settles(evidence) : Optional.empty(),
        ranked.stream().map(ProgressVerdict::rule).distinct().toList(),
        ranked.stream().map(ProgressVerdict::because).collect(Collectors.toSet()),
        evidence,
        walk.placement());
  }

  private int rank(String rule) {
    int rank = catalogue.precedence().indexOf(rule);
    return rank < 0 ? Integer.MAX_VALUE : rank;
  }

  /** The steps that the next one waits for, in its order. */
  private static List<LocalText> missing(Walk walk) {
    Set<String> missing =
        walk.spoken().stream()
            .filter(ProgressVerdict.class::isInstance)
            .flatMap(v -> ((ProgressVerdict) v).missing().stream())
            .collect(Collectors.toSet());
    return walk.needed().stream().filter(n -> missing.contains(n.id())).map(Step::name).toList();
  }

  private Phrase because(String rule, Player player, Walk walk, Evidence evidence) {
    LocalText nextName = walk.next().map(Step::name).orElse(walk.step().name());
    Phrase phrase =
        Phrase.of(
            rule,
            "player",
            player.firstName(),
            "step",
            walk.step().name(),
            "next",
            nextName,
            "seen",
            seen(evidence),
            "days",
            evidence.days(),
            "sofar",
            soFar(evidence),
            "missing",
            missing(walk),
            "age",
            walk.next().map(Step::fromAge).orElse(0));
    return walk.placement()
        .map(
            word ->
                Phrase.of(
                    "because.placed",
                    "sentence",
                    phrase,
                    "by",
                    word.by(),
                    "date",
                    word.date(),
                    "reason",
                    word.reason()))
        .orElse(phrase);
  }

  /** The counts in words, one clause for each share. */
  static Phrase seen(Evidence evidence) {
    if (evidence.bars().size() == 1) {
      return clause(evidence.bars().get(0));
    }
    return Phrase.of(
        "seen.both",
        "one",
        clause(evidence.bars().get(0)),
        "other",
        clause(evidence.bars().get(1)));
  }

  private static Phrase clause(Evidence.Reading reading) {
    Phrase counts = compared(reading);
    return reading
        .side()
        .map(side -> Phrase.of("seen.side." + side.id(), "clause", counts))
        .orElse(counts);
  }

  /** The counts, and how many of the tosses were harder than the step asks. */
  private static Phrase compared(Evidence.Reading reading) {
    Phrase counts = counts(reading);
    if (reading.harder() == 0) {
      return counts;
    }
    return reading.harder() >= reading.share().seen()
        ? Phrase.of("seen.harder.all", "clause", counts)
        : Phrase.of("seen.harder", "clause", counts, "harder", reading.harder());
  }

  /** Which way it leans while nothing is proved: past half of what proof asks for, or neither. */
  private static Phrase soFar(Evidence evidence) {
    boolean below = evidence.bars().stream().anyMatch(r -> r.against() > HALF * r.floorBar());
    boolean good = evidence.bars().stream().allMatch(r -> r.proof() > HALF * r.markBar());
    return Phrase.of(below ? "sofar.below" : good ? "sofar.good" : "sofar.open");
  }

  private static Phrase counts(Evidence.Reading reading) {
    return Phrase.of(
        "seen." + reading.counted().id(),
        "made",
        reading.share().made(),
        "of",
        reading.share().seen(),
        "mark",
        reading.mark());
  }

  private static Phrase more(Evidence.Reading reading) {
    Phrase more = Phrase.of("settles." + reading.counted().id(), "more", reading.toGo());
    return reading
        .side()
        .map(side -> Phrase.of("settles.side." + side.id(), "more", more))
        .orElse(more);
  }

  private static Optional<Phrase> settles(Evidence evidence) {
    List<Phrase> open =
        evidence.bars().stream().filter(r -> r.toGo() > 0).map(Progress::more).toList();
    if (open.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        open.size() == 1
            ? open.get(0)
            : Phrase.of("settles.both", "one", open.get(0), "other", open.get(1)));
  }
}
