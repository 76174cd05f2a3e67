package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.belthigh.intake.Player;

/** Every child of a group that is planned stands in the plan, once. */
final class RosterCheck {
  private final Given given;

  RosterCheck(Given given) {
    this.given = given;
  }

  void check() {
    Set<String> seen = new HashSet<>();
    for (JsonNode player : given.json().path("players")) {
      String id = player.path("player").asText();
      if (!seen.add(id)) {
        given.fault(id, "the child stands twice", "each child has one entry");
      }
    }
    JsonNode asked = given.json().path("asked");
    List<String> groups = Given.words(asked, "groups");
    List<String> players = Given.words(asked, "players");
    for (Player player : given.record().players()) {
      boolean wanted =
          (groups.isEmpty() || groups.contains(player.group()))
              && (players.isEmpty() || players.contains(player.id()));
      if (wanted && !seen.contains(player.id())) {
        given.fault(
            player.id(),
            "the child of " + player.group() + " is left out",
            "each child that was asked for has an entry");
      }
      if (!wanted && seen.contains(player.id())) {
        given.fault(player.id(), "the child was not asked for", "the plan was asked for " + asked);
      }
    }
  }
}
