package org.belthigh.speed;

/** The floor of every cold start: a program that does nothing else. */
public final class Hello {
  private Hello() {}

  /** Says hello. */
  public static void main(String[] args) {
    System.out.println("hello");
  }
}
