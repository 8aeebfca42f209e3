package org.orbwright.solid;

/** The three families of solids. */
public enum SolidFamily {
    /** All faces alike and regular. */
    PLATONIC,
    /** All faces regular, all corners alike. */
    ARCHIMEDEAN,
    /** All faces alike, the duals of the Archimedean solids. */
    CATALAN
}
