package org.belthigh.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.decide.Arms;
import org.belthigh.decide.Comeback;
import org.belthigh.decide.Drills;
import org.belthigh.decide.Hold;
import org.belthigh.decide.Holds;
import org.belthigh.decide.Progress;
import org.belthigh.decide.SkillDecision;
import org.belthigh.history.History;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.LaterRow;
import org.belthigh.intake.OtherSport;
import org.belthigh.intake.Player;
import org.belthigh.model.Ball;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;
import org.belthigh.plan.practice.Effort;

/**
 * Plans the weeks of a club: practices as the calendar has them, home days where the family can,
 * two skills a week, within every limit of the age and every hold.
 */
public final class Planner {
  /** Who has less than this part of a session's swings left does not bat that day. */
  private static final int FEWEST_OF_SESSION = 4;

  /** How far ahead the next practice is looked for. */
  private static final int WEEKS_LOOKED_AT = 6;

  private final Catalogue catalogue;
  private final Effort effort;

  /** The drills of each curriculum, so that no group asks the rules what another has asked. */
  private final Map<String, Drills> drills = new ConcurrentHashMap<>();

  /** A planner that plans by {@code catalogue}. */
  public Planner(Catalogue catalogue) {
    this(catalogue, Effort.USUAL);
  }

  /** The same with less effort for each practice: for very many plans that nobody will run. */
  public Planner(Catalogue catalogue, Effort effort) {
    this.catalogue = catalogue;
    this.effort = effort;
  }

  /** Loads the rules ahead of time; without it they are loaded when they are needed. */
  public static void warm() {
    Progress.warm();
  }

  /**
   * The plan that {@code request} asks for.
   *
   * @param record the club's files; rows after {@code request.from()} are not counted
   */
  public Plan plan(ClubRecord record, PlanRequest request) {
    return plan(record, request, History.none());
  }

  /**
   * The plan that {@code request} asks for, after those that were handed out before. Groups are
   * spread over the cores; the plan is the same on any number of them.
   *
   * @param record the club's files; rows after {@code request.from()} are not counted
   * @param history plans handed out before {@code request.from()}
   */
  public Plan plan(ClubRecord record, PlanRequest request, History history) {
    Map<String, ClubRecord> byGroup = record.byGroup();
    List<Planned> planned =
        asked(record, request).parallelStream()
            .map(group -> plan(byGroup.get(group.id()), group, request, history))
            .toList();
    return Sheets.plan(
        catalogue,
        record,
        request,
        planned.stream().flatMap(p -> p.players().stream()).sorted(inRosterOrder(record)).toList(),
        planned.stream().map(Planned::group).toList());
  }

  /**
   * The groups to plan: of those asked for the ones with a player asked for. Groups meet nowhere
   * but in the roster, so each is planned by itself.
   */
  private static List<Club.Group> asked(ClubRecord record, PlanRequest request) {
    Set<String> withPlayers =
        record.players().stream()
            .filter(p -> request.players().isEmpty() || request.players().contains(p.id()))
            .map(Player::group)
            .collect(Collectors.toSet());
    return record.club().groups().stream()
        .filter(g -> request.groups().isEmpty() || request.groups().contains(g.id()))
        .filter(g -> request.players().isEmpty() || withPlayers.contains(g.id()))
        .toList();
  }

  private static Comparator<PlayerPlan> inRosterOrder(ClubRecord record) {
    List<Player> roster = record.players();
    Map<String, Integer> rank =
        IntStream.range(0, roster.size())
            .boxed()
            .collect(Collectors.toMap(i -> roster.get(i).id(), i -> i));
    return Comparator.comparing(p -> rank.get(p.who().id()));
  }

  private Drills drills(Curriculum curriculum) {
    return drills.computeIfAbsent(curriculum.id(), id -> new Drills(curriculum));
  }

  /** What one group's planning comes to. */
  private record Planned(List<PlayerPlan> players, GroupPlan group) {}

