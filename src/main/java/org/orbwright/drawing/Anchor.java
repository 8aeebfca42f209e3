package org.orbwright.drawing;

/** Which part of a label lies at its x. */
public enum Anchor {
    /** Its start. */
    START,
    /** Its middle. */
    MIDDLE,
    /** Its end. */
    END
}
