package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Blocks one below the other, written from top to bottom.
 *
 * <p>Strings are taken literally; for bold words in running text use {@link Text#marked}. A blank
 * text leaves nothing behind, not even its space.
 */
public final class Flow implements Block {
  private final Style style;
  private final Outline outline;
  private final List<Block> blocks = new ArrayList<>();

  Flow(Style style, Outline outline) {
    this.style = style;
    this.outline = outline;
  }

  /** The type sizes of this print. */
  public Style style() {
    return style;
  }

  /** Title of the print. */
  public Flow h1(String heading) {
    return heading(1, Text.of(heading));
  }

  /** Heading of a part. */
  public Flow h2(String heading) {
    return heading(2, Text.of(heading));
  }

  /** Heading within a part. */
  public Flow h3(String heading) {
    return heading(3, Text.of(heading));
  }

  private Flow heading(int level, Text heading) {
    if (heading.isBlank()) {
      throw new IllegalArgumentException("a heading of level " + level + " is blank.");
    }
    outline.enter(level, heading.plain());
    return add(Paragraph.heading(level, heading, style));
  }

  /** A paragraph. */
  public Flow p(String text) {
    return p(Text.of(text));
  }

  /** A paragraph. */
  public Flow p(Text text) {
    return add(Paragraph.body(text, style));
  }

  /** A sentence that must be seen first, in the size of a part's heading. */
  public Flow lead(String text) {
    return lead(Text.of(text));
  }

  /** A sentence that must be seen first, in the size of a part's heading. */
  public Flow lead(Text text) {
    return add(new Paragraph("P", text, style.heading(2), Align.LEFT, 0, Style.NARROW, false));
  }

  /** Small print: sources and editions, never anything to act on. */
  public Flow small(String text) {
    return add(
        new Paragraph("P", Text.of(text), style.small(), Align.LEFT, 0, Style.NARROW, false));
  }

  /** A list with bullets. */
  public Flow bullets(List<Text> items) {
    return add(new Items(items, Items.Mark.BULLET));
  }

  /** A list with bullets. */
  public Flow bullets(String... items) {
    return bullets(texts(items));
  }

  /** A list with numbers, from 1. */
  public Flow numbers(List<Text> items) {
    return add(new Items(items, Items.Mark.NUMBER));
  }

  /** A list with numbers, from 1. */
  public Flow numbers(String... items) {
    return numbers(texts(items));
  }

  /** A list with a box to tick before each item. */
  public Flow checks(List<Text> items) {
    return add(new Items(items, Items.Mark.CHECK_BOX));
  }

  /** A list with a box to tick before each item. */
  public Flow checks(String... items) {
    return checks(texts(items));
  }

  /** Boxes to tick in a row, each with its label after it; wraps where the column ends. */
  public Flow ticks(List<Tick> ticks) {
    return add(new Ticks(ticks, Align.LEFT));
  }

  /** Boxes to tick in a row, each with its label after it. */
  public Flow ticks(String... labels) {
    return ticks(Stream.of(labels).map(Tick::of).toList());
  }

  /**
   * Lines to write on.
   *
   * @param label what to write, drawn at the start of the first line
   * @param lines at least 1
   */
  public Flow writing(String label, int lines) {
    return add(new Writing(Text.of(label), lines));
  }

  /** A table; see {@link Table} for its parts. */
  public Flow table(Consumer<Table> parts) {
    Table table = new Table(this);
    parts.accept(table);
    return add(table.grid());
  }

  /** Columns side by side; see {@link Columns}. */
  public Flow columns(Consumer<Columns> parts) {
    Columns columns = new Columns(this);
    parts.accept(columns);
    return add(columns.lanes());
  }

  /** A framed box on one page; it breaks only if it is higher than a page. */
  public Flow box(String title, Consumer<Flow> content) {
    return add(box(title, false, content));
  }

  /** A framed box with a hatched edge: safety, holds. */
  public Flow hatchedBox(String title, Consumer<Flow> content) {
    return add(box(title, true, content));
  }

  private Box box(String title, boolean hatched, Consumer<Flow> content) {
    Flow inside = inside();
    if (!title.isBlank()) {
      int level = outline.below();
      inside.outline.enter(level, title);
      inside.add(
          new Paragraph(
              "H" + level, Text.bold(title), style.heading(3), Align.LEFT, 0, Style.NARROW, true));
    }
    content.accept(inside);
    return new Box(inside, hatched);
  }

  /**
   * A drawing.
   *
   * @param width in points
   * @param height in points
   * @param alternate carries the same information in words; never blank
   * @param drawing draws the same each time it is called
   */
  public Flow picture(double width, double height, String alternate, Consumer<Pen> drawing) {
    return picture(width, height, Align.LEFT, alternate, drawing);
  }

  /** A drawing that stands left, centred or right in its column. */
  public Flow picture(
      double width, double height, Align align, String alternate, Consumer<Pen> drawing) {
    return add(new Picture(width, height, align, alternate, drawing));
  }

  /** Blocks that stay on one page if a page can hold them. */
  public Flow together(Consumer<Flow> content) {
    Flow inside = inside();
    content.accept(inside);
    return add(new Together(inside));
  }

  /** More white space, in points; none at the top of a page. */
  public Flow space(double height) {
    return add(new Gap(height, false));
  }

  /** What follows starts a page. */
  public Flow pageBreak() {
    return add(new Gap(0, true));
  }

  Flow add(Block block) {
    blocks.add(block);
    return this;
  }

  /** An empty flow of the same print. */
  Flow inside() {
    return new Flow(style, outline.inside());
  }

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    List<Piece> pieces = new ArrayList<>();
    for (Block block : blocks) {
      pieces.addAll(block.pieces(parent, width, setting));
    }
    return pieces;
  }

  @Override
  public Extent extent(Setting setting) {
    return blocks.stream().map(block -> block.extent(setting)).reduce(Extent.NONE, Extent::over);
  }

  private static List<Text> texts(String... items) {
    return Stream.of(items).map(Text::of).toList();
  }
}
