/**
 * Layout kit: words, tables, boxes and pictures onto tagged paper.
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
