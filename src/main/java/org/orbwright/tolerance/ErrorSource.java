package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;

/** What is cut inexactly. */
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
    STOP_BLOCK
}
