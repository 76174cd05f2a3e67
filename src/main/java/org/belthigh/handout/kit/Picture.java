package org.belthigh.handout.kit;

import java.util.List;
import java.util.function.Consumer;

/**
 * A vector drawing with alternate text; as wide as it says, or, in a larger print, as its column.
 */
record Picture(double width, double height, Align align, String alternate, Consumer<Pen> drawing)
    implements Block {
  Picture {
    if (!(width > 0) || !(height > 0) || alternate.isBlank()) {
      throw new IllegalArgumentException(
          "picture %s × %s \"%s\": needs a size above 0 and an alternate text."
              .formatted(width, height, alternate));
    }
  }

  @Override
  public List<Piece> pieces(Tag parent, double room, Setting setting) {
    double factor = factor(room, setting);
    Tag figure = parent.child("Figure").alternate(alternate);
    double offset = align.offset(factor * width, room);
    return List.of(
        Piece.of(
                "picture",
                factor * height,
                (canvas, x, top) -> draw(canvas, figure, x + offset, top, factor, setting))
            .spaced(Style.NARROW, Style.SPACE));
  }

  /** By how much it shrinks to fit: in a larger print it may, down to its usual size on paper. */
  private double factor(double room, Setting setting) {
    double factor = Math.min(1, room / width);
    if (width > room + 0.01 && factor * setting.scale() < 1) {
      throw new Overflow("picture", 0, alternate, "is wider than its column");
    }
    return width > room + 0.01 ? factor : 1;
  }

  private void draw(
      Canvas canvas, Tag figure, double x, double top, double factor, Setting setting) {
    double scale = canvas.frame().scale();
    double bottom = canvas.frame().height() - top - factor * height;
    figure.boundingBox(
        canvas.left() + scale * x,
        scale * bottom,
        canvas.left() + scale * (x + factor * width),
        scale * (bottom + factor * height));
    canvas.draw(figure, ink -> draw(ink, x, top, factor, setting.style(), canvas.number()));
  }

  private void draw(Ink ink, double x, double top, double factor, Style style, int page) {
    Pen pen = new Pen(ink, x, top, width, height, style, page);
    if (factor == 1) {
      drawing.accept(pen);
    } else {
      ink.shrunk(x, top, factor, () -> drawing.accept(pen));
    }
  }

  @Override
  public Extent extent(Setting setting) {
    return new Extent(width / setting.scale(), width);
  }
}
