package org.belthigh.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The page {@code docs/auditor.md}: kind by kind, how often it was planted and found. */
final class AuditorPage {
  private final AuditorTrial trial;
  private final List<String> cutOff;
  private final String command;

  /**
   * @param cutOff the parts that were asked for and not ended
   * @param command how the page is made
   */
  AuditorPage(AuditorTrial trial, List<String> cutOff, String command) {
    this.trial = trial;
    this.cutOff = List.copyOf(cutOff);
    this.command = command;
  }

  private static List<Planted> kinds() {
    return Stream.concat(
            PlantedKinds.all().stream(),
            PlantedPaper.all().stream().map(PlantedPaper.Kind::planted))
        .toList();
  }

  /** One line of figures. */
  String summary() {
    int planted = trial.counts().values().stream().mapToInt(c -> c.planted).sum();
    int found = trial.counts().values().stream().mapToInt(c -> c.found).sum();
    long whole = trial.counts().values().stream().filter(AuditorTrial.Count::whole).count();
    long never = trial.counts().values().stream().filter(c -> c.planted == 0).count();
    return ("%d kinds of fault, planted %d times, found %d times. %d kinds were found each time; %d"
            + " were not planted in this run. %d plans were looked at before anything was planted:"
            + " %d false findings.")
        .formatted(
            trial.counts().size(),
            planted,
            found,
            whole,
            never,
            trial.plans(),
            trial.untrue().size());
  }

  String text() {
    StringBuilder page =
        new StringBuilder("# What the auditor finds\n\n")
            .append("`belthigh check DIR --club CLUB` reads a finished plan and its prints again. ")
            .append("This page counts what it finds of faults that were planted on purpose: ")
            .append("one fault in a fresh copy of a sound plan, sums, sizes and digests renewed, ")
            .append("so that nothing but the fault itself gives it away. ")
            .append("Found means that a message names the child, the practice or the sheet, ")
            .append("and says what is wrong.\n\n")
            .append("Two things are not told, since a sound plan may have them. Days after the ")
            .append("first week are provisional and have no stations yet: a drill or all hitting ")
            .append(
                "may be missing there. And one drill at each practice for weeks is no fault by ")
            .append("itself: gear, adults and what the others work on may leave no other; it is ")
            .append("told where the stations have another drill.\n\n")
            .append("Planted in: ")
            .append(String.join("; ", trial.where()))
            .append(".\n\n")
            .append(notRun())
            .append(summary())
            .append("\n\nMade by:\n\n```sh\n")
            .append(command)
            .append("\n```\n\n| Kind | What is wrong | Planted | Found | If not always |\n")
            .append("| --- | --- | --: | --: | --- |\n");
    for (Planted kind : kinds()) {
      AuditorTrial.Count count = trial.counts().get(kind.id());
      page.append(
          "| %s | %s | %d | %d | %s |\n"
              .formatted(kind.id(), kind.what(), count.planted, count.found, why(kind, count)));
    }
    return page.toString();
  }

  private String notRun() {
    return cutOff.isEmpty()
        ? ""
        : "Not run, since the time was over: " + String.join("; ", cutOff) + ".\n\n";
  }

  private static String why(Planted kind, AuditorTrial.Count count) {
    if (count.planted == 0) {
      return Missed.never(kind.id());
    }
    return count.whole() ? "" : Missed.why(kind.id());
  }

  /** The kinds that a page says were found each time. */
  static Map<String, Boolean> found(String page) {
    Map<String, Boolean> found = new LinkedHashMap<>();
    page.lines()
        .map(l -> l.split("\\|"))
        .filter(c -> c.length > 4 && c[3].strip().matches("\\d+"))
        .forEach(
            c ->
                found.put(
                    c[1].strip(), c[3].strip().equals(c[4].strip()) && !c[3].strip().equals("0")));
    return found;
  }

  /** Why a kind is not found each time, as far as it is known. */
  private static final class Missed {

    private static final Map<String, String> REASONS =
        Map.of(
            "day-same",
            "missed where the stations have that drill too: no fault by itself, see above",
            "item-missing",
            "missed where the swings of the day were used up before the last stays: who sits those"
                + " out has no item for them, and the sheet is no looser for it",
            "stations-fewer",
            "missed where the practice is at a place that club.yaml does not have: of its room"
                + " nothing is known",
            "practice-gear-less",
            "missed where the version for rain or one adult needs another number: any between the"
                + " two is taken");

    private static final Map<String, String> NEVER =
        Map.of("equipment-machines", "no plan of these clubs uses a pitching machine");

    private static String why(String kind) {
      return REASONS.getOrDefault(kind, "missed");
    }

    private static String never(String kind) {
      return NEVER.getOrDefault(kind, "not planted in this run");
    }
  }
}
