/** How hot it feels, and what published tables make of it for a practice. Pure arithmetic. */
package org.belthigh.heat;
