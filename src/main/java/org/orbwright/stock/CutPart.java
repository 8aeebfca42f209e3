package org.orbwright.stock;

import org.orbwright.quantity.Describe;

/** What comes of one step of a cut list. */
@Describe("What comes of it: the BOARD that is left, a SECTION of it, a STICK that is cut further, a STRIP that is"
        + " needed, or a SPARE strip.")
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
    SPARE
}
