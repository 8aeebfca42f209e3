package org.orbwright.drawing;

import java.util.List;
import org.orbwright.drawing.Outline.At;

/**
 * Outlines with what is written beside them on a sheet.
 *
 * @param outline the outlines
 * @param measures dimension lines
 * @param caption what else there is to say
 */
public record OutlineSheet(Outline outline, List<Measure> measures, String caption) {

    /** Copies the list. */
    public OutlineSheet {
        measures = List.copyOf(measures);
    }

    /**
     * A dimension line.
     *
     * @param from where it starts
     * @param to where it ends
     * @param away how far it lies to the right of that way, in letters
     * @param text the measure
     */
    public record Measure(At from, At to, double away, String text) {}
}
