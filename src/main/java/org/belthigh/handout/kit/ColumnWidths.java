package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares a table's width among its columns.
 *
 * <p>Fixed columns get what they ask for, or their longest word if that is wider. Columns by
 * content get their preferred width, or, where there is less room, something between their longest
 * word and that. Columns by share get the rest, but never less than their longest word as long as
 * there is room for it; where there is not, the widest give way.
 */
final class ColumnWidths {
  private final List<Col> columns;
  private final List<Block.Extent> extents;

  private ColumnWidths(List<Col> columns, List<Block.Extent> extents) {
    this.columns = columns;
    this.extents = extents;
  }

  /**
   * Widths without padding, in points; their sum is at most {@code room}.
   *
   * @param room width of the table without any padding, in points
   * @throws Overflow if the fixed columns alone are wider
   */
  static double[] of(List<Col> columns, List<Block.Extent> extents, double room) {
    return new ColumnWidths(columns, extents).share(room);
  }

  private double[] share(double room) {
    double[] widths = new double[columns.size()];
    for (int i : of(Col.Kind.FIXED)) {
      widths[i] = Math.max(columns.get(i).measure(), extents.get(i).least());
    }
    double free = room - Arrays.stream(widths).sum();
    if (free < 0) {
      throw new Overflow("table", 0, columns.size() + " columns", "are wider than the page");
    }
    int[] content = of(Col.Kind.CONTENT);
    int[] shared = of(Col.Kind.SHARE);
    int[] flexible = IntStream.concat(Arrays.stream(content), Arrays.stream(shared)).toArray();
    if (sumLeast(flexible) > free) {
      double highest = highest(flexible, free);
      for (int i : flexible) {
        widths[i] = Math.min(extents.get(i).least(), highest);
      }
      return widths;
    }
    shareAmongContent(widths, content, free - sumLeast(shared));
    free -= Arrays.stream(content).mapToDouble(i -> widths[i]).sum();
    shareByShares(widths, shared, free);
    return widths;
  }

  private void shareAmongContent(double[] widths, int[] content, double room) {
    double least = sumLeast(content);
    double preferred = Arrays.stream(content).mapToDouble(i -> extents.get(i).preferred()).sum();
    double part = preferred <= room ? 1 : (room - least) / (preferred - least);
    for (int i : content) {
      Block.Extent extent = extents.get(i);
      widths[i] = extent.least() + part * (extent.preferred() - extent.least());
    }
  }

  /** Shares; whoever would get less than its longest word gets that, the others share the rest. */
  private void shareByShares(double[] widths, int[] shared, double free) {
    double rest = free;
    double shares = Arrays.stream(shared).mapToDouble(i -> columns.get(i).measure()).sum();
    List<Integer> open = new ArrayList<>(Arrays.stream(shared).boxed().toList());
    // those in most need of their longest word first: once one has enough, so have all after it
    open.sort(
        Comparator.comparingDouble(
            i -> columns.get(i).measure() / Math.max(extents.get(i).least(), 1e-9)));
    for (int i : open) {
      double share = columns.get(i).measure();
      widths[i] = Math.max(extents.get(i).least(), rest * share / shares);
      rest -= widths[i];
      shares -= share;
    }
  }

  /** Where not all longest words fit: the width that the widest are held to, so that all fit. */
  private double highest(int[] of, double room) {
    double[] least = Arrays.stream(of).mapToDouble(i -> extents.get(i).least()).sorted().toArray();
    double rest = room;
    for (int i = 0; i < least.length; i++) {
      double even = rest / (least.length - i);
      if (least[i] > even) {
        return even;
      }
      rest -= least[i];
    }
    return rest;
  }

  private double sumLeast(int[] of) {
    return Arrays.stream(of).mapToDouble(i -> extents.get(i).least()).sum();
  }

  private int[] of(Col.Kind kind) {
    return IntStream.range(0, columns.size()).filter(i -> columns.get(i).kind() == kind).toArray();
  }
}
