package org.orbwright.drawing;

/** How a line is drawn. */
public enum Pen {
    /** Not at all. */
    NONE,
    /** Joints between segments, axes, dimension lines. */
    THIN,
    /** Outlines. */
    MEDIUM,
    /** Seams and what matters most. */
    THICK,
    /** Lines that have to be seen on the darkest wood too: they run between light ones. */
    CASED,
    /** What is turned away, or lies behind; light between the dashes. */
    DASHED,
    /** Where a bevel ends: dashes and dots, which no glue line is drawn in; light between them. */
    CHAIN
}
