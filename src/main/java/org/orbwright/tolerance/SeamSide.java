package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;

@Describe("Where a seam between two panels opens: INSIDE, towards the hollow, where its bevels are together less than"
        + " the dihedral angle, OUTSIDE where they are more.")
public enum SeamSide {
    INSIDE,
    OUTSIDE
}
