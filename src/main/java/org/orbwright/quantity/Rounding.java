package org.orbwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounding to a number of decimals, for answers and for sentences. */
public final class Rounding {
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};
    /** A number of whole steps but for the last bits of a double is one. */
    private static final double EXACT = 1e-9;

    private static final int FINEST = 9;
    /** Above this a double has no decimals left to round at the scales used here. */
    private static final double LARGEST_SCALED = 1L << 52;

    private Rounding() {}

    /**
     * Rounds half to even at the given number of decimals, and turns a negative zero into zero.
     *
     * @param value any number
     * @param decimals 0 to 12
     */
    public static double round(double value, int decimals) {
        double power = POWERS[decimals];
        double scaled = value * power;
        return Math.abs(scaled) < LARGEST_SCALED ? Math.rint(scaled) / power + 0.0 : value;
    }

    /**
     * Rounds down at the given number of decimals, for limits that have to hold as they are answered.
     *
     * @param value a number of no more than 2^52 units of its last decimal
     * @param decimals 0 to 12
     */
    public static double down(double value, int decimals) {
        return Math.floor(value * POWERS[decimals] + EXACT) / POWERS[decimals];
    }

    /**
     * The fewest decimals with which two numbers are written differently.
     *
     * @param one a finite number
     * @param other another one
     * @param least no fewer than these
     * @return {@code least} for equal numbers, and for those that nine decimals do not tell apart
     */
    public static int decimalsApart(double one, double other, int least) {
        for (int decimals = least; decimals <= FINEST; decimals++) {
            if (!plain(one, decimals).equals(plain(other, decimals))) {
                return decimals;
            }
        }
        return least;
    }

    /**
     * Writes a number without exponent and without trailing zeros.
     *
     * @param value a finite number
     * @param decimals the most decimals to write, 0 to 12
     */
    public static String plain(double value, int decimals) {
        double scaled = Math.rint(value * POWERS[decimals]);
        BigDecimal rounded = Math.abs(scaled) < LARGEST_SCALED
                ? BigDecimal.valueOf((long) scaled, decimals)
                : BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
