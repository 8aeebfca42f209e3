package org.orbwright.jig;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A design, and what its settings are measured with.
 *
 * @param design the design
 * @param sineBar centre distance of the sine bar's rolls, or null for 100 mm
 * @param run length over which a rise is measured, or null for 250 mm
 */
@Describe("A design, and what the settings of the saw are measured with.")
public record JigRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(
                value = "Distance between the centres of the sine bar's rolls; 100 mm if left out, whatever the unit"
                        + " is (common practice, no source).",
                quantity = Quantity.LENGTH,
                example = "100",
                optional = true)
        @DecimalMin("0.5")
        @DecimalMax("10000")
        Double sineBar,

        @Describe(
                value = "Length along the fence or the table over which a rise and a trial cut's gap are measured; 250"
                        + " mm if left out, whatever the unit is (common practice, no source).",
                quantity = Quantity.LENGTH,
                example = "250",
                optional = true)
        @DecimalMin("0.5")
        @DecimalMax("100000")
        Double run) {}
