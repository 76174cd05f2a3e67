package org.belthigh.handout;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.model.Ball;
import org.belthigh.model.Bats;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;
import org.belthigh.plan.ArmBox;
import org.belthigh.plan.ArmSheet;
import org.belthigh.plan.Card;
import org.belthigh.plan.Day;
import org.belthigh.plan.DrillText;
import org.belthigh.plan.EvaluationSheet;
import org.belthigh.plan.Gear;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.HomeSheet;
import org.belthigh.plan.Label;
import org.belthigh.plan.Overview;
import org.belthigh.plan.OwnLog;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.plan.SeasonReport;
import org.belthigh.plan.SportYear;
import org.belthigh.plan.SpotPicture;
import org.belthigh.words.Words;
import org.junit.jupiter.params.provider.Arguments;

/** Invented plans of one player, with little or much to say. */
final class SamplePlans {
  static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);
  static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  static final Words WORDS = words();

  private static final LocalText DRILL =
      LocalText.of("Low, belt or high, and then once more", "Baja, cintura o alta, y otra vez más");
  private static final LocalText SETUP =
      LocalText.of(
          "Put two lines across the target, so that it has three rows. The hitter stands in with"
              + " no bat. An adult tosses slowly and mixes the heights.",
          "Ponga dos líneas de lado a lado en el blanco para hacer tres filas. Quien batea se para"
              + " sin bate. Un adulto lanza despacio y mezcla las alturas.");

  private SamplePlans() {}

  /** How much a card has to hold. */
  enum Amount {
    EMPTY,
    TYPICAL,
    EXTREME
  }

  /** Each of {@code contents} on both papers, in both languages. */
  static Stream<Arguments> onEverySheet(Enum<?>[] contents) {
    return Stream.of("letter", "a4")
        .flatMap(
            paper ->
                Stream.of("en", "es")
                    .flatMap(
                        language ->
                            Stream.of(contents)
                                .map(content -> Arguments.of(paper, language, content))));
  }

  private static Words words() {
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    CATALOGUE.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    return Words.load(reasons);
  }

  /**
   * The demo club from its Monday, with season reports.
   *
   * @param groups and {@code players}: all where empty
   * @param language the families' own where empty
   */
  static Plan demo(
      int weeks, Set<String> groups, Set<String> players, String paper, Optional<String> language) {
    return demo(CATALOGUE, weeks, groups, players, paper, language);
  }

  /** The same by another catalogue. */
  static Plan demo(
      Catalogue catalogue,
      int weeks,
      Set<String> groups,
      Set<String> players,
      String paper,
      Optional<String> language) {
    try {
      return new Planner(catalogue)
          .plan(
              Intake.read(Path.of("demo-players"), catalogue),
              new PlanRequest(MONDAY, weeks, groups, players, Optional.of(paper), language)
                  .withSeasonReports());
    } catch (Unusable e) {
      throw new IllegalStateException(e.problems().toString(), e);
    }
  }

  /** A plan of one player. */
  static Plan of(String paper, String language, PlayerPlan player) {
    return new Plan(
        "Example Club",
        paper,
        language,
        MONDAY,
        1,
        "belthigh-2027 2027.1",
        List.of("Pitch Smart: pitch limits and rest, revised 2017"),
        List.of(player),
        List.of(group()),
        List.of(),
        List.of());
  }

  /** A group without sheets of its own. */
  static GroupPlan group() {
    return new GroupPlan(
        "u10",
        "Under 10",
        List.of(),
        new ArmSheet(List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
        new Overview(
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Map.of(),
            Optional.empty(),
            List.of()),
        List.of(),
        new EvaluationSheet(Optional.empty(), List.of(), List.of(), true),
        List.of(),
        List.of());
  }

  static PlayerPlan player(String language, Amount amount, List<HomeSheet> home) {
    return new PlayerPlan(
        label(language, amount == Amount.EXTREME ? "Maximiliano-Alejandro Ezequiel" : "Lena"),
        List.of(),
        List.of(),
        amount == Amount.EMPTY ? List.of() : List.of(game()),
        List.of(),
        Optional.empty(),
        card(amount),
        home,
        List.of(),
        ownLog(amount),
        new SportYear(YearMonth.of(2026, 6), YearMonth.of(2027, 5), 3, 8, "NATA 2019"),
        Optional.empty(),
        Optional.of(season(amount)));
  }

  /** A week of nothing that is counted, of one drill, or of more than a page holds. */
  static OwnLog ownLog(Amount amount) {
    int drills = amount == Amount.EMPTY ? 0 : amount == Amount.TYPICAL ? 1 : 9;
    OwnLog.Drill drill =
        new OwnLog.Drill(
            DRILL,
            List.of(MONDAY, MONDAY.plusDays(2), MONDAY.plusDays(5)),
            amount == Amount.EXTREME ? 40 : 18,
            List.of(Phrase.of("log.zone-call.right"), Phrase.of("log.zone-call.wrong")));
    return new OwnLog(MONDAY, MONDAY.plusDays(6), Collections.nCopies(drills, drill));
  }

  /** A season of nothing, of two months, or of a long year with everything in it. */
  static SeasonReport season(Amount amount) {
    int months = amount == Amount.EMPTY ? 0 : amount == Amount.TYPICAL ? 2 : 7;
    Map<Spot, Share> calls =
        Stream.of(Spot.values()).collect(Collectors.toMap(s -> s, s -> new Share(88, 120)));
    return new SeasonReport(
        MONDAY.minusMonths(months),
        MONDAY,
        months == 0
            ? List.of()
            : Stream.of(Skill.values())
                .map(s -> new SeasonReport.Worked(s, DRILL, 14, 223))
                .toList(),
        months == 0 ? List.of() : courses(months),
        months == 0
            ? List.of()
            : List.of(
                new SeasonReport.Spots(
                    Grain.NINE, Side.LEFT, MONDAY.minusDays(20), calls, Map.of()),
                new SeasonReport.Spots(
                    Grain.NINE, Side.RIGHT, MONDAY.minusDays(9), Map.of(), calls)),
        IntStream.range(0, months == 7 ? 12 : months).mapToObj(i -> week(i)).toList(),
        OptionalInt.of(75),
        Stream.of(Skill.values())
            .map(
                s -> Phrase.of("season.stay", "skill", Phrase.of("skill." + s.id()), "step", DRILL))
            .toList(),
        Phrase.of("season.source", "tosses", 6, "calls", 20));
  }

  private static SeasonReport.Week week(int ago) {
    return new SeasonReport.Week(
        MONDAY.minusWeeks(ago),
        OptionalInt.of(90 * ago),
        180,
        OptionalInt.of(60),
        OptionalInt.empty());
  }

  private static List<SeasonReport.Course> courses(int months) {
    return Stream.of("calls.nine", "belts-swung", "balls-let-go", "hard-hits", "sent")
        .map(
            what ->
                new SeasonReport.Course(
                    what,
                    IntStream.range(0, months)
                        .mapToObj(
                            i ->
                                new SeasonReport.Point(
                                    LocalDate.of(2026, 8, 1).plusMonths(i), new Share(i, 9)))
                        .toList()))
        .toList();
  }

  static Label label(String language, String name) {
    return new Label(
        "p01", name, OptionalInt.of(33), "u10", 10, Bats.SWITCH, Optional.of(Side.LEFT), language);
  }

  private static Day game() {
    return new Day(
        MONDAY.plusDays(5), Place.FIELD, List.of(), false, Optional.of(Phrase.of("day.game")));
  }

  private static Card card(Amount amount) {
    int things = amount == Amount.EMPTY ? 0 : amount == Amount.TYPICAL ? 2 : 3;
    return new Card(
        MONDAY,
        MONDAY.plusDays(6),
        Phrase.of("aim.rest"),
        LocalText.of("Knee, belt or chest?", "¿Rodilla, cintura o pecho?"),
        amount == Amount.EXTREME ? Optional.of(lighter()) : Optional.empty(),
        IntStream.range(0, things).mapToObj(i -> thing(amount)).toList(),
        things == 0 ? Optional.empty() : Optional.of(picture(Grain.ROW, List.of("belt"))),
        things == 0 ? List.of() : List.of(Phrase.of("moves.log")),
        Phrase.of("well.welcome", "player", "Lena"),
        new ArmBox(
            List.of(Phrase.of("arm.ask"), Phrase.of("arm.anywhere")),
            List.of(),
            amount == Amount.EMPTY ? Optional.empty() : Optional.of(MONDAY.minusDays(2)),
            Phrase.of("arm.source", "books", "Pitch Smart, revised 2017")),
        amount == Amount.EXTREME ? List.of(Phrase.of("day.assumed")) : List.of(),
        amount == Amount.EXTREME ? List.of(Phrase.of("day.assumed")) : List.of());
  }

  private static Phrase lighter() {
    return Phrase.of("week.lighter", "first", MONDAY, "last", MONDAY.plusDays(6));
  }

  private static Card.Thing thing(Amount amount) {
    List<LocalDate> days =
        amount == Amount.EXTREME
            ? List.of(MONDAY, MONDAY.plusDays(2), MONDAY.plusDays(4))
            : List.of(MONDAY);
    return new Card.Thing(
        days,
        Place.HOME,
        DRILL,
        Ball.PLASTIC,
        Feed.FRONT_TOSS,
        15,
        18,
        14,
        Phrase.of("good.sent", "good", 12, "of", 14));
  }

  static SpotPicture picture(Grain grain, List<String> lookFor) {
    return new SpotPicture(grain, Side.RIGHT, lookFor, List.of(36.2, 51.9, 67.6, 83.4), true, true);
  }

  /** A session of {@code tosses}; none for a drill that nobody tosses for. */
  static HomeSheet home(Grain grain, int tosses, boolean swing) {
    boolean tossed = tosses > 0;
    return new HomeSheet(
        MONDAY.plusDays(2),
        drill(swing, tossed),
        10,
        List.of(
            Phrase.of("home.check.adult"),
            Phrase.of("home.check.ball.plastic"),
            Phrase.of("home.check.eyes"),
            Phrase.of("home.check.helmet"),
            Phrase.of("home.check.ring.inside"),
            Phrase.of("home.check.ground"),
            Phrase.of("home.check.pain")),
        16,
        33,
        tossed,
        IntStream.range(0, tosses).mapToObj(i -> toss(grain, i)).toList(),
        List.of(Phrase.of("home.marks.see.one"), Phrase.of("home.marks.see.two")),
        picture(grain, List.of()),
        tossed ? howTo() : List.of(),
        Optional.of(LocalText.of("Toss slower.", "Lance más despacio.")),
        swing ? List.of(Phrase.of("home.smaller.watch")) : List.of(),
        List.of(Phrase.of("home.stop.pain"), Phrase.of("home.stop.tired")),
        Phrase.of("home.afterwards"));
  }

  private static List<Phrase> howTo() {
    Phrase distance = Phrase.of("distance", "feet", 15, "metres", 4.6);
    return List.of(
        Phrase.of("home.how.stand", "distance", distance),
        Phrase.of("home.how.arc", "top", Phrase.of("reach.eyes")),
        Phrase.of("home.how.aim"));
  }

  private static HomeSheet.ScriptToss toss(Grain grain, int index) {
    Spot spot = Spot.values()[index * 3 % Spot.values().length];
    return new HomeSheet.ScriptToss(index + 1, Phrase.of("target." + grain.seen(spot)));
  }

  private static DrillText drill(boolean swing, boolean tossed) {
    return new DrillText(
        "low-belt-high",
        Skill.SEE,
        DRILL,
        SETUP,
        LocalText.of("Knee, belt or chest?", "¿Rodilla, cintura o pecho?"),
        LocalText.of("Keep count on your fingers.", "Cuente con los dedos."),
        tossed ? Ball.PLASTIC : Ball.NONE,
        tossed ? Feed.FRONT_TOSS : Feed.NONE,
        tossed ? 15 : 0,
        swing,
        Phrase.of("mix.none"),
        List.of(),
        List.of(new Gear("cards", LocalText.of("Paper cards", "Tarjetas de papel"), 1)),
        Optional.of(LocalText.of("Toss slower.", "Lance más despacio.")),
        LocalText.of("Toss faster.", "Lance más rápido."),
        Optional.empty());
  }
}
