package org.belthigh.cli;

import static java.util.Comparator.comparing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Arms;
import org.belthigh.files.Csv;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unusable;
import org.belthigh.lab.LearningChild;
import org.belthigh.lab.LoggedVisit;
import org.belthigh.model.Place;
import org.belthigh.model.Problem;
import org.belthigh.model.Skill;
import org.belthigh.plan.Day;
import org.belthigh.plan.Item;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.words.Words;

/**
 * The demo club's season, played week by week with simulated children: a plan on Monday, a week of
 * practice, games and reports, the rows into the club folder, and the next plan from them.
 *
 * <p>It begins with the club's settings, roster, calendar and other sport, and nothing else. Every
 * row goes through the files, as typed by a coordinator. Told by its seed alone.
 */
final class DemoSeason {
  private static final int WEEK = 7;
  private static final double COMES = 0.88;
  private static final double WRITTEN_DOWN = 0.85;
  private static final double AT_GAME = 0.95;
  private static final double PITCHES_AN_INNING = 15;
  private static final String AWAY_UNTIL_WEEK_4 = "p13";
  private static final String SLUMPS_EARLY = "p11";
  private static final String SLUMPS_LATE = "p22";
  private static final Map<String, List<String>> COACHES =
      Map.of("u10", List.of("Nelly", "Pat", "Sam"), "u14", List.of("Greta", "Dario"));
  private static final Set<LocalDate> RAINED_OUT =
      Set.of(LocalDate.of(2027, 4, 13), LocalDate.of(2027, 5, 5));

  /**
   * Something that was reported, and the word that ended it. Between the two the child does not
   * throw; {@code rests} says whether it stays home altogether.
   */
  record Report(String player, boolean rests, LocalDate from, LocalDate free, List<String> rows) {
    Report {
      rows = List.copyOf(rows);
    }

    boolean on(String id, LocalDate day) {
      return player.equals(id) && !day.isBefore(from) && day.isBefore(free);
    }
  }

  private static final List<Report> REPORTS =
      List.of(
          new Report(
              "p05",
              true,
              LocalDate.of(2027, 3, 11),
              LocalDate.of(2027, 3, 15),
              List.of(
                  "2027-03-11,p05,illness,,,home from school",
                  "2027-03-15,p05,symptom-free,,,mom texted")),
          new Report(
              "p10",
              true,
              LocalDate.of(2027, 3, 20),
              LocalDate.of(2027, 4, 2),
              List.of(
                  "2027-03-20,p10,head-injury,,,ran into the first baseman",
                  "2027-03-22,p10,symptom-free,,,dad says no headache",
                  "2027-03-26,p10,cleared,head-injury,coach,looks fine to me",
                  "2027-04-01,p10,cleared,head-injury,physician,note is in the folder")),
          new Report(
              "p20",
              false,
              LocalDate.of(2027, 4, 7),
              LocalDate.of(2027, 4, 16),
              List.of(
                  "2027-04-07,p20,arm-pain,,,elbow sore after practice",
                  "2027-04-15,p20,cleared,arm-pain,physical-therapist,note is in the folder")),
          new Report(
              "p12",
              false,
              LocalDate.of(2027, 5, 10),
              LocalDate.of(2027, 5, 18),
              List.of(
                  "2027-05-10,p12,arm-pain,,,shoulder sore",
                  "2027-05-12,p12,cleared,arm-pain,coach,better today",
                  "2027-05-17,p12,cleared,arm-pain,athletic-trainer,may throw again")));

  /**
   * An outing, and what the tool had said that the day allowed.
   *
   * @param kind {@code game} or {@code bullpen}
   */
  record Pitched(LocalDate day, String player, String kind, int pitches, int allowed) {}

