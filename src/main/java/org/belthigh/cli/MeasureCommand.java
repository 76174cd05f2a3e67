package org.belthigh.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.belthigh.intake.ClubRecord;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
import org.belthigh.model.Share;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code belthigh measure}. */
@Command(
    name = "measure",
    mixinStandardHelpOptions = true,
    description = "Counts what the logs say: the four measures of every player.",
    footer = {"", "Example:", "  belthigh measure demo-players --as-of 2027-04-05 --json"})
final class MeasureCommand implements Callable<Integer> {
  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Option(names = "--as-of", paramLabel = "DATE", description = "Last day to count; today.")
  private LocalDate asOf;

  @Option(names = "--player", paramLabel = "ID", description = "Only this player.")
  private String player;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Override
  public Integer call() {
    LocalDate day = asOf == null ? club.today() : asOf;
    ClubRecord record = club.read();
    Players.refuseUnknown(record, player == null ? List.of() : List.of(player));
    List<PlayerMeasures> measures =
        Measures.of(record.upTo(day)).stream()
            .filter(m -> player == null || m.player().equals(player))
            .toList();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Json.print(MeasureJson.of(day, measures), out);
    } else {
      measures.forEach(m -> print(record, m, out));
    }
    return ClubOptions.report(record.problems(), spec.commandLine().getErr());
  }

  private static void print(ClubRecord record, PlayerMeasures m, PrintWriter out) {
    out.println(m.player() + " " + record.player(m.player()).firstName());
    line("calls right", m.zoneRecognition().calls(), out);
    line("belt-high tosses let go", m.middleTake(), out);
    line("balls swung at", m.ballSwing(), out);
    OptionalDouble mean = m.countdown().mean();
    out.printf(
        Locale.ROOT,
        "  %-28s %s%n",
        "countdown, mean swings",
        mean.isPresent() ? String.format(Locale.ROOT, "%.1f", mean.getAsDouble()) : "nothing seen");
    line("sent where called", m.fieldCalls().swings(), out);
  }

  private static void line(String what, Share share, PrintWriter out) {
    String value =
        share.isEmpty()
            ? "nothing seen"
            : String.format(
                Locale.ROOT,
                "%d of %d = %.0f %% (95 %%: %.0f to %.0f %%)",
                share.made(),
                share.seen(),
                100 * share.value(),
                100 * share.low(),
                100 * share.high());
    out.printf(Locale.ROOT, "  %-28s %s%n", what, value);
  }
}
