package org.orbwright.wood;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A wood that the caller knows. The bounds are wider than the table, and narrow enough to refuse coefficients that are
 * written in percent.
 */
@Describe("A wood that the caller knows. At least one number is stated. What is left out is taken from the table of"
        + " woods, where that has a wood of this very name.")
public record WoodRequest(
        @Describe(
                value = "The name, as bands and boards write it; upper and lower case are alike. A name of the table is"
                        + " overruled.",
                example = "\"garden plum\"")
        @NotBlank
        @Size(max = 60)
        String name,

        @Describe(
                value = "Dimensional change coefficient in the radial direction, square to the growth rings; valid for"
                        + " 6 % to 14 % moisture content. The table has 0.00081 to 0.0031. A value in percent is"
                        + " beyond the bounds.",
                quantity = Quantity.MOVEMENT,
                example = "0.0018",
                optional = true)
        @DecimalMin("0.0001")
        @DecimalMax("0.01")
        Double radialCoefficient,

        @Describe(
                value = "Dimensional change coefficient in the tangential direction, along the growth rings; valid for"
                        + " 6 % to 14 % moisture content. The table has 0.00162 to 0.00462. A value in percent is"
                        + " beyond the bounds.",
                quantity = Quantity.MOVEMENT,
                example = "0.0035",
                optional = true)
        @DecimalMin("0.0001")
        @DecimalMax("0.01")
        Double tangentialCoefficient,

        @Describe(
                value = "Density at 12 % moisture content. The table has 358 to 986.",
                quantity = Quantity.DENSITY,
                example = "720",
                optional = true)
        @DecimalMin("50")
        @DecimalMax("2000")
        Double density) {}
