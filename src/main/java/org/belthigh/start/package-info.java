/**
 * What a new club begins with: a folder of plain files that plans at once, and a workbook with
 * drop-downs. {@link org.belthigh.start.NewClub} is the way in.
 */
package org.belthigh.start;
