/**
 * The value types every stage speaks: spots, calls, shares, problems, phrases. Every room may rely
 * on it; it relies on the JDK alone.
 */
package org.belthigh.model;
