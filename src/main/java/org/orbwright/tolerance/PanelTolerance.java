package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("What errors of cutting do to the panels of one face kind.")
public record PanelTolerance(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "Segments of a panel.", example = "3", max = 12)
        int segments,

        @Describe(
                value = "Length of the longest joint between segments, from the tips to the corner of the rim: gaps are"
                        + " measured at its open end.",
                quantity = Quantity.LENGTH,
                example = "78.685")
        double jointLength,

        @Describe(
                value = "What the setting error adds to all tip angles of the panel together: below 0 they no longer"
                        + " close the circle.",
                quantity = Quantity.ANGLE,
                example = "-0.06",
                min = -1e18)
        double angleSum,

        @Describe(
                value = "Gap of the setting error, if it all opens in one joint.",
                quantity = Quantity.LENGTH,
                example = "0.0824")
        double gap,

        @Describe(value = "Where it opens; left out where it does not.", example = "\"RIM\"", optional = true)
        PanelSide opensAt,

        @Describe(
                "The gap as a length that is above 0 where it opens at the rim and below 0 where it opens at the tips.")
        ErrorBudget opening,

        @Describe("How far the base distance is off, as the mean of the panel's segments.")
        ErrorBudget baseDistance,

        @Describe("How far the face distance is off at one panel. Bevels act one-sidedly: where they are too large the"
                + " panels touch at the hollow and are held apart, and where they are too small nothing moves. So"
                + " their setting shifts the panel, and their scatter has no part in the uncertainty: it holds panels"
                + " out and never in. It may move a panel as far out as if all bevels were as large as its largest.")
        ErrorBudget faceDistance,

        @Describe("How blunt the tips are: how much higher the legs of a segment meet than the blank is wide. The"
                + " blank's width is the sum of its bands and the error of the blank. Above 0"
                + " the panel has a hole of this radius in the middle, below 0 the blank is wide enough.")
        ErrorBudget bluntTips,

        @Describe(
                value = "Largest setting error of the tip angle, of either sign, whose gap the glue bridges; rounded"
                        + " down, and no more than a request may state.",
                quantity = Quantity.ANGLE,
                example = "0.0242",
                max = 30)
        double largestTipAngleError,

        @Describe(
                value = "By how many times the opening would scatter more if the segments of a panel were taken in the"
                        + " order of the blank. Neighbours share a cut there, which makes both of them larger or"
                        + " smaller. Left out where upright and inverted segments differ, or each is cut"
                        + " from a stick of its own: no panel holds two that share a cut then.",
                quantity = Quantity.PLAIN,
                example = "1.341641",
                min = 1,
                max = 2,
                optional = true)
        Double unmixed,

        LeanTolerance square) {

    @Describe(
            "What legs that lean from square do to a panel. Pressed flat, every joint opens on one face. Pulled tight,"
                    + " the panel becomes a shallow cone.")
    public record LeanTolerance(
            @Describe("The gap of every joint at the rim, pressed flat; above 0 it opens inside, below 0 outside.")
            ErrorBudget gapAtRim,

            @Describe("The same at the tips.") ErrorBudget gapAtTips,

            @Describe(
                    value = "Which side opens by the setting error, at the rim; left out where none does.",
                    example = "\"INSIDE\"",
                    optional = true)
            SeamSide opensAt,

            @Describe("How far the middle of the panel stands off the plane of its corners, pulled tight; above 0"
                    + " outwards. Where the corners are not in one plane it is the plane that fits them best.")
            ErrorBudget rise,

            @Describe(
                    value = "Largest lean, of either sign, whose gap the glue bridges; rounded down.",
                    quantity = Quantity.ANGLE,
                    example = "0.0954",
                    max = 30)
            double largestError) {}
}
