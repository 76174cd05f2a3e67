package org.belthigh.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.belthigh.handout.PrintedPages;

/**
 * One print as it was read back: its pages without their feet, and what the feet say.
 *
 * @param texts a page's text as it stands
 * @param bodies the same without the foot
 * @param feet the feet; empty texts where a page has none
 */
record Paper(
    String path, String language, List<String> texts, List<PaperText> bodies, List<String> feet) {
  private static final Pattern NUMBERED = Pattern.compile("(\\d+)\\D+(\\d+)\\s*$");

  Paper {
    texts = List.copyOf(texts);
    bodies = List.copyOf(bodies);
    feet = List.copyOf(feet);
  }

  /**
   * @param club how each foot begins
   */
  static Paper of(String path, PrintedPages pages, String club) {
    List<String> texts = new ArrayList<>();
    List<PaperText> bodies = new ArrayList<>();
    List<String> feet = new ArrayList<>();
    Pattern foot = foot(club);
    for (PrintedPages.Page page : pages.pages()) {
      int at = lastIn(foot, page.text());
      String body = at < 0 ? page.text() : page.text().substring(0, at);
      texts.add(body);
      bodies.add(new PaperText(body));
      feet.add(at < 0 ? "" : page.text().substring(at));
    }
    return new Paper(path, pages.language(), texts, bodies, feet);
  }

  /** The club's name, wherever its lines end, and a dot in the middle of the line after it. */
  private static Pattern foot(String club) {
    return Pattern.compile(
        club.strip()
                .codePoints()
                .filter(c -> !Character.isWhitespace(c))
                .mapToObj(c -> Pattern.quote(Character.toString(c)))
                .collect(Collectors.joining("[\\s\\u00ad-]*"))
            + "\\s*·");
  }

  private static int lastIn(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    int at = -1;
    while (matcher.find()) {
      at = matcher.start();
    }
    return at;
  }

  int pageCount() {
    return bodies.size();
  }

  /** Whether {@code words} stand on the print; at the end of a page they may go on overleaf. */
  boolean has(String words) {
    return PaperText.have(bodies, words);
  }

  /** How often {@code words} stand on it as whole words. */
  int count(String words) {
    return bodies.stream().mapToInt(b -> b.count(words)).sum();
  }

  /** Pages of the sheets that are bound in it, first to last; each is whole. */
  List<Integer> sheets() {
    List<Integer> sheets = new ArrayList<>();
    int before = 0;
    int of = 0;
    for (String foot : feet) {
      Matcher matcher = NUMBERED.matcher(foot);
      if (!matcher.find()) {
        return List.of();
      }
      int page = number(matcher.group(1));
      int count = number(matcher.group(2));
      boolean next = before == of ? page == 1 : page == before + 1 && count == of;
      if (!next) {
        return List.of();
      }
      before = page;
      of = count;
      if (page == count) {
        sheets.add(count);
      }
    }
    return before == of ? sheets : List.of();
  }

  private static int number(String digits) {
    return digits.length() > 6 ? Integer.MAX_VALUE : Integer.parseInt(digits);
  }
}
