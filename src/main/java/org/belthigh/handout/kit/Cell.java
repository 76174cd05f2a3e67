package org.belthigh.handout.kit;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/** A table's cell. */
public final class Cell {
  private final Function<Style, Function<Align, Block>> simple;
  private final Consumer<Flow> rich;
  private final int span;

  private Cell(Function<Style, Function<Align, Block>> simple, Consumer<Flow> rich, int span) {
    this.simple = simple;
    this.rich = rich;
    this.span = span;
  }

  /** A text. */
  public static Cell of(Text text) {
    return new Cell(style -> align -> Paragraph.bare(text, style, align), null, 1);
  }

  /** A text, taken literally. */
  public static Cell of(String text) {
    return of(Text.of(text));
  }

  /** Nothing: room to write in. */
  public static Cell blank() {
    return of(Text.EMPTY);
  }

  /** Boxes to tick. */
  public static Cell ticks(List<Tick> ticks) {
    return new Cell(style -> align -> new Ticks(ticks, align), null, 1);
  }

  /** Boxes to tick with their labels. */
  public static Cell ticks(String... labels) {
    return ticks(Stream.of(labels).map(Tick::of).toList());
  }

  /** Any blocks. */
  public static Cell of(Consumer<Flow> content) {
    return new Cell(null, content, 1);
  }

  /**
   * The same cell over several columns.
   *
   * @throws IllegalArgumentException if {@code columns} is below 1
   */
  public Cell span(int columns) {
    if (columns < 1) {
      throw new IllegalArgumentException("span " + columns + ": must be 1 or more.");
    }
    return new Cell(simple, rich, columns);
  }

  int span() {
    return span;
  }

  Block block(Flow around, Align align) {
    if (simple != null) {
      return simple.apply(around.style()).apply(align);
    }
    Flow inside = around.inside();
    rich.accept(inside);
    return inside;
  }
}
