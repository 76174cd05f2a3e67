package org.belthigh.cli;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.Step;
import org.belthigh.catalogue.Stricter;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.OtherSport;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Bats;
import org.belthigh.model.Call;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Side;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;

/**
 * A club made up from a seed, with twelve weeks of everything that a club folder may hold: odd
 * calendars, tournaments, rain, school breaks, other sport, outings beyond every limit, complaints
 * and clearances by whoever, logs, empty gear rooms and practices without an adult.
 */
final class RandomClub {
  static final int WEEKS = 12;
  private static final String CURRICULUM = "belthigh-2027";
  private static final Origin MADE_UP = Origin.of("made-up.csv");

  private final SplittableRandom dice;
  private final Catalogue catalogue;
  private final Curriculum curriculum;
  private final LocalDate first;
  private final List<Club.Group> groups = new ArrayList<>();
  private final List<Player> players = new ArrayList<>();
  private final List<Event> events = new ArrayList<>();
  private final List<Toss> tosses = new ArrayList<>();
  private final List<Tally> tallies = new ArrayList<>();
  private final List<Outing> outings = new ArrayList<>();
  private final List<Wellness> wellness = new ArrayList<>();
  private final List<OtherSport> others = new ArrayList<>();
  private final List<Placement> placements = new ArrayList<>();
  private final List<Unread> unread = new ArrayList<>();

  private RandomClub(long seed, Catalogue catalogue) {
    this.dice = new SplittableRandom(seed);
    this.catalogue = catalogue;
    this.curriculum = catalogue.curricula().get(CURRICULUM);
    this.first = LocalDate.of(2027, 1, 4).plusDays(dice.nextInt(240));
  }

  /** The club of {@code seed}: the same seed, the same club. */
  static ClubRecord of(long seed, Catalogue catalogue) {
    return new RandomClub(seed, catalogue).record();
  }

  private boolean chance(double share) {
    return dice.nextDouble() < share;
  }

  private <T> T one(List<T> things) {
    return things.get(dice.nextInt(things.size()));
  }

  private LocalDate day() {
    return first.plusDays(dice.nextInt(7 * WEEKS));
  }

  private ClubRecord record() {
    int count = 1 + dice.nextInt(2);
    for (int g = 0; g < count; g++) {
      group("g" + g);
    }
    for (Player player : players) {
      life(player);
    }
    return new ClubRecord(
        club(),
        players,
        events,
        tosses.stream().sorted((a, b) -> a.date().compareTo(b.date())).toList(),
        tallies,
        outings.stream().sorted((a, b) -> a.date().compareTo(b.date())).toList(),
        wellness,
        others,
        placements,
        unread,
        List.of());
  }

  private Club club() {
    List<String> books = new ArrayList<>();
    List<RuleBook> all = List.copyOf(catalogue.ruleBooks().values());
    for (int i = 0; i <= dice.nextInt(2); i++) {
      books.add(one(all).id());
    }
    Map<String, Integer> gear = new LinkedHashMap<>();
    if (chance(0.5)) {
      for (String thing : List.of("tees", "nets", "screens", "machines", "plastic_balls")) {
        gear.put(thing, dice.nextInt(4));
      }
    }
    Stricter stricter =
        chance(0.2)
            ? new Stricter(List.of(), List.of(), dice.nextInt(3), OptionalInt.empty())
            : Stricter.NONE;
    return new Club(
        "Made Up",
        "letter",
        List.of("en"),
        books.stream().distinct().toList(),
        first,
        first.plusDays(7L * WEEKS - 1),
        groups,
        CURRICULUM,
        gear,
        List.of(
            new Club.Venue("field", "Field", false, "", "", 1 + dice.nextInt(5), ""),
            new Club.Venue("cage", "Cage", true, "", "", 1 + dice.nextInt(2), "")),
        Optional.empty(),
        stricter);
  }

