package org.belthigh.cli;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.belthigh.handout.Print;
import org.belthigh.plan.PlanRequest;

/**
 * What is asked of a plan, whichever club it is for.
 *
 * <p>Two equal orders on the same files give the same bytes, and so their texts are equal too.
 *
 * @param from first day to plan
 * @param weeks 1 to {@link PlanRequest#MOST_WEEKS}
 * @param groups ids; empty for all
 * @param players ids; empty for all
 * @param books ids of rule books beside the club's own
 * @param paper empty for the club's
 * @param language empty for the club's and each family's own
 * @param prints what to print
 * @param large in large print
 * @param preview a picture beside each print
 * @param history whether to look back at what was handed out, and keep this plan
 * @param redact whether the club is made fit for showing to others; then nothing is kept
 */
record PlanOrder(
    LocalDate from,
    int weeks,
    Set<String> groups,
    Set<String> players,
    Set<String> books,
    Optional<String> paper,
    Optional<String> language,
    Set<Print> prints,
    boolean large,
    boolean preview,
    boolean history,
    boolean redact) {
  PlanOrder {
    groups = ordered(groups);
    players = ordered(players);
    books = ordered(books);
    prints = Collections.unmodifiableSet(EnumSet.copyOf(prints));
  }

  /** As given: a set without an order would make another text of the same order. */
  private static Set<String> ordered(Set<String> ids) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(ids));
  }

  /**
   * The same as the planner takes it.
   *
   * @param groups by their ids in the club's record
   * @param named the players by their ids in the club's record
   */
  PlanRequest request(Set<String> groups, Set<String> named) {
    return new PlanRequest(
        from, weeks, groups, named, paper, language, prints.contains(Print.SEASON));
  }

  /** Whether this plan is kept in the club folder. */
  boolean keeps() {
    return history && !redact;
  }
}
