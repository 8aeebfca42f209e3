package org.orbwright.segment;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("Every angle that a saw or a bevelling set-up needs.")
public record SawAngles(
        @Describe("The angles of each face kind's panel and segments.")
        List<FaceAngles> faces,

        @Describe("The angles where two panels meet.") List<EdgeAngles> edges) {

    @Describe("The angles of one face kind's panel and segments.")
    public record FaceAngles(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(
                    value = "Sides of the face, which is also the number of segments of a panel.",
                    example = "3",
                    max = 12)
            int sides,

            @Describe(value = "Faces of this kind on the solid.", example = "20", max = 200)
            int count,

            @Describe(
                    value = "Bevel: the angle between the panel's face and its seam.",
                    quantity = ANGLE,
                    example = "69.0948",
                    max = 90)
            double bevel,

            @Describe(
                    value = "Blade tilt: 90 degrees less the bevel, the blade's lean from upright.",
                    quantity = ANGLE,
                    example = "20.9052",
                    max = 90)
            double bladeTilt,

            @Describe("The angles of each kind of segment.") List<SegmentAngles> segments) {}

    @Describe("The angles of one kind of segment, seen from outside with its base down.")
    public record SegmentAngles(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(value = "Angle at the tip.", quantity = ANGLE, example = "120", max = 180)
            double tipAngle,

            @Describe(value = "Angle between the base and the left leg.", quantity = ANGLE, example = "30", max = 90)
            double baseAngleLeft,

            @Describe(value = "Angle between the base and the right leg.", quantity = ANGLE, example = "30", max = 90)
            double baseAngleRight,

            @Describe(
                    value = "Mitre gauge setting for the left leg, from a square crosscut.",
                    quantity = ANGLE,
                    example = "60",
                    max = 90)
            double mitreGaugeLeft,

            @Describe(
                    value = "Mitre gauge setting for the right leg, from a square crosscut.",
                    quantity = ANGLE,
                    example = "60",
                    max = 90)
            double mitreGaugeRight) {}

    @Describe("The angles where two panels meet.")
    public record EdgeAngles(
            @Describe(value = "One of the two face kinds.", example = "\"triangle\"")
            String face,

            @Describe(value = "The other face kind, which may be the same.", example = "\"triangle\"")
            String neighbour,

            @Describe(value = "Edges of this kind on the solid.", example = "30", max = 200)
            int count,

            @Describe(value = "Length of the edge, at the joint distance.", quantity = LENGTH, example = "136.2864")
            double length,

            @Describe(
                    value = "Dihedral angle between the two faces, inside the solid.",
                    quantity = ANGLE,
                    example = "138.1897",
                    max = 180)
            double dihedral,

            @Describe(
                    value = "Bevel on the panel of the first face kind.",
                    quantity = ANGLE,
                    example = "69.0948",
                    max = 90)
            double bevel,

            @Describe(value = "Bevel on the panel of the neighbour.", quantity = ANGLE, example = "69.0948", max = 90)
            double neighbourBevel) {}
}