  /**
   * What is known of a group on the first day, and what follows from it.
   *
   * @param record up to that day
   * @param foreseen with what is dated later and makes the planned weeks stricter
   * @param holds all of them, the rest days of pitchers too
   * @param restHolds those alone
   */
  private record Known(
      ClubRecord record,
      ClubRecord foreseen,
      Map<String, List<SkillDecision>> decisions,
      List<Hold> holds,
      List<Hold> restHolds,
      Map<String, Comeback> comebacks,
      TossLists lists) {}

  private Known known(ClubRecord whole, PlanRequest request) {
    ClubRecord known = whole.upTo(request.from());
    ClubRecord foreseen = whole.foreseen(request.from(), request.last());
    List<Hold> restHolds = new Arms(catalogue).restHolds(foreseen, request.from(), request.last());
    List<Hold> holds =
        new ArrayList<>(new Holds(catalogue).within(foreseen, request.from(), request.last()));
    holds.addAll(restHolds);
    return new Known(
        known,
        foreseen,
        new Progress(catalogue).decide(known, request.from()),
        holds,
        restHolds,
        new Holds(catalogue).comebacks(known, request.from()),
        TossLists.of(known));
  }

  /**
   * Why a drill is, or is not, what a player does: at home on {@code on}, and at the next practice.
   *
   * @param record the club's files; rows after {@code on} are not counted
   * @param player an id of the roster
   * @param drill an id of the club's curriculum
   * @param history plans handed out before {@code on}
   */
  public DrillAnswer whyNot(
      ClubRecord record, String player, String drill, LocalDate on, History history) {
    PlanRequest request =
        new PlanRequest(
            on, WEEKS_LOOKED_AT, Set.of(), Set.of(player), Optional.empty(), Optional.empty());
    Club.Group group = asked(record, request).get(0);
    ClubRecord whole = record.byGroup().get(group.id());
    return new GroupWeeks(known(whole, request), group, request, history)
        .whyNot(whole.player(player), drill);
  }

  private Planned plan(ClubRecord whole, Club.Group group, PlanRequest request, History history) {
    Known known = known(whole, request);
    Sheets sheets =
        new Sheets(
            catalogue,
            known.record(),
            known.foreseen(),
            LaterRow.after(whole, request.from()),
            request,
            known.decisions(),
            known.holds(),
            known.comebacks(),
            new Arms(catalogue),
            known.lists());
    GroupWeeks weeks = new GroupWeeks(known, group, request, history);
    weeks.plan();
    List<PlayerPlan> all = weeks.players(sheets);
    return new Planned(
        all.stream()
            .filter(p -> request.players().isEmpty() || request.players().contains(p.who().id()))
            .toList(),
        sheets.group(
            group, weeks.season, weeks.rhythm, weeks.circuit, weeks.told, weeks.practices, all));
  }

  /**
   * A practice as laid out.
   *
   * @param share part of the usual tosses that the day has
   */
  record Practice(
      Event event, Place place, int adults, double share, Circuit.Layout layout, int index) {}

  /** The weeks of one group. */
  private final class GroupWeeks {
    private final History history;
    private final ClubRecord record;

    /** The same with what is dated in the planned weeks and makes them stricter. */
    private final ClubRecord foreseen;

    private final PlanRequest request;
    private final List<Player> players;
    private final Map<String, List<SkillDecision>> decisions;
    private final Stops stops;
    private final List<Hold> restHolds;
    private final Map<String, Comeback> comebacks;
    private final Season season;
    private final Ground ground;
    private final IdleDays idle;
    private final Doses doses;
    private final Rhythm rhythm;
    private final WeekKinds kinds;
    private final FirstLook firstLook;
    private final Map<String, EasyWeek> easy = new HashMap<>();

    /** Weeks since the season began: skills take turns over weeks that are planned one by one. */
    private final int turn;

