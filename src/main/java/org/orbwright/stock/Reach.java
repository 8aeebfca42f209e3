package org.orbwright.stock;

import java.util.List;
import org.orbwright.design.SizeBy;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** What the boards at hand give, without the offers. */
@Describe("What the boards on the rack give, without the offers: how large, how many, from which blanks, and which"
        + " purchase would help most.")
public record Reach(
        SizeReach size,

        @Describe(
                value = "The largest size if the bands without a width take up what is more; left out if a lamination"
                        + " has no such band.",
                optional = true)
        SizeReach restBands,

        CopiesReach copies,
        BlankReach blank,

        @Describe(value = "The single extra board that helps most; left out if none helps.", optional = true)
        PurchaseReach purchase,

        @Describe(
                value = "Whether a search was ended by the clock, so that another call may find more.",
                example = "false")
        boolean endedByClock) {

    /** The largest size of a design that boards give. */
    @Describe("The largest size of a design that the boards give.")
    public record SizeReach(
            @Describe(value = "What is measured, as the design does.", example = "\"ACROSS_FLATS\"")
            SizeBy by,

            @Describe(
                    value = "The largest size that was found; left out if not even a tenth of the design's was.",
                    quantity = Quantity.LENGTH,
                    example = "188.8",
                    optional = true)
            Double largest,

            @Describe(
                    value = "It is proved that this size, and any larger one, cannot be cut; left out if no such size"
                            + " is proved.",
                    quantity = Quantity.LENGTH,
                    example = "189.1",
                    optional = true)
            Double impossibleFrom,

            @Describe(value = "How its strips are cut; left out without a size.", optional = true)
            StockPlan plan) {}

    /** The most copies of a design that boards give. */
    @Describe("The most copies of a design that the boards give.")
    public record CopiesReach(
            @Describe(value = "The most that were found; 0 if not even one can be cut.", example = "0", max = 1e9)
            int most,

            @Describe(value = "Whether it is proved that no more can be cut.", example = "true")
            boolean proved,

            @Describe(value = "How their strips are cut; left out for none.", optional = true)
            StockPlan plan) {}

    /** The length of blanks that suits boards best. */
    @Describe("The length of blanks that suits the boards best: the fewest missing strips, then the fewest seams, then"
            + " the least wood.")
    public record BlankReach(
            @Describe(value = "The best length that was tried.", quantity = Quantity.LENGTH, example = "720")
            double length,

            @Describe("All lengths that were tried, each of them the shortest for as many segments.")
            List<TriedBlank> tried,

            StockPlan plan) {
        /** Copies the list. */
        public BlankReach {
            tried = List.copyOf(tried);
        }
    }

    /** A length of blanks that was tried. */
    @Describe("A length of blanks that was tried.")
    public record TriedBlank(
            @Describe(value = "The length.", quantity = Quantity.LENGTH, example = "720")
            double length,

            @Describe(value = "Strips missing.", example = "1", max = 1e9)
            int missing,

            @Describe(value = "Seams.", example = "0", max = 1e9)
            int seams,

            @Describe(value = "Volume of the boards that are cut.", quantity = Quantity.BOARD_FEET, example = "9.7477")
            double boardFeet,

            @Describe(value = "Whether it is proved that no plan for this length is better.", example = "true")
            boolean proved) {}

    /** The single extra board that helps most. */
    @Describe("The single extra board that helps most: with it the fewest strips are missing. Where none is missing for"
            + " the design as it is, those for the next number of copies count.")
    public record PurchaseReach(
            @Describe(
                    value = "One more like this board, as the rack lists them, from 1; left out for an offer.",
                    example = "3",
                    optional = true,
                    min = 1,
                    max = 200)
            Integer board,

            @Describe(
                    value = "One of this offer, as the request lists them, from 1; left out for a board on the rack.",
                    example = "1",
                    optional = true,
                    min = 1,
                    max = 50)
            Integer offer,

            @Describe(value = "The copies that it was planned for.", example = "1", max = 1e9)
            int copies,

            @Describe(value = "Strips missing without it.", example = "1", max = 1e9)
            int missing,

            @Describe(value = "Strips missing with it.", example = "0", max = 1e9)
            int missingThen) {}
}
