package org.orbwright.tolerance;

import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("What errors of cutting do to the lines between the bands of one lamination.")
public record LaminationTolerance(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "Which of the panel's segments the lamination is for.", example = "\"ALL\"")
        Places places,

        @Describe("The lines, from the base to the tip, of upright segments, which carry the first band on the base."
                + " They belong to the kind of segment whose height answers most to the stop. Inverted segments have"
                + " the same bands from tip to base, and so lines of their own that are not listed.")
        List<BandLineTolerance> lines) {

    public LaminationTolerance {
        lines = List.copyOf(lines);
    }

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
                    example = "22.3425",
                    min = -1e18)
            double distance,

            @Describe("How far it is shifted, square to the bands; above 0 towards the base. Stop, tip angle and blank"
                    + " width shift tilted bands by the cosine of the band angle. How exactly a stick with tilted"
                    + " bands is put lengthwise against the stop is left out.")
            ErrorBudget shift) {}
}
