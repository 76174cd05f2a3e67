package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Columns of blocks side by side, read one after the other; one below the other where the words or
 * drawings of one need more than its width.
 *
 * <p>Side by side they stay on one page; where one is higher than a page all are cut at the foot of
 * the page (a table's head is not repeated there).
 */
public final class Columns {
  /** White space between two columns, in points. */
  public static final double GUTTER = 16;

  /** Least width of a column of words in a larger print, in type sizes. */
  private static final double READABLE = 20;

  private final Flow around;
  private final List<Column> columns = new ArrayList<>();

  Columns(Flow around) {
    this.around = around;
  }

  private record Column(double share, double width, Flow content) {}

  /**
   * The next column to the right.
   *
   * @param share of the width that columns of a fixed width leave; more than 0
   */
  public Columns column(double share, Consumer<Flow> content) {
    return add(share, 0, content);
  }

  /**
   * The next column to the right, of a fixed width.
   *
   * @param width in points; more than 0
   */
  public Columns fixed(double width, Consumer<Flow> content) {
    return add(0, width, content);
  }

  private Columns add(double share, double width, Consumer<Flow> content) {
    if (share <= 0 && width <= 0) {
      throw new IllegalArgumentException("a column needs a share or a width above 0.");
    }
    Flow flow = around.inside();
    content.accept(flow);
    columns.add(new Column(share, width, flow));
    return this;
  }

  Block lanes() {
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("columns: there is none; at least one is needed.");
    }
    return new Lanes(List.copyOf(columns));
  }

  private record Lanes(List<Column> columns) implements Block {
    @Override
    public List<Piece> pieces(Tag parent, double width, Setting setting) {
      double[] widths = widths(width);
      return fit(widths, setting)
          ? beside(parent, widths, setting)
          : columns.stream()
              .flatMap(column -> column.content().pieces(parent, width, setting).stream())
              .toList();
    }

    private double[] widths(double width) {
      double free =
          width - GUTTER * (columns.size() - 1) - columns.stream().mapToDouble(Column::width).sum();
      double shares = columns.stream().mapToDouble(Column::share).sum();
      return columns.stream()
          .mapToDouble(c -> c.share() > 0 ? free * c.share() / shares : c.width())
          .toArray();
    }

    private boolean fit(double[] widths, Setting setting) {
      for (int i = 0; i < widths.length; i++) {
        Extent extent = columns.get(i).content().extent(setting);
        double wanted = setting.scale() > 1 ? wanted(extent, setting) : extent.least();
        if (wanted > widths[i] + 0.01) {
          return false;
        }
      }
      return true;
    }

    /**
     * In a larger print fewer words go on a line: columns stay side by side only if wide enough.
     */
    private static double wanted(Extent extent, Setting setting) {
      double readable = READABLE * setting.style().body().type();
      return Math.max(extent.least(), Math.min(extent.preferred(), readable));
    }

    private List<Piece> beside(Tag parent, double[] widths, Setting setting) {
      List<Lane> lanes = new ArrayList<>();
      double x = 0;
      for (int i = 0; i < widths.length; i++) {
        lanes.add(new Lane(x, columns.get(i).content().pieces(parent, widths[i], setting)));
        x += widths[i] + GUTTER;
      }
      return Lane.sideBySide("columns", lanes, setting.room()).stream()
          .map(piece -> piece.spaced(0, Style.SPACE))
          .toList();
    }

    @Override
    public Extent extent(Setting setting) {
      Extent sum = Extent.NONE.plus(GUTTER * (columns.size() - 1));
      for (Column column : columns) {
        Extent own = column.content().extent(setting);
        sum =
            column.share() > 0
                ? new Extent(sum.least() + own.least(), sum.preferred() + own.preferred())
                : sum.plus(column.width());
      }
      return sum;
    }
  }
}