    private final DrillChoice choice;
    private final Told told;
    private final Circuit circuit;
    private final HomeWork home;
    private final Map<String, LoadBook> books = new HashMap<>();

    /** Why a practice has no hitting for a player, by day, as it was decided. */
    private final Map<String, Map<LocalDate, Idle>> sitting = new HashMap<>();

    private final Map<String, WeeklyRise> rises = new HashMap<>();
    private final Map<String, Familiar> familiar = new HashMap<>();
    private final Map<String, Map<LocalDate, Day>> days = new LinkedHashMap<>();
    private final Map<String, Map<LocalDate, HomeWork.Session>> sessions = new HashMap<>();
    private final Map<LocalDate, Practice> practices = new TreeMap<>();

    GroupWeeks(Known known, Club.Group group, PlanRequest request, History history) {
      this.history = history;
      this.record = known.record();
      this.foreseen = known.foreseen();
      this.request = request;
      this.decisions = known.decisions();
      this.stops = new Stops(known.holds());
      this.restHolds = known.restHolds();
      this.comebacks = known.comebacks();
      this.players = record.players().stream().sorted(Comparator.comparing(Player::id)).toList();
      this.season =
          Season.of(record, group, request.from().minusDays(7), request.last().plusDays(7));
      this.ground = new Ground(record.club(), group);
      this.idle = new IdleDays(season, ground, stops);
      this.doses = new Doses(catalogue, request.from());
      this.rhythm = new Rhythm(record.club().seasonFirst(), season, doses);
      this.kinds = new WeekKinds(rhythm, season.timeOff());
      this.firstLook = new FirstLook(record.club().seasonFirst(), season);
      this.turn =
          Math.max(0, (int) ChronoUnit.WEEKS.between(record.club().seasonFirst(), request.from()));
      Curriculum curriculum = catalogue.curricula().get(record.club().curriculum());
      players.forEach(
          p ->
              EasyWeek.of(decisions.get(p.id()), curriculum)
                  .ifPresent(week -> easy.put(p.id(), week)));
      this.choice =
          new DrillChoice(
              curriculum, drills(curriculum), record.club().equipment(), group.softball());
      this.told = new Told(curriculum, choice);
      this.circuit = new Circuit(choice, doses, effort);
      this.home = new HomeWork(choice, doses, told, catalogue.growth(), known.lists());
    }

    /** What a player brings along from the weeks before. */
    private void begin(Player player) {
      books.put(player.id(), book(player));
      sitting.put(player.id(), new HashMap<>());
      weekBefore(player, books.get(player.id()));
      familiar.put(
          player.id(),
          Familiar.of(history, player.id(), request.from(), choice, doses.sameDrillSessions()));
      days.put(player.id(), new TreeMap<>());
      sessions.put(player.id(), new TreeMap<>());
    }

    /**
     * Why a drill is, or is not, what a player does at the next practice and in the first home
     * session, as they stand when their turn comes in planning.
     */
    DrillAnswer whyNot(Player player, String id) {
      players.forEach(this::begin);
      Curriculum curriculum = catalogue.curricula().get(record.club().curriculum());
      Drill drill = curriculum.drill(id);
      Optional<LocalDate> next =
          season.firstPractice(request.from()).filter(d -> !d.isAfter(request.last()));
      Optional<DrillAnswer.Setting> practice = Optional.empty();
      // home sessions look seven days ahead at what practices hold
      for (LocalDate day : request.from().datesUntil(request.from().plusDays(14)).toList()) {
        if (next.filter(day::equals).isPresent()) {
          practice = Optional.of(atPractice(why(curriculum, player, drill, day), player, day));
        }
        practise(day);
      }
      return new DrillAnswer(
          drill,
          practice.or(
              () -> next.map(d -> atPractice(why(curriculum, player, drill, d), player, d))),
          atHome(curriculum, player, drill),
          request.last());
    }

