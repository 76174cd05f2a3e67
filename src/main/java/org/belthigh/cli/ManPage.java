package org.belthigh.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page, in the man macros, written from the same descriptions as the help. */
final class ManPage {
  private final StringBuilder page = new StringBuilder();

  private final ManTexts texts;

  private ManPage(ManTexts texts) {
    this.texts = texts;
  }

  static String of(CommandSpec root, ManTexts texts) {
    ManPage man = new ManPage(texts);
    man.macro("TH", root.name().toUpperCase(Locale.ROOT) + " 1");
    man.macro("SH", texts.heading("NAME"));
    man.text(root.name() + " - " + texts.of(root));
    man.macro("SH", texts.heading("SYNOPSIS"));
    man.text(root.name() + texts.synopsis());
    man.macro("SH", texts.heading("OPTIONS"));
    root.options().forEach(o -> man.option(root, o));
    man.macro("SH", texts.heading("COMMANDS"));
    root.subcommands().values().stream()
        .map(CommandLine::getCommandSpec)
        .filter(spec -> !spec.usageMessage().hidden())
        .forEach(man::command);
    man.footer(root, "SH");
    return man.page.toString();
  }

  private void command(CommandSpec spec) {
    String places =
        spec.positionalParameters().stream()
            .map(PositionalParamSpec::paramLabel)
            .collect(Collectors.joining(" "));
    macro("SS", ("belthigh " + spec.name() + " " + places).strip());
    text(texts.of(spec));
    spec.positionalParameters()
        .forEach(p -> item("\\fI" + plain(p.paramLabel()) + "\\fR", texts.of(spec, p)));
    spec.options().stream().filter(o -> !o.inherited()).forEach(o -> option(spec, o));
    footer(spec, null);
  }

  private void option(CommandSpec spec, OptionSpec option) {
    if (option.usageHelp() || option.versionHelp() || option.hidden()) {
      return;
    }
    String names =
        Arrays.stream(option.names())
            .map(n -> "\\fB" + plain(n) + "\\fR")
            .collect(Collectors.joining(", "));
    String value = option.arity().max() == 0 ? "" : " \\fI" + plain(option.paramLabel()) + "\\fR";
    item(names + value, texts.of(spec, option));
  }

  private void item(String head, String description) {
    page.append(".TP\n").append(head).append('\n');
    text(description);
  }

  /** Examples keep their lines. */
  private void footer(CommandSpec spec, String heading) {
    List<String> lines = texts.footer(spec);
    if (lines.isEmpty()) {
      return;
    }
    if (heading != null) {
      macro(heading, texts.heading("NOTES"));
    }
    page.append(".PP\n.nf\n");
    lines.forEach(this::text);
    page.append(".fi\n");
  }

  private void macro(String name, String argument) {
    page.append('.').append(name).append(' ').append(plain(argument)).append('\n');
  }

  private void text(String line) {
    String plain = plain(line);
    // a line that begins so would be taken for a macro
    page.append(plain.startsWith(".") || plain.startsWith("'") ? "\\&" : "")
        .append(plain)
        .append('\n');
  }

  private static String plain(String text) {
    return text.replace("\\", "\\e").replace("-", "\\-").replace("…", "...");
  }
}
