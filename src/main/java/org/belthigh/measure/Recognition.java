package org.belthigh.measure;

import java.util.OptionalDouble;
import org.belthigh.model.Share;

/**
 * How often the spot was called right.
 *
 * @param calls right calls of all calls, tallies included
 * @param kappa Cohen's kappa over the tosses logged one by one, -1 to 1; empty where nothing was
 *     seen or chance agreement is 1
 */
public record Recognition(Share calls, OptionalDouble kappa) {}
