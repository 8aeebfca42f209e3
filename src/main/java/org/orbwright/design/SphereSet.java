package org.orbwright.design;

import org.orbwright.quantity.Describe;

@Describe("Which segments a sphere is made from: UPRIGHT or INVERTED ones alone, or MIXED, panels of both.")
public enum SphereSet {
    UPRIGHT,
    INVERTED,
    MIXED
}
