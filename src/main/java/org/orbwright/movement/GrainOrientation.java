package org.orbwright.movement;

import org.orbwright.quantity.Describe;

/** How the growth rings lie in a strip. What matters is the angle between the rings and the strip's width. */
@Describe(
        "How the growth rings lie in a strip as it is glued up. FLAT_SAWN: the rings run along its width, so the width"
                + " moves tangentially and the thickness radially. QUARTER_SAWN: the rings stand square to its width, so the"
                + " width moves radially and the thickness tangentially. RIFT_SAWN: half-way between. The strip counts and not"
                + " the board. A strip that is ripped from a flat-sawn board and glued up on its edge is QUARTER_SAWN."
                + " FLAT_SAWN if left out.")
public enum GrainOrientation {
    FLAT_SAWN(0),
    RIFT_SAWN(45),
    QUARTER_SAWN(90);

    private final double degrees;

    GrainOrientation(double degrees) {
        this.degrees = degrees;
    }

    /** Angle between the growth rings and the strip's width, in degrees. */
    double degrees() {
        return degrees;
    }
}
