package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether each print is there, is the one that was written, and is one of this plan. */
final class PaperList {
  private final PrintedPlan plan;
  private final Papers papers;
  private final PaperFindings findings;

  PaperList(PrintedPlan plan, Papers papers, PaperFindings findings) {
    this.plan = plan;
    this.papers = papers;
    this.findings = findings;
  }

  /** Listed files that are there, by path; what is wrong with the others is told. */
  Map<String, JsonNode> check() {
    Map<String, JsonNode> there = new TreeMap<>();
    Set<String> listed = new TreeSet<>();
    for (JsonNode file : plan.json().path("files")) {
      String path = file.path("path").asText();
      if (!listed.add(path)) {
        findings.fault(path, "it stands twice in files", "each print is listed once");
      } else if (same(path, file)) {
        there.put(path, file);
      }
    }
    owed(listed);
    for (String path : papers.paths()) {
      if (!listed.contains(path)) {
        findings.remark(
            path,
            "this plan did not print it",
            "the folder of a plan holds the sheets of that plan alone",
            "Maybe it is left over from an older plan; take it away, so that nobody gets it.");
      }
    }
    return there;
  }

  /** Whether the file can be looked into, be it the right one or not. */
  private boolean same(String path, JsonNode file) {
    Optional<byte[]> bytes = papers.bytes(path);
    if (bytes.isEmpty()) {
      findings.fault(
          where(path, file), "the sheet is not there", "every sheet that was printed is kept");
      return false;
    }
    if (bytes.get().length != file.path("bytes").asLong(-1)) {
      findings.fault(
          where(path, file),
          "it has "
              + bytes.get().length
              + " bytes, and not "
              + file.path("bytes").asText("its own"),
          "a sheet stays as it was printed");
    } else if (!digest(bytes.get()).equals(file.path("sha256").asText())) {
      findings.fault(
          where(path, file),
          "its digest is another than that of the sheet that was printed",
          "a sheet stays as it was printed");
    }
    return true;
  }

  static String where(String path, JsonNode file) {
    return file.path("player").isTextual() ? path + ", " + file.path("player").asText() : path;
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }

  /** What the plan must have printed, by the kinds that were asked for. */
  private void owed(Set<String> listed) {
    if (!plan.json().path("prints").isArray() || !plan.json().path("files").isArray()) {
      findings.fault(
          "files",
          "the plan does not say what it printed",
          "a plan lists what was asked for under prints, and each sheet under files");
      return;
    }
    Set<String> prints = new TreeSet<>(PrintedPlan.texts(plan.json().path("prints")));
    if (prints.isEmpty()) {
      findings.fault("prints", "nothing was asked for", "a plan prints at least one kind of sheet");
    }
    plan.groups().forEach(group -> owed(group, prints, listed));
  }

  private void owed(String group, Set<String> prints, Set<String> listed) {
    for (String kind : List.of("overview", "arm", "emergency", "guide", "evaluation", "packet")) {
      if (prints.contains(kind)) {
        owed(group + "/" + kind + ".pdf", "", listed);
      }
    }
    List<JsonNode> practices = plan.practices(group);
    if (prints.contains("log") && practices.stream().anyMatch(p -> !p.path("logs").isEmpty())) {
      owed(group + "/log.pdf", "", listed);
    }
    if (prints.contains("practice")) {
      for (JsonNode practice : practices) {
        String date = practice.path("date").asText();
        owed(group + "/practice-" + date + ".pdf", "", listed);
        if (practice.path("toss_lists").asBoolean()) {
          owed(group + "/tosses-" + date + ".pdf", "", listed);
        }
      }
    }
    List<JsonNode> players = plan.players(group);
    if (prints.contains("clipboard") && !players.isEmpty()) {
      owed(group + "/clipboard.pdf", "", listed);
    }
    players.forEach(player -> owed(group, player, prints, listed));
  }

  private void owed(String group, JsonNode player, Set<String> prints, Set<String> listed) {
    String id = player.path("player").asText();
    String from = plan.from().toString();
    boolean home = prints.contains("home") && !plan.homeDays(player).isEmpty();
    if (prints.contains("card") || home) {
      owed(group + "/cards/" + id + "-week-" + from + ".pdf", id, listed);
    }
    for (String kind : List.of("season", "own-log")) {
      if (prints.contains(kind)) {
        owed(group + "/" + kind + "/" + id + "-" + from + ".pdf", id, listed);
      }
    }
  }

  private void owed(String path, String player, Set<String> listed) {
    if (!listed.contains(path)) {
      findings.fault(
          player.isEmpty() ? path : path + ", " + player,
          "the plan does not list this sheet",
          "each sheet that was asked for is printed");
    }
  }
}
