package org.orbwright.band;

import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** The flat widths that make wishes come true. */
@Describe("The flat widths that make the wishes come true.")
public record WidthSolution(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "The set in which the wishes come true.", example = "\"UPRIGHT\"")
        BandSet set,

        @Describe("The bands, from the base to the tip.") List<SolvedBand> bands) {

    /** One band with its wish and its width. */
    @Describe("One band with its wish and its width.")
    public record SolvedBand(
            @Describe(
                    value = "The band's number in the lamination, from 1 at the base.",
                    example = "1",
                    min = 1,
                    max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "What was wished for.", example = "\"EDGE_MIDDLE\"")
            SolveRequest.Measure measure,

            @Describe(
                    value = "Flat width that makes the wish come true.",
                    quantity = Quantity.LENGTH,
                    example = "14.9942")
            double width,

            @Describe("What is seen of the band with this width.")
            Seen seen,

            @Describe(
                    value = "What is seen less what was wished for, in the wish's own measure before rounding to the"
                            + " shop's"
                            + " step: the design's unit, or a share. Left out for the rest.",
                    quantity = Quantity.PLAIN,
                    example = "0",
                    optional = true,
                    min = -1e18)
            Double residual,

            @Describe(
                    value = "The most that could have been wished for beside the other wishes, in the wish's own"
                            + " measure;"
                            + " left out for the rest.",
                    quantity = Quantity.PLAIN,
                    example = "25.420533",
                    optional = true)
            Double most,

            @Describe("How the wish's measure changes for each unit that a band is made wider, the rest giving way.")
            List<Sensitivity> sensitivities,

            @Describe(value = "The width and what is seen of it after rounding to the shop's step.", optional = true)
            Rounded rounded) {}

    /** What is seen of a band. */
    @Describe("What is seen of a band on the sphere: beside an exact width with all widths exact, beside a rounded one"
            + " with"
            + " all of them rounded.")
    public record Seen(
            @Describe(value = "Visible width at the edge middle.", quantity = Quantity.LENGTH, example = "13")
            double edgeMiddle,

            @Describe(
                    value = "Visible width at the corner where least of it is left.",
                    quantity = Quantity.LENGTH,
                    example = "7.1838")
            double corner,

            @Describe(value = "Share of the sphere.", quantity = Quantity.RATIO, example = "0.523996", max = 1)
            double shareOfSphere) {}

    /** How a measure depends on a width. */
    @Describe("How the wish's measure depends on the width of one band.")
    public record Sensitivity(
            @Describe(value = "The band that is made wider.", example = "1", min = 1, max = 60)
            int band,

            @Describe(
                    value = "Change of the measure for each unit of width: without unit for a width, for a share for"
                            + " each"
                            + " unit of length.",
                    quantity = Quantity.PLAIN,
                    example = "1.029169",
                    min = -1e18)
            double change) {}

    /** A band after rounding. */
    @Describe(
            "The band's width and what is seen of it after rounding to the shop's step; left out where none was given.")
    public record Rounded(
            @Describe(
                    value = "The rounded width; for the rest what is left.",
                    quantity = Quantity.LENGTH,
                    example = "18")
            double width,

            @Describe("What is seen of the band with the rounded widths.")
            Seen seen) {}
}
