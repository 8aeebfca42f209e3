package org.orbwright.band;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.AREA;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.RATIO;

import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Describe;

@Describe("What is left of every band on the finished sphere.")
public record BandSurvival(
        @Describe("The bands of each face kind.") List<FaceBands> faces,

        @Describe("The share of each wood on the surface of the spheres.")
        List<SphereShares> spheres) {

    @Describe("The bands of one face kind.")
    public record FaceBands(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Which of the panel's segments these are: all, or every other one.", example = "\"ALL\"")
            Places places,

            @Describe(value = "Band angle of the lamination.", quantity = ANGLE, example = "0", min = -90, max = 90)
            double bandAngle,

            @Describe(
                    value = "Sets that sawing gives of this lamination. 1 if the bands read the same from both edges or"
                            + " are tilted: an inverted panel is then made from the same segments as an upright one."
                            + " Otherwise 2.",
                    example = "2",
                    min = 1,
                    max = 2)
            int sets,

            @Describe("The bands of each kind of segment.") List<SegmentBands> segments) {}

    @Describe("The bands of one kind of segment, seen from outside with its base down.")
    public record SegmentBands(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether this is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(
                    value = "Whether the segment lies face down, so that its bands lean the other way.",
                    example = "false")
            boolean turned,

            @Describe(value = "Segments of this kind in one sphere.", example = "60", max = 1000)
            int perSphere,

            @Describe(value = "Area of the segment on the flat panel.", quantity = AREA, example = "2680.924")
            double flatArea,

            @Describe(
                    value = "Area of the segment on the sphere, flats included.",
                    quantity = AREA,
                    example = "2221.944")
            double sphereArea,

            @Describe("The bands of an upright segment, from the base to the tip.")
            List<BandView> upright,

            @Describe(
                    value = "The bands of an inverted segment, from the base to the tip; left out where the bands"
                            + " read the same from both edges. Tilted bands have them for comparison: they are what"
                            + " the lamination turned end for end would give. Inverted spheres still use the upright"
                            + " ones, as sets is 1.",
                    optional = true)
            List<BandView> inverted) {}

    @Describe("One band, on the flat panel and on the sphere.")
    public record BandView(
            @Describe(value = "The band's number in the lamination, from 1.", example = "1", min = 1, max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Width on the flat panel.", quantity = LENGTH, example = "17")
            double flatWidth,

            @Describe("Width that can be seen on the sphere.")
            VisibleWidth visibleWidth,

            @Describe(value = "Area on the flat panel, of one segment.", quantity = AREA, example = "1816.306")
            double flatArea,

            @Describe(
                    value = "Area on the sphere, of one segment, flats included.",
                    quantity = AREA,
                    example = "1335.732")
            double sphereArea,

            @Describe(
                    value = "Survival: how much of the flat band's area remains above the sphere, seen square to the"
                            + " panel; 1 if all of it, 0 if none.",
                    quantity = RATIO,
                    example = "0.677723",
                    max = 1)
            double survival,

            @Describe(
                    value = "Share of the band, in all segments of this kind, of the whole sphere's surface.",
                    quantity = RATIO,
                    example = "0.601155",
                    max = 1)
            double shareOfSphere,

            @Describe("Visible width along the base: from the edge middle to the right corner, and from the left corner"
                    + " on where the two sides differ.")
            List<Station> profile) {}

    @Describe(
            "The width of a band that can be seen on the sphere, measured along the sphere square to the band's edges."
                    + " At a place on the base it is that part of the width that is crossed on the way there from the"
                    + " panel's centre. Where the sphere leaves a flat, the way runs along the great circle through"
                    + " the face's centre, straight across the flat: at a corner too, where the flat may not reach.")
    public record VisibleWidth(
            @Describe(
                    value = "On the way to the edge middle, the foot of the segment's tip.",
                    quantity = LENGTH,
                    example = "15.0594")
            double edgeMiddle,

            @Describe(value = "On the way to the left corner.", quantity = LENGTH, example = "9.2433")
            double leftCorner,

            @Describe(value = "On the way to the right corner.", quantity = LENGTH, example = "9.2433")
            double rightCorner,

            @Describe(
                    value = "The widest that can be seen anywhere in the segment.",
                    quantity = LENGTH,
                    example = "15.0594")
            double widest) {}

    @Describe("The visible width at one station along the base.")
    public record Station(
            @Describe(
                    value = "Where the station is: 0 at the edge middle, 1 at the right corner, -1 at the left corner.",
                    quantity = RATIO,
                    example = "0",
                    min = -1,
                    max = 1)
            double at,

            @Describe(
                    value = "Distance along the flat panel's base from the edge middle, below 0 to the left.",
                    quantity = LENGTH,
                    example = "0",
                    min = -1e18)
            double along,

            @Describe(
                    value = "Visible width on the way there from the panel's centre.",
                    quantity = LENGTH,
                    example = "15.0594")
            double width) {}

    @Describe(
            "The woods on the surface of one kind of sphere: of one of each set, and of the mixed one if that is made. Face"
                    + " kinds with one set are the same on each.")
    public record SphereShares(
            @Describe(value = "The segments that the sphere is made from.", example = "\"MIXED\"")
            SphereSet set,

            @Describe("The woods.") List<SpeciesShare> species) {}

    @Describe("One wood on the surface of a sphere.")
    public record SpeciesShare(
            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Area of it on one sphere.", quantity = AREA, example = "73096.567")
            double area,

            @Describe(value = "Share of it of the whole surface.", quantity = RATIO, example = "0.548293", max = 1)
            double share) {}
}