    private WhyNot why(Curriculum curriculum, Player player, Drill drill, LocalDate day) {
      return new WhyNot(
          curriculum, player, drill, working(player, day), familiar.get(player.id()).used());
    }

    private DrillAnswer.Setting atHome(Curriculum curriculum, Player player, Drill drill) {
      Optional<LocalDate> free = homeDay(player, request.from());
      LocalDate day = free.orElse(request.from());
      return why(curriculum, player, drill, day)
          .home(
              day,
              home.choice(player, day),
              free.isPresent(),
              homeFocus(player, day, 0),
              familiar.get(player.id()).bores(day),
              doses.sameDrillSessions(),
              stops.kinds(player, day),
              homeSwingsLeft(player, day),
              home.tosses(player, day, share(player, day)));
    }

    private DrillAnswer.Setting atPractice(WhyNot why, Player player, LocalDate day) {
      Event event = season.practice(day).orElseThrow();
      Place place = ground.place(event);
      Circuit.Entrant entrant = entrant(player, day);
      return why.practice(
          day,
          place,
          choice,
          ground.adults(event) > 0,
          stops.kinds(player, day),
          noHitting(player, event),
          entrant.focus(),
          drill -> circuit.need(entrant, drill, place));
    }

    /**
     * Why a practice has no hitting for a player who is not held, or is too far away to say; empty
     * where it has.
     */
    private Optional<Phrase> noHitting(Player player, Event event) {
      if (event.hittingMinutes() < 1) {
        return Optional.of(Idle.NO_MINUTES.day());
      }
      if (ground.adults(event) < 1) {
        return Optional.of(Phrase.of("day.no-adult"));
      }
      if (week(event.date()) > 0) {
        return Optional.of(Phrase.of("why-not.later-week"));
      }
      return hasRoom(player, event.date())
          ? Optional.empty()
          : sitsOut(player, event.date()).map(Idle::day);
    }

    void plan() {
      players.forEach(this::begin);
      for (LocalDate day = request.from(); !day.isAfter(request.last()); day = day.plusDays(1)) {
        practise(day);
      }
      players.forEach(this::planHome);
      players.forEach(this::fillUp);
    }

    private Optional<LookBack> lookBack(Player player) {
      Curriculum curriculum = catalogue.curricula().get(record.club().curriculum());
      return history
          .last(player.id())
          .map(
              h ->
                  LookBack.of(
                      h,
                      player.id(),
                      record,
                      decisions.get(player.id()),
                      curriculum,
                      request.from()));
    }

    /**
     * What takes place whatever we plan: events, also those that a child misses, since what is
     * missed is not made up; and the other sport of the last week, taken to go on.
     */
    private LoadBook book(Player player) {
      LocalDate from = request.from();
      WeeklyRise rise = WeeklyRise.of(record, season, player, doses, from);
      rises.put(player.id(), rise);
      LoadBook book =
          new LoadBook(
              player,
              doses,
              rise,
              ArmRest.of(foreseen, player, restHolds, doses),
              Optional.ofNullable(comebacks.get(player.id())));
      LocalDate last = request.last().plusDays(7);
      for (LocalDate d = from.minusDays(7); !d.isAfter(last); d = d.plusDays(1)) {
        book.sport(d, season.minutes(d));
      }
      record.otherSports().stream()
          .filter(o -> o.player().equals(player.id()))
          .filter(o -> o.date().isAfter(from.minusDays(7)))
          .forEach(o -> repeat(book, o, last));
      return book;
    }

