/**
 * Facts and thresholds become decisions, holds and arm statuses, each with its reason. The only
 * room that knows Drools.
 */
package org.belthigh.decide;
