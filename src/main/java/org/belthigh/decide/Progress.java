package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
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
    ClubRecord known = record.upTo(asOf);
    Journal journal = new Journal(known);
    Map<String, Map<Skill, Walk>> walks = new LinkedHashMap<>();
    List<Standing> standings = new ArrayList<>();
    for (Player player : known.players()) {
      Map<Skill, Walk> own = walk(known, journal, player, asOf);
      own.values().forEach(w -> standings.add(w.standing()));
      walks.put(player.id(), own);
    }
    Map<String, List<ProgressVerdict>> verdicts = new LinkedHashMap<>();
    rules.fire(standings).stream()
        .filter(ProgressVerdict.class::isInstance)
        .map(ProgressVerdict.class::cast)
        .forEach(v -> verdicts.computeIfAbsent(key(v), k -> new ArrayList<>()).add(v));
    Map<String, List<SkillDecision>> decisions = new LinkedHashMap<>();
    for (Player player : known.players()) {
      List<SkillDecision> own = new ArrayList<>();
      for (Map.Entry<Skill, Walk> walk : walks.get(player.id()).entrySet()) {
        List<ProgressVerdict> spoken =
            verdicts.getOrDefault(player.id() + '|' + walk.getKey(), List.of());
        own.add(decision(player, walk.getKey(), walk.getValue(), spoken));
      }
      decisions.put(player.id(), List.copyOf(own));
    }
    return decisions;
  }

  private static String key(ProgressVerdict verdict) {
    return verdict.player() + '|' + verdict.skill();
  }

  private Map<Skill, Walk> walk(ClubRecord record, Journal journal, Player player, LocalDate asOf) {
    Curriculum curriculum = catalogue.curricula().get(record.club().curriculum());
    Map<Skill, Step> behind = new EnumMap<>(Skill.class);
    Map<Skill, Walk> walks = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      Walk walk =
          new Walk(catalogue, curriculum, player, skill, record.club().seasonFirst(), asOf, behind)
              .along(journal.of(player.id()));
      walks.put(skill, walk);
      behind.put(skill, walk.step());
    }
    return walks;
  }

  private SkillDecision decision(
      Player player, Skill skill, Walk walk, List<ProgressVerdict> verdicts) {
    List<ProgressVerdict> ranked =
        verdicts.stream().sorted(java.util.Comparator.comparingInt(v -> rank(v.rule()))).toList();
    if (ranked.isEmpty()) {
      throw new IllegalStateException(
          "No rule decided for player " + player.id() + " and skill " + skill.id());
    }
    ProgressVerdict chosen = ranked.get(0);
    Evidence evidence = walk.evidence();
    Optional<Step> next = chosen.outcome() == Outcome.MOVE_UP ? walk.next() : Optional.empty();
    return new SkillDecision(
        player.id(),
        skill,
        walk.step(),
        chosen.outcome(),
        next,
        because(chosen.rule(), player, walk, evidence),
        settles(chosen.outcome(), walk, evidence),
        ranked.stream().map(ProgressVerdict::rule).toList(),
        ranked.stream().map(ProgressVerdict::because).collect(Collectors.toSet()),
        evidence,
        walk.placement());
  }

  private int rank(String rule) {
    int rank = catalogue.precedence().indexOf(rule);
    return rank < 0 ? Integer.MAX_VALUE : rank;
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
            walk.missing().stream().map(Step::name).toList(),
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

  private static Optional<Phrase> settles(Outcome outcome, Walk walk, Evidence evidence) {
    if (outcome == Outcome.MOVE_UP || !walk.standing().judged()) {
      return Optional.empty();
    }
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
