package org.orbwright.body;

/** The bodies that can be had of a design. */
public enum BodyKind {
    /** One segment as it is sawn. */
    SEGMENT,
    /** One bevelled panel. */
    PANEL,
    /** The glued-up solid as if it had no hollow. */
    SOLID,
    /** The glued-up solid with its hollow. */
    SHELL,
    /** The finished sphere with its hollow. */
    SPHERE
}
