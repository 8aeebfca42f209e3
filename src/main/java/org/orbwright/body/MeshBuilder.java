package org.orbwright.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Makes a mesh of triangles that close. Where parts of a body touch along no more than an edge or at a corner, each
 * part gets an edge or a corner of its own, so that every edge lies between two triangles.
 */
final class MeshBuilder {
    private final Corners corners;
    private List<Triangle> triangles;
    /** For each triangle's corner the one that stands for all corners that are one. */
    private int[] same;

    MeshBuilder(Corners corners, List<Triangle> triangles) {
        this.corners = corners;
        this.triangles = triangles;
    }

    Mesh build() {
        halveTouchingEdges();
        same = new int[3 * triangles.size()];
        for (int i = 0; i < same.length; i++) {
            same[i] = i;
        }
        halves().values().forEach(this::join);
        Map<Integer, Integer> numbers = new HashMap<>();
        List<Vector3D> vertices = new ArrayList<>();
        List<Triangle> numbered = new ArrayList<>();
        for (int t = 0; t < triangles.size(); t++) {
            int[] places = new int[3];
            for (int i = 0; i < 3; i++) {
                int corner = triangles.get(t).corner(i);
                places[i] = numbers.computeIfAbsent(find(3 * t + i), key -> {
                    vertices.add(corners.at(corner));
                    return vertices.size() - 1;
                });
            }
            numbered.add(new Triangle(places[0], places[1], places[2]));
        }
        return new Mesh(vertices, numbered);
    }

    /** One side of an edge, from a place of a triangle; forwards runs from the smaller number to the larger. */
    private record Half(int triangle, int place, boolean forwards) {}

    private Map<Long, List<Half>> halves() {
        Map<Long, List<Half>> halves = new HashMap<>();
        for (int t = 0; t < triangles.size(); t++) {
            for (int i = 0; i < 3; i++) {
                int from = triangles.get(t).corner(i);
                int to = triangles.get(t).corner(i + 1);
                halves.computeIfAbsent(Mesh.edge(Math.min(from, to), Math.max(from, to)), key -> new ArrayList<>(2))
                        .add(new Half(t, i, from < to));
            }
        }
        return halves;
    }

    /** A point in the middle keeps two edges apart whose ends are the same corners. */
    private void halveTouchingEdges() {
        Map<Long, Integer> middles = new HashMap<>();
        halves().forEach((edge, halves) -> {
            if (halves.size() > 2) {
                Vector3D from = corners.at((int) (edge >> 32));
                Vector3D to = corners.at((int) (long) edge);
                middles.put(edge, corners.add(from.lerp(to, 0.5)));
            }
        });
        if (middles.isEmpty()) {
            return;
        }
        List<Triangle> halved = new ArrayList<>();
        for (Triangle triangle : triangles) {
            halve(triangle, middles, halved);
        }
        triangles = halved;
    }

    private static void halve(Triangle triangle, Map<Long, Integer> middles, List<Triangle> halved) {
        for (int i = 0; i < 3; i++) {
            int from = triangle.corner(i);
            int to = triangle.corner(i + 1);
            int tip = triangle.corner(i + 2);
            Integer middle = middles.get(Mesh.edge(Math.min(from, to), Math.max(from, to)));
            if (middle != null) {
                halve(new Triangle(from, middle, tip), middles, halved);
                halve(new Triangle(middle, to, tip), middles, halved);
                return;
            }
        }
        halved.add(triangle);
    }

    /** Joins the triangles of an edge two by two, so that each pair has the wood between it. */
    private void join(List<Half> halves) {
        List<Half> around = new ArrayList<>(halves);
        if (halves.size() > 2) {
            around.sort(Comparator.comparingDouble(this::angle));
        }
        // Seen along the edge, wood lies beyond a triangle that runs backwards and before one that runs forwards.
        List<Half> open = new ArrayList<>();
        List<Half> left = new ArrayList<>();
        for (Half half : around) {
            if (!half.forwards) {
                open.add(half);
            } else if (open.isEmpty()) {
                left.add(half);
            } else {
                join(open.remove(open.size() - 1), half);
            }
        }
        for (Half half : left) {
            join(open.remove(open.size() - 1), half);
        }
    }

    private void join(Half backwards, Half forwards) {
        union(3 * backwards.triangle + backwards.place, 3 * forwards.triangle + (forwards.place + 1) % 3);
        union(3 * backwards.triangle + (backwards.place + 1) % 3, 3 * forwards.triangle + forwards.place);
    }

    /** Direction of a triangle around the edge, from the smaller corner towards the larger. */
    private double angle(Half half) {
        Triangle triangle = triangles.get(half.triangle);
        Vector3D from = corners.at(triangle.corner(half.forwards ? half.place : half.place + 1));
        Vector3D to = corners.at(triangle.corner(half.forwards ? half.place + 1 : half.place));
        Vector3D along = to.subtract(from).normalize();
        Vector3D right = along.orthogonal();
        Vector3D tip = corners.at(triangle.corner(half.place + 2)).subtract(from);
        return Math.atan2(along.cross(right).dot(tip), right.dot(tip));
    }

    private int find(int corner) {
        int root = corner;
        while (same[root] != root) {
            root = same[root];
        }
        int at = corner;
        while (same[at] != root) {
            int next = same[at];
            same[at] = root;
            at = next;
        }
        return root;
    }

    private void union(int a, int b) {
        same[find(a)] = find(b);
    }
}
