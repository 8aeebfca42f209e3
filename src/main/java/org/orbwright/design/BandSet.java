package org.orbwright.design;

/** Which way round a blank's bands lie in a segment. */
public enum BandSet {
    /** The blank's first band on the base. */
    UPRIGHT,
    /** The blank's first band on the tip. */
    INVERTED
}
