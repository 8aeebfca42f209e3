package org.orbwright.diagnosis;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.NUMBER;
import static org.orbwright.quantity.Quantity.RATIO;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.sphere.SphereSizing.SphereLimit;

@Describe("What distances of faces from a point of reference say of the shell and its centre. A solid similar to the"
        + " designed one is fitted, larger or smaller by one factor: that with the least sum of squares of the"
        + " deviations, each weighted by its uncertainty. The best centre is its centre.")
public record CentreDiagnosis(
        @Describe(value = "Faces that were measured.", example = "12", max = 200)
        int measured,

        @Describe(value = "Faces that the solid has.", example = "12", max = 200)
        int faces,

        @Describe(
                value = "How many times as large as designed the fitted solid is.",
                quantity = RATIO,
                example = "1.0007",
                max = 2)
        double factor,

        @Describe("How much larger than designed it is across flats.")
        LengthEstimate larger,

        @Describe("How far the best centre lies from the point of reference.")
        LengthEstimate offset,

        DiscShift discs,

        @Describe(
                value = "How far out of round the shell is about the best centre, as a difference of radii: the largest"
                        + " deviation from the fitted solid less the smallest. Left out where only four faces were"
                        + " measured, which any centre and size fit.",
                optional = true)
        LengthEstimate outOfRound,

        @Describe("Diameter of the largest sphere about the best centre. All measured faces leave room for it, and so"
                + " do the seams as they are designed.")
        LengthEstimate largestDiameter,

        @Describe(value = "What limits it: the measured faces or the designed seams.", example = "\"FLATS\"")
        SphereLimit largestLimitedBy,

        @Describe("The same about the point of reference: what comes out if the discs stay where they are.")
        LengthEstimate largestDiameterNow,

        @Describe(value = "What limits that.", example = "\"FLATS\"")
        SphereLimit largestNowLimitedBy,

        @Describe(
                value = "The centre of the largest sphere; left out where the measured faces lie on one side, so that"
                        + " the centre could move away from all of them.",
                optional = true)
        Roomiest roomiest,

        @Describe("The measured faces, in the order of the request.")
        List<FaceDeviation> deviations) {

    public CentreDiagnosis {
        deviations = List.copyOf(deviations);
    }

    @Describe("How both mounting discs are shifted to hold the shell by its best centre. The axis keeps its direction.")
    public record DiscShift(
            @Describe(value = "The face that carries the first disc.", quantity = NUMBER, example = "1", max = 200)
            int face,

            @Describe("How far the discs are shifted along the face.")
            LengthEstimate shift,

            @Describe(
                    value = "Where to: from the middle of the face, counter-clockwise from its first corner, seen from"
                            + " outside on the first disc. Left out where nothing is shifted.",
                    quantity = ANGLE,
                    example = "328.6153",
                    max = 360,
                    optional = true)
            Double direction,

            @Describe("How far the best centre lies along the axis, above 0 towards the first disc; no disc has to be"
                    + " shifted for that.")
            LengthEstimate along) {}

    @Describe("The centre about which the largest sphere fits between the measured faces, which is not the best centre"
            + " above: its smallest distance to a face is as large as can be, and where that leaves it free, so is the"
            + " next smallest. Uncertainties are to first order, from the faces that decide.")
    public record Roomiest(
            @Describe("How far it lies from the point of reference.")
            LengthEstimate offset,

            @Describe("How the discs are shifted to hold the shell by it.")
            DiscShift discs,

            @Describe(
                    "Diameter of the largest sphere about it. All measured faces leave room for that sphere, and so do"
                            + " the seams as they are designed.")
            LengthEstimate largestDiameter,

            @Describe(value = "What limits it: the measured faces or the designed seams.", example = "\"FLATS\"")
            SphereLimit largestLimitedBy) {}

    @Describe("How far one face is off.")
    public record FaceDeviation(
            @Describe(value = "Number of the face.", quantity = NUMBER, example = "1", max = 200)
            int face,

            @Describe(
                    value = "How much further out than the fitted solid it is; below 0 further in.",
                    quantity = LENGTH,
                    example = "0.0069",
                    min = -1e18)
            double deviation) {}
}
