package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/** A list: with bullets, with numbers, or with boxes to tick. */
record Items(List<Text> items, Mark mark) implements Block {
  enum Mark {
    BULLET("Disc"),
    NUMBER("Decimal"),
    CHECK_BOX("None");

    private final String numbering;

    Mark(String numbering) {
      this.numbering = numbering;
    }
  }

  Items {
    items = items.stream().filter(item -> !item.isBlank()).toList();
  }

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    if (items.isEmpty()) {
      return List.of();
    }
    Tag list = parent.list(mark.numbering);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      pieces.addAll(item(list, i, width, setting));
    }
    return pieces;
  }

  private List<Piece> item(Tag list, int index, double width, Setting setting) {
    Tag item = list.child("LI");
    Tag label = item.child("Lbl");
    Text text = items.get(index);
    Tag labelled = mark == Mark.CHECK_BOX ? label.checkBox(text.plain()) : label;
    double indent = indent(setting.style());
    List<Piece> lines =
        Paragraph.bare(text, setting.style(), Align.LEFT)
            .pieces(item.child("LBody"), width - indent, setting);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Piece line = lines.get(i);
      boolean first = i == 0;
      pieces.add(
          line.redrawn(
                  first ? firstHeight(setting.style()) : line.height(),
                  (canvas, x, top) -> {
                    if (first) {
                      drawMark(canvas, labelled, index, x, top, setting.style());
                    }
                    line.drawing()
                        .draw(canvas, x + indent, top + (first ? drop(setting.style()) : 0));
                  })
              .spaced(0, i == lines.size() - 1 ? spaceAfter(index) : 0));
    }
    return pieces;
  }

  private void drawMark(Canvas canvas, Tag tag, int index, double x, double top, Style style) {
    if (mark == Mark.CHECK_BOX) {
      double boxTop = top + (firstHeight(style) - Style.CHECK_BOX) / 2;
      canvas.draw(
          tag, ink -> ink.frame(x + 0.5, boxTop, Style.CHECK_BOX, Style.CHECK_BOX, Style.MEDIUM));
    } else {
      Line line = Typesetter.set(label(index), style.body().type(), Double.MAX_VALUE).get(0);
      canvas.text(tag, line, x, top + style.body().baseline(), style.body().type());
    }
  }

  private Text label(int index) {
    return Text.of(mark == Mark.BULLET ? "•" : (index + 1) + ".");
  }

  private double firstHeight(Style style) {
    return mark == Mark.CHECK_BOX
        ? Math.max(style.body().line(), Style.CHECK_BOX + 1)
        : style.body().line();
  }

  /** How much lower the first line stands because its box is higher than a line. */
  private double drop(Style style) {
    return (firstHeight(style) - style.body().line()) / 2;
  }

  private double indent(Style style) {
    return switch (mark) {
      case BULLET -> 11;
      case NUMBER -> Typesetter.preferredWidth(label(items.size() - 1), style.body().type()) + 5;
      case CHECK_BOX -> Style.CHECK_BOX + 7;
    };
  }

  private double spaceAfter(int index) {
    if (index == items.size() - 1) {
      return Style.NARROW;
    }
    return mark == Mark.CHECK_BOX ? Style.NARROW : Style.HAIR_SPACE;
  }

  @Override
  public Extent extent(Setting setting) {
    return items.stream()
        .map(item -> Paragraph.bare(item, setting.style(), Align.LEFT).extent(setting))
        .reduce(Extent.NONE, Extent::over)
        .plus(indent(setting.style()));
  }
}
