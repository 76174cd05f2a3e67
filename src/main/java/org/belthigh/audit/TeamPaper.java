package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Club;

/** The sheets of a whole group, read from the pages. */
final class TeamPaper {
  private static final String ASK = "ask";
  private static final String NO = "no";

  private final PrintedPlan plan;
  private final Paper paper;
  private final String group;
  private final PaperFindings findings;

  TeamPaper(PrintedPlan plan, Paper paper, String group, PaperFindings findings) {
    this.plan = plan;
    this.paper = paper;
    this.group = group;
    this.findings = findings;
  }

  String language() {
    return paper.language();
  }

  /** Whether the pages are whole and made for this plan. */
  boolean whole() {
    if (paper.sheets().isEmpty()) {
      wrong("its pages are not whole, or a foot is missing", "each page is there, with its foot");
      return false;
    }
    if (!PaperWords.knows(paper.language())) {
      wrong("its language is '" + paper.language() + "'", "sheets are in en or es");
      return false;
    }
    for (String foot : paper.feet()) {
      if (!PaperWords.madeFor(foot, plan.from(), paper.language())) {
        wrong("a foot is not of " + plan.from(), "each page says for which day it was made");
        return false;
      }
    }
    ofGroup();
    return true;
  }

  /** Whether each foot has the name of the group. */
  void ofGroup() {
    plan.record().stream()
        .flatMap(r -> r.club().groups().stream())
        .filter(g -> g.id().equals(group))
        .map(Club.Group::name)
        .filter(n -> paper.feet().stream().anyMatch(f -> !new PaperText(f).hasWords(n)))
        .findFirst()
        .ifPresent(n -> wrong("it is a sheet of another group", "each foot says " + n));
  }

  /** The practice sheet. */
  void practice(JsonNode practice) {
    PrintedPlan.date(practice.path("date"))
        .filter(d -> !PaperWords.dated(paper.texts().get(0), d, paper.language()))
        .ifPresent(d -> wrong("it is not of " + d, "it is headed by its day"));
    if (!paper.has(practice.path("where").asText())) {
      wrong("the place is not " + practice.path("where").asText(), "it says where it is");
    }
    if (paper.sheets().size() != (practice.path("ways").isEmpty() ? 1 : 2)) {
      wrong(
          "a sheet of it is missing",
          "it has the timetable, and the other ways where there are any");
    }
    Set<String> drills = new LinkedHashSet<>();
    drills(practice, drills);
    practice.path("ways").forEach(way -> drills(way, drills));
    for (String drill : drills) {
      plan.drillName(drill, paper.language())
          .filter(name -> !paper.has(name))
          .ifPresent(name -> wrong("'" + name + "' is missing", "each station says what is done"));
    }
    children(practice);
    gear(practice);
    PrintedPlan.date(practice.path("date")).ifPresent(day -> lists(practice, day));
    for (String caution : PrintedPlan.texts(practice.path("cautions"))) {
      if (!paper.has(caution)) {
        wrong("it does not say \"" + caution + "\"", "each caution stands on it word for word");
      }
    }
  }

  /** What to bring, each thing with its number. */
  private void gear(JsonNode practice) {
    for (JsonNode gear : practice.path("gear")) {
      String id = gear.path("what").asText();
      Optional.ofNullable(plan.curriculum().gear().get(id))
          .map(name -> name.in(paper.language()))
          .map(name -> PaperWords.gear(id, name, gear.path("count").asInt()))
          .filter(words -> paper.count(words) == 0)
          .ifPresent(words -> wrong("'" + words + "' is missing", "it says what to bring"));
    }
  }

  /** Who must not throw, swing or take part stands in the list of that, and nobody else does. */
  private void lists(JsonNode practice, LocalDate day) {
    Map<String, String> lists = PaperWords.lists(paper.texts().get(0), paper.language());
    String throwing = lists.getOrDefault("throwing", "");
    PaperText arms = new PaperText(throwing + "\n" + lists.getOrDefault("resting-arm", ""));
    PaperText bats = new PaperText(lists.getOrDefault("swinging", ""));
    PaperText off = new PaperText(lists.getOrDefault("everything", ""));
    Set<String> noThrowing = Set.copyOf(PrintedPlan.texts(practice.path("no_throwing")));
    Set<String> noSwinging = Set.copyOf(PrintedPlan.texts(practice.path("no_swinging")));
    for (JsonNode player : plan.players(group)) {
      String id = player.path("player").asText();
      listed(player, arms, noThrowing.contains(id), "of those who do not throw");
      listed(player, bats, noSwinging.contains(id), "of those who do not swing");
      listed(player, off, PrintedPlan.held(player, "everything", day), "of those who are off");
    }
  }

