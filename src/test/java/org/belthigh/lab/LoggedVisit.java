package org.belthigh.lab;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Player;
import org.belthigh.model.Column;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Place;
import org.belthigh.model.Row;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;
import org.belthigh.model.Went;
import org.belthigh.plan.Item;

/**
 * What a simulated child does with one drill of the plan, as rows of a log with a toss a row.
 *
 * <p>Tosses come as the drill mixes them. Calls, choices, hard hits and sends are right as often as
 * the child's hidden ability says; one zone in thirty is written down wrong.
 */
public final class LoggedVisit {
  /** The columns of {@link #rows}, as a log has them. */
  public static final List<String> COLUMNS =
      List.of(
          "date", "player", "drill", "round", "toss", "bats", "zone", "called", "field", "swing",
          "hit", "went", "ball", "feed", "feet", "place", "by");

  private static final double MISREAD = 1.0 / 30;

  /** Swings at strikes that are not belt-high, which no step counts. */
  private static final double OTHER_STRIKES = 0.6;

  private static final List<Field> FIELDS = List.of(Field.LEFT, Field.CENTER, Field.RIGHT);

  private final Curriculum curriculum;
  private final LearningChild child;
  private final Player player;
  private final SplittableRandom random;
  private final Seasons.Pen pen;

  /** Visits of {@code child}, who is {@code player} of the roster. */
  public LoggedVisit(
      Curriculum curriculum, LearningChild child, Player player, SplittableRandom random) {
    this.curriculum = curriculum;
    this.child = child;
    this.player = player;
    this.random = random;
    this.pen = new Seasons.Pen(random, MISREAD);
  }

  /**
   * Does the drill, learns from it, and says what a log would.
   *
   * @param stands the step that the child works on, by skill
   * @param round a number of its own among the day's visits to the drill
   * @param swings whether the child may swing
   * @return no rows for a drill of which nothing is written
   */
  public List<List<String>> rows(
      Item item,
      LocalDate day,
      Place place,
      Map<Skill, Step> stands,
      int round,
      boolean swings,
      String by) {
    Drill drill = curriculum.drill(item.drill());
    child.practise(item.skill());
    if (!drill.logged() || (drill.swing() && !swings)) {
      return List.of();
    }
    Side side = player.bats().side().orElse(round % 2 == 0 ? Side.LEFT : Side.RIGHT);
    List<List<String>> rows = new ArrayList<>();
    int left = item.swings();
    for (int toss = 1; toss <= item.reps() && (left > 0 || !drill.swing()); toss++) {
      Spot zone = zone(drill);
      boolean swing = drill.swing() && swingsAt(zone, item, stands, day);
      left -= swing ? 1 : 0;
      boolean hard = swing && random.nextDouble() < chance(of(item, Skill.DRIVE, stands), 0, day);
      String field = drill.kind() == DrillKind.FIELD_CALL ? called(drill, side).id() : "";
      rows.add(
          List.of(
              day.toString(),
              player.id(),
              drill.id(),
              Integer.toString(round),
              Integer.toString(toss),
              side.letter(),
              pen.write(zone, Spot.values()).id(),
              drill.kind() == DrillKind.ZONE_CALL ? call(zone, item, stands, day) : "",
              field,
              swing ? "yes" : "no",
              swing ? hit(hard) : "",
              swing && !field.isEmpty() ? went(field, item, stands, day) : "",
              item.ball().id(),
              item.feed().id(),
              Integer.toString(item.feet()),
              place.id(),
              by));
    }
    return rows;
  }

  /** The step of the drill where it is of that skill, else where the child stands. */
  private Step of(Item item, Skill skill, Map<Skill, Step> stands) {
    return item.skill() == skill ? curriculum.step(item.step()).orElseThrow() : stands.get(skill);
  }

  private double chance(Step step, int bar, LocalDate day) {
    return child.chance(step, step.bars().get(bar), player.ageOn(day), day);
  }

  private Spot zone(Drill drill) {
    int at = random.nextInt(100);
    Drill.Mix mix = drill.mix();
    Column column = Column.values()[random.nextInt(3)];
    if (at < mix.ball()) {
      return Spot.BALL;
    }
    int strike = at - mix.ball();
    Row row = strike < mix.low() ? Row.LOW : strike < mix.low() + mix.belt() ? Row.BELT : Row.HIGH;
    return Spot.at(row, column);
  }

  private boolean swingsAt(Spot zone, Item item, Map<Skill, Step> stands, LocalDate day) {
    double sure = random.nextDouble();
    if (item.feed() == Feed.TEE) {
      return true;
    }
    Step choose = of(item, Skill.CHOOSE, stands);
    for (int b = 0; b < choose.bars().size(); b++) {
      switch (choose.bars().get(b).counted()) {
        case TAKES -> {
          if (zone.beltHigh()) {
            return sure < chance(choose, b, day);
          }
        }
        case CHASES -> {
          if (!zone.strike()) {
            return sure >= chance(choose, b, day);
          }
        }
        default -> throw new IllegalStateException("Not a choice: " + choose.bars().get(b));
      }
    }
    return sure < OTHER_STRIKES;
  }

  private String call(Spot zone, Item item, Map<Skill, Step> stands, LocalDate day) {
    Step step = of(item, Skill.SEE, stands);
    Grain grain = step.grain().orElseThrow();
    String right = grain.seen(zone);
    boolean good = random.nextDouble() < chance(step, 0, day);
    List<String> wrong =
        Arrays.stream(Spot.values())
            .map(grain::seen)
            .distinct()
            .filter(answer -> !answer.equals(right))
            .toList();
    String said = good ? right : wrong.get(random.nextInt(wrong.size()));
    return grain != Grain.STRIKE && said.equals(Spot.BALL.id()) ? "none" : said;
  }

  private Field called(Drill drill, Side side) {
    Drill.Fields fields = drill.fields().orElse(Drill.Fields.ANY);
    Field pull = side == Side.RIGHT ? Field.LEFT : Field.RIGHT;
    return switch (fields) {
      case PULL -> pull;
      case OPPOSITE -> pull == Field.LEFT ? Field.RIGHT : Field.LEFT;
      case ANY -> FIELDS.get(random.nextInt(FIELDS.size()));
    };
  }

  private String went(String field, Item item, Map<Skill, Step> stands, LocalDate day) {
    if (random.nextDouble() < chance(of(item, Skill.SEND, stands), 0, day)) {
      return field;
    }
    List<String> others =
        Arrays.stream(Went.values()).map(Went::id).filter(w -> !w.equals(field)).toList();
    return others.get(random.nextInt(others.size()));
  }

  private String hit(boolean hard) {
    double how = random.nextDouble();
    return hard ? "hard" : how < 0.6 ? "soft" : how < 0.8 ? "miss" : "foul";
  }
}
