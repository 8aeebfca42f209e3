package org.orbwright.drawing;

import java.util.List;
import org.orbwright.drawing.Outline.At;

/** Outlines with dimension lines and what else is written beside them on a sheet. */
public record OutlineSheet(Outline outline, List<Measure> measures, String caption) {

    /** Copies the list. */
    public OutlineSheet {
        measures = List.copyOf(measures);
    }

    /** A dimension line with its text, so many letters to the right of the way between its ends. */
    public record Measure(At from, At to, double away, String text) {}
}
