package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where parts of a body touch along an edge or at a corner, they do so without sharing it. */
class MeshBuilderTest {
    private static final double EXACT = 1e-12;
    /** Numbers of corners and orders of triangles that are tried. */
    private static final int ORDERS = 40;

    private static Cells cells(int... coordinates) {
        Set<List<Integer>> wood = new HashSet<>();
        for (int i = 0; i < coordinates.length; i += 3) {
            wood.add(List.of(coordinates[i], coordinates[i + 1], coordinates[i + 2]));
        }
        return new Cells(wood);
    }

    private static void assertParts(Mesh mesh, int vertices, int triangles, double... volumes) {
        assertTrue(mesh.closed());
        assertArrayEquals(volumes, MeshParts.volumes(mesh), EXACT);
        assertEquals(vertices, mesh.vertices().size());
        assertEquals(triangles, mesh.triangles().size());
    }

    @Test
    @DisplayName("hand-worked: a cube has 8 corners and 12 triangles, and so have two glued together but for a face")
    void nothingIsAddedWhereNothingTouches() {
        for (int order = 0; order < ORDERS; order++) {
            assertParts(cells(0, 0, 0).mesh(order), 8, 12, 1);
            assertParts(cells(0, 0, 0, 1, 0, 0).mesh(order), 12, 20, 2);
        }
    }

    @Test
    void cubesThatTouchAtACornerAreApart() {
        for (int order = 0; order < ORDERS; order++) {
            assertParts(cells(0, 0, 0, 1, 1, 1).mesh(order), 16, 24, 1, 1);
        }
    }

    @Test
    @DisplayName("hand-worked: the middle of the common edge is a corner of each cube and halves two of its triangles")
    void cubesThatTouchAlongAnEdgeAreApart() {
        for (int order = 0; order < ORDERS; order++) {
            Mesh mesh = cells(0, 0, 0, 1, 1, 0).mesh(order);
            assertParts(mesh, 18, 28, 1, 1);
            long middles = mesh.vertices().stream()
                    .filter(Vector3D.of(1, 1, 0.5)::equals)
                    .count();
            assertEquals(2, middles);
        }
    }

    @Test
    @DisplayName("hand-worked: two of four cubes between two slabs of four touch, but make one body with a tunnel")
    void aBodyThatTouchesItselfAlongAnEdgeIsClosed() {
        Cells body = cells(
                0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1, 0, // below
                0, 0, 1, 1, 1, 1, // between
                0, 0, 2, 1, 0, 2, 0, 1, 2, 1, 1, 2); // above
        // 9 corners on each of 4 levels, all of them on the surface, and two middles.
        for (int order = 0; order < ORDERS; order++) {
            Mesh mesh = body.mesh(order);
            assertParts(mesh, 36 + 2, 2 * body.faces() + 4, 10);
            assertTrue(mesh.closed());
        }
    }

    @Test
    @DisplayName("hand-worked: every other cube of eight; each touches three others along an edge")
    void fourCubesOfEightAreApart() {
        for (int order = 0; order < ORDERS; order++) {
            assertParts(cells(0, 0, 0, 1, 1, 0, 1, 0, 1, 0, 1, 1).mesh(order), 4 * (8 + 3), 4 * (12 + 6), 1, 1, 1, 1);
        }
    }

    @Property(tries = 200, seed = "20260304")
    void anyBodyOfCubesIsClosedAndHasACornerForEachPassOfItsSurface(
            @ForAll @IntRange(min = 1, max = (1 << 18) - 1) int chosen, @ForAll @IntRange(max = 1000) int order) {
        Set<List<Integer>> wood = new HashSet<>();
        for (int i = 0; i < 18; i++) {
            if ((chosen >> i & 1) == 1) {
                wood.add(List.of(i % 3, i / 3 % 3, i / 9));
            }
        }
        Cells cells = new Cells(wood);
        Mesh mesh = cells.mesh(order);
        assertTrue(mesh.closed());
        assertEquals(wood.size(), mesh.volume(), EXACT * 18);
        assertEquals(cells.faces(), mesh.area(), EXACT * 100);
        int passes = cells.lattice().stream().mapToInt(cells::passes).sum();
        assertEquals(passes + 2 * cells.touchingEdges(), mesh.vertices().size());
        assertEquals(
                2 * cells.faces() + 4 * cells.touchingEdges(), mesh.triangles().size());
    }

