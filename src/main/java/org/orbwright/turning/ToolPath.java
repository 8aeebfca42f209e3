package org.orbwright.turning;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.PathRequest.Machine;

/** The way of the cutter. */
@Describe("The way of the cutter over the sphere. It is computed for the designed solid between its discs, and knows of"
        + " no clamp, vice or table: look through it, and run it in air first.")
public record ToolPath(
        @Describe(value = "The kind of machine.", example = "\"ROTARY\"")
        Machine machine,

        @Describe(value = "Radius of the sphere that the last pass cuts.", quantity = Quantity.LENGTH, example = "86.2")
        double sphere,

        @Describe("The passes, with the one in air.") List<PassTime> passes,

        @Describe(
                value = "From ring to ring along the sphere in the last pass; left out where it grows narrower, as for"
                        + " flat cutters.",
                quantity = Quantity.LENGTH,
                example = "5.8947",
                optional = true)
        Double stepover,

        @Describe(
                value =
                        "Latitude up to which the last pass reaches on the first end's side; from the upright axis' middle"
                                + " plane on three axes.",
                quantity = Quantity.ANGLE,
                example = "49.2703",
                min = -90,
                max = 90)
        double reachedHead,

        @Describe(
                value = "The same on the other side.",
                quantity = Quantity.ANGLE,
                example = "49.2703",
                min = -90,
                max = 90)
        double reachedTail,

        @Describe(value = "Lowest height of the tip.", quantity = Quantity.LENGTH, example = "52.7697", min = -1e18)
        double lowest,

        @Describe(value = "Height of rapid moves.", quantity = Quantity.LENGTH, example = "130.0443")
        double safeHeight,

        @Describe(value = "Farthest X of the tip's middle.", quantity = Quantity.LENGTH, example = "72.9")
        double farthest,

        @Describe(
                value =
                        "Length that the cutter has to stand out of its holder to keep clear of the solid; left out without"
                                + " a holder.",
                quantity = Quantity.LENGTH,
                example = "57.2746",
                optional = true)
        Double stickOutNeeded,

        @Describe(value = "Length of all cuts on the sphere.", quantity = Quantity.LENGTH, example = "35703.614")
        double length,

        @Describe(value = "Time with feed, without rapid moves.", quantity = Quantity.MINUTES, example = "24.504")
        double minutes,

        @Describe("The moves in their order.") List<PathMove> moves) {

    /** Copies the lists. */
    public ToolPath {
        passes = List.copyOf(passes);
        moves = List.copyOf(moves);
    }

    /** One pass. */
    @Describe("One pass.")
    public record PassTime(
            @Describe(value = "Its number, from 0.", example = "0", max = 1e6)
            int pass,

            @Describe(value = "Radius of the sphere that it cuts.", quantity = Quantity.LENGTH, example = "120.0443")
            double sphere,

            @Describe(value = "Rings.", example = "13", max = 1e6)
            int rings,

            @Describe(value = "Time with feed.", quantity = Quantity.MINUTES, example = "6.245")
            double minutes) {}
}
