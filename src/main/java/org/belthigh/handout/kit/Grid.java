package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A table, ready to be laid out. */
record Grid(
    List<Col> columns,
    List<Slot> head,
    List<Row> rows,
    boolean rowHeaders,
    boolean boxed,
    double leastRow)
    implements Block {
  private static final double PAD_X = 5;
  private static final double PAD_Y = 3;
  private static final double MARKED_EDGE = 7;
  private static final double HATCH_PITCH = 3.5;

  /** Content that starts in a column and runs over {@code span} columns. */
  record Slot(Block block, int column, int span) {}

  /** Cells side by side; {@code marked} with a hatched edge. */
  record Row(List<Slot> slots, boolean marked) {
    Row {
      slots = List.copyOf(slots);
    }
  }

  Grid {
    columns = List.copyOf(columns);
    head = List.copyOf(head);
    rows = List.copyOf(rows);
  }

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    if (head.isEmpty() && rows.isEmpty()) {
      return List.of();
    }
    double[] edges = edges(width, setting);
    Tag table = parent.child("Table");
    List<Piece> pieces = new ArrayList<>();
    Setting below = setting;
    Piece again = null;
    if (!head.isEmpty()) {
      Piece heading = head(table.child("THead"), edges, setting);
      again = repeated(edges, setting);
      below = setting.within(heading.height());
      pieces.add(heading.spaced(Style.NARROW, 0).glued(Piece.Glue.TIGHT));
    }
    Tag body = rows.isEmpty() ? null : table.child("TBody");
    for (Row row : rows) {
      for (Piece piece : row(body, row, edges, below)) {
        pieces.add(again == null ? piece : piece.repeating(again));
      }
    }
    int last = pieces.size() - 1;
    Piece end = pieces.get(last);
    pieces.set(last, end.spaced(end.before(), Style.SPACE));
    return pieces;
  }

  private Piece head(Tag section, double[] edges, Setting setting) {
    Tag tag = section.child("TR");
    List<Lane> lanes = new ArrayList<>();
    for (Slot slot : head) {
      Tag cell = tag.headerCell("Column");
      lanes.add(lane(slot, cell, edges, setting));
    }
    return framedHead(lanes, edges, setting);
  }

  private Piece framedHead(List<Lane> lanes, double[] edges, Setting setting) {
    List<Piece> pieces = Lane.sideBySide("table head", lanes, setting.room());
    Piece content =
        pieces.isEmpty() ? Piece.of("table head", 0, (canvas, x, top) -> {}) : pieces.get(0);
    return framed(content, new Row(head, false), edges, Style.MEDIUM, 0);
  }

  /** The head again at the top of a later page: looks the same, and is decoration for readers. */
  private Piece repeated(double[] edges, Setting setting) {
    Tag unread = new Tag("TR");
    Piece heading = head(unread, edges, setting);
    return heading.redrawn(
        heading.height(),
        (canvas, x, top) -> canvas.unread(() -> heading.drawing().draw(canvas, x, top)));
  }

  private List<Piece> row(Tag body, Row row, double[] edges, Setting setting) {
    Tag tag = body.child("TR");
    List<Lane> lanes = new ArrayList<>();
    for (Slot slot : row.slots()) {
      boolean header = rowHeaders && slot.column() == 0;
      Tag cell = header ? tag.headerCell("Row") : tag.child("TD");
      lanes.add(lane(slot, cell.spanning(slot.span()), edges, setting));
    }
    List<Piece> content = Lane.sideBySide("table row", lanes, setting.room() - 2 * PAD_Y);
    if (content.isEmpty()) {
      content = List.of(Piece.of("table row", 0, (canvas, x, top) -> {}));
    }
    double least = Math.max(leastRow, setting.style().body().line() + 2 * PAD_Y);
    return content.stream()
        .map(piece -> piece.breaksBefore() ? piece : framed(piece, row, edges, Style.THIN, least))
        .toList();
  }

  private Lane lane(Slot slot, Tag cell, double[] edges, Setting setting) {
    double left = edges[slot.column()] + leftPadding(slot.column());
    int last = slot.column() + slot.span() - 1;
    double right = edges[last + 1] - rightPadding(last);
    return new Lane(left, slot.block().pieces(cell, right - left, setting.within(2 * PAD_Y)));
  }

  /** Content in the middle of its row's height, with the row's rules around it. */
  private Piece framed(Piece content, Row row, double[] edges, double weight, double least) {
    double height = Math.max(content.height() + 2 * PAD_Y, least);
    double drop = (height - content.height()) / 2;
    return content.redrawn(
        height,
        (canvas, x, top) -> {
          canvas.decorate(ink -> rules(ink, row, edges, weight, x, top, height));
          content.drawing().draw(canvas, x, top + drop);
        });
  }

  private void rules(
      Ink ink, Row row, double[] edges, double weight, double x, double top, double height) {
    double right = x + edges[edges.length - 1];
    if (row.marked()) {
      ink.hatch(x, top, MARKED_EDGE, height, HATCH_PITCH);
    }
    ink.rule(x, top + height, right, top + height, weight);
    if (boxed) {
      ink.rule(x, top, right, top, Style.THIN);
      ink.rule(right, top, right, top + height, Style.THIN);
      for (Slot slot : row.slots()) {
        double edge = x + edges[slot.column()];
        ink.rule(edge, top, edge, top + height, Style.THIN);
      }
    }
  }

  /** Left edges of the columns from the table's left, and the right edge of the last. */
  private double[] edges(double width, Setting setting) {
    double[] widths = ColumnWidths.of(columns, extents(setting), width - padding());
    double[] edges = new double[columns.size() + 1];
    for (int i = 0; i < widths.length; i++) {
      edges[i + 1] = edges[i] + leftPadding(i) + widths[i] + rightPadding(i);
    }
    return edges;
  }

  /** Without rules at the sides, the first column stands in line with the text around the table. */
  private double leftPadding(int column) {
    if (column > 0) {
      return PAD_X;
    }
    boolean marks = rows.stream().anyMatch(Row::marked);
    return marks ? MARKED_EDGE + PAD_X : boxed ? PAD_X : 0;
  }

  private double rightPadding(int column) {
    return boxed || column < columns.size() - 1 ? PAD_X : 0;
  }

  private double padding() {
    return IntStream.range(0, columns.size())
        .mapToDouble(column -> leftPadding(column) + rightPadding(column))
        .sum();
  }

  private List<Extent> extents(Setting setting) {
    Extent[] extents = new Extent[columns.size()];
    Arrays.fill(extents, Extent.NONE);
    List<Slot> slots = new ArrayList<>(head);
    rows.forEach(row -> slots.addAll(row.slots()));
    for (Slot slot : slots) {
      if (slot.span() == 1) {
        Extent own = slot.block().extent(setting);
        extents[slot.column()] = extents[slot.column()].over(own);
      }
    }
    return List.of(extents);
  }

  @Override
  public Extent extent(Setting setting) {
    double least = padding();
    double preferred = least;
    List<Extent> extents = extents(setting);
    for (int i = 0; i < extents.size(); i++) {
      boolean fixed = columns.get(i).kind() == Col.Kind.FIXED;
      double floor = fixed ? Math.max(columns.get(i).measure(), extents.get(i).least()) : 0;
      least += fixed ? floor : extents.get(i).least();
      preferred += fixed ? floor : extents.get(i).preferred();
    }
    return new Extent(least, preferred);
  }
}
