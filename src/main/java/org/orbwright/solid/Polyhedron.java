package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Bare corners and faces of a convex solid around the origin, with the steps that lead from one to another.
 *
 * @param vertices the corners
 * @param faces for each face its corners by number, counter-clockwise seen from outside
 */
record Polyhedron(List<Vector3D> vertices, List<List<Integer>> faces) {
    /** Corners of one face lie in its plane to 1e-15 of the solid's size, those of others at least 0.05 below it. */
    private static final double IN_PLANE = 1e-6;
    /** Edges of a uniform solid agree to 1e-15; the next longer distance of two corners is at least a tenth longer. */
    private static final double SHORTEST = 1 + 1e-6;

    /** The convex hull of the corners of a uniform solid, in which all edges are as long as the shortest distance. */
    static Polyhedron uniform(List<Vector3D> vertices) {
        double edge = shortestDistance(vertices);
        List<List<Integer>> faces = new ArrayList<>();
        Set<Set<Integer>> seen = new HashSet<>();
        for (int i = 0; i < vertices.size(); i++) {
            List<Integer> neighbours = neighbours(vertices, i, edge);
            for (int a : neighbours) {
                for (int b : neighbours) {
                    List<Integer> face = a < b ? faceThrough(vertices, i, a, b) : List.of();
                    if (!face.isEmpty() && seen.add(Set.copyOf(face))) {
                        faces.add(face);
                    }
                }
            }
        }
        return new Polyhedron(vertices, faces).scaled(1 / edge);
    }

    /** The polar reciprocal in the midsphere, scaled to a shortest edge of one. */
    Polyhedron dual(double midradius) {
        List<Vector3D> corners = new ArrayList<>();
        for (List<Integer> face : faces) {
            Vector3D normal = normal(face);
            double distance = normal.dot(vertices.get(face.get(0)));
            corners.add(normal.multiply(midradius * midradius / distance));
        }
        List<List<Integer>> around = new ArrayList<>();
        for (int i = 0; i < vertices.size(); i++) {
            int corner = i;
            List<Integer> meeting = IntStream.range(0, faces.size())
                    .filter(f -> faces.get(f).contains(corner))
                    .boxed()
                    .toList();
            around.add(counterClockwise(corners, meeting, vertices.get(i).normalize()));
        }
        Polyhedron dual = new Polyhedron(corners, around);
        return dual.scaled(1 / dual.shortestEdge());
    }

    /** Outward unit normal of a face, from the two farthest parts of its outline for accuracy. */
    Vector3D normal(List<Integer> face) {
        Vector3D first = vertices.get(face.get(0));
        Vector3D sum = Vector3D.ZERO;
        for (int i = 1; i + 1 < face.size(); i++) {
            Vector3D a = vertices.get(face.get(i)).subtract(first);
            Vector3D b = vertices.get(face.get(i + 1)).subtract(first);
            sum = sum.add(a.cross(b));
        }
        return sum.normalize();
    }

    private double shortestEdge() {
        double shortest = Double.POSITIVE_INFINITY;
        for (List<Integer> face : faces) {
            for (int i = 0; i < face.size(); i++) {
                Vector3D next = vertices.get(face.get((i + 1) % face.size()));
                shortest = Math.min(shortest, vertices.get(face.get(i)).distance(next));
            }
        }
        return shortest;
    }

    private Polyhedron scaled(double factor) {
        return new Polyhedron(vertices.stream().map(v -> v.multiply(factor)).toList(), faces);
    }

    private static double shortestDistance(List<Vector3D> vertices) {
        return vertices.stream()
                .skip(1)
                .mapToDouble(v -> v.distance(vertices.get(0)))
                .min()
                .orElseThrow();
    }

    private static List<Integer> neighbours(List<Vector3D> vertices, int of, double edge) {
        return IntStream.range(0, vertices.size())
                .filter(j -> j != of && vertices.get(j).distance(vertices.get(of)) < edge * SHORTEST)
                .boxed()
                .toList();
    }

    /** The face in the plane of three corners, or nothing if other corners lie on both sides of that plane. */
    private static List<Integer> faceThrough(List<Vector3D> vertices, int i, int j, int k) {
        Vector3D corner = vertices.get(i);
        Vector3D across = vertices.get(j).subtract(corner).cross(vertices.get(k).subtract(corner));
        Vector3D normal = across.dot(corner) < 0 ? across.negate().normalize() : across.normalize();
        double distance = normal.dot(corner);
        double tolerance = IN_PLANE * corner.norm();
        List<Integer> inPlane = new ArrayList<>();
        for (int v = 0; v < vertices.size(); v++) {
            double above = normal.dot(vertices.get(v)) - distance;
            if (above > tolerance) {
                return List.of();
            }
            if (above > -tolerance) {
                inPlane.add(v);
            }
        }
        return counterClockwise(vertices, inPlane, normal);
    }

    private static List<Integer> counterClockwise(List<Vector3D> vertices, List<Integer> face, Vector3D normal) {
        Vector3D right = vertices.get(face.get(0)).reject(normal).normalize();
        Vector3D up = normal.cross(right);
        return face.stream()
                .sorted(Comparator.comparingDouble(
                        v -> turn(Math.atan2(up.dot(vertices.get(v)), right.dot(vertices.get(v))))))
                .toList();
    }

    /** An angle in [0, 2 pi), the start of the turn blurred so that the first corner stays first. */
    private static double turn(double angle) {
        return angle < -IN_PLANE ? angle + 2 * Math.PI : angle;
    }
}
