package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.decide.Arms;
import org.belthigh.decide.Comeback;
import org.belthigh.decide.Hold;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.LaterRow;
import org.belthigh.intake.Player;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Coded;
import org.belthigh.model.Phrase;

/** Puts what was decided and planned into the records that prints are drawn from. */
final class Sheets {
  private final Catalogue catalogue;
  private final ClubRecord record;
  private final PlanRequest request;
  private final Map<String, List<SkillDecision>> decisions;
  private final List<Hold> holds;
  private final Map<String, Comeback> comebacks;
  private final List<LaterRow> later;
  private final LabelNames names;
  private final ArmSheets arms;
  private final TossLists lists;
  private final Optional<SeasonReports> seasons;

  Sheets(
      Catalogue catalogue,
      ClubRecord record,
      ClubRecord foreseen,
      List<LaterRow> later,
      PlanRequest request,
      Map<String, List<SkillDecision>> decisions,
      List<Hold> holds,
      Map<String, Comeback> comebacks,
      Arms arms,
      TossLists lists) {
    this.catalogue = catalogue;
    this.record = record;
    this.request = request;
    this.decisions = decisions;
    this.holds = List.copyOf(holds);
    this.comebacks = Map.copyOf(comebacks);
    this.later = List.copyOf(later);
    this.names = new LabelNames(record.players());
    this.arms = new ArmSheets(catalogue, record, foreseen, request, comebacks, arms);
    this.lists = lists;
    this.seasons =
        request.seasonReports()
            ? Optional.of(new SeasonReports(catalogue, record, request.from()))
            : Optional.empty();
  }

  private Curriculum curriculum() {
    return catalogue.curricula().get(record.club().curriculum());
  }

  /** The whole plan of a club. */
  static Plan plan(
      Catalogue catalogue,
      ClubRecord record,
      PlanRequest request,
      List<PlayerPlan> players,
      List<GroupPlan> groups) {
    Club club = record.club();
    Curriculum curriculum = catalogue.curricula().get(club.curriculum());
    return new Plan(
        club.name(),
        request.paper().orElse(club.paper()),
        request.language().orElse(club.languages().get(0)),
        request.from(),
        request.weeks(),
        curriculum.id() + " " + curriculum.version(),
        club.ruleBooks(),
        players,
        groups,
        LaterRow.after(record, request.from()),
        record.problems());
  }

  /** One player's part of the plan. */
  PlayerPlan player(
      Player player,
      List<Day> days,
      List<PlannedWeek> weeks,
      Map<LocalDate, HomeWork.Session> sessions,
      HomeWork home,
      List<SkillDecision> focus,
      List<SkillDecision> working,
      boolean assumed,
      SportYear year,
      Optional<LookBack> back) {
    List<SkillDecision> own = decisions.get(player.id());
    List<Hold> held = holds.stream().filter(h -> h.player().equals(player.id())).toList();
    LocalDate weekEnd = request.from().plusDays(6);
    Optional<Comeback> comeback = Optional.ofNullable(comebacks.get(player.id()));
    List<HomeSheet> homeSheets =
        sessions.entrySet().stream()
            .filter(s -> !s.getKey().isAfter(weekEnd))
            .map(
                s ->
                    home.sheet(
                        player, s.getKey(), s.getValue(), comeback.filter(b -> b.on(s.getKey()))))
            .toList();
    Cards cards = new Cards(catalogue, curriculum(), request.from());
    return new PlayerPlan(
        label(player),
        own.stream().map(Sheets::line).toList(),
        held.stream().map(this::line).toList(),
        days,
        weeks,
        new Provisional(request.from(), curriculum()).of(days, focus, held),
        cards.card(
            player,
            days,
            focus,
            working,
            held,
            comeback,
            arms.box(player, held),
            weeks.get(0),
            assumed),
        homeSheets,
        arms.lines(player, held),
        new Logs(curriculum()).own(days, request.from()),
        year,
        back,
        seasons.map(s -> s.of(player, own)));
  }

  /** Whether the club has a screen; one that counts nothing is taken to have enough. */
  private boolean screen() {
    Map<String, Integer> own = record.club().equipment();
    return own.isEmpty() || own.getOrDefault("screens", 0) > 0;
  }

