package org.orbwright.jig;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;

@Describe("What the settings of the saw are measured with.")
public record JigRequest(
        @Describe(
                value = "Distance between the centres of the sine bar's rolls; if left out 100 mm in a design in mm and"
                        + " 5 in in one in inches (common practice, no source).",
                quantity = Quantity.LENGTH,
                usual = {50, 600},
                example = "100",
                optional = true)
        @DecimalMin("0.5")
        @DecimalMax("10000")
        Double sineBar,

        @Describe(
                value = "Length along a line of reference or a leg over which a rise, and a trial cut's gap and chord,"
                        + " are measured; if left out 250 mm in a design in mm and 10 in in one in inches (common"
                        + " practice, no source).",
                quantity = Quantity.LENGTH,
                usual = {50, 3000},
                example = "250",
                optional = true)
        @DecimalMin("0.5")
        @DecimalMax("100000")
        Double run) {

    /** The same with everything filled in. */
    public JigRequest filled(LengthUnit unit) {
        return new JigRequest(
                requireNonNullElse(sineBar, unit.usual(100, 5)), requireNonNullElse(run, unit.usual(250, 10)));
    }
}
