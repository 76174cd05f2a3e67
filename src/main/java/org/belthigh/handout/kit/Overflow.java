package org.belthigh.handout.kit;

/** Something does not fit where it must stand; the print is not made rather than clipped. */
public final class Overflow extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String block;
  private final int page;
  private final String text;

  /**
   * @param block what was being set, such as {@code table row}
   * @param page page within its section, from 1; 0 while still measuring
   * @param text the text that does not fit
   */
  Overflow(String block, int page, String text, String why) {
    super(
        "%s%s: \"%s\" %s.\nMaybe a wider column or a shorter text helps."
            .formatted(block, page > 0 ? " on page " + page : "", text, why));
    this.block = block;
    this.page = page;
    this.text = text;
  }

  public String block() {
    return block;
  }

  public int page() {
    return page;
  }

  public String text() {
    return text;
  }
}
