/**
 * The second pair of eyes: reads a finished plan and looks for what must not be. It never plans
 * again and compares.
 *
 * <p>What it shares with planner and decider, and why:
 *
 * <ul>
 *   <li>The club folder as {@code intake} reads it, rows of wellness and throws included: one
 *       reading of raw files, so that a file has one meaning. A row that intake loses is in {@code
 *       ClubRecord.unread}, and holds here too.
 *   <li>The catalogue: rule books, parameters, curriculum, sources. They are data; how they are
 *       applied is written anew here.
 *   <li>{@link org.belthigh.audit.DecisionCheck} asks {@code decide.Progress} again: it sees that a
 *       plan says what was decided, not that the decider is right.
 *   <li>{@code words}, for the sentences of decisions and for safety sentences. Which of them must
 *       stand on a sheet is the auditor's own list.
 * </ul>
 *
 * <p>Of its own: holds ({@link org.belthigh.audit.HealthDays}, walked day by day), arms and rest
 * ({@link org.belthigh.audit.ArmsCheck}, {@link org.belthigh.audit.ArmsOwed}), loads, distances,
 * ages, gear, places, the calendar, lighter weeks and who is where. Neither {@code plan} nor the
 * rules of {@code decide} are called for them.
 *
 * <p>Not checked, since nothing beside the plan says it, or a sound plan may have it either way:
 * which of our reasons stands on a practice without hitting, the counts of {@code last_plan}
 * against what was handed out (the history is not read), who is where in the other ways of a
 * practice (the plan has no rotations of them), {@code kept} and {@code pictures}, and, in later
 * weeks, whether a practice has work for the child: it is provisional, and has no stations yet.
 */
package org.belthigh.audit;