    /**
     * The week before, as it may have been planned: what is not logged is not zero. Each practice
     * is taken with all its swings, and home sessions on the latest days that were open to them.
     */
    private void weekBefore(Player player, LoadBook book) {
      LocalDate first = request.from().minusDays(7);
      List<LocalDate> days =
          first
              .datesUntil(request.from())
              .filter(d -> !d.isBefore(record.club().seasonFirst()))
              .toList();
      days.stream()
          .filter(d -> hittingMinutes(d) > 0)
          .forEach(d -> book.work(d, doses.swingsPerSession(player.ageOn(d)), 0));
      int sessions = days.isEmpty() ? 0 : doses.homeDaysPerWeek(player.ageOn(first));
      for (int i = days.size() - 1; i >= 0 && sessions > 0; i--) {
        LocalDate day = days.get(i);
        int age = player.ageOn(day);
        boolean already = book.busy(day);
        // no plan put work on a day that left too little rest before the events of this week
        if (openForHome(player, day) && (already || book.fits(day, doses.homeMinutes(age)))) {
          book.work(
              day,
              roomForHomeSwings(player, day) ? doses.homeTosses(age) : 0,
              doses.homeMinutes(age));
          // a session beside other sport takes no free day, so it may as well have been elsewhere
          sessions -= already ? 0 : 1;
        }
      }
    }

    /** Minutes for hitting at the practice of {@code day}; 0 where there is none. */
    private int hittingMinutes(LocalDate day) {
      return season.practice(day).map(Event::hittingMinutes).orElse(0);
    }

    /**
     * Whether a home session of {@code day} may have swings. In each seven days with it, practices
     * come first, those of the next week too, so that none of them is left without swings. A
     * practice counts whether or not the child swings there: what is missed is not made up at home.
     */
    private boolean roomForHomeSwings(Player player, LocalDate day) {
      LoadBook book = books.get(player.id());
      return day.minusDays(6)
          .datesUntil(day.plusDays(1))
          .allMatch(
              first ->
                  first
                          .datesUntil(first.plusDays(7))
                          .filter(d -> !d.equals(day))
                          .filter(d -> hittingMinutes(d) > 0 || book.swings(d) > 0)
                          .count()
                      < doses.swingDaysPerWeek(player.ageOn(first)));
    }

    private void repeat(LoadBook book, OtherSport sport, LocalDate last) {
      for (LocalDate d = sport.date(); !d.isAfter(last); d = d.plusDays(7)) {
        book.sport(d, 60 * sport.hours());
      }
    }

    private int week(LocalDate day) {
      return (int) (day.toEpochDay() - request.from().toEpochDay()) / 7;
    }

    /**
     * The two skills of the week of {@code day}. One that the weeks before left out, or from the
     * second week on the plan itself, takes the place of the less pressing one.
     */
    private List<SkillDecision> focus(Player player, LocalDate day) {
      Optional<EasyWeek> easyWeek = easy(player, day);
      if (easyWeek.isPresent()) {
        return easyWeek.get().focus();
      }
      Focus focus = new Focus(decisions.get(player.id()));
      List<SkillDecision> two = focus.of(turn + week(day));
      return waiting(player, day)
          .findFirst()
          .filter(d -> !two.contains(d))
          .map(d -> List.of(two.get(0), d))
          .orElse(two);
    }

    /** An easy week is the first one: what follows it depends on how it goes. */
    private Optional<EasyWeek> easy(Player player, LocalDate day) {
      return Optional.ofNullable(easy.get(player.id())).filter(e -> week(day) == 0);
    }

    /** What is worked on in the week of {@code day}, skill by skill. */
    private List<SkillDecision> working(Player player, LocalDate day) {
      return easy(player, day).map(EasyWeek::decisions).orElse(decisions.get(player.id()));
    }

    /** Part of the usual tosses that a home session of {@code day} has. */
    private double share(Player player, LocalDate day) {
      return easy(player, day).isPresent() || comesBack(player, day)
          ? doses.lighterShare()
          : rhythm.share(day);
    }

    /** Whether {@code day} is one of the first after a clearance. */
    private boolean comesBack(Player player, LocalDate day) {
      return Optional.ofNullable(comebacks.get(player.id())).filter(c -> c.on(day)).isPresent();
    }

