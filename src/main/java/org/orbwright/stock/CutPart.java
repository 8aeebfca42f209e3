package org.orbwright.stock;

import org.orbwright.quantity.Describe;

/** What comes of one step of a cut list. */
@Describe("What comes of it: the BOARD that is left, a SECTION of it, a STICK that is cut further, or a STRIP that is"
        + " needed. A SPARE strip is one more than is needed. Wood that is KEPT is left over, and one more strip, or"
        + " a piece of one, could be cut from it. All other wood that is left over is waste.")
public enum CutPart {
    BOARD,
    SECTION,
    STICK,
    STRIP,
    SPARE,
    KEPT
}
