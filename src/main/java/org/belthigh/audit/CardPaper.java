package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Player;

/** One child's card and home sheets, read from the pages. */
final class CardPaper {
  /** The lines of a card in which its child, group and week stand, a long name over some. */
  private static final int HEADING_LINES = 4;

  /** A day as the card's first column has it, before the name of a drill. */
  private static final String DAYS = "^(?:\\p{L}+\\.?\\s+\\d{1,2}\\s+)*";

  private static final int MOST_THINGS = 3;

  /** Ids of the rules by which an arm rests between outings. */
  private static final String REST_RULES = "ARM-";

  /** The gear by which a home sheet names the ball. */
  private static final Map<String, String> BALLS =
      Map.of("plastic", "plastic-balls", "foam", "foam-balls");

  private final PrintedPlan plan;
  private final Paper paper;
  private final JsonNode player;
  private final String id;
  private final String label;
  private final String where;
  private final PaperFindings findings;

  CardPaper(PrintedPlan plan, Paper paper, JsonNode player, PaperFindings findings) {
    this.plan = plan;
    this.paper = paper;
    this.player = player;
    this.id = player.path("player").asText();
    this.label = player.path("label").asText();
    this.where = paper.path() + ", " + id;
    this.findings = findings;
  }

  private String language() {
    return paper.language();
  }

  /**
   * Looks through it.
   *
   * @param card whether the card comes first, before the home sheets
   * @param home whether home sheets were asked for
   */
  void check(boolean card, boolean home) {
    if (!mine()) {
      return;
    }
    List<JsonNode> days = home ? plan.homeDays(player) : List.of();
    int owed = days.size() + (card ? 1 : 0);
    List<Integer> sheets = paper.sheets();
    if (sheets.size() != owed) {
      findings.fault(
          where,
          sheets.isEmpty()
              ? "its pages are not whole, or a foot is missing"
              : "it holds " + sheets.size() + " sheets, and not " + owed,
          "the card and a sheet for each home day are there, page by page");
      return;
    }
    int page = 0;
    if (card) {
      card(part(0, sheets.get(0)));
      page = sheets.get(0);
    }
    for (int i = 0; i < days.size(); i++) {
      int pages = sheets.get(i + (card ? 1 : 0));
      home(part(page, pages), days.get(i));
      page += pages;
    }
    if (!days.isEmpty()) {
      gear(paper);
      say(player.path("cautions").path("home"), paper, "the home sheets do not say");
    }
  }

  private Paper part(int first, int pages) {
    return new Paper(
        paper.path(),
        paper.language(),
        paper.texts().subList(first, first + pages),
        paper.bodies().subList(first, first + pages),
        paper.feet().subList(first, first + pages));
  }

  /** Whether each page is this child's: the label of the plan, which is that of the roster. */
  private boolean mine() {
    named();
    if (!language().equals(player.path("language").asText())) {
      findings.fault(
          where,
          "it is in language '" + language() + "'",
          "the child's sheets are in " + player.path("language").asText());
    }
    for (int i = 0; i < paper.pageCount(); i++) {
      if (paper.bodies().get(i).find(label, 0) != 0) {
        findings.fault(
            where,
            "page " + (i + 1) + " is headed '" + head(i) + "'",
            "each page of this sheet is headed " + label);
        return false;
      }
    }
    return paper.pageCount() > 0 && PaperWords.knows(language());
  }

  private String head(int page) {
    return paper.texts().get(page).lines().filter(l -> !l.isBlank()).findFirst().orElse("");
  }

  private void named() {
    Optional<Player> listed =
        plan.record().stream()
            .flatMap(r -> r.players().stream())
            .filter(p -> p.id().equals(id))
            .findFirst();
    listed
        .filter(
            p ->
                !PrintedPlan.names(
                    label,
                    p.firstName(),
                    p.number().isPresent() ? Integer.toString(p.number().getAsInt()) : ""))
        .ifPresent(
            p ->
                findings.fault(
                    where, "it is headed '" + label + "'", "the roster has " + p.firstName()));
  }

