package org.orbwright.stock;

import org.orbwright.quantity.Describe;

/** What is done in one step of a cut list. */
@Describe(
        "What is done: TAKE a board from the rack, or BUY it; SURFACE both faces; JOINT_EDGE, the first edge straight;"
                + " CLEAN_EDGE, rip the second edge parallel to it; TRIM_END; CROSSCUT a section; RIP a stick or a"
                + " strip"
                + " with its earlier edge against the fence; SLICE, with the stick turned on its side, a strip off the"
                + " board's thickness; RESAW a strip off the thickness of a stick that lies as it lay in the board;"
                + " TRIM a"
                + " part to its size where no more than a kerf is left over, by planing or sanding; KEEP what the cuts"
                + " before leave, which needs no cut of its own.")
public enum CutOperation {
    TAKE,
    BUY,
    SURFACE,
    JOINT_EDGE,
    CLEAN_EDGE,
    TRIM_END,
    CROSSCUT,
    RIP,
    SLICE,
    RESAW,
    TRIM,
    KEEP
}
