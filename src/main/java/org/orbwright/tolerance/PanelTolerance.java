package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** What errors of cutting do to the panels of one face kind. */
@Describe("What errors of cutting do to the panels of one face kind.")
public record PanelTolerance(
        @Describe(value = "The face kind.", example = "\"pentagon\"")
        String face,

        @Describe(value = "Segments of a panel.", example = "5", max = 12)
        int segments,

        @Describe(
                value = "Length of the longest joint between segments, from the tips to the corner of the rim: gaps are"
                        + " measured at its open end.",
                quantity = Quantity.LENGTH,
                example = "64.8578")
        double jointLength,

        @Describe(
                value = "What the setting error adds to all tip angles of the panel together: below 0 they no longer"
                        + " close the circle.",
                quantity = Quantity.ANGLE,
                example = "-0.05",
                min = -1e18)
        double angleSum,

        @Describe(
                value = "Gap of the setting error, if it all opens in one joint.",
                quantity = Quantity.LENGTH,
                example = "0.0566")
        double gap,

        @Describe(value = "Where it opens; left out where it does not.", example = "\"RIM\"", optional = true)
        PanelSide opensAt,

        @Describe(
                "The gap as a length that is above 0 where it opens at the rim and below 0 where it opens at the tips.")
        ErrorBudget opening,

        @Describe("How far the base distance is off, as the mean of the panel's segments.")
        ErrorBudget baseDistance,

        @Describe("How far the face distance is off at one panel.")
        ErrorBudget faceDistance,

        @Describe("How blunt the tips are: how much higher the legs of a segment meet than the blank is wide. Above 0"
                + " the panel has a hole of this radius in the middle, below 0 the blank is wide enough.")
        ErrorBudget bluntTips,

        @Describe(
                value = "Largest setting error of the tip angle, of either sign, whose gap the glue bridges.",
                quantity = Quantity.ANGLE,
                example = "0.0177")
        double largestTipAngleError) {}