  private void card(Paper card) {
    // the arm box below has days of its own
    String first =
        card.texts().get(0).lines().limit(HEADING_LINES).collect(Collectors.joining("\n"));
    if (!PaperWords.dated(first, plan.from(), language())
        || !PaperWords.dated(first, plan.last(), language())) {
      wrong(
          "the card is not that of the week", "its week is " + plan.from() + " to " + plan.last());
    }
    made(card, plan.from());
    say(player.path("cautions").path("card"), card, "the card does not say");
    Set<String> drills = plan.drills(player);
    lacking(card, drills);
    for (Drill drill : plan.curriculum().drills().values()) {
      String name = drill.name().in(language());
      if (!drills.contains(drill.id()) && !sameName(drills, name) && asks(card, name)) {
        wrong("the card asks for '" + name + "'", "it has the drills of its week and no other");
      }
    }
    arm(card);
    held(card);
  }

  /** A card has room for three things: those at home first, then those of the practices. */
  private void lacking(Paper card, Set<String> drills) {
    Set<String> home = new LinkedHashSet<>();
    plan.homeDays(player)
        .forEach(d -> d.path("items").forEach(i -> home.add(i.path("drill").asText())));
    if (home.size() <= MOST_THINGS) {
      home.stream()
          .flatMap(d -> plan.drillName(d, language()).stream())
          .filter(name -> !card.has(name))
          .forEach(
              name -> wrong("the card lacks '" + name + "'", "it has each drill done at home"));
    }
    long there =
        drills.stream()
            .filter(d -> plan.drillName(d, language()).filter(card::has).isPresent())
            .count();
    if (there < Math.min(drills.size(), MOST_THINGS - 1)) {
      wrong("the card has " + there + " drills of its week", "it has up to three things to do");
    }
  }

  private boolean sameName(Set<String> drills, String name) {
    return drills.stream()
        .anyMatch(d -> plan.drillName(d, language()).filter(name::equals).isPresent());
  }

  /** Whether a line of the card is that name, with or without the days before it. */
  private static boolean asks(Paper card, String name) {
    Pattern line = Pattern.compile(DAYS + Pattern.quote(name) + "\\s*$", Pattern.MULTILINE);
    return card.texts().stream().anyMatch(t -> line.matcher(t).find());
  }

  /** Each page's foot is of the day that the sheet is made for. */
  private void made(Paper part, LocalDate day) {
    for (String foot : part.feet()) {
      if (!PaperWords.madeFor(foot, day, language())) {
        wrong("a foot is not of " + day, "each page says for which day it was made");
        return;
      }
    }
  }

  /**
   * Whether throwing is stopped for more than a rest between outings, at least on a day of the
   * week: then the box of the whole card says so, and lets the child pitch on no day.
   */
  private boolean stopped() {
    for (JsonNode hold : player.path("holds")) {
      boolean throwing = Set.of("throwing", "everything").contains(hold.path("kind").asText());
      boolean begun = PrintedPlan.date(hold.path("from")).filter(plan.last()::isBefore).isEmpty();
      if (throwing && begun && !hold.path("rule").asText().startsWith(REST_RULES)) {
        return true;
      }
    }
    return false;
  }

  private void arm(Paper card) {
    JsonNode today = player.path("arms").path(0);
    String answer = today.path("answer").asText();
    boolean may = answer.equals("may-pitch") && !stopped();
    OptionalInt most = OptionalInt.empty();
    for (String text : card.texts()) {
      most = most.isPresent() ? most : PaperWords.mostPitches(text, language());
    }
    boolean says = most.isPresent() || card.has(PaperWords.mayPitch(language()));
    if (says && !may) {
      wrong(
          "the card lets the child pitch",
          "the plan says " + (stopped() ? "that throwing is stopped" : answer));
    } else if (!says && may) {
      wrong("the card does not let the child pitch", "the plan says may-pitch");
    } else if (may && most.orElse(-1) != today.path("pitches_left").asInt()) {
      wrong(
          "the card allows " + (most.isPresent() ? most.getAsInt() : "no number of") + " pitches",
          "the plan has " + today.path("pitches_left").asText() + " on " + plan.from());
    }
  }