    /** Wedges around an edge in any direction: tetrahedra with two corners on it and one at each end of their angle. */
    private static Mesh wedges(double[][] degrees, long seed) {
        Random random = new Random(seed);
        Vector3D foot = Vector3D.of(1, -2, 0.5);
        Vector3D along = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                .withNorm(2);
        Vector3D right = along.orthogonal();
        Vector3D up = along.normalize().cross(right);
        List<Vector3D> points = new ArrayList<>(List.of(foot, foot.add(along)));
        for (double[] wedge : degrees) {
            for (double angle : wedge) {
                double radians = Math.toRadians(angle);
                points.add(foot.add(right.multiply(Math.cos(radians))).add(up.multiply(Math.sin(radians))));
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, random);
        Corners corners = new Corners(1e-7);
        int[] number = new int[points.size()];
        for (int place : order) {
            number[place] = corners.add(points.get(place));
        }
        List<Triangle> triangles = new ArrayList<>();
        for (int i = 0; i < degrees.length; i++) {
            addTetrahedron(triangles, number[0], number[1], number[2 + 2 * i], number[3 + 2 * i]);
        }
        Collections.shuffle(triangles, random);
        return new MeshBuilder(corners, triangles).build();
    }

    @ParameterizedTest
    @CsvSource({"0, 50, 50.5, 130, 200, 201", "10, 150, 170, 171, 250, 300", "300, 420, 80, 120, 121, 299"})
    @DisplayName("closed form: a wedge of one by one by two at an angle has the volume sin(angle) / 3")
    void wedgesAroundAnEdgeAreApart(double a, double b, double c, double d, double e, double f) {
        double[] volumes = {
            Math.sin(Math.toRadians(b - a)) / 3,
            Math.sin(Math.toRadians(d - c)) / 3,
            Math.sin(Math.toRadians(f - e)) / 3
        };
        Arrays.sort(volumes);
        for (int order = 0; order < ORDERS; order++) {
            // Four corners and the middle for each; two of its four triangles are halved.
            assertParts(wedges(new double[][] {{a, b}, {c, d}, {e, f}}, order), 15, 18, volumes);
            assertParts(wedges(new double[][] {{a, b}}, order), 4, 4, Math.sin(Math.toRadians(b - a)) / 3);
        }
    }

    @Test
    @DisplayName("hand-worked: a triangle with all three edges touching others is cut into six, whose area stays")
    void aTetrahedronOnThreeOthersHasAMiddleOnEachEdge() {
        // The faces of the first tetrahedron are left; the others hang at its edges 0-1, 1-2 and 2-0, outside it.
        Corners corners = new Corners(1e-7);
        int[] base = {corners.add(Vector3D.ZERO), corners.add(Vector3D.of(6, 0, 0)), corners.add(Vector3D.of(0, 6, 0))};
        int top = corners.add(Vector3D.of(1, 1, 3));
        List<Triangle> triangles = new ArrayList<>();
        addTetrahedron(triangles, base[0], base[1], base[2], top);
        Vector3D[][] outside = {
            {Vector3D.of(2, -2, -1), Vector3D.of(2, -1, -3)},
            {Vector3D.of(5, 5, -1), Vector3D.of(4, 4, -3)},
            {Vector3D.of(-2, 2, -1), Vector3D.of(-1, 2, -3)}
        };
        double[] volumes = new double[4];
        volumes[3] = 18;
        for (int i = 0; i < 3; i++) {
            int from = base[i];
            int to = base[(i + 1) % 3];
            int third = corners.add(outside[i][0]);
            int fourth = corners.add(outside[i][1]);
            Vector3D p = corners.at(from);
            double sixfold =
                    corners.at(to).subtract(p).dot(outside[i][0].subtract(p).cross(outside[i][1].subtract(p)));
            addTetrahedron(triangles, from, to, sixfold > 0 ? third : fourth, sixfold > 0 ? fourth : third);
            volumes[i] = Math.abs(sixfold) / 6;
        }
        Arrays.sort(volumes);
        assertParts(new MeshBuilder(corners, triangles).build(), 4 * 4 + 6, 4 * 4 + 3 * 4, volumes);
    }

    private static void addTetrahedron(List<Triangle> triangles, int a, int b, int c, int d) {
        triangles.add(new Triangle(a, c, b));
        triangles.add(new Triangle(a, b, d));
        triangles.add(new Triangle(b, c, d));
        triangles.add(new Triangle(c, a, d));
    }
}
