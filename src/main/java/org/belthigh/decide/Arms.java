package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Phrase;

/**
 * Who may pitch and catch on a day, under the club's rule books; where several apply, the strictest
 * wins. Bullpens start no rest. What was not reported is never taken for zero: who was not heard of
 * for too long is asked first.
 */
public final class Arms {
  /** Which of several books that conclude the same is told: the longest rest, the least number. */
  private static final Comparator<ArmVerdict> STRICTEST =
      Comparator.comparing(ArmVerdict::over)
          .reversed()
          .thenComparing(ArmVerdict::number)
          .thenComparing(v -> v.about().by().order());

  private static final Comparator<ArmVerdict> LONGEST =
      Comparator.comparing(ArmVerdict::over)
          .reversed()
          .thenComparing(v -> v.about().day())
          .thenComparing(ArmVerdict::rule)
          .thenComparing(v -> v.about().by().order());

  private final Catalogue catalogue;
  private final RuleBase rules;
  private final Holds holds;

  /** Rule books, our own numbers and sources come from {@code catalogue}. */
  public Arms(Catalogue catalogue) {
    this(catalogue, RuleBase.shared());
  }

  /** The answers that other rules would lead to. */
  Arms(Catalogue catalogue, RuleBase rules) {
    this.catalogue = catalogue;
    this.rules = rules;
    this.holds = new Holds(catalogue, rules);
  }

  /**
   * The status of every player of the roster on {@code on}, in roster order. Outings after that day
   * are not counted; an outing on the day itself uses up some of its pitches.
   */
  public List<ArmStatus> on(ClubRecord record, LocalDate on) {
    return statuses(run(record, on));
  }

  /** What a run says of its players, in their order. */
  static List<ArmStatus> statuses(ArmRun run) {
    return run.logs().stream().map(log -> status(run, log)).toList();
  }

  /**
   * The status on {@code on} by what was known on {@code known}, made stricter by what is dated
   * between the two: an outing or a complaint that is dated later never makes an answer a yes.
   */
  public List<ArmStatus> on(ClubRecord record, LocalDate known, LocalDate on) {
    List<ArmStatus> then = on(record.upTo(known), on);
    ClubRecord foreseen = record.foreseen(known, on);
    if (foreseen.equals(record.upTo(known))) {
      return then;
    }
    List<ArmStatus> later = on(foreseen, on);
    return IntStream.range(0, then.size())
        .mapToObj(i -> then.get(i).stricter(later.get(i)))
        .toList();
  }

  /**
   * The rest days that {@link #restHolds} finds on {@code from}, and those after outings that are
   * dated later, up to {@code last}.
   */
  public List<Hold> restHolds(ClubRecord record, LocalDate from, LocalDate last) {
    List<Hold> holds = new ArrayList<>(restHolds(record.upTo(from), from));
    ClubRecord foreseen = record.foreseen(from, last);
    Map<LocalDate, Set<String>> pitched =
        foreseen.outings().stream()
            .filter(o -> o.date().isAfter(from))
            .collect(
                Collectors.groupingBy(
                    Outing::date,
                    TreeMap::new,
                    Collectors.mapping(Outing::player, Collectors.toSet())));
    pitched.forEach((day, players) -> holds.addAll(restHolds(foreseen, players, day)));
    return eachOnce(holds);
  }

  /** The same days of rest, found again from a later day, are one stop: the first is kept. */
  private static List<Hold> eachOnce(List<Hold> holds) {
    Map<List<Object>, Hold> once = new LinkedHashMap<>();
    holds.forEach(h -> once.putIfAbsent(List.of(h.player(), h.from(), h.until()), h));
    return List.copyOf(once.values());
  }

  /** One run of the rules for that day. */
  ArmRun run(ClubRecord record, LocalDate on) {
    return run(record, record.players(), on);
  }

  /** What the rules are given about one player. */
  List<Object> facts(ClubRecord record, String player, LocalDate on) {
    return run(record, record.players().stream().filter(p -> p.id().equals(player)).toList(), on)
        .facts();
  }

  private ArmRun run(ClubRecord record, List<Player> players, LocalDate on) {
    List<Editions> books = Editions.of(record.club(), catalogue, on);
    int askAfter = (int) catalogue.parameter("ask-after-days").on(on).at(AgeBand.AGE_7_8);
    return ArmRun.of(rules, record, players, on, books, askAfter, holds.of(record, on));
  }

  private static ArmStatus status(ArmRun run, ArmLog log) {
    String player = log.player().id();
    boolean ask = (log.player().pitches() && log.softball()) || !run.reports(player).isEmpty();
    UnaryOperator<ArmStatus.Answer> said = ask ? ArmStatus.Answer::untilAsked : a -> a;
    return new ArmStatus(
        player,
        said.apply(answer(run, player, List.of(Reckoning.BOOK))),
        said.apply(answer(run, player, List.of(Reckoning.BOOK, Reckoning.OTHER_AGE))),
        run.lastBatterAsked()
            ? Optional.of(said.apply(answer(run, player, List.of(Reckoning.LAST_BATTER))))
            : Optional.empty(),
        run.verdicts(player, Reckoning.BOOK, run.on()).stream()
            .noneMatch(v -> v.effect() == ArmVerdict.Effect.NO_CATCHING),
        log.knownTo(),
        ask,
        because(run, player, ask));
  }

