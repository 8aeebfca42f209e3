package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** How far a triangle with its corners on a sphere lies below it. */
class PatchDeviationTest {
    private static final double RADIUS = 7;
    private static final double EXACT = 1e-12;

    private static double deviation(Vector3D a, Vector3D b, Vector3D c) {
        Corners corners = new Corners(1e-7);
        Triangle triangle = new Triangle(
                corners.add(a.withNorm(RADIUS)), corners.add(b.withNorm(RADIUS)), corners.add(c.withNorm(RADIUS)));
        return new PatchMesher(corners, RADIUS, new Fineness(1)).deviation(triangle);
    }

    /** The same by looking at many points of the triangle. */
    private static double sampled(Vector3D a, Vector3D b, Vector3D c, int parts) {
        double nearest = RADIUS;
        for (int i = 0; i <= parts; i++) {
            for (int j = 0; i + j <= parts; j++) {
                Vector3D point = a.withNorm(RADIUS)
                        .multiply(i)
                        .add(b.withNorm(RADIUS).multiply(j))
                        .add(c.withNorm(RADIUS).multiply(parts - i - j));
                nearest = Math.min(nearest, point.norm() / parts);
            }
        }
        return RADIUS - nearest;
    }

    @Test
    @DisplayName("hand calculation: the plane x + y + z = 7 has the distance 7 / sqrt(3)")
    void anEquilateralTriangleIsDeepestInItsMiddle() {
        assertEquals(
                RADIUS - RADIUS / Math.sqrt(3),
                deviation(Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, Vector3D.Unit.PLUS_Z),
                EXACT);
    }

    @Test
    @DisplayName("hand calculation: on the circle of radius 5.6 at height 4.2 a diameter's middle is 2.8 deep")
    void aRightTriangleIsDeepestUnderItsLongestEdge() {
        Vector3D left = Vector3D.of(-5.6, 0, 4.2);
        Vector3D right = Vector3D.of(5.6, 0, 4.2);
        assertEquals(2.8, deviation(left, right, Vector3D.of(0, 5.6, 4.2)), EXACT);
        assertEquals(2.8, deviation(right, Vector3D.of(3.36, 4.48, 4.2), left), EXACT);
    }

    @Test
    @DisplayName(
            "hand calculation: corners at 0, 60 and 120 degrees of the equator; the middle of 0 to 120 is half out")
    void anObtuseTriangleIsDeepestUnderItsLongestEdge() {
        Vector3D a = Patch.direction(Math.PI / 2, 0);
        Vector3D b = Patch.direction(Math.PI / 2 - 0.01, Math.PI / 3);
        Vector3D c = Patch.direction(Math.PI / 2, 2 * Math.PI / 3);
        assertEquals(3.5, deviation(a, b, c), EXACT);
        assertEquals(3.5, deviation(b, c, a), EXACT);
        assertEquals(3.5, deviation(c, a, b), EXACT);
    }

    @Property(tries = 200, seed = "20260303")
    void noPointOfATriangleLiesDeeper(
            @ForAll @DoubleRange(min = 0.05, max = 1) double tiltA,
            @ForAll @DoubleRange(min = 0.05, max = 1) double tiltB,
            @ForAll @DoubleRange(min = 0.05, max = 1) double tiltC,
            @ForAll @DoubleRange(min = 0.2, max = 3) double turnB,
            @ForAll @DoubleRange(min = 0.1, max = 3) double turnC) {
        Vector3D a = Patch.direction(tiltA, 0);
        Vector3D b = Patch.direction(tiltB, turnB);
        Vector3D c = Patch.direction(tiltC, turnB + turnC);
        int parts = 200;
        // The nearest of the points is within 1 / 200 of an edge of 14, where the depth changes by the square.
        double coarseness = Math.pow(2 * RADIUS / parts, 2) / 4;
        double found = sampled(a, b, c, parts);
        assertEquals(found + coarseness / 2, deviation(a, b, c), coarseness / 2 + EXACT);
    }
}
