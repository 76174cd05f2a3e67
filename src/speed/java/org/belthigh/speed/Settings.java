package org.belthigh.speed;

/**
 * How long is measured.
 *
 * @param forks JVMs for each warm row
 * @param warmUps iterations that are not counted, in each of them
 * @param iterations that are counted
 * @param millis of one iteration
 * @param coldRuns processes of each kind
 * @param league players of the league
 * @param leagueRuns of it, at most
 * @param large whether 100,000 players are planned too
 */
record Settings(
    int forks,
    int warmUps,
    int iterations,
    int millis,
    int coldRuns,
    int league,
    int leagueRuns,
    boolean large) {
  /** Players of the very large league. */
  static final int LARGE = 100_000;

  /** Seconds after which a league is not planned once more. */
  static final double BUDGET = 90;

  /** As the system properties {@code speed.quick} and {@code speed.large} say. */
  static Settings told() {
    boolean large = Boolean.getBoolean("speed.large");
    return quick()
        ? new Settings(1, 1, 2, 100, 2, 28, 1, large)
        : new Settings(2, 3, 5, 1000, 11, 2_000, 3, large);
  }

  /** Only to see that everything runs: the figures mean nothing. */
  static boolean quick() {
    return Boolean.getBoolean("speed.quick");
  }
}