  private static ArmStatus.Answer answer(ArmRun run, String player, List<Reckoning> reckonings) {
    boolean now = mayPitch(run, player, reckonings, run.on());
    int left =
        reckonings.stream()
            .flatMap(r -> run.verdicts(player, r, run.on()).stream())
            .filter(ArmVerdict::saysYes)
            .mapToInt(ArmVerdict::number)
            .min()
            .orElse(0);
    Optional<LocalDate> from =
        run.days(player).stream().filter(d -> mayPitch(run, player, reckonings, d)).findFirst();
    return new ArmStatus.Answer(now, now ? left : 0, from);
  }

  private static boolean mayPitch(
      ArmRun run, String player, List<Reckoning> reckonings, LocalDate day) {
    return reckonings.stream()
        .flatMap(r -> run.verdicts(player, r, day).stream())
        .noneMatch(v -> v.effect() == ArmVerdict.Effect.NO_PITCHING);
  }

  private static List<Reason> because(ArmRun run, String player, boolean ask) {
    List<ArmVerdict> today = run.verdicts(player, Reckoning.BOOK, run.on());
    boolean mayPitch = !ask && mayPitch(run, player, List.of(Reckoning.BOOK), run.on());
    List<Reason> reasons = new ArrayList<>();
    today.stream()
        .filter(v -> mayPitch || v.effect() != ArmVerdict.Effect.MAY_PITCH)
        .filter(v -> speaks(v, today))
        .sorted(
            Comparator.comparing(ArmVerdict::effect)
                .thenComparing(ArmVerdict::rule)
                .thenComparing(v -> v.about().by().order()))
        .forEach(v -> reasons.add(ArmReasons.of(v)));
    run.reports(player).forEach(v -> reasons.add(ArmReasons.of(v)));
    run.overLimit(player).forEach(v -> reasons.add(ArmReasons.of(v)));
    run.years(player).forEach(v -> reasons.add(ArmReasons.of(v)));
    return reasons.stream().distinct().toList();
  }

  /**
   * Where several books say the same, the strictest speaks; else each, and the club where no book
   * says it.
   */
  private static boolean speaks(ArmVerdict verdict, List<ArmVerdict> today) {
    return verdict.speaks() == ArmVerdict.Speaks.STRICTEST
        ? today.stream()
            .filter(v -> v.rule().equals(verdict.rule()))
            .min(STRICTEST)
            .filter(verdict::equals)
            .isPresent()
        : !verdict.about().ofTheClub()
            || today.stream()
                .noneMatch(v -> v.rule().equals(verdict.rule()) && !v.about().ofTheClub());
  }

  /**
   * The rest days of whoever pitched as stops on throwing, in roster order: from the day after the
   * last outing, or from {@code on} itself where a child pitched on a day of rest. No stop where no
   * rest is owed on {@code on} or after it.
   */
  public List<Hold> restHolds(ClubRecord record, LocalDate on) {
    return restHolds(run(record, on));
  }

  private List<Hold> restHolds(ClubRecord record, Set<String> who, LocalDate on) {
    List<Player> players = record.players().stream().filter(p -> who.contains(p.id())).toList();
    return restHolds(run(record, players, on));
  }

  /** The rest days that a run finds. */
  static List<Hold> restHolds(ArmRun run) {
    return run.logs().stream().flatMap(log -> restHold(run, log).stream()).toList();
  }

  private static Optional<Hold> restHold(ArmRun run, ArmLog log) {
    Optional<LocalDate> last = log.lastPitched();
    if (last.isEmpty()) {
      return Optional.empty();
    }
    LocalDate after = last.get().plusDays(1);
    List<ArmVerdict> resting =
        run.days(log.player().id()).stream()
            .flatMap(d -> run.verdicts(log.player().id(), Reckoning.BOOK, d).stream())
            .filter(
                v ->
                    v.waits() == ArmVerdict.Waits.REST
                        || (v.waits() == ArmVerdict.Waits.ROOM && !v.about().day().isBefore(after)))
            .toList();
    List<LocalDate> days = resting.stream().map(v -> v.about().day()).sorted().toList();
    return days.stream()
        .findFirst()
        .map(first -> first.isBefore(after) ? first : after)
        .map(from -> restHold(from, days.get(days.size() - 1), strictest(resting)));
  }

  private static ArmVerdict strictest(List<ArmVerdict> resting) {
    return resting.stream().min(LONGEST).orElseThrow();
  }

  private static Hold restHold(LocalDate from, LocalDate until, ArmVerdict verdict) {
    return new Hold(
        verdict.about().player(),
        Hold.Kind.THROWING,
        from,
        Optional.of(until),
        ArmReasons.of(verdict),
        verdict.about().edition().source(),
        Phrase.of("hold.ends.rest"),
        Optional.empty(),
        List.of());
  }
}
