package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.Supplier;

/** Comparison of areas at the accuracy that the closed forms promise. */
final class Agreement {
    /** Of the area itself, or of the whole segment where the area is tiny. */
    static final double ACCURACY = 1e-12;
    /** Below this share of the whole segment an area is tiny. */
    private static final double TINY = 1e-6;

    private Agreement() {}

    /** Equal to 1e-12 of the area, or of the whole where the area is tiny. */
    static void assertArea(double expected, double actual, double whole, String what) {
        double scale = expected > TINY * whole ? expected : whole;
        assertEquals(expected, actual, ACCURACY * scale, what);
    }

    /** Equal to 1e-12 of the whole, on the surface and on the plan. */
    static void assertAreas(SurfaceOracle.Measured expected, Area actual, Area whole, Supplier<String> what) {
        double tolerance = ACCURACY * whole.visible();
        assertEquals(expected.visible(), actual.visible(), tolerance, () -> "visible, " + what.get());
        assertEquals(expected.flat(), actual.flat(), tolerance, () -> "flat, " + what.get());
        assertEquals(expected.plan(), actual.plan(), tolerance, () -> "plan, " + what.get());
    }
}
