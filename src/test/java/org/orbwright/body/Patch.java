package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A divided part of a sphere, with what is known of it from outside.
 *
 * @param corners all corners
 * @param radius the sphere's radius
 * @param outline the numbers of the outline's corners
 * @param triangles the triangles
 */
record Patch(Corners corners, double radius, List<Integer> outline, List<Triangle> triangles) {

    /**
     * Divides the patch on the left of an outline, given by directions from the centre. As on a body, the outline has
     * no edge longer than the deviation allows: where it is, corners are added along its great circle.
     */
    static Patch of(double radius, double deviation, List<Vector3D> directions) {
        Corners corners = new Corners(1e-7 * radius);
        Fineness fineness = new Fineness(deviation);
        List<Integer> outline = new ArrayList<>();
        for (int i = 0; i < directions.size(); i++) {
            Vector3D from = directions.get(i).withNorm(radius);
            Vector3D to = directions.get((i + 1) % directions.size()).withNorm(radius);
            double step = 2 * Math.asin(fineness.longestEdge(radius) / 2 / radius);
            int parts = (int) Math.ceil(from.angle(to) / step);
            Vector3D square = to.reject(from).withNorm(radius);
            for (int part = 0; part < parts; part++) {
                double along = from.angle(to) * part / parts;
                outline.add(corners.add(from.multiply(Math.cos(along)).add(square.multiply(Math.sin(along)))));
            }
        }
        PatchMesher mesher = new PatchMesher(corners, radius, fineness);
        return new Patch(corners, radius, outline, mesher.triangles(outline));
    }

    /** A direction by its angle from the third axis and its angle around it. */
    static Vector3D direction(double tilt, double around) {
        return Vector3D.of(Math.sin(tilt) * Math.cos(around), Math.sin(tilt) * Math.sin(around), Math.cos(tilt));
    }

    /** The area between arcs of great circles, by what its angles have too much (Girard; Gauss and Bonnet). */
    double areaWithinOutline() {
        int size = outline.size();
        double excess = (2 - size) * Math.PI;
        for (int i = 0; i < size; i++) {
            Vector3D at = corners.at(outline.get(i)).normalize();
            Vector3D next = corners.at(outline.get((i + 1) % size)).reject(at);
            Vector3D before = corners.at(outline.get((i + size - 1) % size)).reject(at);
            double angle = Math.atan2(at.dot(next.cross(before)), next.dot(before));
            excess += angle < 0 ? angle + 2 * Math.PI : angle;
        }
        return excess * radius * radius;
    }

    /** The area of all triangles, drawn up to the sphere (Van Oosterom and Strackee 1983). */
    double areaOfTriangles() {
        double solidAngles = 0;
        for (Triangle triangle : triangles) {
            Vector3D a = corners.at(triangle.a()).normalize();
            Vector3D b = corners.at(triangle.b()).normalize();
            Vector3D c = corners.at(triangle.c()).normalize();
            solidAngles += 2 * Math.atan2(a.dot(b.cross(c)), 1 + a.dot(b) + b.dot(c) + c.dot(a));
        }
        return solidAngles * radius * radius;
    }

    /** The corner on the left of each directed edge; no edge has two. */
    private Map<List<Integer>, Integer> thirds() {
        Map<List<Integer>, Integer> thirds = new HashMap<>();
        for (Triangle t : triangles) {
            for (int i = 0; i < 3; i++) {
                List<Integer> edge = List.of(t.corner(i), t.corner(i + 1));
                assertFalse(thirds.containsKey(edge), () -> "two triangles on one side of " + edge);
                thirds.put(edge, t.corner(i + 2));
            }
        }
        return thirds;
    }

    /** Checks that the triangles cover the patch once, its outline kept, each counter-clockwise from outside. */
    void assertCoversItsOutline() {
        Map<List<Integer>, Integer> thirds = thirds();
        Set<List<Integer>> rim = new HashSet<>();
        for (int i = 0; i < outline.size(); i++) {
            rim.add(List.of(outline.get(i), outline.get((i + 1) % outline.size())));
        }
        int inner = 0;
        Set<Integer> used = new HashSet<>();
        for (List<Integer> edge : thirds.keySet()) {
            used.add(edge.get(0));
            boolean within = thirds.containsKey(List.of(edge.get(1), edge.get(0)));
            assertEquals(!within, rim.contains(edge), () -> edge + " has a triangle on one side only, or is the rim");
            inner += within ? 1 : 0;
        }
        assertTrue(thirds.keySet().containsAll(rim));
        // Euler: a disc's vertices less its edges and with its faces are 1.
        assertEquals(1, used.size() - (rim.size() + inner / 2) + triangles.size());
        for (Triangle t : triangles) {
            double sixfold = corners.at(t.a()).dot(corners.at(t.b()).cross(corners.at(t.c())));
            assertTrue(sixfold > 0, () -> t + " is turned inwards");
        }
        assertEquals(areaWithinOutline(), areaOfTriangles(), 1e-9 * radius * radius);
    }

    /**
     * Checks that no corner beyond an inner edge lies in the cap that the edge's triangle cuts off (Delaunay), by the
     * angle at which it is seen from the cap's pole.
     */
    void assertFattest() {
        Map<List<Integer>, Integer> thirds = thirds();
        thirds.forEach((edge, third) -> {
            Integer beyond = thirds.get(List.of(edge.get(1), edge.get(0)));
            if (beyond != null) {
                Vector3D a = corners.at(edge.get(0));
                Vector3D pole = corners.at(edge.get(1))
                        .subtract(a)
                        .cross(corners.at(third).subtract(a));
                double rim = pole.angle(a);
                assertTrue(pole.angle(corners.at(beyond)) > rim - 1e-5, () -> beyond + " within the cap of " + edge);
            }
        });
    }

    /** The longest edge that is no part of the outline; 0 for a patch of one triangle. */
    double longestInnerEdge() {
        Map<List<Integer>, Integer> thirds = thirds();
        return thirds.keySet().stream()
                .filter(edge -> thirds.containsKey(List.of(edge.get(1), edge.get(0))))
                .mapToDouble(edge -> corners.at(edge.get(0)).distance(corners.at(edge.get(1))))
                .max()
                .orElse(0);
    }

    /** Whether three corners are one of the triangles. */
    boolean has(int a, int b, int c) {
        return triangles.contains(new Triangle(a, b, c))
                || triangles.contains(new Triangle(b, c, a))
                || triangles.contains(new Triangle(c, a, b));
    }
}
