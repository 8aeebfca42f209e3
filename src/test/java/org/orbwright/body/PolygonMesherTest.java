package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Flat convex polygons are divided so that the thinnest triangle is as thick as it can be. */
class PolygonMesherTest {
    private static final Vector3D UP = Vector3D.Unit.PLUS_Z;

    private final Corners corners = new Corners(1e-7);

    private List<Integer> polygon(double... coordinates) {
        List<Integer> loop = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            loop.add(corners.add(Vector3D.of(coordinates[i], coordinates[i + 1], 7)));
        }
        return loop;
    }

    private List<Integer> regular(int sides) {
        double[] coordinates = new double[2 * sides];
        for (int i = 0; i < sides; i++) {
            coordinates[2 * i] = 5 * Math.cos(2 * Math.PI * i / sides);
            coordinates[2 * i + 1] = 5 * Math.sin(2 * Math.PI * i / sides);
        }
        return polygon(coordinates);
    }

    private double area(List<Triangle> triangles) {
        return triangles.stream()
                .mapToDouble(t -> {
                    Vector3D a = corners.at(t.a());
                    return corners.at(t.b())
                                    .subtract(a)
                                    .cross(corners.at(t.c()).subtract(a))
                                    .getZ()
                            / 2;
                })
                .sum();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 100})
    @DisplayName("hand-worked: of the two diagonals of a kite the one across gives the thicker triangles, at any size")
    void aKiteIsCutAcross(double size) {
        // Along its axis the triangles have the area 5.5 and an edge of 11, 1/22; across they have 1 on 2^2 and 10 on
        // 101.
        List<Integer> kite = polygon(0, -size, size, 0, 0, 10 * size, -size, 0);
        List<Triangle> triangles = PolygonMesher.convex(kite, corners, UP);
        assertEquals(2, triangles.size());
        for (Triangle t : triangles) {
            List<Integer> three = List.of(t.a(), t.b(), t.c());
            assertTrue(three.contains(1) && three.contains(3), () -> three + " is no half of the kite across");
        }
    }

    @Test
    @DisplayName("hand-worked: a corner on a straight edge is the tip of a triangle, none of which is flat")
    void aCornerOnAStraightEdgeIsUsed() {
        List<Triangle> triangles = PolygonMesher.convex(polygon(0, 0, 2, 0, 6, 0, 0, 6), corners, UP);
        assertEquals(2, triangles.size());
        for (Triangle t : triangles) {
            List<Integer> three = List.of(t.a(), t.b(), t.c());
            assertTrue(three.contains(1) && three.contains(3), () -> three + " lies beside the corner on the edge");
        }
        assertEquals(18, area(triangles), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 13, 14})
    void upToFourteenCornersAreEnough(int sides) {
        List<Triangle> triangles = PolygonMesher.convex(regular(sides), corners, UP);
        assertEquals(sides, corners.size());
        assertEquals(sides - 2, triangles.size());
        assertEquals(sides * 12.5 * Math.sin(2 * Math.PI / sides), area(triangles), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 40})
    void moreCornersAreJoinedToOneInTheMiddle(int sides) {
        List<Triangle> triangles = PolygonMesher.convex(regular(sides), corners, UP);
        assertEquals(sides + 1, corners.size());
        assertEquals(0, corners.at(sides).distance(Vector3D.of(0, 0, 7)), 1e-12);
        assertEquals(sides, triangles.size());
        assertEquals(sides * 12.5 * Math.sin(2 * Math.PI / sides), area(triangles), 1e-9);
    }
}
