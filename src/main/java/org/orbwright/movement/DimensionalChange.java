package org.orbwright.movement;

/**
 * How far wood swells or shrinks across the grain, as a share of its dimension at the start.
 *
 * <p>From 6 % to 14 % moisture content the change is {@code C (M - M0)} (Wood Handbook, FPL-GTR-190, equation 13-2).
 * Where one of the two moisture contents lies outside, it is {@code (M - M0) / (3000 / S - 30 + M0)} (equation 13-3),
 * with the shrinkage {@code S} in percent from green to ovendry. The handbook calls that approximate. {@code S} follows
 * from the coefficient, as {@code C = 1 / (3000 / S - 20)}: so it agrees with Table 4-3 to 0.02 percentage points, but
 * for the few woods to which Table 13-5 gives the coefficients of a relative.
 *
 * <p>Equation 13-3 gives the change of equation 13-2 over {@code 1 + C (M0 - 10)}. So the change jumps where a moisture
 * content leaves the range: by 1.9 % of itself at most for the woods of the table, by 4.2 % at most for others.
 *
 * <p>Above fibre saturation, which the handbook assumes at 30 %, wood does not move.
 */
public final class DimensionalChange {
    /** The least moisture content in percent for which coefficients hold (FPL-GTR-190, Table 13-5). */
    public static final double DRIEST = 6;
    /** The largest one. */
    public static final double DAMPEST = 14;
    /** Fibre saturation in percent (FPL-GTR-190, equation 13-3). */
    public static final double SATURATION = 30;
    /** More than moisture contents are rounded to in answers: what was answered at a limit keeps it when posted. */
    private static final double ROUNDING = 2e-4;

    private DimensionalChange() {}

    /** Whether coefficients hold no longer at a moisture content in percent. */
    public static boolean isOutside(double moisture) {
        return moisture < DRIEST - ROUNDING || moisture > DAMPEST + ROUNDING;
    }

    /** The moisture content that wood moves with: its own, or fibre saturation where that is less. */
    static double moving(double moisture) {
        return Math.min(moisture, SATURATION);
    }

    /**
     * Change of a dimension as a share of it, above 0 for swelling.
     *
     * @param coefficient dimensional change coefficient, per percent of moisture content, above 0
     * @param from moisture content at the start, in percent
     * @param to moisture content at the end, in percent
     */
    static double strain(double coefficient, double from, double to) {
        double change = moving(to) - moving(from);
        return isOutside(from) || isOutside(to) ? change / (1 / coefficient - 10 + moving(from)) : coefficient * change;
    }
}
