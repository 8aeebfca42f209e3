package org.orbwright.assembly;

import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** The glue and how fast it is used, with everything filled in that was left out. */
@Describe("The glue and how fast it is used, with everything filled in that was left out.")
public record Glue(
        @Describe(value = "Glue on a square metre of joint.", quantity = Quantity.SPREAD, example = "180")
        double spread,

        @Describe(
                value = "Time from the first glue of a stage until its last joint has to be closed, to a thousandth of"
                        + " a minute.",
                quantity = Quantity.MINUTES,
                example = "8")
        double openTime,

        @Describe(value = "Seams that are spread with glue and closed in a minute.", example = "2.5")
        double seamsPerMinute,

        @Describe(value = "Most seams that fit into the open time.", example = "20")
        int mostSeams) {

    /** Grams on a square metre. Common practice for wood glues, no source. */
    private static final double USUAL_SPREAD = 200;
    /** Minutes. Common practice for white and yellow wood glues, no source. */
    private static final double USUAL_OPEN_TIME = 10;
    /** Twenty seconds for a seam. Common practice, no source. */
    private static final double USUAL_PACE = 3;

    private static final double KILOGRAMS_PER_SQUARE_MILLIMETRE = 1e-9;
    /** The open time counts to a thousandth of a minute, as it is answered. */
    private static final double PER_MINUTE = 1000;
    /** A product that is a whole number but for its last bits is that number: 2.9 minutes at 10 a minute are 29. */
    private static final double EXACT = 1e-9;

    static Glue of(GlueRequest request) {
        GlueRequest asked = request == null ? new GlueRequest(null, null, null) : request;
        double openTime = Math.rint(otherwise(asked.openTime(), USUAL_OPEN_TIME) * PER_MINUTE) / PER_MINUTE;
        double pace = otherwise(asked.seamsPerMinute(), USUAL_PACE);
        int most = (int) Math.floor(openTime * pace * (1 + EXACT));
        return new Glue(otherwise(asked.spread(), USUAL_SPREAD), openTime, pace, most);
    }

    private static double otherwise(Double asked, double usual) {
        return asked == null ? usual : asked;
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
