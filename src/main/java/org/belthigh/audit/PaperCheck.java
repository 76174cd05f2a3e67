package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.belthigh.handout.PrintedPages;

/**
 * Holds the prints of a plan against the plan: first the list of files, then page by page, whatever
 * the digests say. It shares no words with those who print; it takes them from the plan, the roster
 * and the curriculum.
 */
final class PaperCheck {
  private final PrintedPlan plan;
  private final Papers papers;
  private final PaperFindings findings;
  private final Set<String> prints;
  private final Map<String, String> languages = new TreeMap<>();

  PaperCheck(PrintedPlan plan, Papers papers, PaperFindings findings) {
    this.plan = plan;
    this.papers = papers;
    this.findings = findings;
    this.prints = Set.copyOf(PrintedPlan.texts(plan.json().path("prints")));
  }

  void check() {
    Map<String, JsonNode> files = new PaperList(plan, papers, findings).check();
    Map<String, Set<String>> pages = new TreeMap<>();
    Map<String, Paper> packets = new TreeMap<>();
    files.forEach(
        (path, file) ->
            read(path, file)
                .ifPresent(
                    paper -> {
                      called(paper, file);
                      check(paper, file);
                      String group = file.path("group").asText();
                      if (file.path("sheet").asText().equals("packet")) {
                        packets.put(group, paper);
                      } else if (!open(file)) {
                        paper
                            .bodies()
                            .forEach(
                                b ->
                                    pages
                                        .computeIfAbsent(group, g -> new HashSet<>())
                                        .add(b.squeezed() + "\n" + path));
                      }
                    }));
    packets.forEach((group, packet) -> packet(packet, pages.getOrDefault(group, Set.of())));
    languages();
  }

  /** The sheets of the grown-ups are all in the club's language. */
  private void languages() {
    Map<String, Long> spoken =
        languages.values().stream()
            .collect(Collectors.groupingBy(l -> l, TreeMap::new, Collectors.counting()));
    long most = spoken.values().stream().mapToLong(n -> n).max().orElse(0);
    languages.forEach(
        (path, language) -> {
          if (spoken.size() > 1 && (spoken.get(language) < most || tied(spoken, most))) {
            findings.fault(
                path,
                "its language is '" + language + "'",
                "the sheets of the grown-ups are in one language; here they are in "
                    + spoken.keySet());
          }
        });
  }

  private static boolean tied(Map<String, Long> spoken, long most) {
    return spoken.values().stream().filter(n -> n == most).count() > 1;
  }

  /** Whether the packet has other words for it, or none: no cause of a hold or return is bound. */
  private boolean open(JsonNode file) {
    boolean held =
        plan.player(file.path("player").asText())
            .filter(p -> !p.path("holds").isEmpty() || comesBack(p))
            .isPresent();
    return held || file.path("sheet").asText().equals("clipboard");
  }

  private static boolean comesBack(JsonNode player) {
    return player.path("weeks").findValuesAsText("kind").contains("back");
  }

  private Optional<Paper> read(String path, JsonNode file) {
    try {
      PrintedPages pages = PrintedPages.read(papers.bytes(path).orElse(new byte[0]));
      return Optional.of(Paper.of(path, pages, plan.club()));
    } catch (PrintedPages.Unreadable e) {
      findings.fault(
          PaperList.where(path, file), e.getMessage(), "each sheet can be opened and read");
      return Optional.empty();
    }
  }

  /** Each foot says which sheet it is; of a packet the first, since others are bound in it. */
  private void called(Paper paper, JsonNode file) {
    String sheet = file.path("sheet").asText();
    Set<String> names = PaperWords.called(sheet);
    boolean other =
        paper.feet().stream()
            .limit(sheet.equals("packet") ? 1 : paper.pageCount())
            .map(PaperText::new)
            .anyMatch(foot -> names.stream().noneMatch(foot::hasWords));
    if (other && !names.isEmpty()) {
      findings.fault(
          PaperList.where(paper.path(), file),
          "a foot is not that of such a sheet",
          "it says " + names.stream().sorted().collect(Collectors.joining(" or ")));
    }
  }

  private void check(Paper paper, JsonNode file) {
    String sheet = file.path("sheet").asText();
    Optional<JsonNode> player = plan.player(file.path("player").asText());
    if (file.path("player").isTextual() && player.isEmpty()) {
      findings.fault(
          PaperList.where(paper.path(), file),
          "the plan has no such player",
          "a sheet is about a player of the plan");
      return;
    }
    if (sheet.equals("card") || sheet.equals("home")) {
      player.ifPresent(
          p ->
              new CardPaper(plan, paper, p, findings)
                  .check(sheet.equals("card"), prints.contains("home")));
      return;
    }
    if (sheet.equals("clipboard")) {
      return;
    }
    TeamPaper team = new TeamPaper(plan, paper, file.path("group").asText(), findings);
    if (file.path("player").isTextual()) {
      own(paper, player.orElseThrow());
    } else if (sheet.equals("packet") || sheet.equals("guide")) {
      if (!paper.sheets().isEmpty() || team.whole()) {
        team.ofGroup();
      }
    } else if (team.whole()) {
      team(team, sheet, file);
    }
  }

  private void own(Paper paper, JsonNode player) {
    String label = player.path("label").asText();
    if (paper.count(label) == 0) {
      findings.fault(
          paper.path() + ", " + player.path("player").asText(),
          label + " does not stand on it",
          "a sheet of one child has its name");
    }
  }

  private void team(TeamPaper team, String sheet, JsonNode file) {
    languages.put(file.path("path").asText(), team.language());
    switch (sheet) {
      case "overview" -> team.overview();
      case "arm" -> team.arms();
      case "emergency" -> team.emergency();
      case "practice" ->
          plan.practices(file.path("group").asText()).stream()
              .filter(p -> p.path("date").asText().equals(file.path("date").asText()))
              .forEach(team::practice);
      default -> {}
    }
  }

  private void packet(Paper packet, Set<String> pages) {
    Set<String> bound = new HashSet<>();
    packet.bodies().forEach(b -> bound.add(b.squeezed()));
    for (String page : pages) {
      int cut = page.indexOf('\n');
      if (!bound.contains(page.substring(0, cut))) {
        findings.fault(
            packet.path(),
            "it lacks a page of " + page.substring(cut + 1),
            "the packet holds every sheet of the group");
      }
    }
  }
}
