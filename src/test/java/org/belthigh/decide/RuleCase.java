package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Stricter;
import org.belthigh.files.Fields;
import org.belthigh.files.Yaml;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Bats;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.belthigh.words.Words;

/**
 * One case of a file {@code rules/PACK/tests/*.yaml}: what is known of one player, and what must
 * follow for them. A health row with {@code player: p02} is another child's. Coaches read these
 * files, so an unknown key is a fault.
 */
record RuleCase(String file, String name, LocalDate on, ClubRecord record, Expected expected) {
  static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  static final Words WORDS = words(CATALOGUE);

  /** The words, those of the rules of {@code catalogue} among them. */
  static Words words(Catalogue catalogue) {
    return Words.load(
        catalogue.rules().values().stream()
            .collect(Collectors.toMap(r -> r.id(), r -> r.reason())));
  }

  private static final String PLAYER = "p01";

  /**
   * What must follow; only what the case names is checked. Those of {@code rules} are given as a
   * reason; those of {@code notRules} are not, and as holds conclude nothing, of nobody.
   */
  record Expected(
      Optional<Boolean> mayPitch,
      OptionalInt left,
      Optional<String> from,
      Optional<Boolean> askedMayPitch,
      Optional<String> askedFrom,
      Optional<Boolean> mayCatch,
      Optional<Boolean> askFirst,
      Optional<String> knownTo,
      Optional<Boolean> strictMayPitch,
      OptionalInt strictLeft,
      Optional<String> strictFrom,
      Optional<String> leagueFrom,
      OptionalInt leagueLeft,
      List<String> rules,
      List<String> notRules,
      Optional<List<String>> concludes,
      List<String> fired,
      List<String> notFired,
      Optional<List<String>> holds,
      Optional<String> reason,
      Optional<String> reasonEs,
      Optional<String> restHold,
      Optional<String> comeback) {}

