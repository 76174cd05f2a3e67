/**
 * Simulated seasons of hitters whose true skill is known, judged by the real stages: how often a
 * decision is wrong, and how many tosses it takes.
 */
package org.belthigh.lab;
