package org.belthigh.measure;

import org.belthigh.model.Share;

/**
 * How often the ball went to the field that was called.
 *
 * @param swings swings that got there of all swings, tallies included
 * @param firstTry calls that got there on their first swing, of all calls with a swing
 */
public record FieldCalls(Share swings, Share firstTry) {}
