package org.belthigh.measure;

/** The four skills of a player, each measured by what it can honestly say. */
public record Skills(See see, Choose choose, Drive drive, Send send) {}
