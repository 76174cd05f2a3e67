package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of text: a paragraph, a heading, or the plain content of a cell.
 *
 * @param type of its structure element; empty to belong to the parent itself
 * @param lead whether it stays with what follows, as a heading does
 */
record Paragraph(
    String type, Text text, Style.Size size, Align align, double before, double after, boolean lead)
    implements Block {

  /** A word up to this wide (in type sizes; about 20 letters) asks not to be broken. */
  private static final double WHOLE_WORD = 10;

  static Paragraph body(Text text, Style style) {
    return new Paragraph("P", text, style.body(), Align.LEFT, 0, Style.NARROW, false);
  }

  /** Text of a cell or an item, directly in the element around it. */
  static Paragraph bare(Text text, Style style, Align align) {
    return new Paragraph("", text, style.body(), align, 0, 0, false);
  }

  static Paragraph heading(int level, Text text, Style style) {
    double before = level == 1 ? 0 : level == 2 ? Style.WIDE : Style.SPACE;
    double after = level == 3 ? Style.HAIR_SPACE : Style.NARROW;
    return new Paragraph(
        "H" + level, text.allBold(), style.heading(level), Align.LEFT, before, after, true);
  }

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    List<Line> lines = Typesetter.set(text, size.type(), width);
    if (lines.isEmpty()) {
      return List.of();
    }
    Tag tag = type.isEmpty() ? parent : parent.child(type);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      boolean last = i == lines.size() - 1;
      pieces.add(
          piece(tag, lines.get(i), width)
              .spaced(i == 0 ? before : 0, last ? after : 0)
              .glued(holdsOn(i, lines.size()) ? Piece.Glue.TIGHT : Piece.Glue.LOOSE));
    }
    return pieces;
  }

  /** A line never stands alone at the foot or the head of a page: the first and last two glue. */
  private boolean holdsOn(int line, int lines) {
    return lead || (line < lines - 1 && (line == 0 || line == lines - 2));
  }

  private Piece piece(Tag tag, Line line, double width) {
    double offset = align.offset(line.width(), width);
    return Piece.of(
        type.isEmpty() ? "text" : type,
        size.line(),
        (canvas, x, top) -> canvas.text(tag, line, x + offset, top + size.baseline(), size.type()));
  }

  @Override
  public Extent extent(Setting setting) {
    double longestWord = Typesetter.leastWidth(text, size.type());
    return new Extent(
        Math.min(longestWord, WHOLE_WORD * size.type()),
        Typesetter.preferredWidth(text, size.type()));
  }
}
