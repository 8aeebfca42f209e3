package org.orbwright.turning;

import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.SHARE;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("How the solid becomes a cylinder and the cylinder a sphere, by hand. All sizes are those before sanding.")
public record Roughing(
        @Describe(
                value = "Diameter of the sphere as it leaves the tool: the finished one and what sanding takes on both"
                        + " sides. The cylinder to begin with is as thick. Between discs it is turned no farther than"
                        + " the tool reaches on each side: beyond that stands the neck that holds the work, and what"
                        + " lies there is turned after reversing.",
                quantity = LENGTH,
                example = "206.42")
        double turnedDiameter,

        @Describe(
                value = "From the middle along the axis to where the tool's reach ends on the first end's side.",
                quantity = LENGTH,
                example = "100")
        double reachedHead,

        @Describe(value = "The same on the other side.", quantity = LENGTH, example = "100")
        double reachedTail,

        @Describe("The profiles of the polygon method, from the cylinder to 32 sides.")
        List<PolygonProfile> profiles,

        @Describe(
                "Diameters along the axis, from the middle to the end, for a parting tool and callipers. Those that are"
                        + " marked would part the work off its neck before it is reversed.")
        List<DepthStation> depths,

        @Describe("What ring gauges and templates show.") List<RingGauge> gauges,

        @Describe("Passes square to the sphere; none without a depth.")
        List<RoughPass> passes,

        @Describe(
                value = "The first pass that cuts at the middles of the edges too; until then the cut is at the corners"
                        + " alone. Left out without passes.",
                example = "8",
                optional = true,
                min = 1,
                max = 1000)
        Integer edgesFrom,

        @Describe(
                value = "The first pass that cuts at the middles of all faces too, so that the cut is no longer"
                        + " interrupted; left out without passes, or where flats stay.",
                example = "11",
                optional = true,
                min = 1,
                max = 1000)
        Integer facesFrom) {

    public Roughing {
        profiles = List.copyOf(profiles);
        depths = List.copyOf(depths);
        gauges = List.copyOf(gauges);
        passes = List.copyOf(passes);
    }

    @Describe(
            "A profile of the polygon method: a regular polygon around the sphere's outline, of which the first is the"
                    + " cylinder seen from the side.")
    public record PolygonProfile(
            @Describe(value = "Its sides.", example = "4", min = 4, max = 32)
            int sides,

            @Describe(value = "Length of a side.", quantity = LENGTH, example = "206.42")
            double side,

            @Describe(
                    value = "Half of it: how far the marks stand from the middle of each side, on the cylinder and on"
                            + " its ends where there are eight.",
                    quantity = LENGTH,
                    example = "103.21")
            double halfSide,

            @Describe(
                    value = "From each corner of the profile before, along its side to where the new side begins; left"
                            + " out for the cylinder.",
                    quantity = LENGTH,
                    example = "60.459",
                    optional = true)
            Double fromCorner,

            @Describe(
                    value = "Depth of the cut at each corner of the profile before, towards the sphere's centre; left"
                            + " out for the cylinder.",
                    quantity = LENGTH,
                    example = "42.751",
                    optional = true)
            Double cornerDepth,

            @Describe(
                    value = "What still stands above the sphere at the corners.",
                    quantity = LENGTH,
                    example = "42.751")
            double aboveSphere,

            @Describe("Its corners on one side of the middle, from the middle to the end.")
            List<ProfileCorner> corners) {

        public PolygonProfile {
            corners = List.copyOf(corners);
        }
    }

    @Describe("A corner of a profile, to mark and to set callipers to.")
    public record ProfileCorner(
            @Describe(value = "From the middle along the axis.", quantity = LENGTH, example = "103.21")
            double at,

            @Describe(value = "Diameter there.", quantity = LENGTH, example = "206.42")
            double diameter,

            @Describe(
                    value = "Whether it lies beyond the tool's reach at one of the ends or both: there it is turned"
                            + " only after reversing.",
                    example = "true")
            boolean afterReversing) {}

    @Describe("A place along the axis.")
    public record DepthStation(
            @Describe(value = "From the middle along the axis.", quantity = LENGTH, example = "0")
            double at,

            @Describe(value = "The sphere's diameter there.", quantity = LENGTH, example = "206.42")
            double diameter,

            @Describe(value = "How deep a parting tool goes there from the cylinder.", quantity = LENGTH, example = "0")
            double depth,

            @Describe(
                    value = "Whether it lies beyond the tool's reach at one of the ends or both: there it is turned"
                            + " only after reversing.",
                    example = "false")
            boolean afterReversing) {}

    @Describe("What a ring gauge or a template shows on the sphere.")
    public record RingGauge(
            @Describe(
                    value = "Inner diameter of the ring, or chord of the template.",
                    quantity = LENGTH,
                    example = "51.605")
            double chord,

            @Describe(
                    value = "How far the sphere stands through the ring: the sagitta over the chord.",
                    quantity = LENGTH,
                    example = "3.2773")
            double sagitta,

            @Describe(
                    value = "By how much the sagitta is less where the sphere is larger in diameter, as a share"
                            + " of that.",
                    quantity = SHARE,
                    example = "0.0164",
                    max = 1e6)
            double lessPerDiameter) {}

    @Describe("A pass square to the sphere, over all of it.")
    public record RoughPass(
            @Describe(value = "Its number, from 1.", example = "1", min = 1, max = 1000)
            int pass,

            @Describe(value = "Diameter after it.", quantity = LENGTH, example = "259.0252")
            double diameter,

            @Describe(value = "Wood taken at the farthest corners.", quantity = LENGTH, example = "2.5")
            double atCorners,

            @Describe(value = "Wood taken at the middles of the edges.", quantity = LENGTH, example = "0")
            double atEdges,

            @Describe(value = "Wood taken at the middles of the lowest faces.", quantity = LENGTH, example = "0")
            double atFaces,

            @Describe(
                    value = "Share of the sphere of this diameter that lies in wood: how much of the way the tool"
                            + " cuts. The rest is air, and every change a blow.",
                    quantity = SHARE,
                    example = "0.0037",
                    max = 1)
            double inWood) {}
}