  private void listed(JsonNode player, PaperText list, boolean wanted, String what) {
    String label = player.path("label").asText();
    boolean found = list.hasWords(label) && (wanted || !within(label, list));
    if (found != wanted) {
      findings.fault(
          paper.path() + ", " + player.path("player").asText(),
          label + (found ? " stands" : " does not stand") + " in the list " + what,
          "the box before the practice has each child where the plan has it");
    }
  }

  /** Whether a longer label that has this one in it stands there. */
  private boolean within(String label, PaperText list) {
    String own = PaperText.squeeze(label);
    return plan.players(group).stream()
        .map(p -> p.path("label").asText())
        .anyMatch(
            other ->
                PaperText.squeeze(other).contains(own)
                    && !PaperText.squeeze(other).equals(own)
                    && list.hasWords(other));
  }

  private static void drills(JsonNode practice, Set<String> drills) {
    practice.path("stations").forEach(s -> s.path("drills").forEach(d -> drills.add(d.asText())));
  }

  /** Who is where, and who must not: a child who is held stands in both lists. */
  private void children(JsonNode practice) {
    Set<String> busy = new LinkedHashSet<>();
    for (JsonNode rotation : practice.path("rotations")) {
      for (JsonNode post : rotation.path("posts")) {
        if (!post.path("job").asText().equals("helps")) {
          post.path("players").forEach(p -> busy.add(p.asText()));
        }
      }
    }
    Set<String> stopped = new LinkedHashSet<>(PrintedPlan.texts(practice.path("no_throwing")));
    Set<String> still = new LinkedHashSet<>(PrintedPlan.texts(practice.path("no_swinging")));
    Optional<LocalDate> day = PrintedPlan.date(practice.path("date"));
    for (JsonNode player : plan.players(group)) {
      String id = player.path("player").asText();
      boolean off = day.filter(d -> PrintedPlan.held(player, "everything", d)).isPresent();
      int owed = count(busy, id) + count(stopped, id) + count(still, id) + (off ? 1 : 0);
      int stands = paper.count(player.path("label").asText());
      if (stands < owed) {
        findings.fault(
            paper.path() + ", " + id,
            player.path("label").asText() + " stands on it " + stands + " times, and not " + owed,
            "each child stands in its squad, and where it must not throw, swing or take part");
      }
    }
  }

  private static int count(Set<String> ids, String id) {
    return ids.contains(id) ? 1 : 0;
  }

  /** The overview: each child with its steps and decisions. */
  void overview() {
    for (JsonNode player : plan.players(group)) {
      if (!row(player)) {
        findings.fault(
            paper.path() + ", " + player.path("player").asText(),
            "no row of " + player.path("label").asText() + " has its decisions and steps",
            "each child of the group stands on the overview, skill by skill");
      }
    }
    for (JsonNode row : plan.json().path("later_rows")) {
      boolean ours =
          plan.player(row.path("player").asText())
              .filter(p -> p.path("group").asText().equals(group))
              .isPresent();
      if (ours && !paper.has(row.path("says").asText())) {
        findings.fault(
            paper.path() + ", " + row.path("player").asText(),
            "it does not say \"" + row.path("says").asText() + "\"",
            "what is known of a later day stands on the overview");
      }
    }
  }

  private boolean row(JsonNode player) {
    List<String> words = new ArrayList<>();
    for (JsonNode decision : player.path("decisions")) {
      words.add(PaperWords.decision(paper.language(), decision.path("decision").asText()));
      plan.curriculum()
          .step(decision.path("step").asText())
          .map(Step::name)
          .ifPresent(name -> words.add(name.in(paper.language())));
    }
    String label = player.path("label").asText();
    return paper.bodies().stream().anyMatch(body -> row(body, label, words));
  }