  private void group(String id) {
    int age = 7 + dice.nextInt(11);
    groups.add(new Club.Group(id, id, age, age + 1, chance(0.2), dice.nextInt(5)));
    calendar(id);
    int size = 1 + dice.nextInt(14);
    for (int i = 0; i < size; i++) {
      player(id + "p" + (100 + i), id, age + dice.nextInt(3) - 1);
    }
  }

  private void player(String id, String group, int age) {
    LocalDate born = first.minusYears(Math.max(6, age)).minusDays(dice.nextInt(365));
    Set<DayOfWeek> home = EnumSet.noneOf(DayOfWeek.class);
    if (chance(0.5)) {
      for (DayOfWeek d : DayOfWeek.values()) {
        if (chance(0.5)) {
          home.add(d);
        }
      }
    }
    players.add(
        new Player(
            id,
            "P" + id,
            Optional.empty(),
            born,
            one(List.of(Bats.values())),
            Optional.empty(),
            OptionalInt.empty(),
            group,
            chance(0.4),
            chance(0.2),
            Optional.empty(),
            OptionalDouble.empty(),
            "en",
            home,
            Optional.empty(),
            chance(0.05)));
  }

  private void calendar(String group) {
    if (chance(0.1)) {
      return;
    }
    double practice = dice.nextDouble() * 0.7;
    double game = dice.nextDouble() * 0.4;
    EnumSet<DayOfWeek> practiceDays = days(practice);
    EnumSet<DayOfWeek> gameDays = days(game);
    int breakWeek = dice.nextInt(WEEKS + 4);
    for (int i = -7; i < 7 * WEEKS + 7; i++) {
      LocalDate d = first.plusDays(i);
      if (i / 7 == breakWeek && i >= 0) {
        event(d, group, Event.Kind.BREAK);
        continue;
      }
      if (practiceDays.contains(d.getDayOfWeek())) {
        event(d, group, chance(0.05) ? Event.Kind.EVALUATION : Event.Kind.PRACTICE);
        if (chance(0.08)) {
          event(d, group, Event.Kind.OFF);
        }
      }
      if (gameDays.contains(d.getDayOfWeek())) {
        event(d, group, Event.Kind.GAME);
      }
      if (chance(0.03)) {
        event(d, group, Event.Kind.TOURNAMENT);
        event(d.plusDays(1), group, Event.Kind.TOURNAMENT);
      }
    }
  }

