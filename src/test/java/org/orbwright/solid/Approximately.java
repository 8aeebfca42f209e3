package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Comparison by relative difference, for numbers of every size. */
final class Approximately {
    /** What the solids promise: lengths, areas and angles to 1e-13 of themselves. */
    static final double SOLID_ACCURACY = 1e-13;

    private Approximately() {}

    static void assertClose(double expected, double actual, String what) {
        assertEquals(expected, actual, SOLID_ACCURACY * Math.max(1, Math.abs(expected)), what);
    }
}
