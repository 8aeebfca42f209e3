package org.orbwright.turning;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.PathRequest.Machine;

@Describe("The way of the cutter over the sphere. It is computed for the designed solid between its discs, and knows"
        + " of no chuck, tailstock, clamp, vice or table: look through it, and run it in air first. A pass's depth is"
        + " square to the sphere: along the cutter's side the wood is deeper. It gets deeper with the distance from"
        + " the middle plane, or on three axes with the distance from the pole. The wood passes the outer side of the"
        + " cutter faster than the stated feed.")
public record ToolPath(
        @Describe(value = "The kind of machine.", example = "\"ROTARY\"")
        Machine machine,

        @Describe(
                value = "Radius of the sphere that the last pass cuts.",
                quantity = Quantity.LENGTH,
                example = "103.25")
        double sphere,

        @Describe("The passes, with the one in air.") List<PassTime> passes,

        @Describe(
                value = "From ring to ring along the sphere in the last pass, on the first end's side; left out where"
                        + " it changes from ring to ring, as for flat cutters.",
                quantity = Quantity.LENGTH,
                example = "4.7873",
                optional = true)
        Double stepover,

        @Describe(
                value =
                        "By how much the flat of the cutter overlaps: in the middle plane between the two rings there, or"
                                + " at the pole with itself. It is twice the undersize. Left out for a ball.",
                quantity = Quantity.LENGTH,
                example = "0.2",
                optional = true)
        Double overlap,

        @Describe(
                value = "Latitude up to which the last pass reaches on the first end's side, from the middle plane; 90"
                        + " on three axes, where nothing may stand on that end.",
                quantity = Quantity.ANGLE,
                example = "55.7884",
                min = -90,
                max = 90)
        double reachedHead,

        @Describe(
                value = "The same on the other side. On three axes the upper half is milled down to the middle plane"
                        + " where this is 0; below 0 it ends as far above that, and a belt twice as wide is left once"
                        + " both halves are milled.",
                quantity = Quantity.ANGLE,
                example = "55.7884",
                min = -90,
                max = 90)
        double reachedTail,

        @Describe(
                value = "Radius of the stock that is reckoned with: to the solid's farthest corner.",
                quantity = Quantity.LENGTH,
                example = "132.0126")
        double stock,

        @Describe(
                value = "Feed in a minute straight down: the stated one, or a quarter of the feed.",
                quantity = Quantity.LENGTH,
                example = "325")
        double plungeFeed,

        @Describe(value = "Lowest height of the tip.", quantity = Quantity.LENGTH, example = "54.5505", min = -1e18)
        double lowest,

        @Describe(
                value = "Height of rapid moves, above the corners and, on a rotary table, the discs.",
                quantity = Quantity.LENGTH,
                example = "152.0126")
        double clearHeight,

        @Describe(value = "Farthest X of the tip's middle.", quantity = Quantity.LENGTH, example = "92")
        double farthest,

        @Describe(
                value = "Length that the cutter has to stand out of its holder to keep clear of the solid and the"
                        + " discs, with nothing to spare; left out without a holder.",
                quantity = Quantity.LENGTH,
                example = "77.4621",
                optional = true)
        Double stickOutNeeded,

        @Describe(
                value = "Length of the way with feed, without the pass in air.",
                quantity = Quantity.LENGTH,
                example = "65990.4769")
        double length,

        @Describe(
                value = "Time with feed, with the pass in air and without rapid moves.",
                quantity = Quantity.MINUTES,
                example = "65.967")
        double minutes,

        @Describe("The moves in their order.") List<PathMove> moves) {

    public ToolPath {
        passes = List.copyOf(passes);
        moves = List.copyOf(moves);
    }

    @Describe("One pass.")
    public record PassTime(
            @Describe(value = "Its number.", quantity = Quantity.NUMBER, example = "1", max = 1e6)
            int pass,

            @Describe(value = "Radius of the sphere that it cuts.", quantity = Quantity.LENGTH, example = "142.0126")
            double sphere,

            @Describe(value = "Whether it cuts nothing but air.", example = "true")
            boolean inAir,

            @Describe(value = "Times that it goes around.", example = "21", max = 1e6)
            int rings,

            @Describe(value = "Length of its way with feed.", quantity = Quantity.LENGTH, example = "17543.1796")
            double length,

            @Describe(value = "Time with feed.", quantity = Quantity.MINUTES, example = "13.686")
            double minutes) {}
}
