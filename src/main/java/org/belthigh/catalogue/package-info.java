/**
 * What we know before any club is read: sources, dated parameters, rule books, rule entries,
 * curricula; loaded from YAML and checked into one immutable {@link
 * org.belthigh.catalogue.Catalogue}. May use {@code model} and {@code files}.
 */
package org.belthigh.catalogue;
