package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Command;

class CommandsTest {
  private static final List<Class<?>> OF_ALL =
      List.of(CompletionCommand.class, ManCommand.class, DocsCommand.class);

  static List<Class<?>> commands() {
    return Commands.ALL;
  }

  @ParameterizedTest
  @MethodSource("commands")
  void a_line_that_names_a_command_gets_no_other_unless_it_speaks_of_them(Class<?> command) {
    String name = command.getAnnotation(Command.class).name();
    List<Class<?>> wanted = OF_ALL.contains(command) ? Commands.ALL : List.of(command);

    assertThat(Commands.needed(name, "demo-players")).isEqualTo(wanted);
    assertThat(Commands.needed("--quiet", name)).isEqualTo(wanted);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "--help",
        "--help plan",
        "-x plan",
        "--version",
        "-q",
        "paln",
        "paln plan",
        "PLAN"
      })
  void any_other_line_gets_all_of_them(String line) {
    assertThat(Commands.needed(line.split(" "))).isEqualTo(Commands.ALL);
  }

  @Test
  void a_command_alone_says_and_refuses_what_it_does_among_the_others() {
    for (String line :
        List.of(
            "plan --help",
            "--help plan",
            "-x plan",
            "plan",
            "-q rest club --on never",
            "plan --x")) {
      String[] args = line.split(" ");

      assertThat(ran(Commands.needed(args), args)).as(line).isEqualTo(ran(Commands.ALL, args));
    }
  }

  private static String ran(List<Class<?>> commands, String... args) {
    StringWriter said = new StringWriter();
    PrintWriter to = new PrintWriter(said);
    int status =
        Belthigh.commandLine(new Commands(Clock.systemUTC()), commands, to, to).execute(args);
    return status + said.toString();
  }
}
