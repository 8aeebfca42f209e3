package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("The gaps of simulated solids. Every panel and every seam has its own errors around the setting, normally"
        + " distributed, and exact gaps instead of those to first order. Every edge of a panel has a bevel cut of its"
        + " own, and segments of one cut are not in one panel. Where fewer than 95 % of the solids have all gaps"
        + " bridged (common practice, no source), a finding says so. The same seed and number of samples give the same"
        + " answer on any number of processors.")
public record GapSimulation(
        @Describe(value = "Solids simulated.", example = "20000", max = 1000000)
        int samples,

        @Describe(value = "The seed.", example = "1", max = 2147483647)
        int seed,

        @Describe("The widest gap of one panel, whichever it is; legs that lean add theirs.")
        GapPercentiles panelGap,

        @Describe("Gaps of one seam, whichever it is.") GapPercentiles seamGap,

        @Describe("The largest gap in any panel of a solid.")
        GapPercentiles largestPanelGap,

        @Describe("The largest gap in any seam of a solid.") GapPercentiles largestSeamGap,

        @Describe(
                value = "Share of solids whose gaps the glue bridges everywhere, in all panels and all seams.",
                quantity = Quantity.RATIO,
                example = "0.0982",
                max = 1)
        double allBridged,

        @Describe(
                value = "Standard error of that share, as it is after so many samples to somebody who knew nothing"
                        + " before: it is not 0 even where all samples agree.",
                quantity = Quantity.RATIO,
                example = "0.002104",
                max = 1)
        double standardError,

        @Describe(
                value = "The same share by linear theory, where all gaps are independent: a product over all panels and"
                        + " seams.",
                quantity = Quantity.RATIO,
                example = "0.100017",
                max = 1)
        double allBridgedLinear) {

    @Describe("Percentiles of a gap: this share of all gaps is no larger.")
    public record GapPercentiles(
            @Describe(value = "The 5th percentile.", quantity = Quantity.LENGTH, example = "0.0587")
            double p5,

            @Describe(value = "The median.", quantity = Quantity.LENGTH, example = "0.0822")
            double p50,

            @Describe(value = "The 95th percentile.", quantity = Quantity.LENGTH, example = "0.1059")
            double p95,

            @Describe(value = "The 99th percentile.", quantity = Quantity.LENGTH, example = "0.115")
            double p99) {}
}
