package org.orbwright.turning;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.AxisRequest.Through;

@Describe("How the work is held between two discs, and what the tool reaches of the sphere. The tool's room beside a"
        + " disc is taken along the axis alone. What holds is the caller's to judge: these are measures, not"
        + " strengths.")
public record Holding(
        @Describe(value = "What the axis goes through at its first end.", example = "\"FACE\"")
        Through through,

        @Describe(value = "Its number in the list of the solid.", quantity = Quantity.NUMBER, example = "1", max = 200)
        int number,

        @Describe(
                value = "Diameter of the solid about this axis: what has to clear bed and rest.",
                quantity = Quantity.LENGTH,
                example = "259.8749")
        double swing,

        @Describe("The end that the axis is named after.") Seat head,

        @Describe("The other end.") Seat tail,

        @Describe(
                value = "Area of the sphere that the tool reaches between the discs.",
                quantity = Quantity.AREA,
                example = "129697.511")
        double reachedArea,

        @Describe(
                value = "Its share of the sphere; the rest is turned after reversing.",
                quantity = Quantity.SHARE,
                example = "0.9689",
                max = 1)
        double reachedShare) {

    @Describe("One end of the axis.")
    public record Seat(
            @Describe(
                    value = "What is there; left out where the axis leaves the solid through nothing special.",
                    example = "\"FACE\"",
                    optional = true)
            Through at,

            @Describe(
                    value = "Its number in the list of the solid; left out where nothing special is there.",
                    quantity = Quantity.NUMBER,
                    example = "1",
                    optional = true,
                    max = 200)
            Integer number,

            @Describe(
                    value = "Largest disc within the panel: its inscribed circle; left out where no panel is square to"
                            + " the axis.",
                    quantity = Quantity.LENGTH,
                    example = "78.685",
                    optional = true)
            Double largestDisc,

            @Describe(
                    value = "Diameter of the disc. On a corner or an edge it is a ring that is hollow within.",
                    quantity = Quantity.LENGTH,
                    example = "64")
            double disc,

            @Describe(
                    value = "From the solid's centre to where the disc touches the wood, or its rim does: on the"
                            + " highest wood that stands in its circle.",
                    quantity = Quantity.LENGTH,
                    example = "106")
            double seatDistance,

            @Describe(
                    value = "Area of wood under the disc for glue, without the hole; left out where only the"
                            + " rim touches.",
                    quantity = Quantity.AREA,
                    example = "3166.725",
                    optional = true)
            Double glueArea,

            @Describe(
                    value = "Thickness that the disc needs for the screws to go no deeper, and at least the tool's"
                            + " room, which is along the axis alone; left out without screws.",
                    quantity = Quantity.LENGTH,
                    example = "20",
                    optional = true)
            Double discThickness,

            @Describe(
                    value = "How deep each screw hole stays in the finished sphere, measured along the screw from its"
                            + " end. It is measured where the wood over the sphere is thinnest on their circle. Left"
                            + " out without screws.",
                    quantity = Quantity.LENGTH,
                    example = "7.0396",
                    optional = true)
            Double holeInSphere,

            @Describe(
                    value = "Latitude that the tool reaches on this side, from the sphere's middle plane.",
                    quantity = Quantity.ANGLE,
                    example = "75.6728",
                    max = 90)
            double reachedLatitude,

            @Describe(
                    value = "What ends the tool's reach: the DISC with its room, the NECK of wood that is left, or"
                            + " NOTHING.",
                    example = "\"DISC\"")
            ReachEnd reachEnds,

            @Describe(
                    value = "Diameter of the cap around this end that is left for the reversed sphere.",
                    quantity = Quantity.LENGTH,
                    example = "51.0805")
            double capDiameter,

            @Describe(value = "Area of that cap.", quantity = Quantity.AREA, example = "2081.645")
            double capArea) {}

    /** What ends the tool's reach. */
    public enum ReachEnd {
        /** The disc and the room beside it. */
        DISC,
        /** The wood that is left to hold the sphere. */
        NECK,
        /** Nothing: the tool reaches the pole. */
        NOTHING
    }
}
