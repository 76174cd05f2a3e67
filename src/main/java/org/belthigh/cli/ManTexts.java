package org.belthigh.cli;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What the manual page says: as the help does, or the same in Spanish. */
final class ManTexts {
  private final Properties spanish;

  private ManTexts(Properties spanish) {
    this.spanish = spanish;
  }

  /** The words of the help. */
  static ManTexts english() {
    return new ManTexts(new Properties());
  }

  static ManTexts spanish() {
    Properties texts = new Properties();
    try (var in = ManTexts.class.getResourceAsStream("/manual/es.properties")) {
      texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new ManTexts(texts);
  }

  private boolean isEnglish() {
    return spanish.isEmpty();
  }

  /** The text of {@code key}, or of what several commands share. */
  private String text(String key, String shared) {
    String text = spanish.getProperty(key, spanish.getProperty(shared));
    if (text == null) {
      throw new IllegalStateException("the Spanish manual says nothing of " + key);
    }
    return text;
  }

  String heading(String name) {
    return isEnglish() ? name : text("heading." + name, "");
  }

  String synopsis() {
    return isEnglish() ? " COMMAND [OPTIONS]" : " ORDEN [OPCIONES]";
  }

  /** What a command does. */
  String of(CommandSpec command) {
    return isEnglish()
        ? String.join(" ", command.usageMessage().description())
        : text(command.name(), "");
  }

  /** What an option or a place of a command is for. */
  String of(CommandSpec command, ArgSpec argument) {
    if (isEnglish()) {
      return String.join(" ", argument.description());
    }
    String name =
        argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    return text(command.name() + "." + name, "any." + name);
  }

  /** The lines below a command; examples keep theirs. */
  List<String> footer(CommandSpec command) {
    List<String> lines =
        Stream.of(command.usageMessage().footer()).dropWhile(String::isBlank).toList();
    if (isEnglish() || lines.isEmpty()) {
      return lines;
    }
    List<String> footer = new ArrayList<>(List.of("Ejemplos:"));
    lines.stream().filter(line -> line.startsWith("  ")).forEach(footer::add);
    if (lines.stream().skip(1).anyMatch(line -> !line.startsWith("  "))) {
      for (String note : text(command.name() + ".note", "").split("\\|", -1)) {
        footer.addAll(List.of("", note));
      }
    }
    return footer;
  }
}