    /** Whether a home session of {@code day} has less, for the group's reason or the player's. */
    private boolean light(Player player, LocalDate day) {
      return rhythm.light(day) || comesBack(player, day);
    }

    private int homeDays(Player player, LocalDate first) {
      int usual = doses.homeDaysPerWeek(player.ageOn(first));
      return easy(player, first).isPresent() ? Math.min(usual, doses.lighterHomeDays()) : usual;
    }

    /** What was left out so far, what waits longest or is most pressing first. */
    private Stream<SkillDecision> waiting(Player player, LocalDate day) {
      return week(day) > 0
          ? unmet(player)
          : Overdue.of(history, player.id(), record.club().seasonFirst(), choice).stream()
              .filter(skill -> !met(player, skill))
              .map(skill -> decisions.get(player.id()).get(skill.ordinal()));
    }

    /** What the plan has not met yet, the most pressing first. */
    private Stream<SkillDecision> unmet(Player player) {
      return new Focus(decisions.get(player.id()))
          .byNeed().stream().filter(d -> !met(player, d.skill()));
    }

    private boolean met(Player player, Skill skill) {
      return days.get(player.id()).values().stream()
          .flatMap(d -> d.items().stream())
          .anyMatch(i -> i.skill() == skill);
    }

    private void practise(LocalDate day) {
      Optional<Event> event = season.practice(day);
      int adults = event.map(ground::adults).orElse(0);
      if (adults < 1 || event.get().hittingMinutes() < 1) {
        return;
      }
      Place place = ground.place(event.get());
      List<Circuit.Entrant> entrants =
          players.stream()
              .filter(p -> choice.turn(place, stops.kinds(p, day)))
              .filter(p -> hasRoom(p, day))
              .map(p -> entrant(p, day))
              .toList();
      if (entrants.isEmpty()) {
        return;
      }
      Circuit.Layout usual = layout(entrants, event.get());
      List<Circuit.Entrant> eased = entrants.stream().map(e -> eased(e, day, usual)).toList();
      boolean less = entrants.stream().anyMatch(e -> comesBack(e.player(), day));
      Circuit.Layout layout = less ? layout(eased, event.get()) : usual;
      practices.put(
          day,
          new Practice(event.get(), place, adults, rhythm.share(day), layout, practices.size()));
      PracticeItems doing = new PracticeItems(choice, layout, place);
      for (Circuit.Entrant entrant : eased) {
        List<Item> items = doing.of(entrant);
        if (!items.isEmpty()) {
          put(entrant.player(), day, place, items, note(entrant.player(), day, "day.practice"), 0);
        } else if (entrant.swingsLeft() < 1) {
          sitting.get(entrant.player().id()).put(day, Idle.LIGHT_SHARE);
        }
      }
    }

    private Circuit.Entrant entrant(Player player, LocalDate day) {
      return new Circuit.Entrant(
          player,
          player.ageOn(day),
          firstLook.on(day) ? FirstLook.focus(working(player, day)) : focus(player, day),
          working(player, day),
          familiar.get(player.id()).used(),
          familiar.get(player.id()).bores(day),
          books.get(player.id()).swingsLeft(day));
    }

    private Circuit.Layout layout(List<Circuit.Entrant> entrants, Event practice) {
      return circuit.lay(
          entrants,
          ground.place(practice),
          ground.adults(practice),
          ground.stations(practice),
          practice.hittingMinutes(),
          rhythm.share(practice.date()));
    }

    /** Who comes back from a stop swings a lighter week's share of what the circuit has. */
    private Circuit.Entrant eased(Circuit.Entrant entrant, LocalDate day, Circuit.Layout layout) {
      if (!comesBack(entrant.player(), day)) {
        return entrant;
      }
      int swings = layout.of(entrant).stream().mapToInt(Circuit.Post::swings).sum();
      int most = rhythm.light(day) ? swings : doses.lighter(swings);
      return entrant.withSwings(Math.min(entrant.swingsLeft(), most));
    }

