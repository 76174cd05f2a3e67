package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table being written: columns first, then the head, then the rows.
 *
 * <p>The head is repeated on each page; a row stays on one page unless it is higher than a page.
 */
public final class Table {
  private final Flow around;
  private List<Col> columns = List.of();
  private List<String> head = List.of();
  private final List<Grid.Row> rows = new ArrayList<>();
  private boolean rowHeaders;
  private boolean boxed;
  private double leastRow;

  Table(Flow around) {
    this.around = around;
  }

  /** The columns from left to right. */
  public Table columns(Col... wanted) {
    columns = List.of(wanted);
    return this;
  }

  /** The columns from left to right. */
  public Table columns(List<Col> wanted) {
    columns = List.copyOf(wanted);
    return this;
  }

  /** The header cells, one a column; without it there are none. */
  public Table head(String... titles) {
    return head(List.of(titles));
  }

  /** The header cells, one a column. */
  public Table head(List<String> titles) {
    check(titles.size(), "head");
    head = List.copyOf(titles);
    return this;
  }

  /** The first cell of each row is the row's header. */
  public Table rowHeaders() {
    rowHeaders = true;
    return this;
  }

  /** Rules between columns too, for tables that are written in. */
  public Table boxed() {
    boxed = true;
    return this;
  }

  /** Rows high enough to write in: at least 8.2 mm. */
  public Table writable() {
    leastRow = Style.WRITING_LINE;
    return this;
  }

  /** A row of texts. */
  public Table row(String... texts) {
    return row(Stream.of(texts).map(Cell::of).toList());
  }

  /** A row of cells. */
  public Table row(Cell... cells) {
    return row(List.of(cells));
  }

  /** A row of cells. */
  public Table row(List<Cell> cells) {
    return add(cells, false);
  }

  /** A row with a hatched edge; its words must say why. */
  public Table markedRow(Cell... cells) {
    return add(List.of(cells), true);
  }

  /** A row with a hatched edge; its words must say why. */
  public Table markedRow(List<Cell> cells) {
    return add(cells, true);
  }

  private Table add(List<Cell> cells, boolean marked) {
    check(cells.stream().mapToInt(Cell::span).sum(), "row " + (rows.size() + 1));
    List<Grid.Slot> slots = new ArrayList<>();
    int column = 0;
    for (Cell cell : cells) {
      Block block = cell.block(around, columns.get(column).align());
      slots.add(new Grid.Slot(block, column, cell.span()));
      column += cell.span();
    }
    rows.add(new Grid.Row(slots, marked));
    return this;
  }

  private void check(int cells, String where) {
    if (columns.isEmpty() || cells != columns.size()) {
      throw new IllegalArgumentException(
          "table %s: %s cells for %s columns; there must be one a column."
              .formatted(where, cells, columns.size()));
    }
  }

  Grid grid() {
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("table: there are no columns; at least one is needed.");
    }
    List<Grid.Slot> titles = new ArrayList<>();
    for (int i = 0; i < head.size(); i++) {
      Block title = Paragraph.bare(Text.bold(head.get(i)), around.style(), columns.get(i).align());
      titles.add(new Grid.Slot(title, i, 1));
    }
    return new Grid(columns, titles, rows, rowHeaders, boxed, leastRow);
  }
}
