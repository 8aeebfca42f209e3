package org.orbwright.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Divides a part of a sphere around the origin, given by its outline, to triangles with corners on the sphere. Ears are
 * cut off the outline, the shortest first; then edges are halved, the longest first, until none is too long, and turned
 * where that makes fatter triangles (Delaunay's condition, which on a sphere is that of the convex hull).
 */
final class PatchMesher {
    /** Triangles that are thinner than this share of their longest edge squared have no area, but for rounding. */
    private static final double FLAT = 1e-9;

    private static final int ROUNDS = 3;

    private final Corners corners;
    private final double radius;
    private final double longest;
    private final Map<Long, Integer> thirds = new HashMap<>();

    PatchMesher(Corners corners, double radius, Fineness fineness) {
        this.corners = corners;
        this.radius = radius;
        this.longest = fineness.longestEdge(radius);
    }

    /**
     * Divides the patch on the left of a closed loop, seen from outside. None of the loop's edges may be longer than
     * the fineness allows, as the outline stays: beside an edge of more than twice that length another would be too
     * long for ever.
     */
    List<Triangle> triangles(List<Integer> loop) {
        thirds.clear();
        for (Triangle triangle : ears(new ArrayList<>(loop))) {
            put(triangle.a(), triangle.b(), triangle.c());
        }
        for (int round = 0; round < ROUNDS; round++) {
            turnEdges();
            halveEdges();
        }
        List<Triangle> triangles = new ArrayList<>();
        thirds.forEach((edge, third) -> {
            if (from(edge) < Math.min(to(edge), third)) {
                triangles.add(new Triangle(from(edge), to(edge), third));
            }
        });
        return triangles;
    }

    private static int from(long edge) {
        return (int) (edge >> 32);
    }

    private static int to(long edge) {
        return (int) edge;
    }

    private void put(int a, int b, int c) {
        thirds.put(Mesh.edge(a, b), c);
        thirds.put(Mesh.edge(b, c), a);
        thirds.put(Mesh.edge(c, a), b);
    }

    private void remove(int a, int b, int c) {
        thirds.remove(Mesh.edge(a, b));
        thirds.remove(Mesh.edge(b, c));
        thirds.remove(Mesh.edge(c, a));
    }

    private double length(int a, int b) {
        return corners.at(a).distance(corners.at(b));
    }

    /** Area as seen from the centre by the square of the longest edge; negative where corners run clockwise. */
    private double thickness(int a, int b, int c) {
        Vector3D p = corners.at(a);
        Vector3D q = corners.at(b);
        Vector3D r = corners.at(c);
        double longestSquare = Math.max(p.distanceSq(q), Math.max(q.distanceSq(r), r.distanceSq(p)));
        return orientation(a, b, c) / radius / longestSquare;
    }

    private double orientation(int a, int b, int c) {
        Vector3D p = corners.at(a);
        return p.dot(corners.at(b).subtract(p).cross(corners.at(c).subtract(p)));
    }

    private record Ear(int before, int tip, int after, double length) {}

    private List<Triangle> ears(List<Integer> loop) {
        List<Triangle> triangles = new ArrayList<>();
        while (loop.size() > PolygonMesher.MOST_CORNERS) {
            PriorityQueue<Ear> ears = new PriorityQueue<>(Comparator.comparingDouble(Ear::length));
            for (int i = 0; i < loop.size(); i++) {
                offer(loop, i, ears);
            }
            int before = loop.size();
            while (!ears.isEmpty() && loop.size() > PolygonMesher.MOST_CORNERS) {
                Ear ear = ears.poll();
                int at = place(loop, ear);
                if (at >= 0 && isFree(loop, ear)) {
                    triangles.add(new Triangle(ear.before, ear.tip, ear.after));
                    loop.remove(at);
                    offer(loop, (at + loop.size() - 1) % loop.size(), ears);
                    offer(loop, at % loop.size(), ears);
                }
            }
            if (loop.size() == before) {
                break;
            }
        }
        triangles.addAll(PolygonMesher.best(loop, t -> thickness(t.a(), t.b(), t.c())));
        return triangles;
    }

    private void offer(List<Integer> loop, int at, PriorityQueue<Ear> ears) {
        int before = loop.get((at + loop.size() - 1) % loop.size());
        int tip = loop.get(at);
        int after = loop.get((at + 1) % loop.size());
        if (thickness(before, tip, after) > FLAT) {
            ears.add(new Ear(before, tip, after, length(before, after)));
        }
    }

    /** Where an ear still is in the loop; -1 if its neighbours are others by now. */
    private static int place(List<Integer> loop, Ear ear) {
        int at = loop.indexOf(ear.tip);
        boolean same = at >= 0
                && loop.get((at + loop.size() - 1) % loop.size()) == ear.before
                && loop.get((at + 1) % loop.size()) == ear.after;
        return same ? at : -1;
    }

    private boolean isFree(List<Integer> loop, Ear ear) {
        for (int corner : loop) {
            boolean other = corner != ear.before && corner != ear.tip && corner != ear.after;
            if (other
                    && orientation(ear.before, ear.tip, corner) >= 0
                    && orientation(ear.tip, ear.after, corner) >= 0
                    && orientation(ear.after, ear.before, corner) >= 0) {
                return false;
            }
        }
        return true;
    }

    private void halveEdges() {
        PriorityQueue<Ear> open = new PriorityQueue<>(Comparator.comparingDouble(edge -> -edge.length));
        for (long edge : List.copyOf(thirds.keySet())) {
            if (from(edge) < to(edge)) {
                offerEdge(from(edge), to(edge), open);
            }
        }
        while (!open.isEmpty()) {
            Ear edge = open.poll();
            int a = edge.before;
            int b = edge.after;
            Integer c = thirds.get(Mesh.edge(a, b));
            Integer d = thirds.get(Mesh.edge(b, a));
            if (c != null && d != null) {
                int m = corners.add(corners.at(a).add(corners.at(b)).withNorm(radius));
                remove(a, b, c);
                remove(b, a, d);
                put(a, m, c);
                put(m, b, c);
                put(b, m, d);
                put(m, a, d);
                offerEdge(a, m, open);
                offerEdge(m, b, open);
                offerEdge(c, m, open);
                offerEdge(d, m, open);
            }
        }
    }

    private void offerEdge(int a, int b, PriorityQueue<Ear> open) {
        boolean within = thirds.containsKey(Mesh.edge(a, b)) && thirds.containsKey(Mesh.edge(b, a));
        double length = length(a, b);
        if (within && length > longest) {
            open.add(new Ear(a, a, b, length));
        }
    }

    /** Each turn raises the polyhedron of the triangles towards the convex hull, so that it ends. */
    private void turnEdges() {
        List<Long> open = new ArrayList<>(thirds.keySet());
        while (!open.isEmpty()) {
            long edge = open.remove(open.size() - 1);
            int a = from(edge);
            int b = to(edge);
            Integer c = thirds.get(Mesh.edge(a, b));
            Integer d = thirds.get(Mesh.edge(b, a));
            if (c != null && d != null && isBetterTurned(a, b, c, d)) {
                remove(a, b, c);
                remove(b, a, d);
                put(c, a, d);
                put(d, b, c);
                open.add(Mesh.edge(a, d));
                open.add(Mesh.edge(d, b));
                open.add(Mesh.edge(b, c));
                open.add(Mesh.edge(c, a));
            }
        }
    }

    private boolean isBetterTurned(int a, int b, int c, int d) {
        if (thickness(c, a, d) < FLAT || thickness(d, b, c) < FLAT || thirds.containsKey(Mesh.edge(c, d))) {
            return false;
        }
        Vector3D p = corners.at(a);
        Vector3D across = corners.at(b).subtract(p).cross(corners.at(c).subtract(p));
        double size = length(a, b);
        return across.dot(corners.at(d).subtract(p)) > FLAT * size * size * size;
    }

    /** The farthest that a triangle lies below the sphere: under its middle if it is acute, else under an edge. */
    double deviation(Triangle triangle) {
        Vector3D a = corners.at(triangle.a());
        Vector3D b = corners.at(triangle.b());
        Vector3D c = corners.at(triangle.c());
        double ab = a.distanceSq(b);
        double bc = b.distanceSq(c);
        double ca = c.distanceSq(a);
        double most = Math.max(ab, Math.max(bc, ca));
        if (2 * most >= ab + bc + ca) {
            return radius - Math.sqrt(radius * radius - most / 4);
        }
        return radius - Math.abs(a.dot(b.subtract(a).cross(c.subtract(a)).normalize()));
    }
}
