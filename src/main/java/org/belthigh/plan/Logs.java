package org.belthigh.plan;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;

/** Blank log sheets: which drills are written down, and what one mark means. */
final class Logs {
  /** Boxes for each player of a group. */
  private static final int TOSSES = 12;

  private final Curriculum curriculum;

  Logs(Curriculum curriculum) {
    this.curriculum = curriculum;
  }

  /** A sheet for each drill of {@code practices} that asks for a log, with a line a player. */
  List<LogSheet> sheets(List<PracticeSheet> practices, List<Label> players) {
    Map<String, DrillText> drills = new LinkedHashMap<>();
    practices.stream()
        .flatMap(p -> p.usualDrills().stream())
        .forEach(d -> drills.putIfAbsent(d.id(), d));
    return drills.values().stream()
        .filter(d -> curriculum.drill(d.id()).logged())
        .map(
            d ->
                new LogSheet(
                    d, players, TOSSES, marks(d.id()), typed(d.id()), Phrase.of("log.who")))
        .toList();
  }

  /** One player's sheet for the week from {@code first}. */
  OwnLog own(List<Day> days, LocalDate first) {
    LocalDate last = first.plusDays(6);
    List<Day> week = days.stream().filter(d -> !d.date().isAfter(last)).toList();
    List<OwnLog.Drill> drills =
        week.stream()
            .flatMap(d -> d.items().stream())
            .map(Item::drill)
            .distinct()
            .filter(id -> curriculum.drill(id).logged())
            .map(id -> drill(id, week))
            .toList();
    return new OwnLog(first, last, drills);
  }

  private OwnLog.Drill drill(String id, List<Day> week) {
    List<LocalDate> days =
        week.stream().filter(d -> of(id, d).findAny().isPresent()).map(Day::date).toList();
    int most = week.stream().flatMap(d -> of(id, d)).mapToInt(Item::reps).max().orElseThrow();
    return new OwnLog.Drill(curriculum.drill(id).name(), days, most, marks(id));
  }

  private static Stream<Item> of(String drill, Day day) {
    return day.items().stream().filter(item -> item.drill().equals(drill));
  }

  private List<Phrase> marks(String id) {
    Drill drill = curriculum.drill(id);
    if (chosen(drill)) {
      return List.of(Phrase.of("log.choose.let-go"), Phrase.of("log.choose.swung"));
    }
    return switch (drill.kind()) {
      case ZONE_CALL -> List.of(Phrase.of("log.zone-call.right"), Phrase.of("log.zone-call.wrong"));
      case COUNTDOWN -> List.of(Phrase.of("log.countdown.hard"), Phrase.of("log.countdown.other"));
      case FIELD_CALL -> List.of(Phrase.of("log.field-call.made"), Phrase.of("log.field-call.not"));
      case NONE -> List.of(Phrase.of("log.plain.good"), Phrase.of("log.plain.not"));
    };
  }

  /** What may stand in a box instead: the words of a typed log. */
  private Phrase typed(String id) {
    Drill drill = curriculum.drill(id);
    if (chosen(drill)) {
      return Phrase.of("log.typed.choose");
    }
    // a spot and a call without a swing are a take, so that who swings must be told
    boolean swingToo = drill.kind() == DrillKind.ZONE_CALL && drill.swing();
    return Phrase.of("log.typed." + drill.kind().id() + (swingToo ? "-swing" : ""));
  }

  /** Takes and swings by spot are told by no tick. */
  private static boolean chosen(Drill drill) {
    return drill.kind() == DrillKind.NONE && drill.skill() != Skill.DRIVE;
  }
}
