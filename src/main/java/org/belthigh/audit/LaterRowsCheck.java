package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Origin;

/** Whatever is dated after the first planned day is told, row by row. */
final class LaterRowsCheck {
  private static final String KEY = "later_rows";
  private static final String OUTING = "outing";

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
              row.path("player").asText(""),
              row.path("what").asText()));
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
        .forEach(f -> given.fault(KEY, f, "the club folder has no such row after the first day"));
  }

  /** Reports of either kind, and those that were lost and have a date. */
  private List<String> wanted() {
    List<String> wanted = new ArrayList<>();
    for (Wellness row : given.whole().wellness()) {
      String what = row.kind().holds() ? "complaint" : "clearance";
      later(wanted, row.origin(), row.date(), row.player(), what);
    }
    for (Outing row : given.whole().outings()) {
      later(wanted, row.origin(), row.date(), row.player(), OUTING);
    }
    for (Unread row : given.whole().unread()) {
      String what = row.what() == Unread.What.OUTING ? OUTING : "complaint";
      row.date().ifPresent(d -> later(wanted, row.origin(), d, row.player().orElse(""), what));
    }
    return wanted;
  }

  private void later(
      List<String> wanted, Origin origin, LocalDate date, String player, String what) {
    if (date.isAfter(given.plan().from())) {
      wanted.add(row(origin.file(), origin.line(), date.toString(), player, what));
    }
  }

  private static String row(String file, int line, String date, String player, String what) {
    String about = player.isEmpty() || player.equals("null") ? "" : " about " + player;
    // the folder may be given in another way now than when the plan was made
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    return name + " line " + line + " of " + date + about + ", " + what;
  }
}
