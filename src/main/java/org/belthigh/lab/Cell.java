package org.belthigh.lab;

import java.util.List;
import org.belthigh.model.Share;

/**
 * What one trial gave.
 *
 * @param step the step that the age begins on
 * @param movedUp seasons in which the step was proved
 * @param firmedUp seasons in which a look said firm up before that
 * @param meanTosses counted tosses up to the end of the day that proved it, over the seasons in
 *     which it was; NaN where it never was
 * @param byWeek seasons in which it was proved by the end of each week, from the first
 * @param wald Wald's expected number at the same errors for a hitter at the mark; for two kinds,
 *     twice that of the slower one
 * @param eightOfTen the same for a bar of eight of the last ten tosses, looked at weekly
 * @param firstLook intervals shown after the first week that hold the true share
 * @param lastLook the same at the last look at this step, which is the one that moves up where one
 *     does
 * @param plain as {@code lastLook}, for the plain share with twice its standard error
 */
public record Cell(
    Trial trial,
    String step,
    Share movedUp,
    Share firmedUp,
    double meanTosses,
    List<Integer> byWeek,
    double wald,
    Baseline eightOfTen,
    Share firstLook,
    Share lastLook,
    Share plain) {
  public Cell {
    byWeek = List.copyOf(byWeek);
  }

  /**
   * What a bar of eight in ten would have done.
   *
   * @param byWeek seasons in which it had moved up by the end of each week
   */
  public record Baseline(Share movedUp, double meanTosses, List<Integer> byWeek) {
    public Baseline {
      byWeek = List.copyOf(byWeek);
    }
  }

  /** What was tried. */
  Scenario scenario() {
    return trial.scenario();
  }

  /** Seasons in which the step was never proved. */
  public Share missed() {
    return new Share(movedUp.seen() - movedUp.made(), movedUp.seen());
  }

  /** Mean tosses over Wald's number; NaN where the step was never proved. */
  public double ratio() {
    return meanTosses / wald;
  }

  /** The week by whose end half of the seasons had the step proved; 0 where they never had. */
  public int medianWeek() {
    for (int week = 1; week <= byWeek.size(); week++) {
      if (2 * byWeek.get(week - 1) >= movedUp.seen()) {
        return week;
      }
    }
    return 0;
  }

  /** Seasons in which a learner was moved up on a card printed before the mark was reached. */
  public Share early() {
    return early(byWeek);
  }

  /** The same for any weekly record. */
  Share early(List<Integer> weekly) {
    int before = reached();
    return new Share(before < 1 ? 0 : weekly.get(before - 1), movedUp.seen());
  }

  /**
   * Mean weeks from the beginning of the week in which a learner reaches the mark to the card that
   * moves up, over the seasons in which one does after that.
   */
  double wait(List<Integer> weekly) {
    double sum = 0;
    int late = 0;
    for (int week = reached() + 1; week <= weekly.size(); week++) {
      sum += moved(weekly, week) * (week - (double) reached());
      late += moved(weekly, week);
    }
    return late == 0 ? Double.NaN : sum / late;
  }

  /**
   * Weeks between reaching the mark and the card that moves up, whichever comes first, added over
   * all seasons; to the end of the season where there is no such card.
   */
  double wrongStep(List<Integer> weekly) {
    int never = movedUp.seen() - weekly.get(weekly.size() - 1);
    double sum = never * (double) (weekly.size() - reached());
    for (int week = 1; week <= weekly.size(); week++) {
      sum += moved(weekly, week) * (double) Math.abs(week - reached());
    }
    return sum;
  }

  private static int moved(List<Integer> weekly, int week) {
    return weekly.get(week - 1) - (week == 1 ? 0 : weekly.get(week - 2));
  }

  /** Whole weeks gone when the mark is reached; 0 for whoever is there from the start. */
  private int reached() {
    return Math.max(0, trial.scenario().crossing() - 1);
  }
}
