package org.belthigh.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.belthigh.decide.Comeback;
import org.belthigh.model.Phrase;

/** Names the kind of each planned week, and says what is other than usual in it. */
final class WeekKinds {
  private static final int WEEK = 7;

  private final Rhythm rhythm;
  private final TimeOff timeOff;

  WeekKinds(Rhythm rhythm, TimeOff timeOff) {
    this.rhythm = rhythm;
    this.timeOff = timeOff;
  }

  /**
   * The planned weeks of one player, first to last.
   *
   * @param back the first days after a clearance; empty where there is none
   * @param easy what makes the first one easy; empty where nothing does
   */
  List<PlannedWeek> of(PlanRequest request, Optional<Comeback> back, Optional<EasyWeek> easy) {
    List<PlannedWeek> weeks = new ArrayList<>();
    for (int w = 0; w < request.weeks(); w++) {
      boolean first = w == 0;
      LocalDate day = request.from().plusDays((long) WEEK * w);
      weeks.add(week(day, back.filter(b -> b.on(day)), easy.filter(e -> first)));
    }
    return List.copyOf(weeks);
  }

  private PlannedWeek week(LocalDate first, Optional<Comeback> back, Optional<EasyWeek> easy) {
    if (timeOff.week(first)) {
      return new PlannedWeek(first, PlannedWeek.Kind.TIME_OFF, Optional.of(timeOff.says(first)));
    }
    if (back.isPresent()) {
      Phrase says = Phrase.of("week.back", "last", back.get().last());
      return new PlannedWeek(first, PlannedWeek.Kind.BACK, Optional.of(says));
    }
    if (easy.isPresent()) {
      return new PlannedWeek(first, PlannedWeek.Kind.EASY, easy.map(EasyWeek::says));
    }
    List<LocalDate> before = rhythm.daysBeforeTournament(first);
    if (!before.isEmpty()) {
      return light(first, PlannedWeek.Kind.BEFORE_TOURNAMENT, before);
    }
    List<LocalDate> lighter = rhythm.lighterDays(first);
    return lighter.isEmpty()
        ? new PlannedWeek(first, PlannedWeek.Kind.USUAL, Optional.empty())
        : light(first, PlannedWeek.Kind.LIGHTER, lighter);
  }

  private static PlannedWeek light(LocalDate first, PlannedWeek.Kind kind, List<LocalDate> days) {
    Phrase says =
        Phrase.of("week." + kind.id(), "first", days.get(0), "last", days.get(days.size() - 1));
    return new PlannedWeek(first, kind, Optional.of(says));
  }
}
