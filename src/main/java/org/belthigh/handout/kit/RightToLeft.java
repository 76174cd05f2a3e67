package org.belthigh.handout.kit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sets names of right-to-left scripts so that they read the right way on a line that reads left to
 * right: the letters of a name from the right, its words in their order from the right, unbroken.
 * What stands around it, such as a shirt number, stays where it is.
 */
public final class RightToLeft {
  private static final String LETTER = "[\\u0590-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc]";

  /** Words of such letters, and the point of an initial behind the first of them. */
  private static final Pattern NAME =
      Pattern.compile(
          LETTER
              + "+(?:[ \\u00a0'\u2019-]"
              + LETTER
              + "+)*(?:(?<=[ \\u00a0]"
              + LETTER
              + "{1,3})\\.)?");

  /** A letter with the marks on it. */
  private static final Pattern CLUSTER = Pattern.compile("\\P{M}\\p{M}*|\\p{M}+");

  private RightToLeft() {}

  /**
   * A line as its letters are set from the left; of one that is set, the line as it was written but
   * for the place of an initial's point.
   */
  public static String set(String text) {
    Matcher names = NAME.matcher(text);
    return names.find() ? names.replaceAll(name -> reversed(name.group())) : text;
  }

  private static String reversed(String name) {
    StringBuilder reversed = new StringBuilder();
    Matcher clusters = CLUSTER.matcher(name.replace(' ', '\u00a0'));
    while (clusters.find()) {
      reversed.insert(0, clusters.group());
    }
    return reversed.toString();
  }
}
