package org.orbwright.stock;

import org.orbwright.quantity.Describe;

/** What is done in one step of a cut list. */
@Describe(
        "What is done: TAKE a board from the rack, or BUY it; SURFACE both faces; JOINT_EDGE, the first edge straight;"
                + " CLEAN_EDGE, rip the second edge parallel to it; TRIM_END; CROSSCUT a section; RIP a stick"
                + " or a strip with"
                + " its earlier edge against the fence; SLICE, with the stick turned on its side, a strip off"
                + " the board's"
                + " thickness; RESAW a strip off the thickness of a stick that lies as it lay in the board;"
                + " TRIM a part to its"
                + " size where no more than a kerf is left over, by planing or sanding; KEEP what the cuts"
                + " before leave,"
                + " which needs no cut of its own.")
public enum CutOperation {
    /** The board is taken from the rack. */
    TAKE,
    /** The board is bought. */
    BUY,
    /** Both faces are planed flat. */
    SURFACE,
    /** The first edge is jointed. */
    JOINT_EDGE,
    /** The second edge is ripped parallel to the first. */
    CLEAN_EDGE,
    /** An end is cut off. */
    TRIM_END,
    /** A section is crosscut off the board. */
    CROSSCUT,
    /** A lane is ripped off a section. */
    RIP,
    /** A strip is sliced off a stick that is turned on its side. */
    SLICE,
    /** A strip is resawn off a stick. */
    RESAW,
    /** A part loses no more than a kerf to be as small as it is to be, which is too little for a cut. */
    TRIM,
    /** What is left by the cuts before is a part that is wanted. */
    KEEP
}
