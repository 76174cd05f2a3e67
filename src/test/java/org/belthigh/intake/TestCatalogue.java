package org.belthigh.intake;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Evidence;
import org.belthigh.catalogue.Growth;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.Step;
import org.belthigh.catalogue.WhoEnds;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Grain;
import org.belthigh.model.LocalText;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/** A small catalogue: one rule book, one curriculum with a drill of each kind and one see step. */
public final class TestCatalogue {
  /** The real table: clubs are read with it, whatever the curriculum. */
  static final WhoEnds WHO_ENDS = CatalogueLoader.load().orThrow().whoEnds();

  private static final LocalText TEXT = LocalText.of("text", "texto");

  private TestCatalogue() {}

  /** The catalogue. */
  public static Catalogue small() {
    return bare().with(WHO_ENDS);
  }

  private static Catalogue bare() {
    return new Catalogue(
        Map.of(),
        Map.of("swings-per-week", ceiling()),
        Map.of("pitch-smart-2018", ruleBook("pitch-smart-2018")),
        Map.of(),
        List.of(),
        Map.of("small", curriculum()),
        new Growth(List.of()));
  }

  private static Parameter ceiling() {
    Map<AgeBand, Double> swings = new EnumMap<>(AgeBand.class);
    for (AgeBand band : AgeBand.values()) {
      swings.put(band, 200.0);
    }
    LocalDate day = LocalDate.of(2026, 1, 1);
    Parameter.Dated value =
        new Parameter.Dated(day, swings, "common-practice", Evidence.JUDGEMENT, "");
    return new Parameter(
        "swings-per-week", "text", "swings", 0, 900, "reviewed", day, List.of(value));
  }

  private static Curriculum curriculum() {
    return new Curriculum(
        "small",
        "1",
        "reviewed",
        TEXT,
        Map.of(Skill.SEE, new Curriculum.Ladder(Skill.SEE, TEXT, List.of(step("see-1", 1)))),
        Map.of(
            "zone-call", drill("zone-call", Skill.SEE, DrillKind.ZONE_CALL, 12),
            "countdown", drill("countdown", Skill.DRIVE, DrillKind.COUNTDOWN, 12),
            "short-countdown", drill("short-countdown", Skill.DRIVE, DrillKind.COUNTDOWN, 7),
            "field-call", drill("field-call", Skill.SEND, DrillKind.FIELD_CALL, 12),
            "tee-work", drill("tee-work", Skill.DRIVE, DrillKind.NONE, 12),
            "choice-work", drill("choice-work", Skill.CHOOSE, DrillKind.NONE, 12)),
        Map.of());
  }

  private static Step step(String id, int rung) {
    return new Step(
        id,
        Skill.SEE,
        rung,
        TEXT,
        TEXT,
        TEXT,
        TEXT,
        Optional.empty(),
        Step.Measured.ZONE_CALL,
        Optional.of(Grain.NINE),
        7,
        OptionalInt.empty(),
        OptionalInt.of(7),
        OptionalInt.of(18),
        List.of(),
        12,
        List.of(),
        List.of("zone-call"));
  }

  private static Drill drill(String id, Skill skill, DrillKind kind, int start) {
    Drill.Variant variant = new Drill.Variant(Optional.empty(), TEXT);
    return new Drill(
        id,
        TEXT,
        skill,
        kind,
        TEXT,
        TEXT,
        TEXT,
        true,
        true,
        Map.of(Place.FIELD, Ball.BASEBALL),
        Feed.FRONT_TOSS,
        Map.of(),
        OptionalInt.empty(),
        new Drill.Mix(20, 50, 10, 20),
        Optional.empty(),
        start,
        12,
        12,
        10,
        4,
        1,
        0,
        List.of(),
        Drill.Safety.FRONT_TOSS,
        variant,
        variant,
        Optional.empty());
  }

  private static RuleBook ruleBook(String id) {
    return new RuleBook(
        id,
        Optional.empty(),
        "Test",
        "Test",
        "2018",
        Optional.of(LocalDate.of(2018, 1, 1)),
        Optional.empty(),
        RuleBook.AgeBasis.ACTUAL,
        List.of(),
        RuleBook.Status.CONFIRMED,
        List.of(band(9, 10, 75), band(11, 12, 85)),
        OptionalInt.of(2),
        Optional.empty(),
        RuleBook.SameDay.UNSAID,
        Optional.empty(),
        false,
        RuleBook.LegalCount.EVERY_PITCH,
        List.of(),
        List.of(),
        List.of());
  }

  private static RuleBook.Band band(int ageFrom, int ageTo, int dailyMax) {
    return new RuleBook.Band(
        ageFrom,
        ageTo,
        dailyMax,
        OptionalInt.of(150),
        List.of(new RuleBook.RestRow(1, OptionalInt.empty(), 1, true)));
  }
}
