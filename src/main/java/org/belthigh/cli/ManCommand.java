package org.belthigh.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code belthigh man}: the manual page. */
@Command(
    name = "man",
    mixinStandardHelpOptions = true,
    description = "Prints the manual page: every command and option.",
    footer = {
      "",
      "Examples:",
      "  belthigh man | man -l -",
      "  belthigh man > ~/.local/share/man/man1/belthigh.1"
    })
final class ManCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(ManPage.of(spec.root()));
    return Belthigh.OK;
  }
}
