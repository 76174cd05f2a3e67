package org.belthigh.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.belthigh.intake.ClubRecord;
import org.belthigh.measure.MarkAgreement;
import org.belthigh.measure.Marks;
import org.belthigh.measure.Measures;
import org.belthigh.measure.PlayerMeasures;
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
    Set<String> named = club.named(player == null ? List.of() : List.of(player));
    ClubRecord known = record.upTo(day);
    MarkAgreement marks =
        Marks.of(
                known.tosses().stream()
                    .filter(t -> named.isEmpty() || named.contains(t.player()))
                    .toList())
            .agreement();
    List<PlayerMeasures> measures =
        Measures.of(known).stream()
            .filter(m -> named.isEmpty() || named.contains(m.player()))
            .toList();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      Json.print(MeasureJson.of(day, measures, marks), out);
    } else {
      measures.forEach(m -> MeasureText.print(record.player(m.player()).firstName(), m, out));
      MeasureText.print(marks, out);
    }
    return ClubOptions.report(record, day, spec.commandLine().getErr());
  }
}
