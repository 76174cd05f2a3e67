package org.belthigh.decide;

import org.belthigh.model.Phrase;

/** Turns the verdicts of the pack {@code arm} into phrases: the rule's id and what fills it. */
final class ArmReasons {
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
            about.caught());
    return new Reason(verdict.rule(), withBars(withRest(phrase, about.rest()), about));
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
    Phrase more = phrase;
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
