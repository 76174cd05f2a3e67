/**
 * One practice as an optimisation: the facts, the objective, and a search that is bounded by steps.
 */
package org.belthigh.plan.practice;
