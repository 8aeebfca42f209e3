package org.orbwright.solid;

import org.orbwright.quantity.Describe;

@Describe("The family that a solid belongs to.")
public enum SolidFamily {
    /** All faces alike and regular. */
    PLATONIC,
    /** All faces regular, all corners alike. */
    ARCHIMEDEAN,
    /** All faces alike, the duals of the Archimedean solids. */
    CATALAN
}
