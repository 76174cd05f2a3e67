package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Growth;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Comeback;
import org.belthigh.decide.DrillQuestion;
import org.belthigh.decide.Hold;
import org.belthigh.decide.SkillDecision;
import org.belthigh.flight.Delivery;
import org.belthigh.flight.Projectile;
import org.belthigh.intake.Home;
import org.belthigh.intake.Player;
import org.belthigh.model.Ball;
import org.belthigh.model.Bats;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Row;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;

/** One session at home: which drill, how much of it, and the sheet that says so. */
final class HomeWork {
  private static final String ADULT = "home.check.adult";

  private final DrillChoice clubs;
  private final Doses doses;
  private final Told told;
  private final Growth growth;
  private final TossLists lists;

  /** What was reckoned before: the same ball, place and height come again week by week. */
  private final Map<Asked, Optional<Delivery>> deliveries = new HashMap<>();

  /**
   * A delivery that is asked for.
   *
   * @param seconds wanted in the air; {@code easy} seconds where no arm can do that
   * @param belt height over the plate, metres
   */
  private record Asked(
      Projectile ball, int nearest, int farthest, double seconds, double easy, double belt) {
    Optional<Delivery> delivery() {
      return Delivery.of(ball, nearest, farthest, seconds, belt)
          .or(() -> Delivery.of(ball, nearest, farthest, easy, belt));
    }
  }

  /** Home sessions of one group. */
  HomeWork(DrillChoice choice, Doses doses, Told told, Growth growth, TossLists lists) {
    this.clubs = choice;
    this.doses = doses;
    this.told = told;
    this.growth = growth;
    this.lists = lists;
  }

  /**
   * What a session consists of.
   *
   * @param delivery how to toss; empty where nobody does
   * @param script each toss in order; empty where nobody tosses
   */
  record Session(
      Drill drill,
      SkillDecision decision,
      Item item,
      Optional<Delivery> delivery,
      List<ListedToss> script) {
    Session {
      script = List.copyOf(script);
    }
  }

  /**
   * The session of {@code day}.
   *
   * @param focus skills to work on, the one that comes first tried first
   * @param bores drills that the player has had too often running
   * @param held what holds stop that day
   * @param swingsLeft most swings the load allows that day
   * @param share part of the usual tosses that the day has
   * @return empty where no drill fits
   */
  Optional<Session> session(
      Player player,
      LocalDate day,
      List<SkillDecision> focus,
      Map<String, Integer> used,
      Predicate<Drill> bores,
      Set<Hold.Kind> held,
      int swingsLeft,
      double share) {
    int tosses = tosses(player, day, share);
    DrillChoice choice = choice(player, day);
    DrillQuestion leave = DrillQuestion.any().held(held).swingsLeft(swingsLeft, tosses);
    return focus.stream()
        .flatMap(
            decision ->
                choice
                    .of(decision.workOn(), Place.HOME, true, leave, used, bores)
                    .map(d -> session(player, day, d, choice.ball(d, Place.HOME), decision, tosses))
                    .stream())
        .findFirst();
  }

  /** Tosses of a session that has so much of the usual ones. */
  int tosses(Player player, LocalDate day, double share) {
    return (int) (share * doses.homeTosses(player.ageOn(day)));
  }

  /** What the family has the gear and the room for. */
  DrillChoice choice(Player player, LocalDate day) {
    Home home = player.home();
    return clubs.in(home, doses.tossFeet(home.space()), player.ageOn(day));
  }