    /** Whether hitting fits into the player's week that day; notes why where it does not. */
    private boolean hasRoom(Player player, LocalDate day) {
      Optional<Idle> full =
          books
              .get(player.id())
              .full(day, 0)
              .or(() -> Optional.of(Idle.SWINGS_USED).filter(i -> !enoughSwings(player, day)));
      full.ifPresent(why -> sitting.get(player.id()).put(day, why));
      return full.isEmpty();
    }

    private Optional<Idle> sitsOut(Player player, LocalDate day) {
      return Optional.ofNullable(sitting.get(player.id()).get(day));
    }

    /** Whether a player has swings enough left to go round with the others. */
    private boolean enoughSwings(Player player, LocalDate day) {
      int most = doses.swingsPerSession(player.ageOn(day));
      return FEWEST_OF_SESSION * books.get(player.id()).swingsLeft(day) >= most;
    }

    private Phrase note(Player player, LocalDate day, String kind) {
      if (comesBack(player, day)) {
        return Phrase.of(kind + ".back");
      }
      if (books.get(player.id()).armRests(day)) {
        return Phrase.of(kind + ".rested");
      }
      return Phrase.of(rhythm.light(day) ? kind + ".lighter" : kind);
    }

    private void put(
        Player player, LocalDate day, Place place, List<Item> items, Phrase note, double extra) {
      Day planned = new Day(day, place, items, week(day) > 0, Optional.of(note));
      days.get(player.id()).put(day, planned);
      books.get(player.id()).work(day, planned.swings(), extra);
      if (place != Place.HOME && planned.swings() > 0) {
        rises.get(player.id()).practised(day);
      }
      items.forEach(i -> familiar.get(player.id()).add(day, choice.drill(i.drill())));
    }

    /** Home days of a week: as far from other work and games as can be, earliest among equals. */
    private void planHome(Player player) {
      for (int week = 0; week < request.weeks(); week++) {
        LocalDate first = request.from().plusDays(7L * week);
        for (int n = 0; n < homeDays(player, first); n++) {
          Optional<LocalDate> day = homeDay(player, first);
          if (day.isEmpty() || !homeSession(player, day.get(), week + n)) {
            break;
          }
        }
      }
    }

    private Optional<LocalDate> homeDay(Player player, LocalDate first) {
      return first
          .datesUntil(first.plusDays(7))
          .filter(d -> openForHome(player, d) && !stops.all(player, d))
          .filter(d -> !season.timeOff().on(d))
          .filter(d -> !firstLook.awaited(d, decisions.get(player.id())))
          .filter(d -> !days.get(player.id()).containsKey(d))
          .filter(d -> !light(player, d) || lightHomeDays(player, first) < doses.lighterHomeDays())
          .filter(d -> books.get(player.id()).fits(d, doses.homeMinutes(player.ageOn(d))))
          .max(
              Comparator.<LocalDate>comparingInt(d -> distance(player, d))
                  .thenComparing(Comparator.reverseOrder()));
    }

    /** Home sessions on light days that the week from {@code first} has already. */
    private int lightHomeDays(Player player, LocalDate first) {
      return (int)
          first
              .datesUntil(first.plusDays(7))
              .filter(d -> light(player, d))
              .filter(d -> sessions.get(player.id()).containsKey(d))
              .count();
    }

    /** Whether the family can, nothing is on, and no tournament begins on the next day. */
    private boolean openForHome(Player player, LocalDate day) {
      Set<DayOfWeek> may = player.homeDays();
      return (may.isEmpty() || may.contains(day.getDayOfWeek()))
          && season.on(day).isEmpty()
          && season.tournament(day.plusDays(1)).isEmpty();
    }

