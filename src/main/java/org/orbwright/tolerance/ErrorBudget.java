package org.orbwright.tolerance;

import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.PLAIN;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("What all errors together do to one length, to first order. Setting errors shift it; scatter gives a standard"
        + " uncertainty, the root of the sum of squares of its contributions (JCGM 100:2008).")
public record ErrorBudget(
        @Describe(value = "Shift by all setting errors together.", quantity = LENGTH, example = "0.0824", min = -1e18)
        double shift,

        @Describe(value = "Combined standard uncertainty from the scatter.", quantity = LENGTH, example = "0.0143")
        double uncertainty,

        @Describe(
                value = "Expanded uncertainty, twice the standard one: about 95 % of all such lengths lie within it of"
                        + " the shift, each of one panel, seam, line or pair of faces. Of a whole solid, which has"
                        + " many, the farthest lies further off.",
                quantity = LENGTH,
                example = "0.0285")
        double expanded,

        @Describe("What each source of error that matters here has to do with it.")
        List<ErrorContribution> contributions) {

    public ErrorBudget {
        contributions = List.copyOf(contributions);
    }

    @Describe("What one source of error has to do with a length.")
    public record ErrorContribution(
            @Describe(value = "What is cut inexactly.", example = "\"TIP_ANGLE\"")
            ErrorSource source,

            @Describe(
                    value = "Sensitivity to an angle: how far the length shifts for each tenth of a degree that every"
                            + " cut is too large.",
                    quantity = LENGTH,
                    example = "-0.412",
                    min = -1e18,
                    optional = true)
            Double perTenthDegree,

            @Describe(
                    value = "Sensitivity to a length: how far the length shifts for each unit that every piece is too"
                            + " large.",
                    quantity = PLAIN,
                    example = "0.288675",
                    min = -1e18,
                    optional = true)
            Double perLength,

            @Describe(value = "Shift by the setting error.", quantity = LENGTH, example = "0.0824", min = -1e18)
            double shift,

            @Describe(
                    value = "Standard uncertainty from the scatter, which evens out where several pieces count. 0 where"
                            + " BEVEL moves a panel outwards: that has one side only, and is no uncertainty.",
                    quantity = LENGTH,
                    example = "0.0143")
            double uncertainty) {}
}
