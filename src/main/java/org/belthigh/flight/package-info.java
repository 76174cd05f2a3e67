/**
 * How a tossed ball flies: drag, time, height, arc; how far and how hard to toss so that the hitter
 * has a given time. Pure arithmetic.
 */
package org.belthigh.flight;
