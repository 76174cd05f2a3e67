/**
 * What was handed out: one pair of plain files a plan in the club folder's {@code history}, written
 * once and never changed. {@link org.belthigh.history.History} is the way in.
 */
package org.belthigh.history;
