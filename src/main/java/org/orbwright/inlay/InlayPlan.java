package org.orbwright.inlay;

import static org.orbwright.quantity.Quantity.AREA;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.NUMBER;
import static org.orbwright.quantity.Quantity.RATIO;

import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;

@Describe("How an inlay is let in, how large it may be, what it covers, and which panel gets which motif.")
public record InlayPlan(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(
                value = "The pocket and the inlay; left out where no shape is stated and no plug is needed or fits.",
                optional = true)
        Pocket pocket,

        @Describe(
                value = "The largest inlay of this shape with the wanted rim and floor, of a disc where there is no"
                        + " shape; left out where rim and floor leave no room.",
                optional = true)
        Largest largest,

        @Describe("How the tips of the segments hold at the saw.")
        TipComparison tips,

        @Describe(value = "What chipped tips do; left out where the section states no chips.", optional = true)
        ChipPlan chips,

        @Describe("How much of each band the inlay covers, in one panel of each set that is used; empty without an"
                + " inlay.")
        List<CoveredBand> covered,

        @Describe("The panels that get an inlay.") List<InlaidPanel> panels) {

    /** What limits the size of an inlay. */
    public enum InlayLimit {
        /** The pocket would come too near to the hollow. */
        HOLLOW,
        /** The pocket would break out through the bevelled seam. */
        SEAM
    }

    @Describe("The pocket and the inlay, measured from the panel's outer face before turning.")
    public record Pocket(
            @Describe(
                    value = "Depth of the pocket that leaves the wanted thickness at the inlay's rim.",
                    quantity = LENGTH,
                    example = "5.0891")
            double depth,

            @Describe(value = "Deepest pocket that leaves the wanted floor.", quantity = LENGTH, example = "24")
            double deepest,

            @Describe(value = "Thickness of the finished inlay at its rim.", quantity = LENGTH, example = "1.5")
            double rimThickness,

            @Describe(value = "Thickness of the finished inlay at its middle.", quantity = LENGTH, example = "2.0891")
            double centreThickness,

            @Describe(value = "Wood left between pocket and hollow.", quantity = LENGTH, example = "24.9109")
            double floor,

            @Describe(
                    value = "Length along the sphere across the finished inlay.",
                    quantity = LENGTH,
                    example = "22.042")
            double acrossOnSphere,

            @Describe(value = "Area of the finished inlay on the sphere.", quantity = AREA, example = "381.223")
            double area) {}

    @Describe("The largest inlay of this shape with the wanted rim and floor.")
    public record Largest(
            @Describe(
                    value = "Its diameter, for a polygon through its corners.",
                    quantity = LENGTH,
                    example = "72.5044")
            double diameter,

            @Describe(value = "What limits it.", example = "\"SEAM\"")
            InlayLimit limitedBy) {}

    @Describe("How much of a band an inlay covers.")
    public record CoveredBand(
            @Describe(value = "Which of the panel's segments these are: all, or every other one.", example = "\"ALL\"")
            Places places,

            @Describe(
                    value = "The set that the panel is made from; UPRIGHT where sawing gives one set.",
                    example = "\"UPRIGHT\"")
            BandSet set,

            @Describe(
                    value = "The band's number in the lamination, from 1 at the base.",
                    example = "1",
                    min = 1,
                    max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Area on the sphere that is covered, in one panel.", quantity = AREA, example = "0")
            double area,

            @Describe(
                    value = "Share of what can be seen of the band without the inlay.",
                    quantity = RATIO,
                    example = "0",
                    max = 1)
            double share) {}

    @Describe("One panel with its inlay.")
    public record InlaidPanel(
            @Describe(
                    value = "Number of the panel: of the face in the catalogue's solid.",
                    quantity = NUMBER,
                    example = "1",
                    max = 200)
            int panel,

            @Describe(value = "The motif.", example = "\"knot\"", optional = true)
            String motif,

            @Describe(
                    value = "Number of the panel opposite; left out where there is none.",
                    quantity = NUMBER,
                    example = "9",
                    optional = true,
                    max = 200)
            Integer opposite,

            @Describe(
                    value = "Numbers of the panels that share an edge with it.",
                    quantity = NUMBER,
                    example = "[2,4,8]")
            List<Integer> neighbours) {}
}