  private Session session(
      Player player, LocalDate day, Drill drill, Ball ball, SkillDecision decision, int tosses) {
    int age = player.ageOn(day);
    boolean tossed = TossLists.aimed(drill);
    List<ListedToss> script = tossed ? lists.home(player, day, drill, decision, tosses) : List.of();
    Optional<Delivery> delivery =
        tossed
            ? Projectile.of(ball).flatMap(b -> delivery(player, day, drill, b))
            : Optional.empty();
    // a swing for each strike; a bat is only handed out where a swing at every toss would fit
    int strikes = (int) script.stream().filter(t -> t.spot().strike()).count();
    int swings = tossed ? strikes : tosses;
    Item item =
        new Item(
            drill.id(),
            drill.skill(),
            decision.workOn().id(),
            ball,
            drill.feed(),
            delivery.map(Delivery::feet).orElse(Told.feet(drill, age)),
            tosses,
            drill.swing() ? swings : 0,
            doses.homeMinutes(age));
    return new Session(drill, decision, item, delivery, script);
  }

  /**
   * How to toss so that the ball is in the air as long as step and age ask for. A quick toss that
   * no arm can make from where the drill has it becomes an easy one.
   */
  private Optional<Delivery> delivery(Player player, LocalDate day, Drill drill, Projectile ball) {
    int age = player.ageOn(day);
    int nearest = Told.feet(drill, age);
    int farthest = Math.max(nearest, doses.tossFeet(player.home().space()));
    double belt = Body.beltMetres(Body.stature(player, growth, day));
    double easy = doses.easyTossSeconds(age);
    double wanted = quick(drill) ? Math.max(quickest(drill), doses.quickTossSeconds(age)) : easy;
    return deliveries.computeIfAbsent(
        new Asked(ball, nearest, farthest, wanted, easy, belt), Asked::delivery);
  }

  private static boolean quick(Drill drill) {
    return drill.decisionMs().isPresent();
  }

  private static double quickest(Drill drill) {
    return drill.decisionMs().orElseThrow() / 1000.0;
  }

  /** The sheet of a session. */
  HomeSheet sheet(Player player, LocalDate day, Session session, Optional<Comeback> back) {
    Drill drill = session.drill();
    Grain grain = grain(session.decision());
    Item item = session.item();
    List<Caution> checks =
        Cautions.atHome(player.home(), drill, item.ball(), item.feet(), doses.batRingFeet());
    DrillText text = told.of(drill, item.ball(), Place.HOME, item.feet(), checks);
    double stature = Body.stature(player, growth, day);
    boolean tossed = !session.script().isEmpty();
    return new HomeSheet(
        day,
        text,
        item.minutes(),
        checks(text.safety(), back),
        doses.batRingFeet(),
        item.ball() == Ball.NONE ? doses.batRingFeet() : doses.homeClearFeet(),
        tossed,
        script(session.script(), grain),
        answers(drill),
        new SpotPicture(
            grain,
            side(player),
            List.of(),
            Body.rows(stature),
            player.heightCm().isEmpty(),
            drill.swing()),
        tossed ? howTo(player, stature, session, text) : tee(drill, stature),
        easier(player, day, drill),
        smaller(player.home(), drill, item.ball()),
        stop(),
        Phrase.of("home.afterwards"));
  }

  /** The easier form, unless it is another drill that cannot be done there. */
  private Optional<LocalText> easier(Player player, LocalDate day, Drill drill) {
    DrillChoice choice = choice(player, day);
    boolean fits =
        drill.easier().drill().map(choice::drill).stream()
            .allMatch(d -> choice.fits(d, Place.HOME, true));
    return fits ? Optional.of(drill.easier().text()) : Optional.empty();
  }

  /** The grain a child works at: that of the step, or low, belt, high where spots are no aim. */
  static Grain grain(SkillDecision decision) {
    Step step = decision.workOn();
    return step.grain().orElse(Grain.ROW);
  }

  /** The side to draw; a switch hitter's sheets show the right side, the other is its mirror. */
  static Side side(Player player) {
    return player.bats() == Bats.LEFT ? Side.LEFT : Side.RIGHT;
  }

  private static List<HomeSheet.ScriptToss> script(List<ListedToss> tosses, Grain grain) {
    List<HomeSheet.ScriptToss> script = new ArrayList<>();
    for (int i = 0; i < tosses.size(); i++) {
      script.add(new HomeSheet.ScriptToss(i + 1, tosses.get(i).target(grain)));
    }
    return script;
  }

