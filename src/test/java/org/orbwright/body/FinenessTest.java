package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinenessTest {
    private static final double EXACT = 1e-12;

    @Test
    @DisplayName("hand calculation: 1 below the top of a ball of 5 is a circle of 3, whose equilateral has 3 sqrt(3)")
    void anEquilateralTriangleOfTheLongestEdgesIsAsDeepAsAllowed() {
        assertEquals(3 * Math.sqrt(3), new Fineness(1).longestEdge(5), EXACT);
        assertEquals(8 * Math.sqrt(3), new Fineness(4).longestEdge(10), EXACT);
        // No deeper than half the radius: a circle of 10 sqrt(3) / 2.
        assertEquals(15, new Fineness(5).longestEdge(10), EXACT);
        assertEquals(15, new Fineness(7).longestEdge(10), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"10, 10, 0.01", "10, 10, 0.3", "4, 5, 0.02", "1, 50, 0.004", "1, 50, 0.02", "30, 1000, 0.5"})
    void aStepIsAsLongAsDepthAndLongestEdgeAllow(double circle, double sphere, double deviation) {
        Fineness fineness = new Fineness(deviation);
        double step = fineness.step(circle, sphere);
        double depth = circle * (1 - Math.cos(step / 2));
        double chord = 2 * circle * Math.sin(step / 2);
        double longest = Math.sqrt(3 * deviation * (2 * sphere - deviation));
        assertTrue(depth <= deviation * (1 + 1e-9));
        assertTrue(chord <= longest * (1 + 1e-9));
        double reached = Math.max(depth / deviation, chord / longest);
        assertEquals(1, reached, 1e-9, "neither the depth nor the edge is as long as it may be");
    }

    @Test
    void aStepIsNoMoreThan45Degrees() {
        assertEquals(Math.PI / 4, new Fineness(1).step(2, 2), EXACT);
        assertEquals(Math.PI / 4, new Fineness(1).step(0.5, 50), EXACT);
        assertEquals(Math.PI / 4, new Fineness(100).step(20, 20), EXACT);
    }
}
