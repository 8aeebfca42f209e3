package org.orbwright.tolerance;

import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** What errors of cutting do to the lines between the bands of one lamination. */
@Describe("What errors of cutting do to the lines between the bands of one lamination.")
public record LaminationTolerance(
        @Describe(value = "The face kind.", example = "\"pentagon\"")
        String face,

        @Describe(value = "Which of the panel's segments the lamination is for.", example = "\"ALL\"")
        Places places,

        @Describe("The lines, from the base to the tip.") List<BandLineTolerance> lines) {

    /** Copies the list. */
    public LaminationTolerance {
        lines = List.copyOf(lines);
    }

    /** What errors do to one line between two bands. */
    @Describe("What errors of cutting do to one line between two bands.")
    public record BandLineTolerance(
            @Describe(
                    value = "The band on the base's side of the line, from 1; the next one is on the tip's side.",
                    example = "1",
                    min = 1,
                    max = 60)
            int band,

            @Describe(
                    value = "Where the line should be: from the panel's centre square to the bands, below 0 beyond the"
                            + " centre.",
                    quantity = Quantity.LENGTH,
                    example = "32.4711",
                    min = -1e18)
            double distance,

            @Describe("How far it is shifted; above 0 towards the base.")
            ErrorBudget shift) {}
}
