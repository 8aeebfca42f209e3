package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrismTest {
    private static final double EXACT = 1e-9;

    @ParameterizedTest
    @CsvSource({"12, 30, 0, -2, 8", "17, 30, 10, 1, 5", "100, 5, 4.5, -7, -6"})
    @DisplayName("closed form: a regular polygon has n / 2 R^2 sin(2 pi / n), and n sides of 2 R sin(pi / n)")
    void volumeAndAreaOfAPrism(int sides, double radius, double hole, double bottom, double top) {
        Mesh prism = Prism.of(sides, radius, hole, bottom, top);
        double end = sides / 2.0 * (radius * radius - hole * hole) * Math.sin(2 * Math.PI / sides);
        double around = sides * 2 * (radius + hole) * Math.sin(Math.PI / sides);
        assertTrue(prism.closed());
        assertEquals(end * (top - bottom), prism.volume(), EXACT * prism.volume());
        assertEquals(2 * end + around * (top - bottom), prism.area(), EXACT * prism.area());
        assertEquals(hole > 0 ? 4 * sides : 2 * sides + 2, prism.vertices().size());
        // A side faces the negative second axis: its corners are the lowest and equally low.
        double lowest =
                prism.vertices().stream().mapToDouble(Vector3D::getY).min().orElseThrow();
        assertEquals(-radius * Math.cos(Math.PI / sides), lowest, EXACT);
    }

    @ParameterizedTest
    @CsvSource({"50, 0.1", "50, 0.01", "3, 0.02", "1000, 0.5"})
    void sidesAreAsFewAsTheDeviationAllows(double radius, double deviation) {
        int sides = Prism.sides(radius, deviation);
        assertTrue(radius * (1 - Math.cos(Math.PI / sides)) <= deviation + EXACT);
        assertTrue(radius * (1 - Math.cos(Math.PI / (sides - 1))) > deviation);
    }

    @Test
    void sidesAreTwelveToTwentyThousand() {
        assertEquals(12, Prism.sides(1, 5));
        assertEquals(20_000, Prism.sides(1000, 1e-9));
    }

    @Test
    void aMeshWithoutOneOfItsTrianglesIsOpen() {
        Mesh prism = Prism.of(12, 30, 10, 0, 5);
        for (int i = 0; i < prism.triangles().size(); i += 7) {
            List<Triangle> less = new ArrayList<>(prism.triangles());
            Triangle out = less.remove(i);
            assertFalse(new Mesh(prism.vertices(), less).closed());
            less.add(new Triangle(out.corner(1), out.corner(0), out.corner(2)));
            assertFalse(new Mesh(prism.vertices(), less).closed());
        }
    }

    @Test
    void aPlaneCutsASquareInItsSquare() {
        Side side = Side.of(Vector3D.of(0, 3, 4), 10);
        assertEquals(2, side.distance(), EXACT);
        List<Vector3D> square = side.square(5);
        Vector3D across = Vector3D.ZERO;
        for (int i = 0; i < 4; i++) {
            Vector3D corner = square.get(i);
            assertEquals(0, side.above(corner), EXACT);
            assertEquals(5 * Math.sqrt(2), corner.distance(side.normal().multiply(2)), EXACT);
            assertEquals(10, corner.distance(square.get((i + 1) % 4)), EXACT);
            across = across.add(corner.cross(square.get((i + 1) % 4)));
        }
        // Counter-clockwise from outside: twice the area along the normal.
        assertEquals(200, across.dot(side.normal()), EXACT);
    }

    @Test
    void planesAreOneIfTheyFaceTheSameWayAtTheSameDistance() {
        Side side = Side.of(Vector3D.of(0, 3, 4), 10);
        assertTrue(side.isSame(Side.of(Vector3D.of(0, 6, 8), 20)));
        assertFalse(side.isSame(Side.of(Vector3D.of(0, 3, 4), -10)));
        assertFalse(side.isSame(Side.of(Vector3D.of(0, 3, 4), 10.001)));
        assertFalse(side.isSame(Side.of(Vector3D.of(0, 4, 3), 10)));
        assertFalse(side.isSame(side.reversed()));
    }

    @Test
    @DisplayName("hand calculation: the normal of the plane 2 x + 2 y + z = 2 is (2, 2, 1) / 3")
    void aNormalIsOutwardsAndOfLengthOne() {
        List<Vector3D> corners = List.of(Vector3D.of(1, 0, 0), Vector3D.of(0, 1, 0), Vector3D.of(0, 0, 2));
        Mesh mesh = new Mesh(corners, List.of());
        Vector3D normal = Vector3D.of(2.0 / 3, 2.0 / 3, 1.0 / 3);
        assertEquals(0, normal.distance(mesh.normal(new Triangle(0, 1, 2))), EXACT);
        assertEquals(0, normal.distance(mesh.normal(new Triangle(2, 1, 0)).negate()), EXACT);
        assertEquals(Vector3D.ZERO, mesh.normal(new Triangle(0, 1, 1)));
    }

    @Test
    @DisplayName("hand calculation: a square of 2 x 2 cut at x <= 0.5 keeps 3 of its 4")
    void aPlaneLeavesItsInnerSide() {
        Side plane = Side.of(Vector3D.of(2, 0, 0), 1);
        List<Vector3D> square =
                List.of(Vector3D.of(-1, -1, 7), Vector3D.of(1, -1, 7), Vector3D.of(1, 1, 7), Vector3D.of(-1, 1, 7));
        assertEquals(
                List.of(Vector3D.of(-1, -1, 7), Vector3D.of(0.5, -1, 7), Vector3D.of(0.5, 1, 7), Vector3D.of(-1, 1, 7)),
                plane.cut(square));
        assertEquals(
                List.of(Vector3D.of(0.5, -1, 7), Vector3D.of(1, -1, 7), Vector3D.of(1, 1, 7), Vector3D.of(0.5, 1, 7)),
                plane.reversed().cut(square));
        // Through two corners and no side: nothing is added to the corners.
        Side along = Side.of(Vector3D.of(1, 0, 0), 1);
        assertEquals(square, along.cut(square));
        assertEquals(List.of(), along.reversed().cut(square));
        Side diagonal = Side.of(Vector3D.of(1, -1, 0), 0);
        assertEquals(List.of(square.get(0), square.get(2), square.get(3)), diagonal.cut(square));
    }

    @Test
    void pointsWithinTheToleranceAreOneAlsoAcrossCells() {
        Corners corners = new Corners(0.5);
        int first = corners.of(Vector3D.of(0.49, -0.01, 0.49));
        assertEquals(first, corners.of(Vector3D.of(0.51, 0.01, 0.51)));
        assertEquals(first, corners.of(Vector3D.of(0.98, -0.01, 0.49)));
        assertEquals(1, corners.of(Vector3D.of(1.01, -0.01, 0.49)));
        assertEquals(2, corners.add(Vector3D.of(0.49, -0.01, 0.49)));
        assertEquals(3, corners.size());
    }

    @Test
    void pointsAsFarApartAsTheToleranceAreOneAlsoWhereItIsLarge() {
        Corners corners = new Corners(4);
        int first = corners.of(Vector3D.of(1, 2, 3));
        assertEquals(first, corners.of(Vector3D.of(5, 2, 3)));
        assertEquals(first, corners.of(Vector3D.of(1, -1, 5)));
        assertEquals(1, corners.of(Vector3D.of(1, 2, 7.125)));
    }
}
