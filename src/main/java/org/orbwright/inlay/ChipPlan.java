package org.orbwright.inlay;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.AREA;
import static org.orbwright.quantity.Quantity.LENGTH;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("The hole that chipped tips leave, the plug that hides it, and how much larger a segment is sawn to be cut"
        + " again.")
public record ChipPlan(
        ChipHole hole,

        @Describe(
                value = "The smallest round plug that hides the hole; left out where turning takes the chips away.",
                optional = true)
        Plug plug,

        @Describe("How much larger each kind of segment is sawn, so that a second cut takes such a chip away.")
        List<Recut> recuts) {

    public ChipPlan {
        recuts = List.copyOf(recuts);
    }

    /** The plug as an inlay, or null where none is needed or none fits. */
    InlayShape shape() {
        return plug == null || !plug.fits() ? null : new InlayShape(plug.diameter() / 2, 0);
    }

    @Describe("The hole that chipped tips leave at the panel's centre. All discs and diameters are centred on the face."
            + " They cover the chip that reaches farthest, whichever tips are chipped.")
    public record ChipHole(
            @Describe(value = "How many tips of one panel are chipped.", example = "3", min = 1, max = 12)
            int tips,

            @Describe(
                    value = "Diameter of the smallest disc that covers the chips on the flat panel.",
                    quantity = LENGTH,
                    example = "4")
            double diameterOnPanel,

            @Describe(
                    value = "Wood that turning takes away at the panel's centre. A chip that is no deeper is gone.",
                    quantity = LENGTH,
                    example = "3")
            double turnedAway,

            @Describe(value = "Whether turning takes the chips away.", example = "false")
            boolean vanishes,

            @Describe(
                    value = "Diameter of the smallest disc that covers the hole after turning, straight across. It is"
                            + " smaller than on the panel where turning takes part of a shallow chip away; 0 where the"
                            + " hole vanishes.",
                    quantity = LENGTH,
                    example = "4")
            double diameter,

            @Describe(
                    value = "The same diameter, measured along the finished surface.",
                    quantity = LENGTH,
                    example = "4.0003")
            double alongSphere,

            @Describe(
                    value = "Angle at the sphere's centre from the middle of the face to the rim of that disc.",
                    quantity = ANGLE,
                    example = "1.1126",
                    max = 90)
            double capAngle,

            @Describe(
                    value = "Area of the hole on the finished surface that one chipped tip leaves; of several kinds of"
                            + " segment the largest.",
                    quantity = AREA,
                    example = "1.732")
            double areaOfOne,

            @Describe(
                    value = "Area of the hole that all chipped tips of a panel leave; those that leave the largest hole"
                            + " are taken to be chipped.",
                    quantity = AREA,
                    example = "5.196")
            double area,

            @Describe(
                    value = "Whether the stated inlay covers it; left out where no shape is stated.",
                    example = "true",
                    optional = true)
            Boolean coveredByInlay) {}

    @Describe(
            "The smallest round plug that hides the hole. Its pocket is drilled before turning, from the panel's outer"
                    + " face, around the panel's centre.")
    public record Plug(
            @Describe(value = "The smallest diameter that hides the hole.", quantity = LENGTH, example = "4")
            double smallestDiameter,

            @Describe(value = "The same, or the next larger multiple of the step.", quantity = LENGTH, example = "4")
            double diameter,

            @Describe(
                    value = "Depth of its pocket, and least length of the plug: rimThickness of it stays at its rim"
                            + " after turning.",
                    quantity = LENGTH,
                    example = "4.5194")
            double depth,

            @Describe(
                    value = "Wood left between its pocket and the hollow; 0 where the pocket goes through.",
                    quantity = LENGTH,
                    example = "25.4806")
            double floor,

            @Describe(
                    value = "Diameter of the largest plug that rim and floor leave room for, clear of the bevelled"
                            + " seams; left out where they leave none.",
                    quantity = LENGTH,
                    example = "72.5044",
                    optional = true)
            Double largestDiameter,

            @Describe(value = "Whether there is room for it.", example = "true")
            boolean fits) {}

    @Describe("How a segment is sawn larger at first, so that a second cut along its last leg takes such a chip away."
            + " The right leg is taken to be cut first and the left leg last, seen from outside with the base down.")
    public record Recut(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(
                    value = "How much wider the blank, or the stick, has to be at the edge that carries the tip. With"
                            + " bands along the blank the tips of the other set lie on its other edge: their segments"
                            + " have this wood at the base, and their bands move by this.",
                    quantity = LENGTH,
                    example = "1")
            double wider,

            @Describe(
                    value = "How much further from the blade the stop is set for the first sawing. The second cut is"
                            + " made with the stop at the stopDistance of /v1/jig, which is the finished base.",
                    quantity = LENGTH,
                    example = "3.4641")
            double stopFurther,

            @Describe(
                    value = "What the second cut takes off, square to the leg, with the kerf in it.",
                    quantity = LENGTH,
                    example = "1.7321")
            double takenOff,

            @Describe(value = "Distance of the stop for the first sawing.", quantity = LENGTH, example = "139.7505")
            double firstStop) {}
}
