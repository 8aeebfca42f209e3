package org.orbwright.turning;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("One move of the middle of the cutter's tip, to the stated place. The origin is the sphere's centre.")
public record PathMove(
        @Describe(value = "The pass.", quantity = Quantity.NUMBER, example = "1", max = 1e6)
        int pass,

        @Describe(value = "Radius of the sphere that it cuts.", quantity = Quantity.LENGTH, example = "142.0126")
        double sphere,

        @Describe(
                value = "RAPID: without a cut; LINE: straight, with feed; PLUNGE: straight down, with the plunge feed;"
                        + " TURN: one turn of the work; CIRCLE: once around the upright axis,"
                        + " counter-clockwise from above.",
                example = "\"RAPID\"")
        Kind kind,

        @Describe(
                value = "X: along the rotary axis, or from the upright one.",
                quantity = Quantity.LENGTH,
                example = "0",
                min = -1e18)
        double x,

        @Describe(value = "Z: height of the tip.", quantity = Quantity.LENGTH, example = "152.0126", min = -1e18)
        double z,

        @Describe(
                value = "A: angle of the rotary table after the move. It goes on from turn to turn, and the last move"
                        + " winds it back to 0; always 0 on three axes.",
                quantity = Quantity.ANGLE,
                example = "0")
        double a,

        @Describe(value = "Time; 0 for rapid moves.", quantity = Quantity.MINUTES, example = "0")
        double minutes) {

    /** Kinds of move. */
    public enum Kind {
        /** Without a cut. */
        RAPID,
        /** Straight, with feed. */
        LINE,
        /** Straight down, with the plunge feed. */
        PLUNGE,
        /** One turn of the work. */
        TURN,
        /** Once around the upright axis. */
        CIRCLE
    }
}
