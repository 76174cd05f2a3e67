/** Phrases become sentences: message bundles by language, plural, number and date by locale. */
package org.belthigh.words;
