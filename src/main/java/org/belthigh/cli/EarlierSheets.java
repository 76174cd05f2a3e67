package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.belthigh.files.Output;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.belthigh.plan.PlanRequest;

/**
 * The sheets that earlier runs left in a folder, by the lists in its {@code plan.json}. Those that
 * a run does not write again go, unless they still hold: sheets of groups and players that it was
 * not asked for, or other prints of the very same plan. These are listed under {@code kept}. What a
 * list does not name, or was changed since, stays.
 */
final class EarlierSheets {
  /** Sheets of earlier runs that still hold. */
  static final String KEPT = "kept";

  private static final List<String> LISTS = List.of(PrintedFiles.KEY, PrintedFiles.PICTURES, KEPT);
  private static final Set<String> OF_A_RUN =
      Set.of("prints", PrintedFiles.KEY, PrintedFiles.PICTURES, KEPT);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path folder;
  private final PlanRequest request;
  private final Set<String> players = new HashSet<>();
  private final Set<String> groups = new HashSet<>();

  EarlierSheets(Path folder, ClubRecord record, PlanRequest request) {
    this.folder = folder;
    this.request = request;
    record.players().stream().map(Player::id).forEach(players::add);
    record.club().groups().stream().map(Club.Group::id).forEach(groups::add);
  }

  /**
   * Has those that do not hold any longer go with {@code output}, and lists those that do.
   *
   * @param plan the new plan with the list of its files
   * @return what a person must look at
   */
  List<Problem> settle(ObjectNode plan, Output output) {
    ArrayNode kept = plan.putArray(KEPT);
    List<Problem> told = new ArrayList<>();
    JsonNode old = old();
    Set<String> now = new HashSet<>();
    plan.path(PrintedFiles.KEY).forEach(f -> now.add(f.path("path").asText()));
    plan.path(PrintedFiles.PICTURES).forEach(f -> now.add(f.path("path").asText()));
    boolean same = bare(old).equals(bare(plan));
    Set<String> changed = groupsWithOneGone(old);
    for (String list : LISTS) {
      for (JsonNode file : old.path(list)) {
        String path = file.path("path").asText();
        if (!now.add(path)) {
          continue;
        }
        if (holds(file, same, changed)) {
          kept.add(file);
        } else {
          remove(file, output, told);
        }
      }
    }
    return told;
  }

  private JsonNode old() {
    Path file = folder.resolve("plan.json");
    try {
      return Files.isRegularFile(file)
          ? JSON.readTree(Files.readAllBytes(file))
          : JSON.createObjectNode();
    } catch (IOException e) {
      return JSON.createObjectNode();
    }
  }

  private static JsonNode bare(JsonNode plan) {
    return plan instanceof ObjectNode node
        ? read(node.deepCopy().without(OF_A_RUN))
        : JSON.createObjectNode();
  }

  /** As it is read: so that numbers of one value are equal however they came. */
  private static JsonNode read(JsonNode node) {
    try {
      return JSON.readTree(JSON.writeValueAsBytes(node));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Groups of which somebody is no longer in the roster: every sheet of theirs may name the child.
   */
  private Set<String> groupsWithOneGone(JsonNode old) {
    Set<String> all = new HashSet<>();
    for (String list : List.of("players", PrintedFiles.KEY, PrintedFiles.PICTURES, KEPT)) {
      for (JsonNode each : old.path(list)) {
        String player = each.path("player").asText("");
        if (!player.isEmpty() && !players.contains(player)) {
          all.add(each.path("group").asText());
        }
      }
    }
    return all;
  }

  private boolean holds(JsonNode file, boolean same, Set<String> changed) {
    String group = file.path("group").asText("");
    String player = file.path("player").asText("");
    if (!groups.contains(group) || (!player.isEmpty() && !players.contains(player))) {
      return false;
    }
    if (player.isEmpty() && changed.contains(group)) {
      return false;
    }
    return same || !asked(group, player);
  }

  /** Whether this run was asked for the group and, of one child's sheet, for the child. */
  private boolean asked(String group, String player) {
    boolean groupAsked = request.groups().isEmpty() || request.groups().contains(group);
    boolean playerAsked = request.players().isEmpty() || request.players().contains(player);
    return groupAsked && playerAsked;
  }

  private void remove(JsonNode file, Output output, List<Problem> told) {
    String path = file.path("path").asText();
    Path lies = folder.resolve(path).normalize();
    if (path.isEmpty() || !lies.startsWith(folder.normalize()) || !Files.exists(lies)) {
      return;
    }
    if (!output.remove(path, file.path("sha256").asText())) {
      told.add(
          Problem.warning(
              Origin.of(lies.toString().replace('\\', '/')),
              "",
              "this sheet of an earlier plan was changed since, and stays",
              "it is not of the plan that lies beside it now",
              "Maybe it is needed no longer: delete it."));
    }
  }
}
