package org.orbwright.diagnosis;

import static org.orbwright.quantity.Quantity.LENGTH;

import org.orbwright.quantity.Describe;

@Describe("A length that follows from measurements, with its uncertainty (JCGM 100:2008).")
public record LengthEstimate(
        @Describe(value = "The best estimate.", quantity = LENGTH, example = "0.1167", min = -1e18)
        double value,

        @Describe(value = "Standard uncertainty.", quantity = LENGTH, example = "0.0083")
        double uncertainty,

        @Describe(value = "Expanded uncertainty, twice the standard one.", quantity = LENGTH, example = "0.0167")
        double expanded) {
    /** The expanded uncertainty in standard ones. */
    static final double COVERAGE = 2;

    static LengthEstimate of(double value, double uncertainty) {
        return new LengthEstimate(value, uncertainty, COVERAGE * uncertainty);
    }

    /** Whether it cannot be told from 0: the expanded uncertainty reaches it. */
    public boolean unclear() {
        return Math.abs(value) <= expanded;
    }
}
