package org.belthigh.plan;

/**
 * How families read a card: what is drawn and said for every child alike.
 *
 * @param language of the families it is for
 * @param picture a strike zone for a child of the group's age, as the card draws it
 */
public record Guide(String language, SpotPicture picture) {}