  /** Less room takes a softer ball, then the ball, then the bat. */
  private List<Phrase> smaller(Home home, Drill drill, Ball ball) {
    if (!drill.swing()) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    boolean soft = home.gear().contains(Home.Gear.FOAM) && ball != Ball.NONE;
    if (soft) {
      lines.add(
          Phrase.of(
              ball == Ball.FOAM ? "home.smaller.easy" : "home.smaller.foam",
              "free",
              Say.distance(doses.foamClearFeet())));
    }
    if (ball != Ball.NONE) {
      lines.add(Phrase.of("home.smaller.dry", "reach", Say.distance(doses.batReachFeet())));
    }
    lines.add(
        Phrase.of(
            drill.feed() == Feed.TEE || ball == Ball.NONE
                ? "home.smaller.picture"
                : "home.smaller.watch"));
    return lines;
  }

  /** What holds before one starts; for who comes back, a clinician's word bounds it. */
  private static List<Phrase> checks(List<Phrase> safety, Optional<Comeback> back) {
    return safety.stream()
        .map(p -> back.isPresent() && p.key().equals(ADULT) ? Phrase.of(ADULT + ".back") : p)
        .toList();
  }

  /**
   * What one tick means, and what is written: without a swing only what was called can be right.
   */
  private static List<Phrase> answers(Drill drill) {
    String marks =
        drill.kind() == DrillKind.ZONE_CALL || drill.skill() == Skill.SEE
            ? "home.marks.see"
            : drill.swing() ? "home.marks." + drill.skill().id() : "home.marks.watch";
    return List.of(Phrase.of(marks + ".one"), Phrase.of(marks + ".two"));
  }

  private static List<Phrase> howTo(
      Player player, double stature, Session session, DrillText text) {
    Drill drill = session.drill();
    List<Phrase> lines = new ArrayList<>();
    lines.add(Phrase.of("home.how.stand", "distance", Say.distance(text.feet())));
    session.delivery().map(delivery -> arc(drill, delivery, stature)).ifPresent(lines::add);
    lines.add(Phrase.of("home.how.aim"));
    if (session.delivery().filter(delivery -> delivery.toss().steep()).isPresent()) {
      lines.add(Phrase.of("home.how.lob"));
    }
    drill.fields().ifPresent(fields -> lines.add(fields(fields, player)));
    if (player.bats() == Bats.SWITCH && drill.swing()) {
      lines.add(Phrase.of("home.how.sides"));
    }
    lines.add(Phrase.of("home.how.cue", "cue", drill.cue()));
    return lines;
  }

  private static Phrase arc(Drill drill, Delivery delivery, double stature) {
    Phrase top = Body.reach(delivery.toss().flight().top(), stature);
    return Phrase.of(quick(drill) ? "home.how.firm" : "home.how.arc", "top", top);
  }

  /** What suits which field, for the side the hitter stands on. */
  private static Phrase fields(Drill.Fields fields, Player player) {
    String suits =
        switch (fields) {
          case PULL -> "home.suits.pull";
          case OPPOSITE -> "home.suits.opposite";
          case ANY ->
              player.bats() == Bats.SWITCH
                  ? "home.suits.any"
                  : "home.suits.any." + side(player).id();
        };
    return Phrase.of(suits);
  }

  /** Where to set a tee: the middle of each row. */
  private static List<Phrase> tee(Drill drill, double stature) {
    if (drill.feed() != Feed.TEE) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    for (Row row : Row.values()) {
      long cm = Math.round(100 * Body.middleMetres(row, stature));
      lines.add(
          Phrase.of("home.tee." + row.id(), "inches", Math.round(cm / 2.54), "centimetres", cm));
    }
    return lines;
  }

  private static List<Phrase> stop() {
    return List.of(
        Phrase.of("home.stop.pain"), Phrase.of("home.stop.tired"), Phrase.of("home.stop.dark"));
  }
}
