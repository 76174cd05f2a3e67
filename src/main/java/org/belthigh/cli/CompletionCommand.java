package org.belthigh.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code belthigh completion}: what a shell needs to complete commands and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description = "Prints a script by which bash and zsh complete commands and options.",
    footer = {
      "",
      "Examples:",
      "  belthigh completion > belthigh-completion && source belthigh-completion",
      "  belthigh completion > ~/.local/share/bash-completion/completions/belthigh"
    })
final class CompletionCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(AutoComplete.bash("belthigh", spec.root().commandLine()));
    return Belthigh.OK;
  }
}
