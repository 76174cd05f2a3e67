package org.belthigh.catalogue;

/**
 * Where a number or a rule comes from.
 *
 * @param id such as {@code s02} or {@code common-practice}
 * @param year the edition, as printed; empty where unknown
 * @param locator page, section or table; empty where unknown
 * @param readOn ISO date of the last reading; empty where never read
 * @param sureness how it was read: primary, secondary, abstract, from-memory, common-practice
 */
public record Source(
    String id,
    String title,
    String author,
    String year,
    String locator,
    String url,
    String readOn,
    String sureness) {

  /** How a sheet names it: the title's first words and the year. */
  public String shortName() {
    return year.isEmpty() ? author : author + " " + year;
  }
}
