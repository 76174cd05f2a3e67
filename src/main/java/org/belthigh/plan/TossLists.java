package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Drill;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.measure.Skills;
import org.belthigh.model.Bats;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;

/** Where to toss to, toss by toss, for each hitter of a club: turned towards what goes wrong. */
final class TossLists {
  private final Map<String, PlayerMeasures> measures;

  private TossLists(Map<String, PlayerMeasures> measures) {
    this.measures = Map.copyOf(measures);
  }

  /** Lists for the players of {@code known}. */
  static TossLists of(ClubRecord known) {
    return new TossLists(
        Measures.of(known).stream().collect(Collectors.toMap(PlayerMeasures::player, m -> m)));
  }

  /** Whether a person tosses and can aim: not off a tee, from a machine or without a ball. */
  static boolean aimed(Drill drill) {
    return switch (drill.feed()) {
      case FLIP, FRONT_TOSS, OVERHAND -> true;
      case TEE, MACHINE, NONE -> false;
    };
  }

  /** The tosses at home on {@code day}; the same day gives the same tosses. */
  List<ListedToss> home(
      Player player, LocalDate day, Drill drill, SkillDecision decision, int tosses) {
    return script(
        player,
        day,
        drill,
        decision,
        tosses,
        toss -> homeSide(player, toss, tosses),
        player.id() + '|' + day);
  }

  /**
   * The tosses of one stay at a station; another stay of the day has others.
   *
   * @param rotation number of the stay
   * @param side where the hitter stands
   */
  List<ListedToss> station(
      Player player,
      LocalDate day,
      Drill drill,
      SkillDecision decision,
      int tosses,
      int rotation,
      Side side) {
    return script(
        player,
        day,
        drill,
        decision,
        tosses,
        toss -> side,
        player.id() + '|' + day + '|' + drill.id() + '|' + rotation);
  }

  /** A switch hitter hits the first half from the right side. */
  private static Side homeSide(Player player, int toss, int tosses) {
    return player.bats() == Bats.SWITCH && 2 * toss >= tosses ? Side.LEFT : HomeWork.side(player);
  }

  private List<ListedToss> script(
      Player player,
      LocalDate day,
      Drill drill,
      SkillDecision decision,
      int tosses,
      IntFunction<Side> side,
      String seed) {
    Map<Spot, Double> shares = TossLaw.shares(drill.mix());
    PlayerMeasures known = measures.get(player.id());
    Grain grain = drill.fields().isEmpty() ? HomeWork.grain(decision) : Grain.ROW;
    TossLaw law =
        new TossLaw(
            known == null ? shares : turned(shares, drill, grain, known.skills()), tosses, grain);
    Map<Field, Share> sent = known == null ? Map.of() : sent(known.skills());
    return ListedToss.script(law, drill, player.ageOn(day), side, sent, seed);
  }

  /** Towards what the drill is about, where the log tells it by spot. */
  private static Map<Spot, Double> turned(
      Map<Spot, Double> shares, Drill drill, Grain grain, Skills skills) {
    if (drill.kind() == DrillKind.ZONE_CALL) {
      return WeakSpots.turned(shares, grain, skills.see().at(grain).all());
    }
    return switch (drill.skill()) {
      case CHOOSE -> WeakSpots.turned(shares, skills.choose().swungAt());
      case DRIVE -> WeakSpots.turned(shares, skills.drive().hardAt());
      case SEE, SEND -> shares;
    };
  }

  private static Map<Field, Share> sent(Skills skills) {
    return skills.send().byField().entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().swings()));
  }
}
