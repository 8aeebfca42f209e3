package org.orbwright.design;

import org.orbwright.quantity.Describe;

@Describe("Which way round the bands lie: UPRIGHT with the blank's first band on the base, INVERTED with it"
        + " on the tip. If a request leaves it out, that of the first sphere's first panel.")
public enum BandSet {
    UPRIGHT,
    INVERTED
}