  /** The files of a pack, in alphabetical order. */
  static List<Path> files(String pack) {
    try (Stream<Path> files = Files.list(Path.of("rules", pack, "tests"))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The cases of a file. */
  static List<RuleCase> read(Path file) {
    List<Problem> problems = new ArrayList<>();
    List<RuleCase> cases = new ArrayList<>();
    try {
      Yaml.read(file.toString(), Files.readString(file), problems)
          .flatMap(n -> Fields.read(n, problems, f -> f.each("cases", c -> of(file, c))))
          .ifPresent(cases::addAll);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(problems).extracting(Problem::text).isEmpty();
    assertThat(cases).as("cases of %s", file).isNotEmpty();
    return cases;
  }

  private static RuleCase of(Path file, Fields f) {
    f.optionalText("source");
    f.optionalText("origin");
    return new RuleCase(
        file.getFileName().toString(),
        f.text("name"),
        f.date("on"),
        f.inside("given", RuleCase::given).orElseThrow(),
        f.inside("expect", RuleCase::expect).orElseThrow());
  }

  private static ClubRecord given(Fields f) {
    List<String> books = f.has("books") ? f.texts("books") : List.of("pitch-smart-2018");
    boolean softball = f.flag("softball", false);
    Club club =
        new Club(
            "Test Club",
            "letter",
            List.of("en"),
            books,
            LocalDate.of(2026, 3, 1),
            LocalDate.of(2026, 6, 30),
            List.of(new Club.Group("g", "Group", 7, 18, softball, 2)),
            "belthigh-2027",
            Map.of(),
            List.of(),
            Optional.empty(),
            f.inside("stricter", RuleCase::stricter).orElse(Stricter.NONE));
    List<Wellness> wellness = f.each("wellness", RuleCase::wellness);
    return new ClubRecord(
        club,
        roster(f, wellness),
        List.of(),
        List.of(),
        List.of(),
        f.each("outings", RuleCase::outing),
        wellness,
        List.of(),
        List.of(),
        f.each("unread", RuleCase::unread),
        List.of());
  }

  private static Stricter stricter(Fields f) {
    return new Stricter(
        f.each("daily_max", RuleCase::limit),
        f.each("weekly_max", RuleCase::limit),
        f.optionalWhole("rest_days_add", 0, 9).orElse(0),
        f.optionalWhole("days_in_a_row", 1, 9));
  }

  private static Stricter.Limit limit(Fields f) {
    int[] ages = f.pair("ages", 4, 22).orElseThrow();
    return new Stricter.Limit(ages[0], ages[1], f.whole("pitches", 1, 200));
  }

  /** The player first, then whoever else a row is of. */
  private static List<Player> roster(Fields f, List<Wellness> wellness) {
    return Stream.concat(Stream.of(PLAYER), wellness.stream().map(Wellness::player))
        .distinct()
        .map(id -> player(f, id, id.equals(PLAYER) ? "Ana" : "Ben"))
        .toList();
  }

  private static Player player(Fields f, String id, String firstName) {
    return new Player(
        id,
        firstName,
        Optional.empty(),
        f.date("born"),
        Bats.RIGHT,
        Optional.empty(),
        OptionalInt.empty(),
        "g",
        f.flag("pitches", true),
        true,
        Optional.empty(),
        OptionalDouble.empty(),
        "en",
        Set.of(),
        Optional.empty(),
        false);
  }

  private static Outing outing(Fields f) {
    return new Outing(
        f.date("date"),
        PLAYER,
        f.whole("pitches", 0, 200),
        f.optionalWord("kind", Outing.Kind.class).orElse(Outing.Kind.GAME),
        f.optionalWhole("before_last_batter", 0, 200),
        f.has("innings") ? OptionalDouble.of(f.number("innings", 0, 30)) : OptionalDouble.empty(),
        f.optionalWhole("innings_caught", 0, 20),
        f.optionalText("team").orElse(""),
        f.optionalText("game").orElse(""),
        f.origin());
  }

  private static Wellness wellness(Fields f) {
    return new Wellness(
        f.date("date"),
        f.optionalText("player").orElse(PLAYER),
        f.word("kind", Wellness.Kind.class),
        f.optionalWord("clears", Wellness.Kind.class),
        f.optionalWord("by", Wellness.Role.class),
        "",
        f.origin());
  }

  private static Unread unread(Fields f) {
    return new Unread(
        f.text("what").equals("outing") ? Unread.What.OUTING : Unread.What.WELLNESS,
        f.optionalText("player"),
        f.optionalDate("date"),
        Origin.of("throws.csv", 2));
  }

  private static Expected expect(Fields f) {
    return new Expected(
        flag(f, "may_pitch"),
        f.optionalWhole("pitches_left", 0, 200),
        f.optionalText("eligible_from"),
        flag(f, "asked_may_pitch"),
        f.optionalText("asked_eligible_from"),
        flag(f, "may_catch"),
        flag(f, "ask_first"),
        f.optionalText("known_to"),
        flag(f, "strict_may_pitch"),
        f.optionalWhole("strict_pitches_left", 0, 200),
        f.optionalText("strict_eligible_from"),
        f.optionalText("league_eligible_from"),
        f.optionalWhole("league_pitches_left", 0, 200),
        f.texts("rules"),
        f.texts("not_rules"),
        f.has("concludes") ? Optional.of(f.texts("concludes")) : Optional.empty(),
        f.texts("fired"),
        f.texts("not_fired"),
        f.has("holds") ? Optional.of(f.texts("holds")) : Optional.empty(),
        f.optionalText("reason"),
        f.optionalText("reason_es"),
        f.optionalText("rest_hold"),
        f.optionalText("comeback"));
  }

  private static Optional<Boolean> flag(Fields f, String key) {
    return f.has(key) ? Optional.of(f.flag(key, false)) : Optional.empty();
  }

  /** Runs the rules that are loaded over what is given and compares. */
  void check() {
    check(RuleBase.shared());
    checkSentences();
  }

  /** Every reason can be said in every language. */
  private void checkSentences() {
    ArmStatus status = new Arms(CATALOGUE).on(record, on).get(0);
    List<Hold> holds = new Holds(CATALOGUE).of(record, on);
    List<Reason> reasons = reasons(status, holds);
    for (String language : Words.LANGUAGES) {
      assertThat(said(WORDS, reasons, language)).noneMatch(s -> s.contains("{") || s.isBlank());
      holds.forEach(h -> assertThat(WORDS.say(h.whoEnds(), language)).isNotBlank());
    }
  }

  /** Runs {@code rules} over what is given and compares. */
  void check(RuleBase rules) {
    check(CATALOGUE, WORDS, rules);
  }

  /** The same with other books, and other words of rules; alone, and amid other children. */
  void check(Catalogue catalogue, Words words, RuleBase rules) {
    checkAnswers(catalogue, words, rules);
    checkFired(catalogue, rules);
    new RuleCase(file, name, on, Crowd.around(record, on), expected)
        .checkAnswers(catalogue, words, rules);
  }

  private void checkAnswers(Catalogue catalogue, Words words, RuleBase rules) {
    ArmRun run = new Arms(catalogue, rules).run(record, on);
    ArmStatus status = Arms.statuses(run).get(0);
    List<Hold> holds =
        new Holds(catalogue, rules)
            .of(record, on).stream().filter(h -> h.player().equals(PLAYER)).toList();
    Expected want = expected;
    want.mayPitch().ifPresent(w -> assertThat(status.mayPitch()).as("may_pitch").isEqualTo(w));
    want.left().ifPresent(w -> assertThat(status.pitchesLeft()).as("pitches_left").isEqualTo(w));
    want.from().ifPresent(w -> assertThat(day(status.eligibleFrom())).isEqualTo(w));
    ArmStatus.Answer asked = status.answer().opened();
    want.askedMayPitch().ifPresent(w -> assertThat(asked.mayPitch()).as("asked").isEqualTo(w));
    want.askedFrom().ifPresent(w -> assertThat(day(asked.eligibleFrom())).isEqualTo(w));
    want.mayCatch().ifPresent(w -> assertThat(status.mayCatch()).as("may_catch").isEqualTo(w));
    want.askFirst().ifPresent(w -> assertThat(status.askFirst()).as("ask_first").isEqualTo(w));
    want.knownTo().ifPresent(w -> assertThat(day(status.knownTo())).isEqualTo(w));
    want.strictMayPitch()
        .ifPresent(w -> assertThat(status.bothAges().mayPitch()).as("strict").isEqualTo(w));
    want.strictLeft()
        .ifPresent(w -> assertThat(status.bothAges().pitchesLeft()).as("strict").isEqualTo(w));
    want.strictFrom()
        .ifPresent(w -> assertThat(day(status.bothAges().eligibleFrom())).isEqualTo(w));
    want.leagueFrom()
        .ifPresent(
            w -> assertThat(day(status.lastBatter().orElseThrow().eligibleFrom())).isEqualTo(w));
    want.leagueLeft()
        .ifPresent(w -> assertThat(status.lastBatter().orElseThrow().pitchesLeft()).isEqualTo(w));
    checkRules(words, status, holds);
    want.concludes().ifPresent(w -> assertThat(concludes(run)).isEqualTo(w));
    want.comeback()
        .ifPresent(w -> assertThat(comeback(catalogue, rules)).as("comeback").isEqualTo(w));
    want.restHold().ifPresent(w -> assertThat(restHold(run)).isEqualTo(w));
  }

  /**
   * Every rule that concludes something about pitching or catching on the day by the books' own
   * age, once for each book that it speaks for, and what is to be asked or was too much.
   */
  List<String> concludes(ArmRun run) {
    return Stream.of(
            run.verdicts(PLAYER, Reckoning.BOOK, on),
            run.reports(PLAYER),
            run.overLimit(PLAYER),
            run.years(PLAYER))
        .flatMap(List::stream)
        .map(Verdict::rule)
        .sorted()
        .toList();
  }

  /** What rules conclude of anybody. */
  private void checkFired(Catalogue catalogue, RuleBase rules) {
    assertThat(new Holds(catalogue, rules).verdicts(record, on))
        .extracting(Verdict::rule)
        .as("rules of holds")
        .noneMatch(expected.notRules()::contains);
    if (!expected.fired().isEmpty() || !expected.notFired().isEmpty()) {
      assertThat(fired(catalogue, rules))
          .containsAll(expected.fired())
          .noneMatch(expected.notFired()::contains);
    }
  }

  private String comeback(Catalogue catalogue, RuleBase rules) {
    return new Holds(catalogue, rules)
        .comebacks(record, on).values().stream()
            .filter(c -> c.player().equals(PLAYER))
            .map(c -> c.cleared() + " to " + c.last())
            .findFirst()
            .orElse("none");
  }

  /** Ids of the rules that fired for what stands in the end, the day itself asked about. */
  Set<String> fired() {
    return fired(CATALOGUE, RuleBase.shared());
  }

  private Set<String> fired(Catalogue catalogue, RuleBase rules) {
    Holds holds = new Holds(catalogue, rules);
    Arms arms = new Arms(catalogue, rules);
    return Stream.of(holds.facts(record, on), arms.run(record, on).facts())
        .map(
            facts ->
                facts.stream()
                    .filter(f -> !(f instanceof AskedDay asked) || asked.day().equals(on))
                    .toList())
        .flatMap(facts -> rules.why(facts).stream())
        .map(Because::rule)
        .collect(Collectors.toSet());
  }

  private static List<Reason> reasons(ArmStatus status, List<Hold> holds) {
    List<Reason> reasons = new ArrayList<>(status.because());
    for (Hold hold : holds) {
      reasons.add(hold.because());
      reasons.addAll(hold.notes());
    }
    return reasons;
  }

  private void checkRules(Words words, ArmStatus status, List<Hold> holds) {
    List<Reason> reasons = reasons(status, holds);
    List<String> fired = reasons.stream().map(Reason::rule).toList();
    assertThat(fired).as("rules").containsAll(expected.rules());
    assertThat(fired).as("rules").noneMatch(expected.notRules()::contains);
    expected.holds().ifPresent(w -> assertThat(holds.stream().map(RuleCase::shown)).isEqualTo(w));
    expected.reason().ifPresent(w -> assertThat(said(words, reasons, "en")).contains(w));
    expected.reasonEs().ifPresent(w -> assertThat(said(words, reasons, "es")).contains(w));
  }

  private static List<String> said(Words words, List<Reason> reasons, String language) {
    return reasons.stream().map(r -> words.say(r.phrase(), language)).toList();
  }

  /** A stop as files show it: {@code throwing 2026-04-06 to 2026-04-08}. */
  static String shown(Hold hold) {
    return hold.kind().id()
        + " "
        + hold.from()
        + hold.until().map(until -> " to " + until).orElse(" open");
  }

  private static String restHold(ArmRun run) {
    return Arms.restHolds(run).stream()
        .filter(h -> h.player().equals(PLAYER))
        .map(RuleCase::shown)
        .findFirst()
        .orElse("none");
  }

  private static String day(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse("none");
  }

  @Override
  public String toString() {
    return name;
  }
}
