/**
 * The reference pages of {@code docs/}, written from the catalogue so that they cannot disagree
 * with it. Way in: {@link org.belthigh.docs.ReferencePages}.
 */
package org.belthigh.docs;
