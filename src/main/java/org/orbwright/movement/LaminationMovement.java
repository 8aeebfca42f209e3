package org.orbwright.movement;

import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.movement.Movement.AngleChange;
import org.orbwright.movement.Movement.LengthChange;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("Movement of one lamination.")
public record LaminationMovement(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "Which of the panel's segments the lamination is for.", example = "\"ALL\"")
        Places places,

        @Describe(
                value = "Width of the lamination across its bands: for bands parallel to the base the base distance"
                        + " of its segments.",
                quantity = Quantity.LENGTH,
                example = "39.3425")
        double width,

        @Describe(
                value = "Change of that width. For bands parallel to the base it is the change of the base distance.",
                optional = true)
        LengthChange widthChange,

        @Describe("The bands, from the base to the tip.") List<BandMovement> bands,

        @Describe("The glue lines between neighbouring bands, from the base to the tip.")
        List<BandJoint> joints,

        @Describe("The segments that are cut from the lamination.")
        List<SegmentMovement> segments) {

    public LaminationMovement {
        bands = List.copyOf(bands);
        joints = List.copyOf(joints);
        segments = List.copyOf(segments);
    }

    @Describe("Movement of one band.")
    public record BandMovement(
            @Describe(value = "The band, from 1 at the base.", example = "1", min = 1, max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(
                    value = "Angle between the growth rings and the strip's width: 0 for flat-sawn, 90 for"
                            + " quarter-sawn.",
                    quantity = Quantity.ANGLE,
                    example = "0",
                    max = 90)
            double ringAngle,

            @Describe(
                    value = "Dimensional change coefficient across the strip's width: tangential along the rings,"
                            + " radial square to them, mixed by the squares of cosine and sine in between. The mix"
                            + " neglects shear (common practice, no source).",
                    quantity = Quantity.MOVEMENT,
                    example = "0.00274",
                    optional = true)
            Double widthCoefficient,

            @Describe(
                    value = "Dimensional change coefficient through the strip's thickness, which lies square to its"
                            + " width.",
                    quantity = Quantity.MOVEMENT,
                    example = "0.00169",
                    optional = true)
            Double thicknessCoefficient,

            @Describe(value = "Width of the strip.", quantity = Quantity.LENGTH, example = "17")
            double width,

            @Describe(value = "Change of the width.", optional = true)
            LengthChange widthChange,

            @Describe(
                    value = "Thickness of the strip: that of a layer of the panel.",
                    quantity = Quantity.LENGTH,
                    example = "30")
            double thickness,

            @Describe(value = "Change of the thickness.", optional = true)
            LengthChange thicknessChange) {}

    @Describe(
            "The step along the glue line between two neighbouring bands in the worse season. It opens because one band"
                    + " grows or shrinks more in thickness. All of it is counted on one surface, as if the other stayed"
                    + " flush.")
    public record BandJoint(
            @Describe(
                    value = "The band on the base's side of the glue line, from 1; the next one is on the tip's side.",
                    example = "1",
                    min = 1,
                    max = 60)
            int band,

            @Describe(
                    value = "Step over the panel's whole thickness; above 0 the band on the base's side stands proud.",
                    quantity = Quantity.LENGTH,
                    example = "0.0913",
                    min = -1e18,
                    optional = true)
            Double panelStep,

            @Describe(
                    value = "Step over the finished wall at the middle of the face; above 0 the band on the base's side"
                            + " stands proud. Left out where there is no wall.",
                    quantity = Quantity.LENGTH,
                    example = "0.0822",
                    min = -1e18,
                    optional = true)
            Double wallStep) {}

    @Describe("How the tip angle of a segment changes. Wood moves across its bands and hardly along the grain. So with"
            + " bands parallel to the base, the base keeps its length and the base distance changes. The angle lies"
            + " between the lines from the tip to the two ends of the base. It changes alike in upright and inverted"
            + " segments, as both have the same bands.")
    public record SegmentMovement(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether this is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(value = "Whether it lies face down in the panel.", example = "false")
            boolean turned,

            @Describe(value = "Tip angle at the stock's moisture content.", quantity = Quantity.ANGLE, example = "120")
            double tipAngle,

            @Describe(value = "Change of the tip angle.", optional = true)
            AngleChange tipAngleChange) {}
}
