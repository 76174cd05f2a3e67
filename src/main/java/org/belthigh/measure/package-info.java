/**
 * Arithmetic only: a club record becomes counts, shares and scores by the counting rules. No
 * threshold, no advice.
 */
package org.belthigh.measure;
