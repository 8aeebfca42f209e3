package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;

@Describe("What is cut inexactly.")
public enum ErrorSource {
    /** The tip angle of a segment. */
    TIP_ANGLE,
    /** The bevel of a panel. */
    BEVEL,
    /** The width of the blank beyond the sum of its bands. */
    BLANK_WIDTH,
    /** The width of each band. */
    BAND_WIDTH,
    /** The thickness of a panel. */
    PANEL_THICKNESS,
    /** The stop that sets the base of each segment. */
    STOP_BLOCK,
    /** The lean of sawn legs from square to the face. */
    SQUARENESS,
    /** How much more a leg leans at the rim than at the tip. */
    SQUARENESS_DRIFT;

    /** Whether it is an angle, and not a length. */
    public boolean isAngle() {
        return switch (this) {
            case TIP_ANGLE, BEVEL, SQUARENESS, SQUARENESS_DRIFT -> true;
            case BLANK_WIDTH, BAND_WIDTH, PANEL_THICKNESS, STOP_BLOCK -> false;
        };
    }
}
