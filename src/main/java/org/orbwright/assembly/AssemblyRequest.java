package org.orbwright.assembly;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A design and the glue that it is put together with.
 *
 * @param design the design
 * @param glue the glue and how fast it is used, or null for what is common
 */
@Describe("A design and the glue that it is put together with.")
public record AssemblyRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(
                value = "The glue and how fast it is used; what is common in shops is taken for what is left out.",
                optional = true)
        @Valid
        GlueRequest glue) {

    /** The glue and how fast it is used. */
    @Describe("The glue and how fast it is used. The values that are taken for what is left out are common practice,"
            + " without a source; the glue's data sheet knows better.")
    public record GlueRequest(
            @Describe(
                    value = "Glue on a square metre of joint; 200 if left out.",
                    quantity = Quantity.SPREAD,
                    example = "180",
                    optional = true)
            @DecimalMin("1")
            @DecimalMax("2000")
            Double spread,

            @Describe(
                    value = "Time from the first glue of a stage until its last joint has to be closed; 10 if left"
                            + " out.",
                    quantity = Quantity.MINUTES,
                    example = "8",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("1440")
            Double openTime,

            @Describe(
                    value = "Seams that are spread with glue and closed in a minute; 3 if left out.",
                    example = "2.5",
                    optional = true)
            @DecimalMin("0.01")
            @DecimalMax("60")
            Double seamsPerMinute) {}
}
