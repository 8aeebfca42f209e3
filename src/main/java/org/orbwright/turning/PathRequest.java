package org.orbwright.turning;

import static java.util.Objects.requireNonNullElse;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.TURNS;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;

@Describe(
        "The machine and the cutter that the sphere is milled with, about the axis and between the discs of the section"
                + " turning. Feeds and speeds are the caller's.")
public record PathRequest(
        @Describe(
                value = "ROTARY: the work turns between discs about the X axis, and the cutter stands on it"
                        + " from above. A has to be an axis without limit. THREE_AXIS: the work stands upright on one"
                        + " disc, with no disc, screw or centre on its upper end. The upper half is milled up to the"
                        + " pole in circles, counter-clockwise from above. With a spindle that turns clockwise this is"
                        + " conventional cutting. For the other half the work is turned over. How to hold the milled"
                        + " half then is up to the caller: in a cup or a bed of the sphere's own radius, aligned by"
                        + " marks.",
                example = "\"ROTARY\"")
        @NotNull
        Machine machine,

        @NotNull @Valid CutterRequest cutter,

        @Describe(
                value = "Height of the ridges that the last pass leaves: at most passDepth, and half the radius"
                        + " of the cutter's rim or of a flat cutter. In each half, rings of a flat cutter are never"
                        + " farther apart than its radius. If left out 0.1 mm or 0.004 in, which the first grit takes off, or"
                        + " the most that there may be where that is less (common practice, no source).",
                quantity = LENGTH,
                usual = {0.01, 2},
                example = "0.08",
                optional = true)
        @DecimalMin("0.001")
        @DecimalMax("100")
        Double scallop,

        @Describe(
                value = "Depth of a pass, square to the sphere, at most the cutter's diameter. Straight down the"
                        + " cutter goes no deeper into the wood before it goes around. All passes but the last leave"
                        + " ridges of a quarter of it, or of half the radius of the cutter's rim where that is less. A"
                        + " tenth of the cutter's diameter if left out: a light cut, since the wood is glued up and"
                        + " hollow (common practice, no source).",
                quantity = LENGTH,
                usual = {0.2, 40},
                example = "3",
                optional = true)
        @DecimalMin("0.01")
        @DecimalMax("1000")
        Double passDepth,

        @Describe(
                value = "Wood that is left on the sphere for sanding; 0 if left out.",
                quantity = LENGTH,
                usual = {0.02, 5},
                example = "0.2",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("100")
        Double leave,

        @Describe(
                value = "Feed in a minute: where the cutter touches the sphere on a rotary table, and of the cutter's"
                        + " middle on three axes.",
                quantity = LENGTH,
                usual = {100, 20000},
                example = "1500")
        @NotNull
        @DecimalMin("0.1")
        @DecimalMax("100000")
        Double feed,

        @Describe(
                value = "Feed in a minute straight down, where the cutter has to cut at its centre; a quarter of the"
                        + " feed if left out (common practice, no source).",
                quantity = LENGTH,
                usual = {20, 6000},
                example = "300",
                optional = true)
        @DecimalMin("0.1")
        @DecimalMax("100000")
        Double plungeFeed,

        @Describe(value = "Speed of the spindle.", quantity = TURNS, example = "12000")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("100000")
        Double spindle,

        @Describe(
                value = "Clear height: how far above the corners, and above the discs on a rotary table, the cutter"
                        + " crosses the work without touching it; the pass in air is half as far away. At least 2 mm"
                        + " or 0.08 in: a solid that was glued up is less true than the one that is computed. 20 mm or"
                        + " 0.8 in if left out (common practice, no source).",
                quantity = LENGTH,
                usual = {2, 300},
                example = "20",
                optional = true)
        @DecimalMin("0.08")
        @DecimalMax("10000")
        Double clearHeight,

        @Describe(
                value = "Whether a first pass goes round the stock in air, to see where the cutter will go; the"
                        + " program then stops the spindle and waits. No if left out.",
                example = "true",
                optional = true)
        Boolean airPass,

        @Describe(value = "Limits of the machine; none are checked if left out.", optional = true) @Valid
        LimitsRequest limits,

        @Describe(value = "How the program is worded; as most controls take it if left out.", optional = true) @Valid
        ControlRequest control) {

    /**
     * Share of the cutter's diameter that a pass is deep, and of the feed that is plunged with, where none is stated.
     */
    private static final double USUAL_DEPTH = 0.1;

    private static final double USUAL_PLUNGE = 0.25;
    /** The least feed that may be stated. */
    private static final double SLOWEST = 0.1;

    /** The same with everything filled in. */
    public PathRequest filled(LengthUnit unit) {
        double depth = requireNonNullElse(passDepth, USUAL_DEPTH * cutter.diameter());
        return new PathRequest(
                machine,
                cutter.filled(unit),
                requireNonNullElse(scallop, Math.min(unit.usual(0.1, 0.004), Math.min(depth, cutter.mostScallop()))),
                depth,
                requireNonNullElse(leave, 0.0),
                feed,
                requireNonNullElse(plungeFeed, Math.max(SLOWEST, USUAL_PLUNGE * feed)),
                spindle,
                requireNonNullElse(clearHeight, unit.usual(20, 0.8)),
                requireNonNullElse(airPass, false),
                limits,
                requireNonNullElse(control, ControlRequest.USUAL).filled(unit));
    }

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

    @Describe("The cutter and its holder.")
    public record CutterRequest(
            @Describe(value = "Shape of its end.", example = "\"BALL\"") @NotNull
            CutterShape shape,

            @Describe(
                    value = "Diameter.",
                    quantity = LENGTH,
                    usual = {1.5, 60},
                    example = "10")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("1000")
            Double diameter,

            @Describe(
                    value = "Radius of the rim of a bull-nose cutter; needed for that, left out for the others.",
                    quantity = LENGTH,
                    usual = {0.1, 25},
                    example = "2",
                    optional = true)
            @DecimalMin("0.01")
            @DecimalMax("500")
            Double rimRadius,

            @Describe(
                    value = "How much smaller than stated the diameter of a flat or bull-nose cutter may be, at most a"
                            + " quarter of the width of its flat. Left out for a ball. The flat overlaps by twice this"
                            + " in the middle plane, or at the pole. A cutter that is so much smaller leaves no fin"
                            + " there, and elsewhere up to half of this more wood. If left out 0.1 mm or 0.004 in, or"
                            + " a quarter of the flat where that is less (common practice, no source). 0.1 mm covers"
                            + " cutters up to 30 mm of tolerance field e8 of ISO 286-2, which may be 0.073 mm smaller."
                            + " Measure a cutter that was sharpened again.",
                    quantity = LENGTH,
                    usual = {0.01, 1},
                    example = "0.1",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("250")
            Double undersize,

            @Describe(
                    value = "From its tip to the holder; no holder is checked if left out, and needed with one.",
                    quantity = LENGTH,
                    usual = {8, 300},
                    example = "60",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("10000")
            Double stickOut,

            @Describe(
                    value = "Diameter of the holder; needed with stickOut.",
                    quantity = LENGTH,
                    usual = {6, 150},
                    example = "42",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("10000")
            Double holder) {

        /** Share of the flat's width that a cutter may be smaller than stated. */
        private static final double MOST_UNDERSIZE = 0.25;

        /** The same with everything filled in; a ball has no flat that could be too narrow. */
        private CutterRequest filled(LengthUnit unit) {
            Double smaller =
                    undersize == null && shape != CutterShape.BALL ? Double.valueOf(usualUndersize(unit)) : undersize;
            return new CutterRequest(shape, diameter, rimRadius, smaller, stickOut, holder);
        }

        /**
         * No source says what to allow for. End mills of tolerance field e8 are 0.04 to 0.073 mm smaller between 18 and
         * 30 mm (ISO 286-2, as the page "Tolerances" of WIDIA's catalogue of solid carbide end mills has it); a shop
         * measured 0.05 to 0.1 mm (Maslow CNC forums, "Router bit diameter"). Rounded down, as the answer repeats it.
         */
        private double usualUndersize(LengthUnit unit) {
            return Rounding.down(Math.min(unit.usual(0.1, 0.004), mostUndersize()), LENGTH.decimals(unit));
        }

        /** The most that the diameter may be smaller than stated. */
        double mostUndersize() {
            return MOST_UNDERSIZE * flat();
        }

        /** Width of the flat at its end. */
        double flat() {
            double rims = switch (shape) {
                case BALL -> diameter;
                case BULL_NOSE -> 2 * requireNonNullElse(rimRadius, 0.0);
                case FLAT -> 0;
            };
            return Math.max(0, diameter - rims);
        }

        /** The highest ridges that the shape of its end allows. */
        private double mostScallop() {
            double end = shape == CutterShape.BULL_NOSE && rimRadius != null ? rimRadius : diameter / 2;
            return end / 2;
        }
    }

    @Describe("Limits of a machine, from the sphere's centre, which is the program's zero.")
    public record LimitsRequest(
            @Describe(
                    value = "Farthest X to both sides.",
                    quantity = LENGTH,
                    usual = {30, 3000},
                    example = "200")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double x,

            @Describe(
                    value = "Farthest Y to both sides.",
                    quantity = LENGTH,
                    usual = {30, 3000},
                    example = "150")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double y,

            @Describe(
                    value = "Highest Z.",
                    quantity = LENGTH,
                    usual = {30, 3000},
                    example = "160")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double highest,

            @Describe(
                    value = "How far Z may go below the centre.",
                    quantity = LENGTH,
                    usual = {5, 1000},
                    example = "40")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double below,

            @Describe(
                    value = "Fastest turn of the rotary table, in turns a minute: where the feed would need a faster"
                            + " one, the table turns at this. Not limited if left out.",
                    quantity = TURNS,
                    example = "20",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double tableTurns) {}
}
