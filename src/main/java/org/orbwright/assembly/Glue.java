package org.orbwright.assembly;

import static org.orbwright.quantity.Quantity.MINUTES;
import static org.orbwright.quantity.Quantity.PLAIN;
import static org.orbwright.quantity.Quantity.SPREAD;

import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.quantity.Describe;

@Describe("The glue and how fast it is used, with everything filled in that was left out.")
public record Glue(
        @Describe(value = "Glue on a square metre of joint.", quantity = SPREAD, example = "170")
        double spread,

        @Describe(
                value = "Time from the first glue of a stage until its last joint has to be closed, to a thousandth of"
                        + " a minute.",
                quantity = MINUTES,
                example = "5")
        double openTime,

        @Describe(value = "Seams that are spread with glue and closed in a minute.", quantity = PLAIN, example = "2")
        double seamsPerMinute,

        @Describe(value = "Most seams that fit into the open time.", example = "10")
        int mostSeams) {

    private static final double KILOGRAMS_PER_SQUARE_MILLIMETRE = 1e-9;
    /** The open time counts to a thousandth of a minute, as it is answered. */
    private static final double PER_MINUTE = 1000;
    /** A product that is a whole number but for its last bits is that number: 2.9 minutes at 10 a minute are 29. */
    private static final double EXACT = 1e-9;

    /** What is stated of the glue, with everything filled in. */
    static Glue of(GlueRequest stated) {
        double openTime = Math.rint(stated.openTime() * PER_MINUTE) / PER_MINUTE;
        int most = (int) Math.floor(openTime * stated.seamsPerMinute() * (1 + EXACT));
        return new Glue(stated.spread(), openTime, stated.seamsPerMinute(), most);
    }

    /** Kilograms of glue on square millimetres of joint. */
    double mass(double area) {
        return area * spread * KILOGRAMS_PER_SQUARE_MILLIMETRE;
    }

    /** Minutes for so many seams. */
    public double time(int seams) {
        return seams / seamsPerMinute;
    }
}
