package org.orbwright.body;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A closed surface of triangles around a body, in millimetres. Each edge lies between two triangles, which run along it
 * in opposite directions.
 */
public record Mesh(List<Vector3D> vertices, List<Triangle> triangles) {

    /** Copies the lists. */
    public Mesh {
        vertices = List.copyOf(vertices);
        triangles = List.copyOf(triangles);
    }

    /** A corner of a triangle. */
    public Vector3D corner(Triangle triangle, int place) {
        return vertices.get(triangle.corner(place));
    }

    /** Volume inside, by the divergence theorem. */
    public double volume() {
        double six = 0;
        for (Triangle t : triangles) {
            six += corner(t, 0).dot(corner(t, 1).cross(corner(t, 2)));
        }
        return six / 6;
    }

    /** Area of the surface. */
    public double area() {
        double twice = 0;
        for (Triangle t : triangles) {
            twice += across(t).norm();
        }
        return twice / 2;
    }

    /** Unit normal of a triangle, outwards; zero for one without area. */
    public Vector3D normal(Triangle triangle) {
        Vector3D across = across(triangle);
        double norm = across.norm();
        return norm == 0 ? Vector3D.ZERO : across.multiply(1 / norm);
    }

    private Vector3D across(Triangle triangle) {
        Vector3D first = corner(triangle, 0);
        return corner(triangle, 1).subtract(first).cross(corner(triangle, 2).subtract(first));
    }

    /** Whether every edge has exactly one triangle on each side. */
    public boolean closed() {
        long[] edges = new long[3 * triangles.size()];
        for (int t = 0; t < triangles.size(); t++) {
            for (int i = 0; i < 3; i++) {
                edges[3 * t + i] =
                        edge(triangles.get(t).corner(i), triangles.get(t).corner(i + 1));
            }
        }
        Arrays.sort(edges);
        for (int i = 0; i < edges.length; i++) {
            boolean twice = i > 0 && edges[i] == edges[i - 1];
            long opposite = edge((int) edges[i], (int) (edges[i] >> 32));
            if (twice || Arrays.binarySearch(edges, opposite) < 0) {
                return false;
            }
        }
        return true;
    }

    /** A directed edge as one number. */
    static long edge(int from, int to) {
        return (long) from << 32 | to;
    }

    /** The same mesh in another place. */
    Mesh moved(Vector3D by) {
        return new Mesh(vertices.stream().map(by::add).toList(), triangles);
    }
}
