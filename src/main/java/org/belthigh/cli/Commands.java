package org.belthigh.cli;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands; those that need to know the day get the clock. */
final class Commands implements IFactory {
  /** Every command, in the order of the help. */
  static final List<Class<?>> ALL =
      List.of(
          NewCommand.class,
          PlanCommand.class,
          MeasureCommand.class,
          RestCommand.class,
          ExplainCommand.class,
          WhatIfCommand.class,
          ExportCommand.class,
          CheckCommand.class,
          ForgetCommand.class,
          HeatCommand.class,
          LabCommand.class,
          CompletionCommand.class,
          ManCommand.class,
          DocsCommand.class);

  /** Those that speak of all others. */
  private static final Set<String> OF_ALL = Set.of("completion", "man", "docs");

  /** May stand before a command and changes nothing of what others say. */
  private static final Set<String> QUIET = Set.of("-q", "--quiet");

  private final Clock clock;

  Commands(Clock clock) {
    this.clock = clock;
  }

  /**
   * The commands that a command line needs: to read what the others say of themselves takes longer
   * than some of them run. All of them where its first word, {@code --quiet} aside, is no command.
   */
  static List<Class<?>> needed(String... args) {
    return Stream.of(args)
        .dropWhile(QUIET::contains)
        .findFirst()
        .filter(name -> !OF_ALL.contains(name))
        .flatMap(name -> ALL.stream().filter(type -> name(type).equals(name)).findFirst())
        .<List<Class<?>>>map(List::of)
        .orElse(ALL);
  }

  /** A command's name is that of its class. */
  private static String name(Class<?> command) {
    return command.getSimpleName().replace("Command", "").toLowerCase(Locale.ROOT);
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == HeatCommand.class) {
      return type.cast(new HeatCommand(clock));
    }
    if (type == PlanCommand.class) {
      return type.cast(new PlanCommand(clock));
    }
    if (type == NewCommand.class) {
      return type.cast(new NewCommand(clock));
    }
    if (type == ClubOptions.class) {
      return type.cast(new ClubOptions(clock));
    }
    return CommandLine.defaultFactory().create(type);
  }
}
