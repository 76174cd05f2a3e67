/**
 * Layout kit: words, tables, boxes and pictures onto tagged paper.
 *
 * <pre>{@code
 * Section card =
 *     Section.of(Paper.LETTER, Style.READER, words, "Angela's week", flow ->
 *             flow.h1("Angela · 12")
 *                 .p(Text.marked("Your cue: **see it early, say it early.**"))
 *                 .table(table ->
 *                     table.columns(Col.content(), Col.share(1)).head("Day", "Drill").rowHeaders()
 *                         .row("Mon", "Call the height"))
 *                 .hatchedBox("Before you start", box -> box.checks("An adult stays.")))
 *         .footed("Example Club · Under 10 · Card")
 *         .filedUnder("Cards", "Angela")
 *         .labelled("Angela-");
 * byte[] alone = Pdf.of(card, "Angela's week", Locale.ENGLISH, day);
 * }</pre>
 *
 * <p>A print is written as a {@link org.belthigh.handout.kit.Section} of blocks; a {@link
 * org.belthigh.handout.kit.Pdf} takes one or many sections and gives bytes that pass PDF/UA-1 and
 * PDF/A-2a. Every block is measured before it is drawn, breaks over pages only where a reader can
 * follow, and carries its own structure element: there is no way to draw outside the structure tree
 * other than as decoration. Text that does not fit throws {@link
 * org.belthigh.handout.kit.Overflow}; nothing is ever clipped.
 *
 * <p>Lengths are points (1/72 inch) unless the name says millimetres; the origin is the top left
 * corner, y grows downwards. Black ink only. Only {@code handout} may rely on this package.
 */
package org.belthigh.handout.kit;
