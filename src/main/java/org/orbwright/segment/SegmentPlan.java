package org.orbwright.segment;

import static org.orbwright.quantity.Quantity.AREA;
import static org.orbwright.quantity.Quantity.LENGTH;

import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;

@Describe("The segments of a design, and where they lie along a blank.")
public record SegmentPlan(
        @Describe("The segments of each face kind.") List<FaceSegments> faces,

        @Describe(value = "Segments in one sphere.", example = "60", max = 1000)
        int perSphere,

        @Describe(value = "Segments to be sawn for all copies, spares included.", example = "64", max = 1000000)
        int total) {

    /** How the segments of a face kind come out of the glued-up wood. */
    public enum Layout {
        /** Bands parallel to the base: segments alternate upright and inverted along the blank. */
        ALONG_BLANK,
        /** Tilted bands: sticks are sawn across the blank at the band angle, one segment from each. */
        STICKS
    }

    @Describe("The segments of one face kind.")
    public record FaceSegments(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Which of the panel's segments these are: all, or every other one.", example = "\"ALL\"")
            Places places,

            @Describe(value = "Panels of this kind in one sphere.", example = "20", max = 200)
            int panelsPerSphere,

            @Describe(value = "Panels of this kind in all copies.", example = "20", max = 200000)
            int panels,

            @Describe(
                    value = "Base distance, from the panel's centre square to the base: the height of every segment.",
                    quantity = LENGTH,
                    example = "39.3425")
            double baseDistance,

            @Describe(value = "Width of the glued-up blank across its bands.", quantity = LENGTH, example = "39.3425")
            double blankWidth,

            @Describe(value = "How the segments come out of the blank.", example = "\"ALONG_BLANK\"")
            Layout layout,

            @Describe("The kinds of segment.") List<SegmentCut> segments) {}

    @Describe(
            "One kind of segment, seen from outside with its base down. Mirrored segments have left and right changed;"
                    + " where the bands run parallel to the base they are the same piece turned face down.")
    public record SegmentCut(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether this is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(value = "Length of the base.", quantity = LENGTH, example = "136.2864")
            double base,

            @Describe(value = "Base length to the left of the foot of the tip.", quantity = LENGTH, example = "68.1432")
            double baseLeft,

            @Describe(
                    value = "Base length to the right of the foot of the tip.",
                    quantity = LENGTH,
                    example = "68.1432")
            double baseRight,

            @Describe(value = "Length of the left leg.", quantity = LENGTH, example = "78.685")
            double legLeft,

            @Describe(value = "Length of the right leg.", quantity = LENGTH, example = "78.685")
            double legRight,

            @Describe(
                    value = "Distance from the stop to the blade, along the edge of the blank that carries the base,"
                            + " with the blank's pointed end against the stop: the base.",
                    quantity = LENGTH,
                    example = "136.2864")
            double stopDistance,

            @Describe(value = "Area of the segment's face.", quantity = AREA, example = "2680.924")
            double area,

            @Describe(
                    value = "Segments of this kind in one sphere, as drawn or turned face down.",
                    example = "60",
                    max = 1000)
            int perSphere,

            @Describe(value = "How many of those are used turned face down.", example = "0", max = 1000)
            int turnedPerSphere,

            @Describe(
                    value = "Segments of this kind to be sawn for all copies, spares included.",
                    example = "64",
                    max = 1000000)
            int total,

            @Describe(
                    value =
                            "Whole segments that one blank gives. Left out until kerf and length of the blank are stated.",
                    example = "8",
                    optional = true,
                    max = 1e9)
            Integer perBlank,

            @Describe(
                    value = "Length of blank that these segments take, both end trims and all kerfs included.",
                    quantity = LENGTH,
                    example = "669.6889",
                    optional = true)
            Double lengthUsed,

            @Describe(value = "Length of blank left over.", quantity = LENGTH, example = "50.3111", optional = true)
            Double lengthLeft,

            @Describe(
                    value = "Shortest blank that gives one segment of this kind.",
                    quantity = LENGTH,
                    example = "156.2864",
                    optional = true)
            Double shortestBlank,

            @Describe(
                    value = "The cuts along one blank, from its left end, at most the first 400. Each is the line of a"
                            + " finished leg, or of a stick's side; saw on its waste side.",
                    optional = true)
            List<Cut> cuts) {}

    @Describe("Where one cut crosses the blank, measured from its left end; the blank lies with its outer face up and"
            + " the edge of its first band towards you.")
    public record Cut(
            @Describe(value = "The cut's number along the blank, from 0.", example = "0", max = 1e9)
            int number,

            @Describe(
                    value = "Where the line meets the edge of the blank's first band.",
                    quantity = LENGTH,
                    example = "10")
            double firstBandEdge,

            @Describe(
                    value = "Where the line meets the edge of the blank's last band.",
                    quantity = LENGTH,
                    example = "78.1432")
            double lastBandEdge) {}
}
