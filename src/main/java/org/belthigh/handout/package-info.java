/** A plan becomes PDF. Looks nothing up, computes nothing; the only room that knows PDFBox. */
package org.belthigh.handout;
