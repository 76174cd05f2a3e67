package org.belthigh.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A black and white chart with a title and a description for who cannot see it. */
final class Svg {
  private final int width;
  private final int height;
  private final List<String> lines = new ArrayList<>();

  Svg(int width, int height, String title, String description) {
    this.width = width;
    this.height = height;
    lines.add("<title id=\"t\">" + escaped(title) + "</title>");
    lines.add("<desc id=\"d\">" + escaped(description) + "</desc>");
    lines.add("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"white\"/>");
    text(6, 16, title, "start", "bold");
  }

  /** A line; {@code dash} such as {@code 4 3}, or empty for a whole one. */
  Svg line(double x1, double y1, double x2, double y2, String dash) {
    String dashes = dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"";
    lines.add(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"black\"%s/>",
            x1,
            y1,
            x2,
            y2,
            dashes));
    return this;
  }

  /** A line through points, each x and y. */
  Svg path(List<double[]> points, String dash) {
    for (int i = 1; i < points.size(); i++) {
      double[] from = points.get(i - 1);
      double[] to = points.get(i);
      line(from[0], from[1], to[0], to[1], dash);
    }
    return this;
  }

  /** A dot, filled or a ring. */
  Svg dot(double x, double y, boolean filled) {
    lines.add(
        String.format(
            Locale.ROOT,
            "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" stroke=\"black\" fill=\"%s\"/>",
            x,
            y,
            filled ? "black" : "white"));
    return this;
  }

  /** Words, anchored at start, middle or end. */
  Svg text(double x, double y, String words, String anchor) {
    return text(x, y, words, anchor, "normal");
  }

  private Svg text(double x, double y, String words, String anchor, String weight) {
    lines.add(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-weight=\"%s\">%s</text>",
            x,
            y,
            anchor,
            weight,
            escaped(words)));
    return this;
  }

  /** The file. */
  String file() {
    return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"t d\""
                    + " width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
                    + " font-size=\"11\">%n",
                width,
                height,
                width,
                height)
            .replace(System.lineSeparator(), "\n")
        + String.join("\n", lines)
        + "\n</svg>\n";
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
