package org.belthigh.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.files.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/**
 * Tells a wrong command line in a few lines: what is wrong, what may be meant, where the options
 * are explained. The usage itself is left to {@code --help}, so that the mistake stays in sight.
 */
final class UsageMistakes implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException mistake, String[] args) {
    CommandLine line = mistake.getCommandLine();
    CommandSpec spec = line.getCommandSpec();
    PrintWriter err = line.getErr();
    List<String> unknown = unknownOptions(spec, args);
    if (unknown.isEmpty()) {
      err.println(mistake.getMessage());
      nearCommand(spec, args).ifPresent(near -> err.println("Maybe '" + near + "' is meant."));
    } else {
      unknown.forEach(option -> err.println(unknownOption(spec, option)));
    }
    err.println("'" + spec.qualifiedName() + " --help' explains every option.");
    return spec.exitCodeOnInvalidInput();
  }

  private static String unknownOption(CommandSpec spec, String option) {
    return "'"
        + option
        + "' is no option of "
        + spec.qualifiedName()
        + "."
        + Nearest.to(option, names(spec)).map(near -> " Maybe " + near + " is meant.").orElse("");
  }

  /** The words of the line that look like long options and are none; a value may stand after =. */
  private static List<String> unknownOptions(CommandSpec spec, String... args) {
    List<String> known = names(spec);
    List<String> unknown = new ArrayList<>();
    for (String arg : args) {
      String name = arg.contains("=") ? arg.substring(0, arg.indexOf('=')) : arg;
      if (name.equals("--")) {
        break;
      }
      if (name.startsWith("--") && !known.contains(name)) {
        unknown.add(name);
      }
    }
    return unknown;
  }

  private static List<String> names(CommandSpec spec) {
    return spec.options().stream()
        .map(OptionSpec::names)
        .flatMap(Stream::of)
        .filter(name -> name.startsWith("--"))
        .toList();
  }

  /** The command that the first word may mean, where it is none. */
  private static Optional<String> nearCommand(CommandSpec spec, String... args) {
    boolean top = spec.parent() == null;
    return Stream.of(args)
        .filter(arg -> top && !arg.startsWith("-"))
        .findFirst()
        .filter(word -> !spec.subcommands().containsKey(word))
        .flatMap(word -> Nearest.to(word, spec.subcommands().keySet()));
  }
}
