package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which corners of others lie on an edge. */
class EdgePointsTest {
    /** A triangle with an edge of 10 along the first axis, from corner 0 to corner 1, and one more corner. */
    private static List<Integer> withCorner(Vector3D other) {
        Corners corners = new Corners(0.5);
        List<Integer> triangle = List.of(
                corners.add(Vector3D.ZERO), corners.add(Vector3D.of(10, 0, 0)), corners.add(Vector3D.of(3, 8, 0)));
        corners.add(other);
        return new EdgePoints(corners).complete(triangle);
    }

    @ParameterizedTest
    @DisplayName("hand-worked, tolerance 0.5: up to 0.5 beside the edge, and more than 0.5 from its ends")
    @CsvSource({
        "5, 0, true", // on it
        "5, -0.5, true", // as far beside it as may be
        "5, -0.5625, false", // beyond
        "0.5, -0.25, false", // as near to the first end as to be there
        "0.5625, -0.25, true",
        "9.5, -0.25, false", // as near to the second end
        "9.4375, -0.25, true",
        "9.75, -0.4375, false",
        "10.25, -0.4375, false",
        "-0.25, -0.4375, false"
    })
    void aCornerIsOnAnEdgeIfItIsBetweenTheEndsAndNotBeside(double along, double beside, boolean on) {
        List<Integer> expected = on ? List.of(0, 3, 1, 2) : List.of(0, 1, 2);
        assertEquals(expected, withCorner(Vector3D.of(along, beside, 0)));
        assertEquals(expected, withCorner(Vector3D.of(along, 0, beside)));
    }

    @Test
    void cornersOnAnEdgeFollowOneAnotherInEitherDirection() {
        Corners corners = new Corners(1e-6);
        for (double x : new double[] {0, 9, 6, 2, 8, 4, 7, 3}) {
            corners.add(Vector3D.of(x, 2 * x, -x));
        }
        corners.add(Vector3D.of(0, 0, 5));
        EdgePoints edges = new EdgePoints(corners);
        assertEquals(List.of(0, 3, 7, 5, 2, 6, 4, 1, 8), edges.complete(List.of(0, 1, 8)));
        assertEquals(List.of(1, 4, 6, 2, 5, 7, 3, 0, 8), edges.complete(List.of(1, 0, 8)));
    }
}
