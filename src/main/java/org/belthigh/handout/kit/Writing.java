package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines to write on; the label stands at the start of the first.
 *
 * @param label what to write; never blank
 * @param lines how many, at least 1
 */
record Writing(Text label, int lines) implements Block {
  private static final double LEAST_LINE = Length.mm(20);

  Writing {
    if (label.isBlank() || lines < 1) {
      throw new IllegalArgumentException(
          "writing lines \"%s\" × %s: need a label and at least one line.".formatted(label, lines));
    }
  }

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    Style.Size size = setting.style().body();
    List<Line> words = Typesetter.set(label, size.type(), width);
    double lastWidth = words.get(words.size() - 1).width();
    boolean beside = lastWidth + 5 + LEAST_LINE <= width;
    Tag tag = parent.child("P");
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      boolean carriesLine = beside && i == words.size() - 1;
      pieces.add(label(tag, words.get(i), carriesLine, width, size));
    }
    for (int i = beside ? 1 : 0; i < lines; i++) {
      pieces.add(line(tag, width));
    }
    int last = pieces.size() - 1;
    pieces.set(last, pieces.get(last).spaced(0, Style.SPACE));
    return Stack.glued(pieces, Piece.Glue.TIGHT);
  }

  private Piece label(Tag tag, Line words, boolean carriesLine, double width, Style.Size size) {
    Tag text = tag.child("Span");
    Tag rule = carriesLine ? tag.writingLine(label.plain()) : null;
    double height = carriesLine ? Style.WRITING_LINE : size.line();
    double baseline = height - 5;
    return Piece.of(
        "writing line",
        height,
        (canvas, x, top) -> {
          canvas.text(text, words, x, top + baseline, size.type());
          if (rule != null) {
            double from = x + words.width() + 5;
            double y = top + baseline + 1.5;
            canvas.draw(rule, ink -> ink.rule(from, y, x + width, y, Style.THIN));
          }
        });
  }

  private Piece line(Tag tag, double width) {
    Tag rule = tag.writingLine(label.plain());
    double y = Style.WRITING_LINE - 3.5;
    return Piece.of(
        "writing line",
        Style.WRITING_LINE,
        (canvas, x, top) ->
            canvas.draw(rule, ink -> ink.rule(x, top + y, x + width, top + y, Style.THIN)));
  }

  @Override
  public Extent extent(Setting setting) {
    double type = setting.style().body().type();
    return new Extent(
        Math.max(Typesetter.leastWidth(label, type), LEAST_LINE),
        Typesetter.preferredWidth(label, type) + 5 + LEAST_LINE);
  }
}
