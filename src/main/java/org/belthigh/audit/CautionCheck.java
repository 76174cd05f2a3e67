package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Home;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Phrase;
import org.belthigh.words.Words;

/**
 * What a child's card and home sheets say for safety is what its holds, its arm and its home work
 * call for: no sentence is missing, and none stands there that nothing calls for.
 */
final class CautionCheck {
  private static final double FEET_PER_METRE = 3.280839895;

  private final Given given;
  private final Words words;
  private final LocalDate from;
  private final LocalDate last;
  private final Set<String> known;

  CautionCheck(Given given, Words words) {
    this.given = given;
    this.words = words;
    this.known = words.keys("en");
    this.from = given.plan().from();
    this.last = from.plusDays(Week.DAYS - 1L);
  }

  void check(Given.Child child) {
    String language = given.language(child);
    if (!Words.LANGUAGES.contains(language)) {
      return;
    }
    JsonNode cautions = child.said().path("cautions");
    same(child.id() + ", cautions of the card", cautions, "card", card(child), language);
    same(child.id() + ", cautions of the home sheets", cautions, "home", home(child), language);
  }

  private void same(
      String where, JsonNode cautions, String key, List<Phrase> due, String language) {
    Set<String> found = new LinkedHashSet<>(Given.words(cautions, key));
    Set<String> wanted = new LinkedHashSet<>();
    due.forEach(phrase -> wanted.add(words.say(phrase, language)));
    wanted.stream()
        .filter(sentence -> !found.contains(sentence))
        .forEach(s -> given.broken(where, "it does not say: " + s, "that is said for safety"));
    found.stream()
        .filter(sentence -> !wanted.contains(sentence))
        .forEach(
            s -> given.broken(where, "it says: " + s, "nothing in the club folder calls for that"));
  }

  private List<Phrase> card(Given.Child child) {
    List<Phrase> due = new ArrayList<>(holds(child));
    back(child).ifPresent(day -> due.add(Phrase.of("hold.back", "last", day)));
    if (works(child) && new Sport(given.record(), given.plan()).assumes(child.person())) {
      due.add(Phrase.of("day.assumed"));
    }
    List<JsonNode> complaints = complaints(child);
    boolean stopped =
        complaints.stream()
            .anyMatch(h -> Given.date(h, "from").filter(d -> !d.isAfter(last)).isPresent());
    if (stopped) {
      due.add(Phrase.of("arm.stopped"));
      complaints.stream()
          .map(CautionCheck::cause)
          .forEach(kind -> due.add(Phrase.of("hold.ends." + kind.id())));
    } else {
      String no = words.say(Phrase.of(ArmBoxDue.NO), given.language(child));
      boolean saysNo = Given.words(child.said().path("cautions"), "card").contains(no);
      due.addAll(new ArmBoxDue(given).of(child, saysNo));
    }
    return due;
  }

  private static List<JsonNode> complaints(Given.Child child) {
    List<JsonNode> holds = new ArrayList<>();
    child.said().path("holds").forEach(holds::add);
    return holds.stream()
        .filter(h -> HoldSaidCheck.COMPLAINTS.containsKey(h.path("rule").asText()))
        .toList();
  }

  private static Wellness.Kind cause(JsonNode hold) {
    return HoldSaidCheck.COMPLAINTS.get(hold.path("rule").asText());
  }

  /** The cause once, what else it stops, and whose word does not end it. */
  private List<Phrase> holds(Given.Child child) {
    HealthDays health = given.health(child);
    List<Phrase> due = new ArrayList<>();
    Set<Wellness.Kind> said = EnumSet.noneOf(Wellness.Kind.class);
    for (JsonNode hold : complaints(child)) {
      Wellness.Kind kind = cause(hold);
      due.add(
          said.add(kind)
              ? HoldSaidCheck.because(given, child, hold)
              : Phrase.of("hold.also." + hold.path("kind").asText()));
    }
    health.openAt(from).stream()
        .filter(open -> said.contains(open.kind()))
        .flatMap(open -> health.idleAt(from, open).stream())
        .map(idle -> note(child, idle))
        .forEach(due::add);
    return due;
  }

