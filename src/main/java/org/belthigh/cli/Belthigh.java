package org.belthigh.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.belthigh.files.Unwritable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Entry point of the command line. */
@Command(
    name = "belthigh",
    version = Belthigh.VERSION,
    mixinStandardHelpOptions = true,
    description = "From a club folder to printed weekly hitting cards, within safety guidance.",
    footer = {
      "",
      "Examples:",
      "  belthigh new my-club",
      "  belthigh plan demo-players --out target/demo --from 2027-04-05",
      "  belthigh rest demo-players --on 2027-04-05",
      "  belthigh explain demo-players p02 --as-of 2027-04-05",
      "",
      "Exit status: 0 all well; 1 our own fault; 2 wrong command line; 3 done, but some of the",
      "input was set aside; 4 nothing could be done.",
      "",
      "Guidance only: the league's rules, local codes and a doctor or athletic trainer come first."
    })
public final class Belthigh implements Runnable {
  /** This version, as {@code --version} says it. */
  static final String VERSION = "belthigh 0.1.0";

  /** All well, warnings allowed. */
  static final int OK = 0;

  /** Our own fault. */
  static final int OUR_FAULT = 1;

  /** Done, but some of the input was set aside. */
  static final int SET_ASIDE = 3;

  /** Nothing could be done. */
  static final int NOTHING_DONE = 4;

  @Spec private CommandSpec spec;

  @Option(
      names = {"-q", "--quiet"},
      scope = ScopeType.INHERIT,
      description =
          "No remarks and no progress on standard error; only why nothing could be done. The exit"
              + " status says the rest.")
  private boolean quiet;

  /** Runs one command and leaves with its exit status. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, Terminal.charset());
    PrintWriter err = new PrintWriter(System.err, true, Terminal.charset());
    Commands commands = new Commands(Clock.system(ZoneId.systemDefault()));
    int status = commandLine(commands, Commands.needed(args), out, err).execute(args);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** The command line, with the clock from which "today" is read and where it prints. */
  static CommandLine commandLine(Clock clock, PrintWriter out, PrintWriter err) {
    return commandLine(new Commands(clock), Commands.ALL, out, err);
  }

  static CommandLine commandLine(
      Commands commands, List<Class<?>> needed, PrintWriter out, PrintWriter err) {
    Belthigh belthigh = new Belthigh();
    CommandLine line = new CommandLine(belthigh, commands);
    needed.forEach(line::addSubcommand);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(true);
    line.registerConverter(LocalDate.class, new DayConverter());
    line.setParameterExceptionHandler(new UsageMistakes());
    line.setExecutionStrategy(parsed -> belthigh.quietly(parsed, err));
    line.setExecutionExceptionHandler((fault, at, parsed) -> tell(fault, at.getErr()));
    return line;
  }

  /** Says why something could not be done. @return the exit status */
  static int tell(Exception fault, PrintWriter err) {
    if (fault instanceof NothingDone none) {
      err.println(none.getMessage());
      return NOTHING_DONE;
    }
    if (fault instanceof Unwritable unwritable) {
      err.println(unwritable.problem().text());
      return NOTHING_DONE;
    }
    err.println("This is a fault of belthigh, not of your files: " + fault);
    err.println("Please report it with the command that you gave.");
    if (System.getenv("BELTHIGH_TRACE") != null) {
      fault.printStackTrace(err);
    }
    return OUR_FAULT;
  }

  /** Runs the command; a quiet one says nothing beside its result, unless it cannot be done. */
  private int quietly(ParseResult parsed, PrintWriter err) {
    List<CommandLine> lines = parsed.asCommandLineList();
    if (quiet) {
      PrintWriter nobody = new PrintWriter(Writer.nullWriter());
      lines.forEach(line -> line.setErr(nobody));
    }
    try {
      return new RunLast().execute(parsed);
    } finally {
      lines.forEach(line -> line.setErr(err));
    }
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to do: plan, measure, rest, …");
  }
}
