package org.orbwright.band;

import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.PLAIN;
import static org.orbwright.quantity.Quantity.RATIO;

import java.util.List;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Describe;

@Describe("The flat widths that bring the wishes as near to coming true as they can all be. The farthest wish is"
        + " brought as near as can be first, then the others. How far a wish is off is its deviation: what is"
        + " shown less what is wished, as a share of what is wished.")
public record WidthSolution(
        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "The spheres that a wish without a set is about.", example = "\"MIXED\"")
        SphereSet set,

        @Describe(
                value = "The largest deviation of all wishes: 0 where all come true, 0.1 where the farthest is a tenth"
                        + " off.",
                example = "0",
                quantity = PLAIN)
        double worst,

        @Describe(
                value = "No widths, in the step if there is one, bring the largest deviation below this. It is rounded"
                        + " down. Where it is less than the largest deviation by more than rounding, the search"
                        + " gave up: what lies between is not known.",
                example = "0",
                quantity = PLAIN)
        double proved,

        @Describe(
                value =
                        "The largest deviation without the step, which tells what the step costs: at most this. Left out"
                                + " without a step.",
                example = "0",
                optional = true,
                quantity = PLAIN)
        Double worstWithoutStep,

        @Describe(
                value =
                        "No widths at all bring the largest deviation below this. It is rounded down. Left out without a"
                                + " step.",
                example = "0",
                optional = true,
                quantity = PLAIN)
        Double provedWithoutStep,

        @Describe("The bands, from the base to the tip of an upright segment.")
        List<SolvedBand> bands,

        @Describe("The wishes, in the order of the section, without those that are REST.")
        List<SolvedWish> wishes) {

    @Describe("One band with its width and what each kind of sphere shows of it.")
    public record SolvedBand(
            @Describe(
                    value = "The band's number in the lamination, from 1 at the base.",
                    example = "1",
                    min = 1,
                    max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Flat width.", quantity = LENGTH, example = "13.0556")
            double width,

            @Describe(
                    value = "The width in steps; left out without a step, and for a band that takes what is left.",
                    example = "30",
                    optional = true)
            Integer steps,

            @Describe(value = "Whether the band takes what the others leave.", example = "false")
            boolean rest,

            @Describe("What is seen of the band on each kind of sphere that is made or wished about.")
            List<Seen> seen) {}

    @Describe("What is seen of a band on a kind of sphere. On a MIXED sphere a width is that in the panels that show"
            + " least of it.")
    public record Seen(
            @Describe(value = "Which segments the sphere is made from.", example = "\"UPRIGHT\"")
            SphereSet set,

            @Describe(value = "Visible width at the edge middle.", quantity = LENGTH, example = "11")
            double edgeMiddle,

            @Describe(
                    value = "Visible width at the corner where least of it is left.",
                    quantity = LENGTH,
                    example = "5.1838")
            double corner,

            @Describe(value = "Share of the sphere.", quantity = RATIO, example = "0.442257", max = 1)
            double shareOfSphere) {}

    @Describe("One wish with what becomes of it.")
    public record SolvedWish(
            @Describe(value = "Its place among the section's wishes, from 1.", example = "1", min = 1, max = 120)
            int wish,

            @Describe(value = "The band's number in the lamination.", example = "1", min = 1, max = 60)
            int band,

            @Describe(value = "The spheres that it is about.", example = "\"MIXED\"")
            SphereSet set,

            @Describe(value = "What it measures.", example = "\"EDGE_MIDDLE\"")
            SolveRequest.Measure measure,

            @Describe(value = "What is wished: the design's unit, or a share.", example = "11", quantity = PLAIN)
            double wished,

            @Describe(value = "What is shown, in the same measure.", example = "11", quantity = PLAIN)
            double shown,

            @Describe(
                    value = "What is shown less what is wished, as a share of what is wished.",
                    example = "0",
                    min = -1,
                    quantity = PLAIN)
            double deviation,

            @Describe(
                    value = "The most that the wish could show while the others come as near as they do, in the same"
                            + " measure: at least this, and at most a ten-thousandth of what a band over the whole"
                            + " lamination shows more. Left out where the search for it gave up.",
                    example = "23.838405",
                    optional = true,
                    quantity = PLAIN)
            Double most,

            @Describe(
                    value = "The largest deviation of the other wishes if this one were dropped: at most this. Left out"
                            + " where dropping it does not help by a ten-thousandth, where all wishes come true, and"
                            + " where the search for it gave up.",
                    example = "0.0125",
                    optional = true,
                    quantity = PLAIN)
            Double worstWithout,

            @Describe("How what is shown changes for each unit that a band is made wider, the rest giving way. Where a"
                    + " MIXED sphere's two kinds of panels show equally much, it is midway between wider and narrower.")
            List<Sensitivity> sensitivities) {}

    @Describe("How what a wish shows depends on the width of one band.")
    public record Sensitivity(
            @Describe(value = "The band that is made wider.", example = "1", min = 1, max = 60)
            int band,

            @Describe(
                    value = "Change of the measure for each unit of width: without unit for a width, for a share for"
                            + " each unit of length.",
                    example = "1.034249",
                    min = -1e18,
                    quantity = PLAIN)
            double change) {}
}
