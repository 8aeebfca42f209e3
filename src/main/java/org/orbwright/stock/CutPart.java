package org.orbwright.stock;

import org.orbwright.quantity.Describe;

/** What comes of one step of a cut list. */
@Describe("What comes of it: the BOARD that is left, a SECTION of it, a STICK that is cut further, or a STRIP that is"
        + " needed. A SPARE strip is one more than is needed. Wood that is KEPT is left over, and one more strip, or a"
        + " piece of one, could be cut from it. All other wood that is left over is waste.")
public enum CutPart {
    /** What is left of the board. */
    BOARD,
    /** A section of the board. */
    SECTION,
    /** A lane of a section that is cut further. */
    STICK,
    /** A strip that is needed. */
    STRIP,
    /** A strip more than is needed. */
    SPARE,
    /** Left over, but large enough for one more strip or a piece of one. */
    KEPT
}
