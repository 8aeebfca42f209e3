package org.orbwright.diagnosis;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.sphere.SphereSizing.SphereLimit;

@Describe("What measurements say of the settings and of the shell: a part for each measurement of the request."
        + " Uncertainties are those of the readings' resolution alone, but for what is dialled in.")
public record Diagnosis(
        @Describe(value = "What the test panel says of the tip angle.", optional = true)
        PanelDiagnosis panel,

        @Describe(value = "What the test pair or trio says of the bevels.", optional = true)
        SeamDiagnosis seam,

        @Describe(value = "What the measures across flats say of the shell.", optional = true)
        FlatsDiagnosis acrossFlats,

        @Describe(value = "What the distances of faces say of the shell and its centre.", optional = true)
        CentreDiagnosis faceDistances,

        @Describe(value = "What the measured blade tilt says of the seams.", optional = true)
        TiltDiagnosis tilt,

        @Describe(value = "What to set next, for each setting that is dialled in.", optional = true)
        List<DialIn> dialIn,

        @Describe(
                value = "Measurements that tell the same thing, one against the other. Left out where there are none.",
                optional = true)
        List<Comparison> comparisons) {

    public Diagnosis {
        dialIn = dialIn == null ? null : List.copyOf(dialIn);
        comparisons = comparisons == null ? null : List.copyOf(comparisons);
    }

    @Describe("What a test panel says of the tip angle.")
    public record PanelDiagnosis(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe("What all tip angles of the panel together differ from the circle.")
            AngleEstimate angleSum,

            @Describe("Error of one tip angle; below 0 the segments are cut too small.")
            AngleEstimate tipAngleError,

            @Describe("How far to turn the mitre gauge, wherever it stands: above 0 further from a square crosscut.")
            AngleEstimate mitreGaugeChange) {}

    @Describe("What a test pair or trio says of the bevels.")
    public record SeamDiagnosis(
            @Describe("What the two bevels of each seam together differ from the dihedral angle, in the order of the"
                    + " gaps.")
            List<AngleEstimate> angleSums,

            @Describe("The panels, in the order of the request.")
            List<PanelBevel> panels,

            @Describe("What to change, per face kind: one setting for all panels of the kind.")
            List<FaceBevel> faces) {

        public SeamDiagnosis {
            angleSums = List.copyOf(angleSums);
            panels = List.copyOf(panels);
            faces = List.copyOf(faces);
        }
    }

    @Describe("The mean bevel of a face kind's panels.")
    public record FaceBevel(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Its panels in the test.", example = "3", min = 1, max = 3)
            int panels,

            @Describe("Mean error of their bevels; below 0 they are undercut. The blade tilt has to change by as much,"
                    + " wherever it stands: above 0 further from upright.")
            AngleEstimate bevelError,

            @Describe(
                    value = "How far the panels lie apart: the largest error less the smallest. One setting corrects"
                            + " none of that. Left out where a pair or a single panel cannot tell.",
                    optional = true)
            AngleEstimate spread) {}

    @Describe("The bevel of one panel.")
    public record PanelBevel(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe("Error of its bevel; below 0 the panel is undercut.")
            AngleEstimate bevelError) {}

    @Describe(
            "What measures across flats say of the shell. They do not say where its centre is: a pair of faces may lie"
                    + " anywhere along its common normal. So the sphere is the largest that there can be, if the centre"
                    + " lies midway between every pair that limits it.")
    public record FlatsDiagnosis(
            @Describe(value = "Pairs that were measured.", example = "3", max = 60)
            int measured,

            @Describe(value = "Pairs of opposite faces that the solid has.", example = "10", max = 100)
            int pairs,

            @Describe(
                    value = "How many times as large as designed the shell is: a similar solid is fitted to the pairs.",
                    quantity = Quantity.RATIO,
                    example = "1.00055",
                    max = 2)
            double factor,

            @Describe("How much larger than designed that solid is across flats.")
            LengthEstimate larger,

            @Describe(
                    value = "How far out of round the shell is at least, as a difference of diameters: the largest"
                            + " deviation from the similar solid less the smallest. Left out where one pair was"
                            + " measured.",
                    optional = true)
            LengthEstimate outOfRound,

            @Describe("Diameter of the largest sphere between the measured faces, or within the seams as they are"
                    + " designed, whichever is smaller.")
            LengthEstimate largestDiameter,

            @Describe(value = "What limits it: the measured faces or the designed seams.", example = "\"FLATS\"")
            SphereLimit largestLimitedBy) {}

    @Describe("What a measured blade tilt says of the seams, where both panels are bevelled with it.")
    public record TiltDiagnosis(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe("Error of the bevel.") AngleEstimate bevelError,

            @Describe("Opening of a seam over the panel's whole seam face; above 0 inside, below 0 outside.")
            LengthEstimate opening,

            @Describe(
                    value = "The least that the opening can be, as far as the gauge can tell.",
                    quantity = Quantity.LENGTH,
                    example = "0.1461",
                    min = -1e18)
            double leastOpening,

            @Describe(
                    value = "The most that the opening can be, as far as the gauge can tell.",
                    quantity = Quantity.LENGTH,
                    example = "0.247",
                    min = -1e18)
            double mostOpening,

            @Describe(
                    value = "The largest gap that this can mean, inside or outside.",
                    quantity = Quantity.LENGTH,
                    example = "0.247")
            double largestGap) {

        /** Whether the gauge cannot tell the error from 0: within half of its resolution there may be none. */
        public boolean unclear() {
            return leastOpening <= 0 && mostOpening >= 0;
        }
    }
}