  private static Phrase note(Given.Child child, HealthDays.Idle idle) {
    Phrase says = Phrase.of(idle.rule(), "player", child.player().firstName(), "date", idle.date());
    return idle.by().map(by -> says.with("by", Phrase.of("role." + by.id()))).orElse(says);
  }

  /** The last of the days after a clearance, where the first planned day is one of them. */
  private Optional<LocalDate> back(Given.Child child) {
    int days = given.limits().whole("days-after-clearance", child.player().ageOn(from));
    return given.health(child).backUntil(from, days);
  }

  private boolean works(Given.Child child) {
    return firstWeek(child).anyMatch(day -> !day.path("items").isEmpty());
  }

  private Stream<JsonNode> firstWeek(Given.Child child) {
    List<JsonNode> days = new ArrayList<>();
    child.said().path("days").forEach(days::add);
    return days.stream()
        .filter(day -> Given.date(day, "date").filter(d -> !d.isAfter(last)).isPresent());
  }

  private List<Phrase> home(Given.Child child) {
    List<Phrase> due = new ArrayList<>();
    firstWeek(child)
        .filter(day -> day.path("place").asText().equals("home"))
        .forEach(day -> day.path("items").forEach(item -> due.addAll(session(child, day, item))));
    return due;
  }

  private List<Phrase> session(Given.Child child, JsonNode day, JsonNode item) {
    Drill drill = given.curriculum().drills().get(item.path("drill").asText());
    if (drill == null) {
      return List.of();
    }
    String ball = item.path("ball").asText();
    boolean bare = ball.equals(Ball.NONE.id());
    Home home = child.player().home();
    int feet = item.path("feet").asInt();
    boolean tossed = drill.tossed() && feet > 0;
    boolean back =
        back(child)
            .filter(until -> Given.date(day, "date").filter(until::isBefore).isEmpty())
            .isPresent();
    List<String> keys = new ArrayList<>();
    keys.add(back ? "home.check.adult.back" : "home.check.adult");
    keys.add(home.swings() ? "home.check.ground" : "home.check.hall");
    keys.addAll(List.of("home.check.light", "home.check.pain"));
    keys.addAll(List.of("home.stop.pain", "home.stop.tired", "home.stop.dark"));
    if (!bare) {
      keys.add("home.check.ball." + ball);
    }
    if (tossed) {
      keys.add("home.check.eyes");
    }
    if (drill.swing() || tossed) {
      keys.add("home.check.helmet");
    }
    List<Phrase> due = new ArrayList<>();
    if (drill.swing()) {
      keys.add(ring(tossed, feet, limit(child, "bat-ring-feet")));
      keys.add(drill.feed() == Feed.TEE || bare ? "home.smaller.picture" : "home.smaller.watch");
      due.addAll(lessRoom(child, ball, bare));
    }
    keys.stream().filter(known::contains).map(Phrase::of).forEach(due::add);
    return due;
  }

  private static String ring(boolean tossed, int feet, int ring) {
    if (!tossed) {
      return "home.check.ring.tee";
    }
    return feet < ring ? "home.check.ring.inside" : "home.check.ring.outside";
  }

  private List<Phrase> lessRoom(Given.Child child, String ball, boolean bare) {
    if (bare) {
      return List.of();
    }
    Phrase dry = Phrase.of("home.smaller.dry", "reach", feet(limit(child, "bat-reach-feet")));
    if (!child.player().home().gear().contains(Home.Gear.FOAM)) {
      return List.of(dry);
    }
    String key = ball.equals(Ball.FOAM.id()) ? "home.smaller.easy" : "home.smaller.foam";
    return List.of(Phrase.of(key, "free", feet(limit(child, "foam-clear-feet"))), dry);
  }

  private int limit(Given.Child child, String id) {
    return given.limits().whole(id, child.player().ageOn(from));
  }

  private static Phrase feet(int feet) {
    return Phrase.of("distance", "feet", feet, "metres", feet / FEET_PER_METRE);
  }
}
