package org.orbwright.diagnosis;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("An angle that follows from measurements, with its uncertainty (JCGM 100:2008).")
public record AngleEstimate(
        @Describe(value = "The best estimate.", quantity = Quantity.ANGLE, example = "-0.2913", min = -1e18)
        double value,

        @Describe(value = "Standard uncertainty.", quantity = Quantity.ANGLE, example = "0.0105")
        double uncertainty,

        @Describe(value = "Expanded uncertainty, twice the standard one.", quantity = Quantity.ANGLE, example = "0.021")
        double expanded) {

    static AngleEstimate of(double value, double uncertainty) {
        return new AngleEstimate(value, uncertainty, LengthEstimate.COVERAGE * uncertainty);
    }

    /** Whether it cannot be told from 0: the expanded uncertainty reaches it. */
    public boolean unclear() {
        return Math.abs(value) <= expanded;
    }
}
