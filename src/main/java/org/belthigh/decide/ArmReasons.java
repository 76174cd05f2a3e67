package org.belthigh.decide;

import org.belthigh.model.Phrase;

/** Turns the verdicts of the pack {@code arm} into phrases: the rule's id and what fills it. */
final class ArmReasons {
  private static final int THIRDS = 3;

  private ArmReasons() {}

  static Reason of(ArmVerdict verdict) {
    ArmDay about = verdict.about();
    Phrase phrase =
        Phrase.of(
            verdict.rule(),
            "player",
            about.name(),
            "book",
            about.book(),
            "day",
            about.day(),
            "age",
            about.age(),
            "thrown",
            about.thrown(),
            "limit",
            about.dailyMax(),
            "left",
            about.left(),
            "run",
            about.inARow(),
            "caught",
            about.caught(),
            "edition",
            about.edition());
    return new Reason(
        verdict.rule(), withBars(withRest(phrase, about.rest()), about), verdict.saysYes());
  }

  private static Phrase withRest(Phrase phrase, ArmDay.Rest rest) {
    if (rest.equals(ArmDay.Rest.NOT_OWED)) {
      return phrase;
    }
    return phrase
        .with("pitches", rest.pitches())
        .with("date", rest.outing())
        .with("days", rest.days())
        .with("from", rest.over());
  }

  private static Phrase withBars(Phrase phrase, ArmDay about) {
    Phrase more = withCounts(phrase, about);
    if (about.mostInARow() != ArmDay.NONE) {
      more = more.with("most", about.mostInARow());
    }
    if (about.catcherRules()) {
      more =
          more.with("caughtBar", about.caughtBar())
              .with("thrownBar", about.thrownBar())
              .with("returnBar", about.returnBar());
    }
    return more;
  }

  private static Phrase withCounts(Phrase phrase, ArmDay about) {
    Phrase more = phrase;
    if (about.week().most() != ArmDay.NONE) {
      more = more.with("week", about.week().so()).with("weekMost", about.week().most());
    }
    if (about.appearances().most() != ArmDay.NONE) {
      more =
          more.with("appearances", about.appearances().so())
              .with("appearancesMost", about.appearances().most());
    }
    if (about.innings().most() != ArmDay.NONE) {
      more =
          more.with("innings", about.innings().so() / THIRDS)
              .with("inningsMost", about.innings().most() / THIRDS)
              .with("unwritten", about.innings().unwritten());
    }
    return more;
  }

  static Reason of(YearVerdict verdict) {
    ThrowingYear about = verdict.about();
    return new Reason(
        verdict.rule(),
        Phrase.of(
            verdict.rule(),
            "player",
            about.name(),
            "book",
            about.book(),
            "months",
            about.months(),
            "most",
            about.mostMonths(),
            "free",
            about.free(),
            "least",
            about.leastFree()));
  }

  static Reason of(ReportVerdict verdict) {
    LastReport about = verdict.about();
    return new Reason(
        verdict.rule(),
        Phrase.of(
            verdict.rule(),
            "player",
            about.name(),
            "date",
            about.date(),
            "days",
            about.daysAgo(),
            "most",
            about.askAfter()));
  }

  static Reason of(DayVerdict verdict) {
    PitchedDay about = verdict.about();
    return new Reason(
        verdict.rule(),
        Phrase.of(
            verdict.rule(),
            "player",
            about.name(),
            "book",
            about.book(),
            "date",
            about.date(),
            "pitches",
            about.pitches(),
            "limit",
            about.dailyMax()));
  }
}
