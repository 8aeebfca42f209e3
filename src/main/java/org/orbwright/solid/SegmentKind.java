package org.orbwright.solid;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A class of segments that are congruent, mirror images included. The outline is seen from outside with the base down;
 * its left part of the base is never the longer one, and a mirrored segment has the two parts changed.
 */
@Describe("A kind of segment of a face kind, seen from outside with its base down. A mirrored segment has the left and"
        + " right part of its base changed.")
public record SegmentKind(
        @Describe(value = "Letter of the kind within its face kind, the longest base first.", example = "\"A\"")
        String segment,

        @Describe(
                value = "Base distance: from the foot of the perpendicular from the solid's centre, square to the"
                        + " base.",
                quantity = Quantity.UNIT_EDGE,
                example = "0.688190960236")
        double baseDistance,

        @Describe(value = "Base length to the left of the foot.", quantity = Quantity.UNIT_EDGE, example = "0.5")
        double baseLeft,

        @Describe(value = "Base length to the right of the foot.", quantity = Quantity.UNIT_EDGE, example = "0.5")
        double baseRight,

        @Describe(
                value = "Seam radius: from the solid's centre to the foot of the segment's tip on the edge.",
                quantity = Quantity.UNIT_EDGE,
                example = "1.309016994375")
        double seamRadius,

        @Describe(
                value = "From the solid's centre to the left corner.",
                quantity = Quantity.UNIT_EDGE,
                example = "1.401258538444")
        double leftCornerRadius,

        @Describe(
                value = "From the solid's centre to the right corner.",
                quantity = Quantity.UNIT_EDGE,
                example = "1.401258538444")
        double rightCornerRadius,

        @Describe(
                value = "Segments of this kind in one face, mirrored ones included.",
                example = "5",
                min = 1,
                max = 10)
        int perFace,

        @Describe(value = "Segments of this kind in the solid that are not mirrored.", example = "60", max = 400)
        int count,

        @Describe(value = "Segments of this kind in the solid that are mirrored.", example = "0", max = 400)
        int mirroredCount) {

    /** Whether the outline is its own mirror image. */
    public boolean symmetric() {
        return baseLeft == baseRight;
    }
}
