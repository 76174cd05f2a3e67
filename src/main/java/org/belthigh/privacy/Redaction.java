package org.belthigh.privacy;

import java.time.temporal.TemporalAdjusters;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.history.Handed;
import org.belthigh.history.History;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.OtherSport;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Player;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * A club made fit for showing to others: children are P1, P2, … in roster order, born on the first
 * of their month, without shirt number and notes; grown-ups, teams, places and files have numbers
 * too, and nothing that somebody wrote in words stays. What was tossed, hit, thrown and reported
 * stays as it was, and so do group ids.
 */
public final class Redaction {
  private static final String WORDS = "not shown";

  /** Neutral words by the word that they stand for, a list for each kind of thing. */
  private final Map<String, Map<String, String>> neutral = new LinkedHashMap<>();

  private final ClubRecord record;

  private Redaction(ClubRecord real) {
    real.players().stream().map(Player::id).forEach(this::id);
    this.record =
        new ClubRecord(
            club(real.club()),
            real.players().stream().map(this::player).toList(),
            real.events().stream().map(e -> event(e, real.club())).toList(),
            real.tosses().stream().map(this::toss).toList(),
            real.tallies().stream().map(this::tally).toList(),
            real.outings().stream().map(this::outing).toList(),
            real.wellness().stream().map(this::wellness).toList(),
            real.otherSports().stream().map(this::otherSport).toList(),
            real.placements().stream().map(this::placement).toList(),
            real.unread().stream().map(this::unread).toList(),
            real.problems().stream().map(this::problem).toList());
  }

  /** The club {@code real} without anything that tells who is who. */
  public static Redaction of(ClubRecord real) {
    return new Redaction(real);
  }

  /** The club as it may be shown. */
  public ClubRecord record() {
    return record;
  }

  /** The id that stands for {@code real}. */
  public String id(String real) {
    return stand("p", real);
  }

  /** What was handed out before, by the ids that stand for the real ones. */
  public History history(History real) {
    return History.of(
        real.plans().stream()
            .map(
                plan ->
                    new Handed(
                        plan.from(),
                        plan.sessions().stream().map(this::session).toList(),
                        plan.steps().stream().map(this::stood).toList()))
            .toList());
  }

  private Handed.Session session(Handed.Session s) {
    return new Handed.Session(
        s.date(), id(s.player()), s.place(), s.drill(), s.reps(), s.swings(), s.minutes());
  }

  private Handed.Stood stood(Handed.Stood s) {
    return new Handed.Stood(id(s.player()), s.skill(), s.step(), s.decision());
  }

  /** That something is wrong stays, without what and in which file of what name. */
  private Problem problem(Problem real) {
    return new Problem(
        real.weight(),
        origin(real.origin()),
        "",
        "something is to be looked at here",
        "with --redact nothing of the input is quoted",
        "Give the command without --redact to see it.");
  }

  /** One word for each word: {@code p1} for the first that is asked for, and so on. */
  private String stand(String kind, String real) {
    Map<String, String> words = neutral.computeIfAbsent(kind, k -> new LinkedHashMap<>());
    return real.isEmpty() ? "" : words.computeIfAbsent(real, r -> kind + (words.size() + 1));
  }

  private Origin origin(Origin real) {
    return new Origin(stand("file-", real.file()), real.line(), real.column(), real.onSheet());
  }

  private Club club(Club c) {
    return new Club(
        "A club",
        c.paper(),
        c.languages(),
        c.ruleBooks(),
        c.seasonFirst(),
        c.seasonLast(),
        c.groups().stream()
            .map(
                g ->
                    new Club.Group(
                        g.id(), g.id(), g.ageFrom(), g.ageTo(), g.softball(), g.tossers()))
            .toList(),
        c.curriculum(),
        c.equipment(),
        c.places().stream().map(this::venue).toList(),
        Optional.empty(),
        c.stricter());
  }

  private Club.Venue venue(Club.Venue v) {
    String id = stand("place-", v.id());
    return new Club.Venue(id, id, v.cage(), "", "", v.stations(), "");
  }

  private String place(String real, Club club) {
    if (club.places().stream().anyMatch(v -> v.id().equals(real))) {
      return stand("place-", real);
    }
    return real.toLowerCase(Locale.ROOT).contains("cage") ? "cage" : real.isEmpty() ? "" : "field";
  }

  private Player player(Player p) {
    String id = id(p.id());
    return new Player(
        id,
        id.toUpperCase(Locale.ROOT),
        Optional.empty(),
        p.born().with(TemporalAdjusters.lastDayOfMonth()), // younger, never older, than the child
        p.bats(),
        p.throwsWith(),
        OptionalInt.empty(),
        p.group(),
        p.pitches(),
        p.catches(),
        p.sex(),
        p.heightCm(),
        p.language(),
        p.homeDays(),
        Optional.empty(),
        p.guest(),
        p.home());
  }

  private Event event(Event e, Club club) {
    return new Event(
        e.date(),
        e.group(),
        e.kind(),
        e.start(),
        e.minutes(),
        e.hittingMinutes(),
        e.adults(),
        place(e.place(), club),
        "",
        origin(e.origin()));
  }

  private Toss toss(Toss t) {
    return new Toss(
        t.date(),
        id(t.player()),
        t.drill(),
        t.kind(),
        t.startCount(),
        t.watched(),
        t.round(),
        t.order(),
        t.side(),
        t.zone(),
        t.nearEdge(),
        t.called(),
        t.field(),
        t.swing(),
        t.hit(),
        t.went(),
        t.timing(),
        t.ball(),
        t.feed(),
        t.feet(),
        t.place(),
        stand("coach-", t.by()),
        origin(t.origin()));
  }

  private Tally tally(Tally t) {
    return new Tally(
        t.date(),
        id(t.player()),
        t.drill(),
        t.measure(),
        t.made(),
        t.of(),
        t.side(),
        stand("coach-", t.by()),
        origin(t.origin()));
  }

  private Outing outing(Outing o) {
    return new Outing(
        o.date(),
        id(o.player()),
        o.pitches(),
        o.kind(),
        o.beforeLastBatter(),
        o.innings(),
        o.inningsCaught(),
        stand("team-", o.team()),
        stand("game-", o.game()),
        origin(o.origin()));
  }

  private Wellness wellness(Wellness w) {
    return new Wellness(
        w.date(), id(w.player()), w.kind(), w.clears(), w.by(), "", origin(w.origin()));
  }

  private OtherSport otherSport(OtherSport o) {
    return new OtherSport(o.date(), id(o.player()), o.hours(), WORDS, origin(o.origin()));
  }

  private Placement placement(Placement p) {
    return new Placement(
        p.date(),
        id(p.player()),
        p.skill(),
        p.step(),
        stand("coach-", p.by()),
        WORDS,
        origin(p.origin()));
  }

  private Unread unread(Unread u) {
    return new Unread(u.what(), u.player().map(this::id), u.date(), origin(u.origin()));
  }
}
