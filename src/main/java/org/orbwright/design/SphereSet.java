package org.orbwright.design;

import org.orbwright.quantity.Describe;

/** Which segments a sphere is made from. */
@Describe("Which segments a sphere is made from: UPRIGHT or INVERTED ones alone, or MIXED, panels of both.")
public enum SphereSet {
    /** Upright segments alone. */
    UPRIGHT,
    /** Inverted segments alone. */
    INVERTED,
    /** Some panels of upright segments and some of inverted ones. */
    MIXED
}
