package org.orbwright.turning;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/**
 * A design, and the machine and the cutter that its sphere is milled with.
 *
 * @param design the design
 * @param machine the kind of machine
 * @param axis the axis of the rotary table, or the upright one, or null for the one through the first face
 * @param discs the blocking discs, or null for the largest that fit
 * @param cutter the cutter
 * @param scallop height of the ridges that the last pass leaves
 * @param passDepth depth of a pass
 * @param leave what is left on the sphere, or null for nothing
 * @param feed feed a minute
 * @param plungeFeed feed a minute straight down, or null for a quarter of the feed
 * @param spindle speed of the spindle
 * @param safe room above the stock for moves without a cut
 * @param airPass whether a first pass cuts nothing but air, or null for no
 * @param limits limits of the machine, or null for none
 */
@Describe("A design, and the machine and the cutter that its sphere is milled with. Feeds and speeds are the caller's.")
public record PathRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(
                value = "ROTARY: the work turns between discs about the X axis, and the cutter stands on it"
                        + " from above. A"
                        + " has to be an axis without limit that is not wrapped at 360 degrees."
                        + " THREE_AXIS: the work"
                        + " stands upright on one disc, with no disc, screw or centre on its upper end,"
                        + " and the upper"
                        + " half is milled up to the pole in circles, counter-clockwise from above,"
                        + " which with a"
                        + " spindle that turns clockwise is conventional cutting. For the other half it"
                        + " is turned"
                        + " over; how the milled half is then held, in a cup or a bed of the sphere's"
                        + " own radius, and"
                        + " aligned by marks, is the caller's to see to.",
                example = "\"ROTARY\"")
        @NotNull
        Machine machine,

        @Describe(
                value = "The axis of the rotary table, or the upright one; through face 0 if left out.",
                optional = true)
        @Valid
        AxisRequest axis,

        @Describe(
                value = "The blocking discs; the largest that fit if left out. On three axes only the lower"
                        + " one, at the axis'"
                        + " other end, is there while the upper half is milled.",
                optional = true)
        @Valid
        DiscsRequest discs,

        @NotNull @Valid CutterRequest cutter,

        @Describe(
                value = "Height of the ridges that the last pass leaves: at most passDepth, and half the radius"
                        + " of the cutter's rim or of a"
                        + " flat cutter. Rings of a flat cutter are never farther apart than its radius.",
                quantity = Quantity.LENGTH,
                example = "0.05")
        @NotNull
        @DecimalMin("0.001")
        @DecimalMax("100")
        Double scallop,

        @Describe(
                value = "Depth of a pass, square to the sphere, at most the cutter's diameter. Straight down"
                        + " the cutter goes no"
                        + " deeper into the wood before it goes around. All passes but the last leave"
                        + " ridges of a"
                        + " quarter of it, or of half the radius of the cutter's rim where that is less.",
                quantity = Quantity.LENGTH,
                example = "3")
        @NotNull
        @DecimalMin("0.01")
        @DecimalMax("1000")
        Double passDepth,

        @Describe(
                value = "Wood that is left on the sphere for sanding; 0 if left out.",
                quantity = Quantity.LENGTH,
                example = "0.2",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("100")
        Double leave,

        @Describe(
                value = "Feed in a minute: where the cutter touches the sphere on a rotary table, and of the"
                        + " cutter's middle on"
                        + " three axes.",
                quantity = Quantity.LENGTH,
                example = "1500")
        @NotNull
        @DecimalMin("0.1")
        @DecimalMax("100000")
        Double feed,

        @Describe(
                value = "Feed in a minute straight down, where the cutter has to cut at its centre; a quarter"
                        + " of the feed if"
                        + " left out (common practice, no source).",
                quantity = Quantity.LENGTH,
                example = "300",
                optional = true)
        @DecimalMin("0.1")
        @DecimalMax("100000")
        Double plungeFeed,

        @Describe(value = "Speed of the spindle.", quantity = Quantity.TURNS, example = "12000")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("100000")
        Double spindle,

        @Describe(
                value = "Half of the room above the corners, and above the discs on a rotary table, for moves"
                        + " without a cut;"
                        + " the pass in air is this far from the corners. At least 1 mm or 0.04 in: a"
                        + " solid that was glued"
                        + " up is less true than the one that is computed.",
                quantity = Quantity.LENGTH,
                example = "10")
        @NotNull
        @DecimalMin("0.04")
        @DecimalMax("10000")
        Double safe,

        @Describe(
                value = "Whether a first pass goes round the stock in air, to see where the cutter will go; the"
                        + " program then stops"
                        + " the spindle and waits. No if left out.",
                example = "true",
                optional = true)
        Boolean airPass,

        @Describe(value = "Limits of the machine; none are checked if left out.", optional = true) @Valid
        LimitsRequest limits) {

    /** Kinds of machine. */
    public enum Machine {
        /** A rotary table whose axis is X. */
        ROTARY,
        /** Three axes. */
        THREE_AXIS
    }

    /** Shapes of cutters. */
    public enum CutterShape {
        /** Its end is half a ball. */
        BALL,
        /** Its end is flat with a rounded rim. */
        BULL_NOSE,
        /** Its end is flat. */
        FLAT
    }

    /** The cutter and its holder. */
    @Describe("The cutter and its holder.")
    public record CutterRequest(
            @Describe(value = "Shape of its end.", example = "\"BALL\"") @NotNull
            CutterShape shape,

            @Describe(value = "Diameter.", quantity = Quantity.LENGTH, example = "10")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("1000")
            Double diameter,

            @Describe(
                    value = "Radius of the rim of a bull-nose cutter; needed for that, left out for the others.",
                    quantity = Quantity.LENGTH,
                    example = "2",
                    optional = true)
            @DecimalMin("0.01")
            @DecimalMax("500")
            Double rimRadius,

            @Describe(
                    value = "From its tip to the holder; no holder is checked if left out, and needed with one.",
                    quantity = Quantity.LENGTH,
                    example = "60",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("10000")
            Double stickOut,

            @Describe(
                    value = "Diameter of the holder; needed with stickOut.",
                    quantity = Quantity.LENGTH,
                    example = "42",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("10000")
            Double holder) {}

    /** Limits of a machine. */
    @Describe("Limits of a machine, from the sphere's centre, which is the program's zero.")
    public record LimitsRequest(
            @Describe(value = "Farthest X to both sides.", quantity = Quantity.LENGTH, example = "200")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double x,

            @Describe(value = "Farthest Y to both sides.", quantity = Quantity.LENGTH, example = "150")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double y,

            @Describe(value = "Highest Z.", quantity = Quantity.LENGTH, example = "160")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double highest,

            @Describe(value = "How far Z may go below the centre.", quantity = Quantity.LENGTH, example = "40")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double below,

            @Describe(
                    value = "Fastest turn of the rotary table, in turns a minute: where the feed would need a"
                            + " faster one,"
                            + " the table turns at this. Not limited if left out.",
                    quantity = Quantity.TURNS,
                    example = "20",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double tableTurns) {}
}
