package org.belthigh.handout.kit;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * One print: a card, a practice sheet, an overview.
 *
 * <p>Has its own paper, language and page count, and can be added to several documents. Immutable.
 */
public final class Section {
  private static final double FOOTER_GAP = 6;
  private static final double PAGE_OF_GAP = 14;

  /** Running text of a large print, in points. */
  private static final double LARGE_TYPE = 16;

  private final Paper paper;
  private final Frame frame;
  private final PageWords words;
  private final String title;
  private final String footer;
  private final List<String> bookmark;
  private final String labelPrefix;
  private final Flow content;

  private final Layouts layouts;

  private Section(
      Paper paper,
      PageWords words,
      String title,
      String footer,
      List<String> bookmark,
      String labelPrefix,
      double scale,
      Flow content,
      Layouts layouts) {
    if (title.isBlank()) {
      throw new IllegalArgumentException("a section's title is blank.");
    }
    this.paper = Objects.requireNonNull(paper);
    this.frame = Frame.of(paper, scale);
    this.words = Objects.requireNonNull(words);
    this.title = title;
    this.footer = Objects.requireNonNull(footer);
    this.bookmark = List.copyOf(bookmark);
    this.labelPrefix = Objects.requireNonNull(labelPrefix);
    this.content = content;
    this.layouts = layouts;
  }

  /**
   * A print with its content; its bookmark is its title.
   *
   * @param words its language, and what pages add by themselves
   * @param title repeated at the top of later pages
   * @param content writes the blocks; called once, at once
   */
  public static Section of(
      Paper paper, Style style, PageWords words, String title, Consumer<Flow> content) {
    Flow flow = new Flow(style, new Outline());
    content.accept(flow);
    return new Section(paper, words, title, "", List.of(title), "", 1, flow, new Layouts());
  }

  /** The same print with words at the left of the foot of each page; at the right is the page. */
  public Section footed(String foot) {
    return new Section(
        paper, words, title, foot, bookmark, labelPrefix, frame.scale(), content, new Layouts());
  }

  /**
   * The same print, bookmarked below others.
   *
   * @param path from the outermost bookmark to the print's own; at least one name
   */
  public Section filedUnder(String... path) {
    if (path.length == 0) {
      throw new IllegalArgumentException("section \"" + title + "\": a bookmark needs a name.");
    }
    return new Section(
        paper, words, title, footer, List.of(path), labelPrefix, frame.scale(), content, layouts);
  }

  /** The same print; its pages are labelled with the prefix and their number, from 1. */
  public Section labelled(String prefix) {
    return new Section(
        paper, words, title, footer, bookmark, prefix, frame.scale(), content, layouts);
  }

  /**
   * The same print in large type: running text at 16 pt, and all else larger by as much, pictures,
   * boxes to tick and writing lines too. It takes more pages.
   */
  public Section large() {
    double scale = LARGE_TYPE / content.style().body().type();
    return new Section(
        paper, words, title, footer, bookmark, labelPrefix, scale, content, new Layouts());
  }

  /** Number of pages, at least 1. */
  public int pageCount() {
    return layouts.count(this::laid);
  }

  Paper paper() {
    return paper;
  }

  Frame frame() {
    return frame;
  }

  List<String> bookmark() {
    return bookmark;
  }

  String labelPrefix() {
    return labelPrefix;
  }

  /**
   * The pages, each with its pieces.
   *
   * @param root takes the print's structure element as its last child
   */
  List<Leaf> leaves(Tag root) {
    Laid laid = layouts.take(this::laid);
    root.adopt(laid.tag());
    List<List<Galley.Placed>> pages = laid.pages();
    return IntStream.range(0, pages.size())
        .mapToObj(i -> new Leaf(this, pages.get(i), i + 1, pages.size()))
        .toList();
  }

  private Laid laid() {
    Tag tag = new Tag("Sect").language(words.language()).title(title);
    double first = frame.height() - 2 * frame.margin() - footerHeight();
    double later = first - headerHeight();
    Setting setting = new Setting(content.style(), later, frame.scale());
    return new Laid(
        tag, Galley.pages(content.pieces(tag, frame.textWidth(), setting), first, later));
  }

