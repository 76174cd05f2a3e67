/**
 * A club folder read into one {@link org.belthigh.intake.ClubRecord}: ids resolved against the
 * catalogue, every row checked, what is wrong set aside with a {@link org.belthigh.model.Problem}.
 */
package org.belthigh.intake;