    private int distance(Player player, LocalDate day) {
      Map<LocalDate, Day> own = days.get(player.id());
      for (int away = 1; away < 7; away++) {
        if (taken(own, day.minusDays(away)) || taken(own, day.plusDays(away))) {
          return away;
        }
      }
      return 7;
    }

    private boolean taken(Map<LocalDate, Day> own, LocalDate day) {
      return season.game(day).isPresent()
          || (own.containsKey(day) && !own.get(day).items().isEmpty());
    }

    private boolean homeSession(Player player, LocalDate day, int turn) {
      List<SkillDecision> focus = homeFocus(player, day, turn);
      int swingsLeft = homeSwingsLeft(player, day);
      Optional<HomeWork.Session> session =
          session(player, day, focus, familiar.get(player.id()).bores(day), swingsLeft)
              .or(() -> session(player, day, focus, d -> false, swingsLeft));
      session.ifPresent(
          s -> {
            sessions.get(player.id()).put(day, s);
            put(
                player,
                day,
                Place.HOME,
                List.of(s.item()),
                note(player, day, "day.home"),
                s.item().minutes());
          });
      return session.isPresent();
    }

    private int homeSwingsLeft(Player player, LocalDate day) {
      return roomForHomeSwings(player, day) ? books.get(player.id()).swingsLeft(day) : 0;
    }

    private Optional<HomeWork.Session> session(
        Player player,
        LocalDate day,
        List<SkillDecision> focus,
        Predicate<Drill> bores,
        int swingsLeft) {
      return home.session(
          player,
          day,
          focus,
          familiar.get(player.id()).used(),
          bores,
          stops.kinds(player, day),
          swingsLeft,
          share(player, day));
    }

    /**
     * The skills of the week in the order they are tried at home: first the one that had its look
     * on fewer days of the week, so that each gets a second one; else in turn. What was left out so
     * far comes before them.
     */
    private List<SkillDecision> homeFocus(Player player, LocalDate day, int turn) {
      List<SkillDecision> focus = new ArrayList<>(focus(player, day));
      if (turn % 2 == 1) {
        Collections.reverse(focus);
      }
      LocalDate first = request.from().plusDays(7L * week(day));
      focus.sort(Comparator.comparingLong(d -> looks(player, first, d.skill())));
      return Stream.concat(waiting(player, day), focus.stream()).distinct().toList();
    }

    /** Days of the week from {@code first} on which a skill is worked on. */
    private long looks(Player player, LocalDate first, Skill skill) {
      return first
          .datesUntil(first.plusDays(7))
          .map(days.get(player.id())::get)
          .filter(d -> d != null && d.items().stream().anyMatch(i -> i.skill() == skill))
          .count();
    }

    /** Every date gets its entry: what is not work is a game, a day off, a hold or rest. */
    private void fillUp(Player player) {
      for (LocalDate d = request.from(); !d.isAfter(request.last()); d = d.plusDays(1)) {
        if (!days.get(player.id()).containsKey(d)) {
          days.get(player.id()).put(d, idle.of(player, d, week(d) > 0, sitsOut(player, d)));
        }
      }
    }

    List<PlayerPlan> players(Sheets sheets) {
      return players.stream()
          .map(
              p ->
                  sheets.player(
                      p,
                      List.copyOf(days.get(p.id()).values()),
                      kinds.of(
                          request,
                          Optional.ofNullable(comebacks.get(p.id())),
                          Optional.ofNullable(easy.get(p.id()))),
                      sessions.get(p.id()),
                      home,
                      focus(p, request.from()),
                      working(p, request.from()),
                      season.assumed(),
                      SportYear.of(record, season, p, days.get(p.id()).values(), request, doses),
                      lookBack(p)))
          .collect(Collectors.toList());
    }
  }

  /** Whether a ball is hard, so that who tosses stands behind a screen. */
  static boolean hard(Ball ball) {
    return ball == Ball.BASEBALL || ball == Ball.SOFTBALL;
  }
}