  /**
   * One plan and what was seen before it.
   *
   * @param faults of reading the folder
   * @param found by the auditor
   * @param tosses logged in the week that follows, by player and skill of the drill
   */
  record Week(
      LocalDate monday,
      Plan plan,
      List<Problem> faults,
      List<String> found,
      Map<String, Map<Skill, Integer>> tosses) {
    PlayerPlan of(String player) {
      return plan.players().stream()
          .filter(p -> p.who().id().equals(player))
          .findFirst()
          .orElseThrow();
    }
  }

  /**
   * A whole season.
   *
   * @param weeks the last one stands for the day after the season
   */
  record Played(
      ClubRecord club,
      List<Week> weeks,
      List<Pitched> pitched,
      Map<String, LearningChild> children) {
    Played {
      weeks = List.copyOf(weeks);
      pitched = List.copyOf(pitched);
    }

    List<Report> reports() {
      return REPORTS;
    }
  }

  private final Catalogue catalogue;
  private final Words words;
  private final Path folder;
  private final SplittableRandom random;
  private final Map<String, LearningChild> children = new LinkedHashMap<>();
  private final Map<String, SplittableRandom> luck = new HashMap<>();
  private final Map<String, Integer> seasonPitches = new HashMap<>();
  private final List<Pitched> pitched = new ArrayList<>();
  private Curriculum curriculum;

  /**
   * @param folder an empty folder that the season is written into
   */
  DemoSeason(Catalogue catalogue, Path folder, long seed) {
    this.catalogue = catalogue;
    this.words = ClubOptions.words(catalogue);
    this.folder = folder;
    this.random = new SplittableRandom(seed);
  }

  /** Plays the whole season of the club in {@code demo}. */
  Played play(Path demo) throws IOException, Unusable {
    return play(demo, Integer.MAX_VALUE);
  }

  /** Plays the first {@code most} weeks of it, and makes the plan that follows. */
  Played play(Path demo, int most) throws IOException, Unusable {
    for (String file : List.of("club.yaml", "roster.csv", "calendar.csv", "other.csv")) {
      Files.copy(demo.resolve(file), folder.resolve(file));
    }
    start("throws.csv", "date,player,pitches,kind,innings,innings_caught,team,game");
    start("wellness.csv", "date,player,kind,clears,by,note");
    Files.createDirectories(folder.resolve("logs"));
    ClubRecord club = Intake.read(folder, catalogue);
    curriculum = catalogue.curricula().get(club.club().curriculum());
    club.players().forEach(p -> meet(p, club));
    List<Week> weeks = new ArrayList<>();
    LocalDate monday = club.club().seasonFirst();
    LocalDate last = club.club().seasonLast();
    for (; !monday.isAfter(last) && weeks.size() < most; monday = monday.plusDays(WEEK)) {
      weeks.add(week(monday));
    }
    weeks.add(plan(monday));
    return new Played(Intake.read(folder, catalogue), weeks, pitched, children);
  }

  private void start(String file, String head) throws IOException {
    Files.writeString(folder.resolve(file), head + "\n");
  }

  private void add(String file, String rows) throws IOException {
    Files.writeString(folder.resolve(file), rows, StandardOpenOption.APPEND);
  }

  private void meet(Player player, ClubRecord club) {
    SplittableRandom own = random.split();
    Map<Skill, Step> begins = new EnumMap<>(Skill.class);
    int age = player.ageOn(club.club().seasonFirst());
    curriculum.ladders().forEach((skill, ladder) -> begins.put(skill, ladder.start(age)));
    LearningChild.Pace[] paces = LearningChild.Pace.values();
    LocalDate slump =
        switch (player.id()) {
          case SLUMPS_EARLY -> club.club().seasonFirst().plusWeeks(5);
          case SLUMPS_LATE -> club.club().seasonFirst().plusWeeks(8);
          default -> club.club().seasonLast().plusDays(1);
        };
    luck.put(player.id(), own);
    children.put(
        player.id(),
        new LearningChild(catalogue, paces[own.nextInt(paces.length)], begins, slump, own));
  }

