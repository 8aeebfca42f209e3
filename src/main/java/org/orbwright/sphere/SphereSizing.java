package org.orbwright.sphere;

import static org.orbwright.quantity.Quantity.AREA;
import static org.orbwright.quantity.Quantity.LENGTH;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("How large the solid is, which sphere comes out of it, and what wall it has.")
public record SphereSizing(
        @Describe(
                value = "Across flats: twice the smallest face distance. Callipers read it only where each lowest"
                        + " face has a parallel one opposite.",
                quantity = LENGTH,
                example = "212")
        double acrossFlats,

        @Describe(
                value = "Length of the solid's shortest edge, at the joint distance.",
                quantity = LENGTH,
                example = "136.2864")
        double edge,

        @Describe(
                value = "Diameter of the rough solid over its outermost corners: what has to swing clear on the lathe.",
                quantity = LENGTH,
                example = "264.0252")
        double swingDiameter,

        @Describe(value = "Diameter inside which every seam is closed.", quantity = LENGTH, example = "220.5161")
        double seamDiameter,

        @Describe(value = "Largest sphere without flats and with closed seams.", quantity = LENGTH, example = "212")
        double largestDiameter,

        @Describe(value = "What limits the largest sphere.", example = "\"FLATS\"")
        SphereLimit largestLimitedBy,

        @Describe(value = "Diameter of the chosen sphere.", quantity = LENGTH, example = "206")
        double diameter,

        @Describe(value = "Surface of the chosen sphere.", quantity = AREA, example = "133316.626")
        double area,

        @Describe("Removal, wall and holding at each face kind.")
        List<FaceSizing> faces,

        @Describe(
                value = "Thinnest wall of the finished sphere; below 0 it breaks through. Left out until the panels'"
                        + " thickness is stated.",
                quantity = LENGTH,
                example = "7.3609",
                optional = true,
                min = -1e18)
        Double thinnestWall,

        @Describe(
                value = "Smallest panel thickness that gives the wanted minimum wall everywhere.",
                quantity = LENGTH,
                example = "28.9185")
        double smallestThickness,

        @Describe("The land and its limits.") LandLimits land) {

    /** What keeps a sphere from being larger. */
    public enum SphereLimit {
        /** The lowest face: a larger sphere would keep a flat there. */
        FLATS,
        /** The seams, which the land leaves open further out. */
        SEAMS
    }

    @Describe("Removal, wall and holding at one face kind.")
    public record FaceSizing(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "From the solid's centre to the panel's outer face.", quantity = LENGTH, example = "106")
            double faceDistance,

            @Describe(
                    value = "From the solid's centre to where the seams meet the full-size panel outline: the face"
                            + " distance less the land.",
                    quantity = LENGTH,
                    example = "103")
            double jointDistance,

            @Describe(
                    value = "From the solid's centre to the middle of an edge, at the joint distance.",
                    quantity = LENGTH,
                    example = "110.258")
            double seamRadius,

            @Describe(
                    value = "From the solid's centre to the panel's farthest corner, at the joint distance.",
                    quantity = LENGTH,
                    example = "129.6161")
            double cornerRadius,

            Removal removal,

            @Describe(
                    value = "Wall left between the sphere and the hollow; left out until the panels' thickness is"
                            + " stated.",
                    optional = true)
            Wall wall,

            @Describe(
                    value = "Diameter of the flat that stays on the face; 0 if none.",
                    quantity = LENGTH,
                    example = "0")
            double flatDiameter,

            @Describe(
                    value = "Smallest panel thickness that gives the wanted minimum wall at this face kind.",
                    quantity = LENGTH,
                    example = "28.9185")
            double smallestThickness,

            @Describe(
                    value = "How far the fence is moved towards the blade, from the setting without a land, to leave"
                            + " the land. The panel lies inner face down, and its land bears against a fence above the"
                            + " blade.",
                    quantity = LENGTH,
                    example = "1.1459")
            double fenceShift,

            @Describe(
                    value = "Diameter of a mounting disc that finds the panel's centre: the inscribed circle of the"
                            + " panel.",
                    quantity = LENGTH,
                    example = "78.685")
            double mountingDiscDiameter,

            @Describe(
                    value = "Whether each face of this kind has a parallel one of its kind opposite, for a second"
                            + " disc.",
                    example = "true")
            boolean opposite) {}

    @Describe("Wood turned away outside the sphere, measured towards the solid's centre; below 0 the wood does not"
            + " reach the sphere.")
    public record Removal(
            @Describe(
                    value = "Wood turned away at the middle of the face.",
                    quantity = LENGTH,
                    example = "3",
                    min = -1e18)
            double faceCentre,

            @Describe(
                    value = "Wood turned away at the middle of an edge.",
                    quantity = LENGTH,
                    example = "10.0656",
                    min = -1e18)
            double edgeMiddle,

            @Describe(
                    value = "Wood turned away at the farthest corner.",
                    quantity = LENGTH,
                    example = "29.0126",
                    min = -1e18)
            double corner) {}

    @Describe("Wall left between the sphere and the hollow, measured towards the solid's centre; below 0 the sphere"
            + " breaks through.")
    public record Wall(
            @Describe(value = "Wall left at the middle of the face.", quantity = LENGTH, example = "27", min = -1e18)
            double faceCentre,

            @Describe(
                    value = "Wall left at the middle of an edge.",
                    quantity = LENGTH,
                    example = "21.6446",
                    min = -1e18)
            double edgeMiddle,

            @Describe(value = "Wall left at the farthest corner.", quantity = LENGTH, example = "7.3609", min = -1e18)
            double corner) {}

    @Describe("The chosen land, and how large it could be.")
    public record LandLimits(
            @Describe(value = "The chosen land.", quantity = LENGTH, example = "3")
            double land,

            @Describe(
                    value = "Largest land with these panels that still lets the sphere be turned at the smallest face"
                            + " distance with closed seams.",
                    quantity = LENGTH,
                    example = "7.258")
            double largestForPanels,

            @Describe(
                    value = "Largest land for this measure across flats that still lets the sphere be turned at the"
                            + " smallest face distance with closed seams.",
                    quantity = LENGTH,
                    example = "6.9777")
            double largestForAcrossFlats,

            @Describe(
                    value = "Largest land for this measure across flats that closes every seam of the chosen sphere.",
                    quantity = LENGTH,
                    example = "9.7802")
            double largestForDiameter) {}
}