  /** What is held all the week is not asked for, and the card says that something is. */
  private void held(Paper card) {
    boolean any = false;
    boolean swings = true;
    for (LocalDate day = plan.from(); !day.isAfter(plan.last()); day = day.plusDays(1)) {
      boolean swinging = PrintedPlan.held(player, "swinging", day);
      any |= swinging || PrintedPlan.held(player, "throwing", day);
      swings &= swinging;
    }
    if (any && player.path("cautions").path("card").isEmpty()) {
      wrong("nothing is said of the hold", "the card of a child on hold says so");
    }
    if (swings) {
      plan.curriculum().drills().values().stream()
          .filter(Drill::swing)
          .map(d -> d.name().in(language()))
          .filter(name -> asks(card, name))
          .forEach(
              name -> wrong("a held child is asked for '" + name + "'", "no swing is allowed"));
    }
  }

  private void home(Paper sheet, JsonNode day) {
    Optional<LocalDate> date = PrintedPlan.date(day.path("date"));
    date.ifPresent(d -> made(sheet, d));
    if (date.filter(d -> PaperWords.dated(sheet.texts().get(0), d, language())).isEmpty()) {
      wrong("a home sheet is not of " + day.path("date").asText(), "each home day has its sheet");
    }
    for (JsonNode item : day.path("items")) {
      plan.drillName(item.path("drill").asText(), language())
          .filter(name -> !sheet.has(name))
          .ifPresent(name -> homeLacks(day, "'" + name + "'"));
      number(sheet, day, item.path("feet"), "the distance of ");
      boolean tossed = !Set.of("none", "tee").contains(item.path("feed").asText());
      if (tossed) {
        number(sheet, day, item.path("reps"), "toss number ");
      }
    }
    ball(sheet, day);
    if (date.filter(d -> PrintedPlan.held(player, "everything", d)).isPresent()) {
      wrong("there is a home sheet of " + day.path("date").asText(), "that day is on hold");
    }
  }

  /** The ball that the plan gives that day is asked for; a drill's own words may name others. */
  private void ball(Paper sheet, JsonNode day) {
    Set<String> used = new LinkedHashSet<>();
    for (JsonNode item : day.path("items")) {
      Drill drill = plan.curriculum().drills().get(item.path("drill").asText());
      String ball = BALLS.get(item.path("ball").asText());
      if (drill != null && ball != null && drill.gear().stream().anyMatch(BALLS::containsValue)) {
        used.add(ball);
      }
    }
    used.stream()
        .filter(ball -> thing(ball).filter(sheet::has).isEmpty())
        .forEach(ball -> homeLacks(day, "its " + ball));
  }

  private Optional<String> thing(String id) {
    return Optional.ofNullable(plan.curriculum().gear().get(id)).map(g -> g.in(language()));
  }

  /** What the plan says that the home sheets ask for stands on one of them, with its number. */
  private void gear(Paper sheets) {
    for (JsonNode gear : player.path("home_gear")) {
      String id = gear.path("what").asText();
      thing(id)
          .map(name -> PaperWords.gear(id, name, gear.path("count").asInt()))
          .filter(words -> sheets.count(words) == 0)
          .ifPresent(
              words ->
                  wrong(
                      "no home sheet asks for '" + words + "'",
                      "they have each thing of the plan, and how many"));
    }
  }

  private void number(Paper sheet, JsonNode day, JsonNode number, String what) {
    if (number.asInt() > 0 && sheet.count(number.asText()) == 0) {
      homeLacks(day, what + number.asText());
    }
  }

  private void homeLacks(JsonNode day, String what) {
    wrong(
        "the home sheet of " + day.path("date").asText() + " lacks " + what,
        "it has drill, ball, distance and each toss of the day");
  }

  private void say(JsonNode sentences, Paper part, String found) {
    List<String> missing = new ArrayList<>();
    PrintedPlan.texts(sentences).stream().filter(s -> !part.has(s)).forEach(missing::add);
    missing.forEach(
        s -> wrong(found + " \"" + s + "\"", "each caution stands on it word for word"));
  }

  private void wrong(String found, String allowed) {
    findings.fault(where, found, allowed);
  }
}
