package org.belthigh.cli;

/** Entry point of the command line. */
public final class Belthigh {
  private Belthigh() {}

  /** Runs one command and leaves with its exit status. */
  public static void main(String[] args) {}
}
