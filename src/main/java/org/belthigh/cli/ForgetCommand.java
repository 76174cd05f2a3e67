package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.belthigh.files.Output;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Unusable;
import org.belthigh.privacy.Forgetting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code belthigh forget}: takes one child out of a club folder. */
@Command(
    name = "forget",
    mixinStandardHelpOptions = true,
    description = {
      "Takes one child out of a club folder: roster, logs, reports, history.",
      "It does not ask; look first with --dry-run. Every other row stays as it is."
    },
    footer = {
      "",
      "Examples:",
      "  belthigh forget my-club p03 --dry-run",
      "  belthigh forget my-club p03"
    })
final class ForgetCommand implements Callable<Integer> {
  @Mixin private ClubOptions club;
  @Spec private CommandSpec spec;

  @Parameters(index = "1", paramLabel = "PLAYER", description = "The player's id.")
  private String player;

  @Option(names = "--dry-run", description = "Only say what would be removed.")
  private boolean dryRun;

  @Override
  public Integer call() throws IOException {
    club.refuseMissing();
    if (dryRun) {
      return report(look(), "would be removed");
    }
    try (Output output = Output.into(club.folder())) {
      Forgetting forgetting = look();
      forgetting.carryOut(output);
      return report(forgetting, "removed");
    }
  }

  private Forgetting look() throws IOException {
    Optional<ClubRecord> record = record();
    Forgetting forgetting = Forgetting.of(club.folder(), player, record);
    if (forgetting.isEmpty()) {
      record.ifPresent(r -> Players.refuseUnknown(r, player));
      throw new NothingDone(
          "nothing of player '"
              + player
              + "' is in the folder; a player is named by the id of the roster.\n"
              + "Maybe the child was removed before.");
    }
    return forgetting;
  }

  /** The folder as it is read; one that cannot be used is looked through all the same. */
  private Optional<ClubRecord> record() {
    try {
      return Optional.of(Intake.read(club.folder(), club.catalogue()));
    } catch (Unusable e) {
      return Optional.empty();
    }
  }

  private int report(Forgetting forgetting, String done) {
    PrintWriter out = spec.commandLine().getOut();
    out.println("Player " + player + " in " + club.folder() + ", " + done + ":");
    int all = 0;
    for (Forgetting.Rows rows : forgetting.rows()) {
      int n = rows.lines().size();
      all += n;
      out.println(
          "  "
              + rows.file()
              + ": "
              + n
              + (n == 1 ? " row, line " : " rows, lines ")
              + rows.ranges());
    }
    out.println("  " + all + " rows in all; every other byte of these files stays as it is.");
    print(
        "Take out yourself, in files of a form that belthigh does not write:",
        forgetting.byHand(),
        out);
    print(
        "Look at these lines too: a name of the child, or of a namesake:",
        forgetting.mentions(),
        out);
    if (!forgetting.unseen().isEmpty()) {
      out.println(
          "Look into these files yourself; belthigh cannot, and the child may stand there:");
      forgetting.unseen().forEach(file -> out.println("  " + file));
    }
    out.println("Sheets that were printed, folders that plan wrote to, mails and copies are yours");
    out.println("to look through: cards are named " + player + "-week-…; plan again for the rest.");
    return forgetting.byHand().isEmpty() && forgetting.unseen().isEmpty()
        ? Belthigh.OK
        : Belthigh.SET_ASIDE;
  }

  private static void print(String what, List<Forgetting.Rows> places, PrintWriter out) {
    if (!places.isEmpty()) {
      out.println(what);
      places.forEach(
          p -> out.println("  " + p.file() + (p.lines().isEmpty() ? "" : " line " + p.ranges())));
    }
  }
}
