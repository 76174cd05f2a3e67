package org.belthigh.catalogue;

/**
 * Where a number or a rule comes from.
 *
 * @param id such as {@code s02} or {@code common-practice}
 * @param author empty where nobody is named
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

  /** How a sheet names it: the author, or else the title, and the year. */
  public String shortName() {
    String name = author.isEmpty() ? title : author;
    return year.isEmpty() ? name : name + " " + year;
  }
}
