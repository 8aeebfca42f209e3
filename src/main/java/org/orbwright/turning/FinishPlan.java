package org.orbwright.turning;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("Sanding and coats.")
public record FinishPlan(
        @Describe("The grits in their order.") List<GritStep> grits,

        @Describe(
                value = "Thinnest wall once sanded; below 0 it breaks through.",
                quantity = Quantity.LENGTH,
                example = "7.3609",
                min = -1e18)
        double wallAfter,

        @Describe("The band of which least can be seen once sanded.")
        ThinnestBand thinnest,

        @Describe(value = "Surface to be finished.", quantity = Quantity.AREA, example = "133316.626")
        double area,

        @Describe(
                value = "Finish for all coats, by the coverage; what soaks into end grain and stays in the rag comes on"
                        + " top. Left out without coats.",
                quantity = Quantity.MILLILITRES,
                example = "44.439",
                optional = true)
        Double finish,

        @Describe(
                value = "Hours until the last coat is dry; curing takes longer, as the data sheet says. Left out"
                        + " without coats.",
                quantity = Quantity.PLAIN,
                example = "96",
                optional = true)
        Double dryingHours) {

    public FinishPlan {
        grits = List.copyOf(grits);
    }

    @Describe("One grit.")
    public record GritStep(
            @Describe(value = "Its number.", example = "100", min = 8, max = 10000)
            int grit,

            @Describe(value = "What it takes off the surface.", quantity = Quantity.LENGTH, example = "0.12")
            double allowance,

            @Describe(value = "Diameter before it.", quantity = Quantity.LENGTH, example = "206.42")
            double before,

            @Describe(value = "Diameter after it.", quantity = Quantity.LENGTH, example = "206.18")
            double after) {}

    @Describe("A band that little can be seen of.")
    public record ThinnestBand(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "The band, from 1 at the base.", example = "2", min = 1, max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"red alder\"")
            String species,

            @Describe(
                    value = "Most of its width that can be seen before sanding.",
                    quantity = Quantity.LENGTH,
                    example = "5.0923")
            double widestBefore,

            @Describe(
                    value = "Most of its width that can be seen on the finished sphere.",
                    quantity = Quantity.LENGTH,
                    example = "5.0927")
            double widest) {}
}
