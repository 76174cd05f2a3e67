/**
 * Plain files with positions: YAML and CSV that remember line and column, and writing that leaves
 * old or new, never half. Knows nothing of clubs.
 */
package org.belthigh.files;
