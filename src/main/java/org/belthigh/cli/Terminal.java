package org.belthigh.cli;

import java.io.Console;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Whether somebody watches. */
final class Terminal {
  private Terminal() {}

  /** What a terminal of this system shows; UTF-8 where a file or a pipe takes it. */
  @SuppressWarnings("SystemConsoleNull")
  static Charset charset() {
    return watched() ? System.console().charset() : StandardCharsets.UTF_8;
  }

  /**
   * Whether standard input and output are a terminal. From Java 22 on a console is there even for a
   * pipe and says itself what it is; that method is looked up, since we are built for 17.
   */
  @SuppressWarnings("SystemConsoleNull")
  static boolean watched() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
