package org.orbwright.design;

import org.orbwright.quantity.Describe;

/** Which way round a blank's bands lie in a segment. */
@Describe("Which way round the bands lie: UPRIGHT with the blank's first band on the base, INVERTED with it"
        + " on the tip. UPRIGHT if a request leaves it out.")
public enum BandSet {
    /** The blank's first band on the base. */
    UPRIGHT,
    /** The blank's first band on the tip. */
    INVERTED
}
