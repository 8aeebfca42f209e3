package org.orbwright.diagnosis;

import org.orbwright.quantity.Describe;

@Describe(
        "A setting that is dialled in. TIP_ANGLE: the mitre gauge of the crosscuts; it counts as too far where the tip"
                + " angle is too large. BEVEL: the blade tilt; too far where the bevel is too small. STOP: the stop of the"
                + " crosscuts, which sets the base of a segment. BLADE_SQUARE: the upright blade of the crosscuts; too far where"
                + " joints open inside. A gap tells it only where the blank is turned over between cuts. BLANK_WIDTH: the rip fence that sets the width of the blank.")
public enum DialSetting {
    TIP_ANGLE,
    BEVEL,
    STOP,
    BLADE_SQUARE,
    BLANK_WIDTH;

    /** Whether it is an angle in degrees, and not a length in the design's unit. */
    public boolean isAngle() {
        return this != STOP && this != BLANK_WIDTH;
    }

    /** Whether a gap tells it; the others are read as lengths alone. */
    public boolean hasGap() {
        return isAngle();
    }

    /** Whether it depends on the panel's thickness. */
    public boolean needsThickness() {
        return this == BEVEL || this == BLADE_SQUARE;
    }
}
