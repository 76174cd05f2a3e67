/**
 * The second pair of eyes: reads a finished plan and looks for what must not be. Shares no code
 * with the planner.
 */
package org.belthigh.audit;
