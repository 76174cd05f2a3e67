package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/** Boxes to tick in a row, each with its label after it; wraps like words. */
record Ticks(List<Tick> ticks, Align align) implements Block {
  private static final double BOX_TO_LABEL = 3;
  private static final double BETWEEN = 9;
  private static final double BETWEEN_BARE = 3.5;

  Ticks {
    ticks = List.copyOf(ticks);
  }

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    if (ticks.isEmpty()) {
      return List.of();
    }
    Tag tag = parent.child("P");
    List<Piece> rows = new ArrayList<>();
    for (List<Tick> row : rows(width, setting.style())) {
      rows.add(row(tag, row, width, setting.style()));
    }
    return rows;
  }

  private List<List<Tick>> rows(double width, Style style) {
    List<List<Tick>> rows = new ArrayList<>();
    List<Tick> row = new ArrayList<>();
    for (Tick tick : ticks) {
      if (width(tick, style) > width + 0.01) {
        throw new Overflow("box to tick", 0, tick.label(), "is wider than its column");
      }
      row.add(tick);
      if (row.size() > 1 && width(row, style) > width + 0.01) {
        row.remove(row.size() - 1);
        rows.add(List.copyOf(row));
        row.clear();
        row.add(tick);
      }
    }
    rows.add(List.copyOf(row));
    return rows;
  }

  private Piece row(Tag parent, List<Tick> row, double width, Style style) {
    double height = Math.max(Style.CHECK_BOX + 1, style.body().line());
    double offset = align.offset(width(row, style), width);
    List<Tag> boxes = new ArrayList<>();
    List<Tag> labels = new ArrayList<>();
    for (Tick tick : row) {
      boxes.add(parent.checkBox(tick.alternate()));
      labels.add(tick.label().isEmpty() ? null : parent.child("Span"));
    }
    return Piece.of(
            "boxes to tick",
            height,
            (canvas, x, top) -> {
              double at = x + offset;
              for (int i = 0; i < row.size(); i++) {
                draw(canvas, row.get(i), boxes.get(i), labels.get(i), at, top, height, style);
                at += width(row.get(i), style) + between(row.get(i));
              }
            })
        .spaced(0, Style.NARROW);
  }

  private static void draw(
      Canvas canvas,
      Tick tick,
      Tag box,
      Tag label,
      double x,
      double top,
      double height,
      Style style) {
    double side = Style.CHECK_BOX;
    canvas.draw(
        box, ink -> ink.frame(x + 0.5, top + (height - side) / 2, side, side, Style.MEDIUM));
    if (label != null) {
      Style.Size size = style.body();
      Line line = Typesetter.set(Text.of(tick.label()), size.type(), Double.MAX_VALUE).get(0);
      double baseline = top + (height - size.line()) / 2 + size.baseline();
      canvas.text(label, line, x + side + BOX_TO_LABEL + 1, baseline, size.type());
    }
  }

  private static double width(Tick tick, Style style) {
    double box = Style.CHECK_BOX + 1;
    return tick.label().isEmpty()
        ? box
        : box
            + BOX_TO_LABEL
            + Typesetter.preferredWidth(Text.of(tick.label()), style.body().type());
  }

  private static double width(List<Tick> row, Style style) {
    double width = 0;
    for (int i = 0; i < row.size(); i++) {
      width += width(row.get(i), style) + (i + 1 < row.size() ? between(row.get(i)) : 0);
    }
    return width;
  }

  private static double between(Tick tick) {
    return tick.label().isEmpty() ? BETWEEN_BARE : BETWEEN;
  }

  @Override
  public Extent extent(Setting setting) {
    double least = ticks.stream().mapToDouble(tick -> width(tick, setting.style())).max().orElse(0);
    return new Extent(least, width(ticks, setting.style()));
  }
}
