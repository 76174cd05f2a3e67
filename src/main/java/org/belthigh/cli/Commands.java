package org.belthigh.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes commands; those that need to know the day get the clock. */
final class Commands implements IFactory {
  private final Clock clock;

  Commands(Clock clock) {
    this.clock = clock;
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