  /** Whether {@code words} follow the label in their order, before another child's label. */
  private boolean row(PaperText body, String label, List<String> words) {
    for (int at = body.find(label, 0); at >= 0; at = body.find(label, at + 1)) {
      int end = next(body, label, at + PaperText.squeeze(label).length());
      int seen = at;
      for (String word : words) {
        seen = seen < 0 ? -1 : body.squeezed().indexOf(PaperText.squeeze(word), seen);
      }
      if (seen >= 0 && seen < end) {
        return true;
      }
    }
    return false;
  }

  private int next(PaperText body, String own, int from) {
    int next = body.squeezed().length();
    for (JsonNode other : plan.players(group)) {
      String label = other.path("label").asText();
      int at = label.equals(own) ? -1 : body.find(label, from);
      next = at < 0 ? next : Math.min(next, at);
    }
    return next;
  }

  /** The arm sheet: for each pitcher and day what the plan says, and the same number. */
  void arms() {
    for (JsonNode player : plan.players(group)) {
      arms(player);
    }
  }

  private void arms(JsonNode player) {
    String label = player.path("label").asText();
    for (PaperText body : paper.bodies()) {
      int at = body.find(label, 0);
      if (at < 0) {
        continue;
      }
      int end = next(body, label, at + PaperText.squeeze(label).length());
      PaperText row = body.between(at, end);
      List<String> wanted = wanted(player);
      List<String> found = answers(row);
      boolean same =
          pitches(player)
              ? found.size() >= wanted.size() && found.subList(0, wanted.size()).equals(wanted)
              : some() || found.stream().noneMatch(a -> Character.isDigit(a.charAt(0)));
      if (!same) {
        findings.fault(
            paper.path() + ", " + player.path("player").asText(),
            "the row of " + label + " has " + found.stream().limit(wanted.size()).toList(),
            "day by day the plan has " + wanted);
      }
      return;
    }
    if (pitches(player)) {
      findings.fault(
          paper.path() + ", " + player.path("player").asText(),
          label + " has no row",
          "each child who pitches stands on the arm sheet");
    }
  }

  /** Whether some children alone were asked for: then rows of others follow that are not known. */
  private boolean some() {
    return !plan.json().path("asked").path("players").isEmpty();
  }

  /** Whether the roster has a pitcher; without a roster, who may pitch or is asked first. */
  private boolean pitches(JsonNode player) {
    String id = player.path("player").asText();
    return plan.record()
        .map(r -> r.players().stream().anyMatch(p -> p.id().equals(id) && p.pitches()))
        .orElseGet(() -> wanted(player).stream().anyMatch(a -> !a.equals(NO)));
  }

  /** The answers of the plan: a number of pitches, {@code ask} or {@code no}. */
  private static List<String> wanted(JsonNode player) {
    List<String> answers = new ArrayList<>();
    for (JsonNode day : player.path("arms")) {
      answers.add(
          switch (day.path("answer").asText()) {
            case "may-pitch" -> day.path("pitches_left").asText();
            case "ask-first" -> ASK;
            default -> NO;
          });
    }
    return answers;
  }

  /** The answers of a row in their order; what its note says comes after them. */
  private List<String> answers(PaperText row) {
    TreeMap<Integer, String> answers = new TreeMap<>();
    row.each(PaperWords.noPitching(paper.language()), at -> answers.put(at, NO));
    row.each(PaperWords.askFirst(paper.language()), at -> answers.put(at, ASK));
    row.each(
        PaperWords.upTo(paper.language()),
        at -> row.numberAfter(at).ifPresent(n -> answers.put(at, n)));
    return List.copyOf(answers.values());
  }

  /** The emergency sheet: whom to call and where, as the club folder has it. */
  void emergency() {
    plan.record()
        .map(r -> r.club())
        .ifPresent(
            club -> {
              club.emergency().ifPresent(e -> emergency("the number to call", e.call()));
              for (Club.Venue venue : club.places()) {
                emergency("the place", venue.name());
                emergency("the address", venue.address());
              }
            });
  }

  private void emergency(String what, String text) {
    if (!paper.has(text)) {
      wrong(what + " '" + text + "' is missing", "it has the numbers and places of club.yaml");
    }
  }

  private void wrong(String found, String allowed) {
    findings.fault(paper.path(), found, allowed);
  }
}
