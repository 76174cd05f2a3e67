package org.belthigh.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether one player may pitch and catch on one day.
 *
 * @param answer by the rule book's own age, every pitch of every team counted; where several books
 *     apply, the strictest
 * @param bothAges the stricter of calendar age and league age, to be shown beside the answer
 * @param lastBatter what the league allows by leaving out pitches to the last batter; empty where
 *     no book of the club does that
 * @param mayCatch by the rule book's catcher rules for that day, and no stop
 * @param knownTo last day of which any outing was reported, 0 pitches included; empty for never
 * @param askFirst for a pitcher of whom too long nothing was heard, and where no standard exists;
 *     then no answer is a yes
 * @param because why, the reasons against first; never empty
 */
public record ArmStatus(
    String player,
    Answer answer,
    Answer bothAges,
    Optional<Answer> lastBatter,
    boolean mayCatch,
    Optional<LocalDate> knownTo,
    boolean askFirst,
    List<Reason> because) {
  public ArmStatus {
    Objects.requireNonNull(answer);
    Objects.requireNonNull(bothAges);
    because = List.copyOf(because);
    if (askFirst && (answer.mayPitch() || bothAges.mayPitch() || leagueSaysYes(lastBatter))) {
      throw new IllegalArgumentException("Ask first: until then " + player + " may not pitch");
    }
    if (because.isEmpty()) {
      throw new IllegalArgumentException("An arm status says why, but " + player + "'s does not");
    }
  }

  /**
   * This status, made stricter by another one of the same player and day that knows more. Whom one
   * of them asks about first is asked about.
   */
  ArmStatus stricter(ArmStatus later) {
    boolean ask = askFirst || later.askFirst;
    return new ArmStatus(
        player,
        stricter(answer, later.answer, ask),
        stricter(bothAges, later.bothAges, ask),
        lastBatter.flatMap(a -> later.lastBatter.map(b -> stricter(a, b, ask))),
        mayCatch && later.mayCatch,
        knownTo,
        ask,
        because(later, ask));
  }

  private static Answer stricter(Answer one, Answer other, boolean ask) {
    Answer both = one.opened().stricter(other.opened());
    return ask ? both.untilAsked() : both;
  }

  /** Why: also what was not known before, where that makes a difference; no yes beside a no. */
  private List<Reason> because(ArmStatus later, boolean ask) {
    boolean barred = answer.opened().mayPitch() && !later.answer.opened().mayPitch();
    if (!barred && mayCatch == (mayCatch && later.mayCatch) && askFirst == ask) {
      return because;
    }
    List<Reason> all =
        Stream.concat(because.stream(), later.because.stream())
            .filter(r -> !(barred || ask) || !r.saysYes())
            .distinct()
            .toList();
    return all.isEmpty() ? later.because : all;
  }

  private static boolean leagueSaysYes(Optional<Answer> lastBatter) {
    return lastBatter.filter(Answer::mayPitch).isPresent();
  }

  /**
   * One answer about pitching.
   *
   * @param pitchesLeft what the day still allows; 0 where {@code mayPitch} is false
   * @param eligibleFrom first day on which pitching is allowed if nothing more is thrown; the day
   *     asked about where {@code mayPitch} is true; empty where only a person can end the wait
   * @param ifNothingThrown what stands where somebody was asked and nothing was thrown; empty where
   *     nobody has to be asked
   */
  public record Answer(
      boolean mayPitch,
      int pitchesLeft,
      Optional<LocalDate> eligibleFrom,
      Optional<Answer> ifNothingThrown) {
    public Answer {
      if (ifNothingThrown.isPresent() && (mayPitch || eligibleFrom.isPresent())) {
        throw new IllegalArgumentException(
            "Who must be asked first may not pitch until then, on no day");
      }
      if (mayPitch != (pitchesLeft > 0) || pitchesLeft < 0) {
        throw new IllegalArgumentException(
            "Who may pitch has pitches left, but mayPitch is "
                + mayPitch
                + " and pitchesLeft is "
                + pitchesLeft);
      }
    }

    /** An answer that waits for nobody's word. */
    public Answer(boolean mayPitch, int pitchesLeft, Optional<LocalDate> eligibleFrom) {
      this(mayPitch, pitchesLeft, eligibleFrom, Optional.empty());
    }

    /** The answer while somebody must be asked: no. What a yes would allow stands beside it. */
    public Answer untilAsked() {
      return new Answer(false, 0, Optional.empty(), Optional.of(opened()));
    }

    /** Neither more than this nor more than {@code other}, both opened. */
    private Answer stricter(Answer other) {
      boolean may = mayPitch && other.mayPitch;
      return new Answer(
          may,
          may ? Math.min(pitchesLeft, other.pitchesLeft) : 0,
          eligibleFrom.flatMap(a -> other.eligibleFrom.map(b -> a.isAfter(b) ? a : b)));
    }

    /** What stands where nothing was thrown that is not known. */
    public Answer opened() {
      return ifNothingThrown.orElse(this);
    }
  }

  /** Whether the player may pitch that day, by the rule book and what is known. */
  public boolean mayPitch() {
    return answer.mayPitch();
  }

  /** What the day still allows; 0 where pitching is not allowed. */
  public int pitchesLeft() {
    return answer.pitchesLeft();
  }

  /** First day on which pitching is allowed; empty where only a person can end the wait. */
  public Optional<LocalDate> eligibleFrom() {
    return answer.eligibleFrom();
  }
}