  private EnumSet<DayOfWeek> days(double share) {
    EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek d : DayOfWeek.values()) {
      if (chance(share)) {
        days.add(d);
      }
    }
    return days;
  }

  private void event(LocalDate day, String group, Event.Kind kind) {
    boolean practice = kind == Event.Kind.PRACTICE || kind == Event.Kind.EVALUATION;
    int minutes = chance(0.1) ? 0 : 45 + dice.nextInt(160);
    events.add(
        new Event(
            day,
            chance(0.9) ? Optional.of(group) : Optional.empty(),
            kind,
            Optional.empty(),
            minutes,
            practice ? dice.nextInt(Math.max(1, Math.min(minutes, 120))) : 0,
            chance(0.5) ? OptionalInt.of(dice.nextInt(6)) : OptionalInt.empty(),
            one(List.of("", "field", "cage", "the cage by the river")),
            "",
            MADE_UP));
  }

  private void life(Player player) {
    if (chance(0.3)) {
      sport(player);
    }
    if (chance(0.5)) {
      for (int i = dice.nextInt(14); i > 0; i--) {
        outing(player);
      }
    }
    if (chance(0.3)) {
      for (int i = 1 + dice.nextInt(4); i > 0; i--) {
        complaint(player);
      }
    }
    if (chance(0.6)) {
      for (int i = dice.nextInt(12); i > 0; i--) {
        log(player);
      }
    }
    if (chance(0.1)) {
      Skill skill = one(List.of(Skill.values()));
      Step step = one(curriculum.ladders().get(skill).steps());
      placements.add(
          new Placement(day(), player.id(), skill, step.id(), "coach", "the eye", MADE_UP));
    }
    if (chance(0.01)) {
      unread.add(
          new Unread(
              one(List.of(Unread.What.values())),
              Optional.of(player.id()),
              Optional.of(day()),
              MADE_UP));
    }
  }

  /** Other sport goes on week by week, as a family would say it. */
  private void sport(Player player) {
    for (DayOfWeek weekday : days(0.25)) {
      double hours = 0.5 * (1 + dice.nextInt(5));
      for (int i = -7; i < 7 * WEEKS; i++) {
        LocalDate d = first.plusDays(i);
        if (d.getDayOfWeek() == weekday) {
          others.add(new OtherSport(d, player.id(), hours, "sport", MADE_UP));
        }
      }
    }
  }

  private void outing(Player player) {
    outings.add(
        new Outing(
            day(),
            player.id(),
            dice.nextInt(130),
            one(List.of(Outing.Kind.values())),
            OptionalInt.empty(),
            OptionalDouble.empty(),
            chance(0.3) ? OptionalInt.of(dice.nextInt(8)) : OptionalInt.empty(),
            "",
            "",
            MADE_UP));
  }

  private void complaint(Player player) {
    Wellness.Kind kind =
        one(
            List.of(
                Wellness.Kind.ARM_PAIN,
                Wellness.Kind.BACK_PAIN,
                Wellness.Kind.HEAD_INJURY,
                Wellness.Kind.ILLNESS,
                Wellness.Kind.OTHER_PAIN));
    LocalDate from = day();
    row(from, player, kind, Optional.empty(), Optional.empty());
    if (chance(0.3)) {
      row(
          from.plusDays(dice.nextInt(5)),
          player,
          Wellness.Kind.SYMPTOM_FREE,
          Optional.empty(),
          Optional.empty());
    }
    if (chance(0.6)) {
      row(
          from.plusDays(dice.nextInt(9)),
          player,
          Wellness.Kind.CLEARED,
          Optional.of(kind),
          Optional.of(one(List.of(Wellness.Role.values()))));
    }
  }

  private void row(
      LocalDate day,
      Player player,
      Wellness.Kind kind,
      Optional<Wellness.Kind> clears,
      Optional<Wellness.Role> by) {
    wellness.add(new Wellness(day, player.id(), kind, clears, by, "", MADE_UP));
  }

  private void log(Player player) {
    LocalDate day = day();
    if (chance(0.3)) {
      MeasureKind measure = one(List.of(MeasureKind.values()));
      String drill =
          measure == MeasureKind.COUNTDOWN || measure == MeasureKind.FIELD_CALL
              ? measure.id()
              : "zone-call";
      int of = measure == MeasureKind.COUNTDOWN ? 12 : 1 + dice.nextInt(40);
      int made = measure == MeasureKind.COUNTDOWN ? 6 + dice.nextInt(7) : dice.nextInt(of + 1);
      tallies.add(
          new Tally(
              day, player.id(), drill, measure, made, of, Optional.of(Side.RIGHT), "", MADE_UP));
      return;
    }
    List<Drill> drills =
        curriculum.drills().values().stream().sorted((a, b) -> a.id().compareTo(b.id())).toList();
    Drill drill = one(drills);
    int count = 1 + dice.nextInt(drill.reps() * (chance(0.05) ? 20 : 1));
    double skill = dice.nextDouble();
    for (int i = 1; i <= count; i++) {
      Spot zone = one(List.of(Spot.values()));
      boolean swing = drill.swing() && chance(0.8);
      tosses.add(
          new Toss(
              day,
              player.id(),
              drill.id(),
              drill.kind(),
              drill.startCount(),
              !drill.swing(),
              "1",
              i,
              Side.RIGHT,
              zone,
              false,
              chance(skill) ? Call.parse(zone.id()) : Optional.empty(),
              drill.kind() == DrillKind.FIELD_CALL
                  ? Optional.of(Field.values()[i % Field.values().length])
                  : Optional.empty(),
              swing,
              swing ? Optional.of(chance(skill) ? Hit.HARD : Hit.SOFT) : Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              OptionalDouble.empty(),
              Optional.empty(),
              "",
              MADE_UP));
    }
  }
}
