package org.belthigh.plan;

import java.time.LocalDate;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Space;

/** The numbers of {@code rules/parameters/load.yaml} in force on the day a plan is made for. */
final class Doses {
  /** Keeps 1.1 times 50 at 55. */
  private static final double ROUNDING = 1e-9;

  /** Some age, for numbers that are the same at every age. */
  private static final int ANY = 10;

  private final Catalogue catalogue;
  private final LocalDate on;

  Doses(Catalogue catalogue, LocalDate on) {
    this.catalogue = catalogue;
    this.on = on;
  }

  private int of(String id, int age) {
    return (int) catalogue.parameter(id).on(on).at(AgeBand.of(age));
  }

  int swingsPerSession(int age) {
    return of("swings-per-session", age);
  }

  int swingsPerWeek(int age) {
    return of("swings-per-week", age);
  }

  int swingDaysPerWeek(int age) {
    return of("swing-days-per-week", age);
  }

  int hittingDaysPerWeek(int age) {
    return of("hitting-days-per-week", age);
  }

  int freeDaysPerWeek(int age) {
    return of("free-days-per-week", age);
  }

  /** Hours of organised sport that an age allows in any seven days. */
  double hoursPerWeek(int age) {
    return age * catalogue.parameter("hours-per-week-per-year-of-age").on(on).at(AgeBand.of(age));
  }

  /** Most months of the sport in any twelve. */
  int sportMonthsPerYear(int age) {
    return of("sport-months-per-year", age);
  }

  /** Who says so, as sheets name a source. */
  String sportMonthsSource() {
    return source("sport-months-per-year");
  }

  /** Who says how many hours of sport a week may have, as sheets name a source. */
  String hoursSource() {
    return source("hours-per-week-per-year-of-age");
  }

  private String source(String id) {
    return catalogue.source(catalogue.parameter(id).on(on).source()).shortName();
  }

  /** Swings of a week that anybody may begin with. */
  int swingsPerWeekStart(int age) {
    return of("swings-week-start", age);
  }

  /** What a week may hold whose predecessors held {@code mean} swings; a convention, weak proof. */
  int risen(double mean, int age) {
    double rise = catalogue.parameter("swings-week-rise").on(on).at(AgeBand.of(age));
    return (int) Math.floor((1 + rise) * mean + ROUNDING);
  }

  /** Most swings on a day on which a pitcher's or a catcher's arm rests. */
  int swingsPerRestedSession(int age) {
    double share = catalogue.parameter("swings-share-after-pitching").on(on).at(AgeBand.of(age));
    return (int) Math.floor(share * swingsPerSession(age));
  }

  int heavyPitches(int age) {
    return of("heavy-pitches", age);
  }

  int heavyInningsCaught(int age) {
    return of("heavy-innings-caught", age);
  }

  int homeMinutes(int age) {
    return of("home-minutes", age);
  }

  int homeTosses(int age) {
    return of("home-tosses", age);
  }

  int homeDaysPerWeek(int age) {
    return of("home-days-per-week", age);
  }

  /** Home days of a lighter week, of the days before a tournament, and of an easy week. */
  int lighterHomeDays() {
    return of("lighter-home-days", ANY);
  }

  /** Most sessions running with one drill. */
  int sameDrillSessions() {
    return of("same-drill-sessions", ANY);
  }

  /** Every how many weeks one is lighter. */
  int lighterWeekEvery() {
    return of("lighter-week-every", ANY);
  }

  /** Part of the usual tosses that a light day has. */
  double lighterShare() {
    return catalogue.parameter("lighter-share").on(on).at(AgeBand.of(ANY));
  }

  /** A lighter week's share of {@code most}. */
  int lighter(int most) {
    return (int) Math.floor(lighterShare() * most + ROUNDING);
  }

  /** Days before a tournament that are light. */
  int lighterDaysBeforeTournament() {
    return of("lighter-days-before-tournament", ANY);
  }

  int stationMinutes(int age) {
    return of("station-minutes", age);
  }

  int stationMinutesLeast(int age) {
    return of("station-minutes-least", age);
  }

  int changeMinutes(int age) {
    return of("change-minutes", age);
  }

  int squadMost(int age) {
    return of("squad-most", age);
  }

  /** Most drills that a coach explains in one practice, at stations with or without an adult. */
  int drillsPerPractice(boolean adult) {
    return of(adult ? "drills-per-practice" : "watched-drills-per-practice", ANY);
  }

  /** Seconds that an easy toss at home is in the air. */
  double easyTossSeconds(int age) {
    return of("easy-toss-ms", age) / 1000.0;
  }

  /** Least seconds that a quick toss at home is in the air. */
  double quickTossSeconds(int age) {
    return of("quick-toss-ms", age) / 1000.0;
  }

  /** Farthest toss, in feet, that the room at home has. */
  int tossFeet(Space space) {
    return of(space.id() + "-toss-feet", ANY);
  }

  int batRingFeet() {
    return of("bat-ring-feet", ANY);
  }

  /** Free ground in front of who hits foam balls with easy swings. */
  int foamClearFeet() {
    return of("foam-clear-feet", ANY);
  }

  /** How far around the hitter nothing stands that a bat could reach. */
  int batReachFeet() {
    return of("bat-reach-feet", ANY);
  }

  /** Nearest that somebody fields to a hitter. */
  int fieldingFeet() {
    return of("fielding-feet", ANY);
  }

  int homeClearFeet() {
    return of("home-clear-feet", ANY);
  }
}
