package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Origin;

/** Whatever is dated after the first planned day is told, row by row. */
final class LaterRowsCheck {
  private static final String KEY = "later_rows";

  private final Given given;

  LaterRowsCheck(Given given) {
    this.given = given;
  }

  void check() {
    List<String> found = new ArrayList<>();
    for (JsonNode row : given.json().path(KEY)) {
      found.add(
          row(
              row.path("file").asText(),
              row.path("line").asInt(),
              row.path("date").asText(),
              row.path("player").asText("")));
      if (row.path("says").asText("").isBlank()) {
        given.fault(KEY, "nothing is said of " + row.path("date").asText(), "each row is told");
      }
    }
    List<String> wanted = wanted();
    wanted.stream()
        .filter(w -> !found.contains(w))
        .forEach(w -> given.fault(KEY, "nothing is said of " + w, "what came later is told"));
    found.stream()
        .filter(f -> !wanted.contains(f))
        .filter(f -> given.whole().unread().isEmpty())
        .forEach(f -> given.fault(KEY, f, "the club folder has no such row after the first day"));
  }

  private List<String> wanted() {
    LocalDate from = given.plan().from();
    List<String> wanted = new ArrayList<>();
    for (Wellness row : given.whole().wellness()) {
      if (row.date().isAfter(from)) {
        wanted.add(row(row.origin(), row.date(), row.player()));
      }
    }
    for (Outing row : given.whole().outings()) {
      if (row.date().isAfter(from)) {
        wanted.add(row(row.origin(), row.date(), row.player()));
      }
    }
    return wanted;
  }

  private static String row(Origin origin, LocalDate date, String player) {
    return row(origin.file(), origin.line(), date.toString(), player);
  }

  private static String row(String file, int line, String date, String player) {
    return file + " line " + line + " of " + date + (player.isEmpty() ? "" : " about " + player);
  }
}
