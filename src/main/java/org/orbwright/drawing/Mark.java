package org.orbwright.drawing;

/** Something that is drawn. */
public sealed interface Mark permits Area, Shade, Paper, Ink, Line, Label {
    /** The same mark further down on the sheet. */
    Mark lowered(double by);
}
