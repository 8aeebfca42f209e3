package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.Rounding;

/** Round values along an axis, 1, 2 or 5 times a power of ten apart. */
final class Ticks {
    private static final int MOST_DECIMALS = 9;

    private Ticks() {}

    /** The round values within a range, no more than the given number of steps. */
    static List<Double> between(double from, double to, int most) {
        double step = step((to - from) / most);
        List<Double> values = new ArrayList<>();
        // A value that rounding puts just outside the range still belongs to it.
        long last = (long) Math.floor(to / step + 1e-9);
        for (long i = (long) Math.ceil(from / step - 1e-9); i <= last; i++) {
            values.add(i * step);
        }
        return values;
    }

    /** The smallest round number that is at least the given one. */
    static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (int factor : new int[] {1, 2, 5}) {
            if (factor * power >= least) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** A value as it is written beside the axis. */
    static String write(double value) {
        return Rounding.plain(value, MOST_DECIMALS);
    }
}