  /**
   * A print laid out, for one document.
   *
   * @param tag its structure element
   * @param pages its pieces, tagged below it
   */
  private record Laid(Tag tag, List<List<Galley.Placed>> pages) {}

  /**
   * What is known of a print's pages. To count them they are laid out; that layout waits for the
   * first document that the print is added to.
   */
  private static final class Layouts {
    private final AtomicInteger counted = new AtomicInteger();
    private final AtomicReference<Laid> waiting = new AtomicReference<>();

    int count(Supplier<Laid> layout) {
      if (counted.get() == 0) {
        waiting.set(counted(layout));
      }
      return counted.get();
    }

    Laid take(Supplier<Laid> layout) {
      Laid laid = waiting.getAndSet(null);
      return laid == null ? counted(layout) : laid;
    }

    private Laid counted(Supplier<Laid> layout) {
      Laid laid = layout.get();
      counted.set(laid.pages().size());
      return laid;
    }
  }

  /** Draws one of the {@link #leaves}. */
  void draw(Canvas canvas, List<Galley.Placed> page, int pageCount) {
    double top = frame.margin();
    if (canvas.number() > 1) {
      canvas.furniture("Header", ink -> drawHeader(ink, frame.margin()));
      top += headerHeight();
    }
    for (Galley.Placed placed : page) {
      placed.piece().drawing().draw(canvas, frame.margin(), top + placed.top());
    }
    canvas.furniture("Footer", ink -> drawFooter(ink, canvas.number(), pageCount));
  }

  private void drawHeader(Ink ink, double top) {
    Style.Size size = content.style().heading(3);
    List<Line> lines = headerLines();
    for (int i = 0; i < lines.size(); i++) {
      ink.text(lines.get(i), frame.margin(), top + i * size.line() + size.baseline(), size.type());
    }
    double y = top + lines.size() * size.line() + Style.HAIR_SPACE;
    ink.rule(frame.margin(), y, frame.width() - frame.margin(), y, Style.THIN);
  }

  private void drawFooter(Ink ink, int page, int pageCount) {
    Style.Size size = content.style().small();
    double bottom = frame.height() - frame.margin();
    double top = bottom - footerLines().size() * size.line();
    double right = frame.width() - frame.margin();
    ink.rule(frame.margin(), top - Style.HAIR_SPACE, right, top - Style.HAIR_SPACE, Style.THIN);
    List<Line> lines = footerLines();
    for (int i = 0; i < lines.size(); i++) {
      ink.text(lines.get(i), frame.margin(), top + i * size.line() + size.baseline(), size.type());
    }
    Line number = pageOf(page, pageCount);
    ink.text(number, right - number.width(), top + size.baseline(), size.type());
  }

  private Line pageOf(int page, int pageCount) {
    return line(Text.bold(words.page(page, pageCount)), content.style().small());
  }

  private static Line line(Text text, Style.Size size) {
    return Typesetter.set(text, size.type(), Double.MAX_VALUE).get(0);
  }

  private List<Line> headerLines() {
    return Typesetter.set(
        Text.bold(words.continuing(title)), content.style().heading(3).type(), frame.textWidth());
  }

  private double headerHeight() {
    return headerLines().size() * content.style().heading(3).line() + Style.WIDE;
  }

  /** The footer's lines; one even if it has no words, for the page number. */
  private List<Line> footerLines() {
    Style.Size size = content.style().small();
    double room = frame.textWidth() - pageOf(99, 99).width() - PAGE_OF_GAP;
    List<Line> lines = Typesetter.set(Text.of(footer), size.type(), room);
    return lines.isEmpty() ? List.of(new Line(List.of(), 0, false)) : lines;
  }

  private double footerHeight() {
    return footerLines().size() * content.style().small().line() + Style.HAIR_SPACE + FOOTER_GAP;
  }

  @Override
  public String toString() {
    return String.join(" > ", bookmark);
  }
}