  private Week plan(LocalDate monday) throws IOException, Unusable {
    ClubRecord record = Intake.read(folder, catalogue);
    List<Problem> problems = new ArrayList<>(record.problems());
    History history = History.before(folder, monday, problems::add);
    PlanRequest request =
        new PlanRequest(monday, 1, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    Plan plan = new Planner(catalogue).plan(record, request, history);
    String json = PlanJson.of(plan, words).toString();
    List<String> found =
        new Audit(catalogue)
            .beside("plan of " + monday, json, record).stream().map(Problem::text).toList();
    History.keep(folder, plan.handedOut());
    return new Week(monday, plan, problems, found, new TreeMap<>());
  }

  private Week week(LocalDate monday) throws IOException, Unusable {
    Week week = plan(monday);
    ClubRecord known = Intake.read(folder, catalogue);
    for (LocalDate day : monday.datesUntil(monday.plusDays(WEEK)).toList()) {
      for (PlayerPlan plan : week.plan().players()) {
        Day today =
            plan.days().stream().filter(d -> d.date().equals(day)).findFirst().orElseThrow();
        practise(known.player(plan.who().id()), plan, today, week);
      }
      report(day);
      throwing(known, week, day);
    }
    return week;
  }

  /** What is reported that evening. */
  private void report(LocalDate day) throws IOException {
    for (Report report : REPORTS) {
      for (String row : report.rows()) {
        if (row.startsWith(day.toString())) {
          add("wellness.csv", row + "\n");
        }
      }
    }
  }

  private static boolean resting(String player, LocalDate day) {
    return REPORTS.stream().anyMatch(r -> r.on(player, day) && r.rests());
  }

  private static boolean sore(String player, LocalDate day) {
    return REPORTS.stream().anyMatch(r -> r.on(player, day));
  }

  private boolean comes(Player player, Day day) {
    boolean here =
        !player.id().equals(AWAY_UNTIL_WEEK_4) || day.date().isAfter(LocalDate.of(2027, 3, 21));
    // the same draw on every day, so that one child's absence changes nobody else's luck
    double lot = luck.get(player.id()).nextDouble();
    boolean rain = day.place() != Place.HOME && RAINED_OUT.contains(day.date());
    return here && !rain && !resting(player.id(), day.date()) && lot < COMES;
  }

  private void practise(Player player, PlayerPlan plan, Day day, Week week) throws IOException {
    if (day.items().isEmpty() || !comes(player, day)) {
      return;
    }
    SplittableRandom own = luck.get(player.id());
    boolean writes = own.nextDouble() < WRITTEN_DOWN;
    List<String> coaches = COACHES.get(player.group());
    boolean home = day.place() == Place.HOME;
    String by = home ? "family" : coaches.get(own.nextInt(coaches.size()));
    Map<Skill, Step> stands = new EnumMap<>(Skill.class);
    plan.decisions()
        .forEach(
            d -> stands.put(d.skill(), curriculum.step(d.next().orElse(d.step())).orElseThrow()));
    LoggedVisit visit = new LoggedVisit(curriculum, children.get(player.id()), player, own);
    List<List<String>> rows = new ArrayList<>();
    int round = 0;
    for (Item item : day.items()) {
      round++;
      List<List<String>> seen =
          visit.rows(
              item, day.date(), day.place(), stands, round, !sore(player.id(), day.date()), by);
      if (writes) {
        rows.addAll(seen);
        week.tosses()
            .computeIfAbsent(player.id(), p -> new EnumMap<>(Skill.class))
            .merge(item.skill(), seen.size(), Integer::sum);
      }
    }
    String file = "logs/" + week.monday() + "-" + (home ? "home" : player.group()) + ".csv";
    if (!Files.exists(folder.resolve(file))) {
      start(file, String.join(",", LoggedVisit.COLUMNS));
    }
    if (!rows.isEmpty()) {
      add(file, Csv.text(rows));
    }
  }

  /** Games as the calendar has them, and a bullpen on the week's first practice. */
  private void throwing(ClubRecord known, Week week, LocalDate day) throws IOException, Unusable {
    for (Event event : known.events()) {
      boolean game = event.kind() == Event.Kind.GAME || event.kind() == Event.Kind.TOURNAMENT;
      boolean practice = event.kind() == Event.Kind.PRACTICE && !RAINED_OUT.contains(day);
      if (event.date().equals(day) && game) {
        game(event);
      } else if (event.date().equals(day) && practice && firstOfWeek(known, event, week)) {
        bullpen(event);
      }
    }
  }

  private static boolean firstOfWeek(ClubRecord known, Event event, Week week) {
    return known.events().stream()
        .filter(e -> e.kind() == Event.Kind.PRACTICE && e.group().equals(event.group()))
        .filter(e -> !e.date().isBefore(week.monday()))
        .map(Event::date)
        .min(LocalDate::compareTo)
        .filter(event.date()::equals)
        .isPresent();
  }

  /** Who may pitch today by what is known today, those with the fewest pitches so far first. */
  private List<ArmStatus> arms(ClubRecord record, Event event) {
    return new Arms(catalogue)
        .on(record, event.date()).stream()
            .filter(
                s -> event.group().filter(record.player(s.player()).group()::equals).isPresent())
            .filter(s -> !s.player().equals(AWAY_UNTIL_WEEK_4))
            .sorted(
                comparing((ArmStatus s) -> seasonPitches.getOrDefault(s.player(), 0))
                    .thenComparing(ArmStatus::player))
            .toList();
  }

  private void bullpen(Event event) throws IOException, Unusable {
    ClubRecord record = Intake.read(folder, catalogue);
    List<ArmStatus> may =
        arms(record, event).stream()
            .filter(s -> s.mayPitch() && record.player(s.player()).pitches())
            .limit(2)
            .toList();
    for (ArmStatus arm : may) {
      int pitches = Math.min(arm.pitchesLeft(), 12 + luck.get(arm.player()).nextInt(9));
      write(event.date(), arm, "bullpen", pitches, 0, "");
    }
  }

  private void game(Event event) throws IOException, Unusable {
    ClubRecord record = Intake.read(folder, catalogue);
    boolean small = event.group().filter("u10"::equals).isPresent();
    int needed = small ? 60 + random.nextInt(20) : 75 + random.nextInt(25);
    int start = small ? 40 : 60;
    int caught = small ? 4 : 5;
    for (ArmStatus arm : arms(record, event)) {
      Player player = record.player(arm.player());
      if (luck.get(player.id()).nextDouble() >= AT_GAME || resting(player.id(), event.date())) {
        continue;
      }
      if (player.pitches() && arm.mayPitch() && needed > 0) {
        int pitches = Math.min(Math.min(arm.pitchesLeft(), needed), start);
        write(event.date(), arm, "game", pitches, 0, event.note());
        needed -= pitches;
        start = small ? 20 : 30;
      } else if (player.catches() && arm.mayCatch() && caught > 0) {
        int innings = Math.min(caught, 3);
        write(event.date(), arm, "game", 0, innings, event.note());
        caught -= innings;
      } else if (player.pitches()) {
        write(event.date(), arm, "game", 0, 0, event.note());
      }
    }
  }

  private void write(
      LocalDate day, ArmStatus arm, String kind, int pitches, int caught, String game)
      throws IOException {
    seasonPitches.merge(arm.player(), pitches, Integer::sum);
    if (pitches > 0) {
      pitched.add(new Pitched(day, arm.player(), kind, pitches, arm.pitchesLeft()));
    }
    String innings =
        kind.equals("game") ? Long.toString(Math.round(pitches / PITCHES_AN_INNING)) : "";
    add(
        "throws.csv",
        Csv.text(
            List.of(
                List.of(
                    day.toString(),
                    arm.player(),
                    Integer.toString(pitches),
                    kind,
                    innings,
                    caught == 0 ? "" : Integer.toString(caught),
                    "",
                    game))));
  }
}
