package org.belthigh.handout.kit;

import java.util.List;
import java.util.function.Consumer;

/** A vector drawing with alternate text. */
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
    if (width > room + 0.01) {
      throw new Overflow("picture", 0, alternate, "is wider than its column");
    }
    Tag figure = parent.child("Figure").alternate(alternate);
    double offset = align.offset(width, room);
    return List.of(
        Piece.of(
                "picture",
                height,
                (canvas, x, top) -> draw(canvas, figure, x + offset, top, setting))
            .spaced(Style.NARROW, Style.SPACE));
  }

  private void draw(Canvas canvas, Tag figure, double x, double top, Setting setting) {
    double bottom = canvas.paper().height() - top - height;
    figure.boundingBox(x, bottom, x + width, bottom + height);
    canvas.draw(
        figure,
        ink ->
            drawing.accept(new Pen(ink, x, top, width, height, setting.style(), canvas.number())));
  }

  @Override
  public Extent extent(Setting setting) {
    return new Extent(width, width);
  }
}
