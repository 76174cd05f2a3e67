package org.belthigh.handout.kit;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One set line.
 *
 * @param runs what it shows, in order
 * @param width sum of the advance widths, in points
 * @param goesOn whether a space was swallowed at its end; drawn again for readers of the text
 */
record Line(List<Text.Run> runs, double width, boolean goesOn) {
  Line {
    runs = List.copyOf(runs);
  }

  String plain() {
    return runs.stream().map(Text.Run::text).collect(Collectors.joining());
  }
}
