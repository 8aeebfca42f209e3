package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("What errors of cutting do to the seams of one edge kind.")
public record SeamTolerance(
        @Describe(value = "One of the two face kinds.", example = "\"triangle\"")
        String face,

        @Describe(value = "The other face kind, which may be the same.", example = "\"triangle\"")
        String neighbour,

        @Describe(value = "Seams of this kind on the solid.", example = "30", max = 200)
        int count,

        @Describe(
                value = "Length over which the two panels touch across their thickness, along the seam: gaps are"
                        + " measured at its open end.",
                quantity = Quantity.LENGTH,
                example = "28.9026")
        double seamLength,

        @Describe(
                value = "What the setting error adds to the two bevels together: below 0 they are less than the"
                        + " dihedral angle.",
                quantity = Quantity.ANGLE,
                example = "0.08",
                min = -1e18)
        double angleSum,

        @Describe(
                value = "Gap of the setting error, where both panels' own cuts are off alike.",
                quantity = Quantity.LENGTH,
                example = "0.0404")
        double gap,

        @Describe(value = "Where it opens; left out where it does not.", example = "\"OUTSIDE\"", optional = true)
        SeamSide opensAt,

        @Describe("The gap as a length that is above 0 where it opens inside and below 0 where it opens outside.")
        ErrorBudget opening,

        @Describe(
                "The step between the outer rims of the two panels, along the seam; above 0 the first one stands proud."
                        + " Without a land it is that of panels that are too thin, which end along the seam.")
        ErrorBudget outerStep,

        @Describe(
                "The step between the inner edges of the two panels, along the seam; above 0 the first one lies further"
                        + " out, and the second reaches further into the hollow. Thickness has no part in it.")
        ErrorBudget innerStep,

        @Describe(
                value = "Largest setting error of the bevel, of either sign, whose gap the glue bridges; rounded down,"
                        + " and no more than a request may state.",
                quantity = Quantity.ANGLE,
                example = "0.0991",
                max = 30)
        double largestBevelError) {}
