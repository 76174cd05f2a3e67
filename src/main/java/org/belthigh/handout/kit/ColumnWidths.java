package org.belthigh.handout.kit;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Shares a table's width among its columns.
 *
 * <p>Fixed columns get what they ask for, or their longest word if that is wider. Columns by
 * content get their preferred width, or, where there is less room, something between their longest
 * word and that. Columns by share get the rest, but never less than their longest word as long as
 * there is room for it.
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
    int[] fixed = of(Col.Kind.FIXED);
    int[] content = of(Col.Kind.CONTENT);
    int[] shared = of(Col.Kind.SHARE);
    for (int i : fixed) {
      widths[i] = Math.max(columns.get(i).measure(), extents.get(i).least());
    }
    double free = room - Arrays.stream(widths).sum();
    if (free < 0) {
      throw new Overflow("table", 0, columns.size() + " columns", "are wider than the page");
    }
    double reserved = sumLeast(shared);
    shareAmongContent(widths, content, Math.max(free - reserved, free / 4), free, shared.length);
    free -= Arrays.stream(content).mapToDouble(i -> widths[i]).sum();
    shareByShares(widths, shared, free);
    return widths;
  }

  private void shareAmongContent(
      double[] widths, int[] content, double wanted, double free, int others) {
    double room = others == 0 ? free : wanted;
    double least = sumLeast(content);
    double preferred = Arrays.stream(content).mapToDouble(i -> extents.get(i).preferred()).sum();
    for (int i : content) {
      Block.Extent extent = extents.get(i);
      if (preferred <= room) {
        widths[i] = extent.preferred();
      } else if (least <= room) {
        double part = (room - least) / (preferred - least);
        widths[i] = extent.least() + part * (extent.preferred() - extent.least());
      } else {
        widths[i] = extent.least() * room / least;
      }
    }
  }

  /** Shares; whoever would get less than its longest word gets that, the others share the rest. */
  private void shareByShares(double[] widths, int[] shared, double free) {
    double least = sumLeast(shared);
    if (least > free) {
      for (int i : shared) {
        widths[i] = extents.get(i).least() * free / least;
      }
      return;
    }
    boolean[] settled = new boolean[columns.size()];
    boolean changed = true;
    while (changed) {
      changed = false;
      double rest = free - sum(shared, settled, i -> extents.get(i).least(), true);
      double shares = sum(shared, settled, i -> columns.get(i).measure(), false);
      for (int i : shared) {
        if (settled[i]) {
          continue;
        }
        widths[i] = rest * columns.get(i).measure() / shares;
        if (widths[i] < extents.get(i).least()) {
          widths[i] = extents.get(i).least();
          settled[i] = true;
          changed = true;
          break;
        }
      }
    }
  }

  private static double sum(
      int[] of, boolean[] settled, IntToDoubleFunction value, boolean wanted) {
    return Arrays.stream(of).filter(i -> settled[i] == wanted).mapToDouble(value).sum();
  }

  private double sumLeast(int[] of) {
    return Arrays.stream(of).mapToDouble(i -> extents.get(i).least()).sum();
  }

  private int[] of(Col.Kind kind) {
    return IntStream.range(0, columns.size()).filter(i -> columns.get(i).kind() == kind).toArray();
  }
}