  /** An age group's sheets. */
  GroupPlan group(
      Club.Group group,
      Season season,
      Rhythm rhythm,
      Circuit circuit,
      Told told,
      Map<LocalDate, Planner.Practice> practices,
      List<PlayerPlan> players) {
    List<Label> labels = players.stream().map(PlayerPlan::who).toList();
    Doses doses = new Doses(catalogue, request.from());
    PracticeSheets sheets =
        new PracticeSheets(
            record,
            told,
            holds,
            labels,
            doses,
            new HeatBoxes(catalogue, request.from()),
            new OtherWays(circuit, record.club()),
            lists,
            day -> notes(season, rhythm, labels, day),
            day -> arms.askFirst(labels, day));
    List<Player> own = players.stream().map(p -> record.player(p.who().id())).toList();
    List<PracticeSheet> printed = firstWeek(practices).parallelStream().map(sheets::sheet).toList();
    return new GroupPlan(
        group.id(),
        group.name(),
        printed,
        arms.sheet(group, season, labels),
        Overviews.of(players, record, doses, request.from(), later),
        new Logs(curriculum()).sheets(printed, labels),
        new EvaluationSheets(season, new Stops(holds), request.from(), screen())
            .of(group, own, labels),
        new EmergencySheets(catalogue, record.club()).all(),
        Guides.of(group, catalogue.growth(), languages(labels)));
  }

  /** The families' languages; the club's own where there is no family yet. */
  private List<String> languages(List<Label> labels) {
    return labels.isEmpty()
        ? List.of(request.language().orElse(record.club().languages().get(0)))
        : labels.stream().map(Label::language).distinct().toList();
  }

  /** What a coach must know about the day itself. */
  private List<Phrase> notes(Season season, Rhythm rhythm, List<Label> labels, LocalDate day) {
    List<Phrase> notes = new ArrayList<>();
    if (season.assumed()) {
      notes.add(Phrase.of("practice.assumed"));
    }
    if (new FirstLook(record.club().seasonFirst(), season).on(day)) {
      notes.add(Phrase.of("practice.first-look"));
    }
    if (rhythm.beforeTournament(day)) {
      notes.add(Phrase.of("practice.before-tournament"));
    } else if (rhythm.lighterWeek(day)) {
      notes.add(Phrase.of("practice.lighter"));
    }
    List<String> back =
        labels.stream()
            .filter(l -> comebacks.containsKey(l.id()) && comebacks.get(l.id()).on(day))
            .map(l -> l.number().isPresent() ? l.name() + " " + l.number().getAsInt() : l.name())
            .toList();
    if (!back.isEmpty()) {
      notes.add(Phrase.of("practice.back", "players", back));
    }
    return List.copyOf(notes);
  }

  /** Practices of the first week; the next one where it has none. */
  private List<Planner.Practice> firstWeek(Map<LocalDate, Planner.Practice> practices) {
    LocalDate end = request.from().plusDays(7);
    List<Planner.Practice> first =
        practices.entrySet().stream()
            .filter(p -> p.getKey().isBefore(end))
            .map(Map.Entry::getValue)
            .toList();
    return first.isEmpty() ? practices.values().stream().limit(1).toList() : first;
  }

  /** How sheets name a player. */
  Label label(Player player) {
    return new Label(
        player.id(),
        names.of(player),
        player.number(),
        player.group(),
        player.ageOn(request.from()),
        player.bats(),
        player.throwsWith(),
        request.language().orElse(player.language()));
  }

  static DecisionLine line(SkillDecision decision) {
    return new DecisionLine(
        decision.skill(),
        decision.step().id(),
        decision.step().name(),
        decision.outcome(),
        decision.next().map(org.belthigh.catalogue.Step::id),
        decision.next().map(org.belthigh.catalogue.Step::name),
        decision.because(),
        decision.settles(),
        decision.rules(),
        decision.evidence().seen(),
        decision.evidence().last(),
        decision.evidence().bars());
  }

  private HoldLine line(Hold hold) {
    return new HoldLine(
        hold.kind().id(),
        hold.from(),
        hold.until(),
        hold.because().phrase(),
        begun(hold, open(hold)),
        hold.whoEnds(),
        endedBy(hold),
        hold.because().rule(),
        sourceName(hold.source()));
  }

  /** Whose word ends it; nobody's where it ends by a date, or when a row is put right. */
  private List<String> endedBy(Hold hold) {
    Optional<String> cause = hold.cause().filter(c -> hold.until().isEmpty()).map(Coded::id);
    return Stream.of(Wellness.Role.values())
        .map(Wellness.Role::id)
        .filter(role -> cause.filter(c -> catalogue.whoEnds().ends(c, role)).isPresent())
        .toList();
  }

  /** Says from when on, where a stop that a person must end has not begun on the plan's day. */
  private Phrase begun(Hold hold, Phrase what) {
    return hold.until().isEmpty() && hold.from().isAfter(request.from())
        ? Phrase.of("held.from", "what", what, "date", hold.from())
        : what;
  }

  private String sourceName(String id) {
    return catalogue.source(id).shortName();
  }

  /** What a hold says where others see it: no cause. */
  static Phrase open(Hold hold) {
    return hold.until()
        .map(until -> Phrase.of("held." + hold.kind().id() + ".until", "until", until))
        .orElse(Phrase.of("held." + hold.kind().id()));
  }
}
