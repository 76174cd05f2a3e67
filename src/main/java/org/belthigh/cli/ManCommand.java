package org.belthigh.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
      "  belthigh man > ~/.local/share/man/man1/belthigh.1",
      "  belthigh man --lang es | man -l -"
    })
final class ManCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(names = "--lang", paramLabel = "en|es", description = "Language of the page; en.")
  private String lang = "en";

  @Override
  public Integer call() {
    if (!List.of("en", "es").contains(lang)) {
      throw new ParameterException(
          spec.commandLine(), "--lang must be en or es, not '" + lang + "'");
    }
    ManTexts texts = lang.equals("es") ? ManTexts.spanish() : ManTexts.english();
    spec.commandLine().getOut().print(ManPage.of(spec.root(), texts));
    return Belthigh.OK;
  }
}
