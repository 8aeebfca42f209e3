package org.orbwright.solid;

import static org.orbwright.quantity.Quantity.UNIT_EDGE;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("A kind of congruent faces of a solid, mirror images included.")
public record FaceKind(
        @Describe(value = "Name of the face kind.", example = "\"pentagon\"")
        String face,

        @Describe(value = "Sides of the face.", example = "5", min = 3, max = 10)
        int sides,

        @Describe(value = "Faces of this kind.", example = "12", min = 1, max = 120)
        int count,

        @Describe(value = "How many of them are mirror images of the first one.", example = "0", max = 60)
        int mirroredCount,

        @Describe(value = "Face distance, from the solid's centre.", quantity = UNIT_EDGE, example = "1.113516364412")
        double distance,

        @Describe(
                value = "Base distance, the same for every edge of the face.",
                quantity = UNIT_EDGE,
                example = "0.688190960236")
        double baseDistance,

        @Describe(
                value = "Corner radius: from the solid's centre to the farthest corner of the face.",
                quantity = UNIT_EDGE,
                example = "1.401258538444")
        double cornerRadius,

        @Describe(value = "Area of one face.", quantity = UNIT_EDGE, example = "1.720477400589")
        double area,

        @Describe(value = "Whether each face of this kind has a parallel one of its kind opposite.", example = "true")
        boolean opposite,

        @Describe("The kinds of segment that a face of this kind is cut into.")
        List<SegmentKind> segments) {

    /** Copies the list of segments. */
    public FaceKind {
        segments = List.copyOf(segments);
    }
}
