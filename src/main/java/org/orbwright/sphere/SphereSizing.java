package org.orbwright.sphere;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** How large the solid is, which sphere comes out of it, and what wall it has. */
@Describe("How large the solid is, which sphere comes out of it, and what wall it has.")
public record SphereSizing(
        @Describe(
                value = "Across flats: twice the smallest face distance. Callipers read it only where each lowest"
                        + " face has a parallel one opposite.",
                quantity = Quantity.LENGTH,
                example = "177.8")
        double acrossFlats,

        @Describe(
                value = "Length of the solid's shortest edge, at the joint distance.",
                quantity = Quantity.LENGTH,
                example = "76.245")
        double edge,

        @Describe(
                value = "Diameter of the rough solid over its outermost corners: what has to swing clear on the lathe.",
                quantity = Quantity.LENGTH,
                example = "220.0886")
        double swingDiameter,

        @Describe(
                value = "Diameter inside which every seam is closed.",
                quantity = Quantity.LENGTH,
                example = "199.6119")
        double seamDiameter,

        @Describe(
                value = "Largest sphere without flats and with closed seams.",
                quantity = Quantity.LENGTH,
                example = "177.8")
        double largestDiameter,

        @Describe(value = "What limits the largest sphere.", example = "\"FLATS\"")
        SphereLimit largestLimitedBy,

        @Describe(value = "Diameter of the chosen sphere.", quantity = Quantity.LENGTH, example = "172")
        double diameter,

        @Describe(value = "Surface of the chosen sphere.", quantity = Quantity.AREA, example = "92940.877")
        double area,

        @Describe("Removal, wall and holding at each face kind.")
        List<FaceSizing> faces,

        @Describe(
                value = "Thinnest wall of the finished sphere; below 0 it breaks through.",
                quantity = Quantity.LENGTH,
                example = "9.3629",
                min = -1e18)
        double thinnestWall,

        @Describe(
                value = "Smallest panel thickness that gives the wanted minimum wall everywhere.",
                quantity = Quantity.LENGTH,
                example = "25.3276")
        double smallestThickness,

        @Describe("The land and its limits.") LandLimits land) {

    /** What keeps a sphere from being larger. */
    public enum SphereLimit {
        /** The lowest face: a larger sphere would keep a flat there. */
        FLATS,
        /** The seams, which the land leaves open further out. */
        SEAMS
    }

    /** Removal, wall and holding at one face kind. */
    @Describe("Removal, wall and holding at one face kind.")
    public record FaceSizing(
            @Describe(value = "The face kind.", example = "\"pentagon\"")
            String face,

            @Describe(
                    value = "From the solid's centre to the panel's outer face.",
                    quantity = Quantity.LENGTH,
                    example = "88.9")
            double faceDistance,

            @Describe(
                    value = "From the solid's centre to where the seams meet the full-size panel outline: the face"
                            + " distance less the land.",
                    quantity = Quantity.LENGTH,
                    example = "84.9")
            double jointDistance,

            @Describe(
                    value = "From the solid's centre to the middle of an edge, at the joint distance.",
                    quantity = Quantity.LENGTH,
                    example = "99.8059")
            double seamRadius,

            @Describe(
                    value = "From the solid's centre to the panel's farthest corner, at the joint distance.",
                    quantity = Quantity.LENGTH,
                    example = "106.8389")
            double cornerRadius,

            Removal removal,

            Wall wall,

            @Describe(
                    value = "Diameter of the flat that stays on the face; 0 if none.",
                    quantity = Quantity.LENGTH,
                    example = "0")
            double flatDiameter,

            @Describe(
                    value = "Smallest panel thickness that gives the wanted minimum wall at this face kind.",
                    quantity = Quantity.LENGTH,
                    example = "25.3276")
            double smallestThickness,

            @Describe(
                    value = "How far the fence is moved towards the blade from the setting without a land, to leave"
                            + " the land, where the panel lies inner face down and its land bears against a fence"
                            + " above the blade.",
                    quantity = Quantity.LENGTH,
                    example = "2.4721")
            double fenceShift,

            @Describe(
                    value = "Diameter of a blocking disc that finds the panel's centre: the inscribed circle of the"
                            + " panel.",
                    quantity = Quantity.LENGTH,
                    example = "104.9422")
            double blockingDiscDiameter,

            @Describe(
                    value = "Whether each face of this kind has a parallel one of its kind opposite, for a second"
                            + " disc.",
                    example = "true")
            boolean opposite) {}

    /** Wood turned away outside the sphere. */
    @Describe("Wood turned away outside the sphere, measured towards the solid's centre; below 0 the wood does not"
            + " reach the sphere.")
    public record Removal(
            @Describe(
                    value = "Wood turned away at the middle of the face.",
                    quantity = Quantity.LENGTH,
                    example = "2.9",
                    min = -1e18)
            double faceCentre,

            @Describe(
                    value = "Wood turned away at the middle of an edge.",
                    quantity = Quantity.LENGTH,
                    example = "17.23",
                    min = -1e18)
            double edgeMiddle,

            @Describe(
                    value = "Wood turned away at the farthest corner.",
                    quantity = Quantity.LENGTH,
                    example = "24.0443",
                    min = -1e18)
            double corner) {}

    /** Wall left between the sphere and the hollow. */
    @Describe("Wall left between the sphere and the hollow, measured towards the solid's centre; below 0 the sphere"
            + " breaks through.")
    public record Wall(
            @Describe(
                    value = "Wall left at the middle of the face.",
                    quantity = Quantity.LENGTH,
                    example = "25.1",
                    min = -1e18)
            double faceCentre,

            @Describe(
                    value = "Wall left at the middle of an edge.",
                    quantity = Quantity.LENGTH,
                    example = "14.4078",
                    min = -1e18)
            double edgeMiddle,

            @Describe(
                    value = "Wall left at the farthest corner.",
                    quantity = Quantity.LENGTH,
                    example = "9.3629",
                    min = -1e18)
            double corner) {}

    /** The land and its limits. */
    @Describe("The chosen land, and how large it could be.")
    public record LandLimits(
            @Describe(value = "The chosen land.", quantity = Quantity.LENGTH, example = "4")
            double land,

            @Describe(
                    value = "Largest land with these panels that still lets the sphere be turned at the smallest face"
                            + " distance with closed seams.",
                    quantity = Quantity.LENGTH,
                    example = "14.9059")
            double largestForPanels,

            @Describe(
                    value = "Largest land for this measure across flats that still lets the sphere be turned at the"
                            + " smallest face distance with closed seams.",
                    quantity = Quantity.LENGTH,
                    example = "13.2771")
            double largestForAcrossFlats,

            @Describe(
                    value = "Largest land for this measure across flats that closes every seam of the chosen sphere.",
                    quantity = Quantity.LENGTH,
                    example = "15.744")
            double largestForDiameter) {}
}
