package org.belthigh.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Arms;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.LocalText;
import org.belthigh.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code belthigh rest}. */
@Command(
    name = "rest",
    mixinStandardHelpOptions = true,
    description = "Who may pitch and catch on a day, how much, and from when if not.",
    footer = {"", "Example:", "  belthigh rest demo-players --on 2027-04-05"})
final class RestCommand implements Callable<Integer> {
  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today.")
  private LocalDate on;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Override
  public Integer call() {
    LocalDate day = on == null ? club.today() : on;
    ClubRecord record = club.read();
    Words words = club.words();
    List<ArmStatus> statuses = new Arms(club.catalogue()).on(record.upTo(day), day);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Json.print(
          RestJson.of(
              day, record.club().ruleBooks(), statuses, p -> words.say(p, LocalText.FALLBACK)),
          out);
    } else {
      print(record, day, statuses, words, out);
    }
    return ClubOptions.report(record.problems(), spec.commandLine().getErr());
  }

  private static void print(
      ClubRecord record, LocalDate day, List<ArmStatus> statuses, Words words, PrintWriter out) {
    out.println("Throwing on " + day + ", by " + String.join(" and ", record.club().ruleBooks()));
    for (ArmStatus status : statuses) {
      String pitch =
          status.askFirst() && status.mayPitch()
              ? "ask first"
              : status.mayPitch()
                  ? "may pitch, " + status.pitchesLeft() + " at most"
                  : "no pitching" + status.eligibleFrom().map(from -> " before " + from).orElse("");
      out.println(
          status.player()
              + " "
              + record.player(status.player()).firstName()
              + ": "
              + pitch
              + "; "
              + (status.mayCatch() ? "may catch" : "no catching")
              + "; outings known to "
              + status.knownTo().map(LocalDate::toString).orElse("no day"));
      status.because().forEach(r -> out.println("  " + words.say(r.phrase(), LocalText.FALLBACK)));
    }
    out.println(
        "Thrown or caught anywhere since? Then this does not count. The league's rules and a"
            + " doctor's word come first.");
  }
}
