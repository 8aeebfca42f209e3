package org.orbwright.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Cuts flat polygons to a ball around the origin. The circles on which planes meet the sphere become chords. */
final class BallCut {
    /** What the ball leaves of a polygon: its outline, or nothing, and the parts of it on the sphere. */
    record Cut(List<Integer> loop, List<List<Integer>> arcs) {}

    private final Corners corners;
    private final double radius;
    private final Fineness fineness;
    private final Map<List<Integer>, List<Integer>> crossings = new HashMap<>();
    private double deviation;

    BallCut(Corners corners, double radius, Fineness fineness) {
        this.corners = corners;
        this.radius = radius;
        this.fineness = fineness;
    }

    /** The farthest that a chord lies from its circle. */
    double deviation() {
        return deviation;
    }

    /** Cuts a polygon of a plane, whose corners run counter-clockwise around the plane's normal. */
    Cut cut(List<Integer> loop, Side plane) {
        List<Integer> outline = new ArrayList<>();
        List<List<Integer>> arcs = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            for (int corner : inside(loop.get(i), loop.get((i + 1) % loop.size()))) {
                lead(outline, corner, loop, plane, arcs);
            }
        }
        if (!outline.isEmpty()) {
            lead(outline, outline.get(0), loop, plane, arcs);
        }
        return new Cut(Loops.withoutSpurs(outline), arcs);
    }

    /** Leads the outline on to a corner: along an edge, or around where the polygon lies beyond the sphere. */
    private void lead(List<Integer> outline, int corner, List<Integer> loop, Side plane, List<List<Integer>> arcs) {
        int last = outline.isEmpty() ? corner : outline.get(outline.size() - 1);
        if (last != corner && onSphere(last) && onSphere(corner) && !sameEdge(last, corner, loop)) {
            List<Integer> arc = arc(last, corner, plane);
            arcs.add(arc);
            outline.addAll(arc.subList(1, arc.size()));
        } else {
            outline.add(corner);
        }
    }

    private boolean onSphere(int corner) {
        return Math.abs(corners.at(corner).norm() - radius) <= 2 * corners.tolerance();
    }

    /** Whether a straight edge of the loop, in its direction, leads from one corner to the other. */
    private boolean sameEdge(int from, int to, List<Integer> loop) {
        for (int i = 0; i < loop.size(); i++) {
            List<Integer> part = inside(loop.get(i), loop.get((i + 1) % loop.size()));
            if (part.size() == 2 && part.get(0) == from && part.get(1) == to) {
                return true;
            }
        }
        return false;
    }

    /** The part of an edge inside the ball: no, one or two corners. */
    private List<Integer> inside(int from, int to) {
        List<Integer> key = List.of(Math.min(from, to), Math.max(from, to));
        List<Integer> part = crossings.get(key);
        if (part == null) {
            part = part(key.get(0), key.get(1));
            crossings.put(key, part);
        }
        return from < to ? part : Loops.reversed(part);
    }

    private List<Integer> part(int from, int to) {
        boolean fromInside = corners.at(from).norm() <= radius + corners.tolerance();
        boolean toInside = corners.at(to).norm() <= radius + corners.tolerance();
        if (fromInside && toInside) {
            return List.of(from, to);
        }
        Vector3D start = corners.at(from);
        Vector3D way = corners.at(to).subtract(start);
        double square = way.normSq();
        double along = start.dot(way);
        double root = along * along - square * (start.norm() - radius) * (start.norm() + radius);
        double half = Math.sqrt(Math.max(0, root));
        double first = (-along - half) / square;
        double second = (-along + half) / square;
        if (!fromInside && !toInside) {
            boolean crosses = root > 0 && first > 0 && second < 1;
            int enter = crosses ? onSphere(start, way, first) : -1;
            int leave = crosses ? onSphere(start, way, second) : -1;
            return enter == leave ? List.of() : List.of(enter, leave);
        }
        int enter = fromInside ? from : onSphere(start, way, first);
        int leave = toInside ? to : onSphere(start, way, second);
        return enter == leave ? List.of(enter) : List.of(enter, leave);
    }

    private int onSphere(Vector3D start, Vector3D way, double at) {
        double share = Math.max(0, Math.min(1, at));
        return corners.of(start.add(way.multiply(share)).withNorm(radius));
    }

    private List<Integer> arc(int from, int to, Side plane) {
        Vector3D middle = plane.normal().multiply(plane.distance());
        Vector3D start = corners.at(from).subtract(middle);
        Vector3D up = plane.normal().cross(start);
        Vector3D end = corners.at(to).subtract(middle);
        double angle = Math.atan2(end.dot(up), end.dot(start));
        double turn = angle < 0 ? angle + 2 * Math.PI : angle;
        double circle = start.norm();
        int steps = (int) Math.ceil(turn / fineness.step(circle, radius));
        List<Integer> arc = new ArrayList<>();
        arc.add(from);
        for (int i = 1; i < steps; i++) {
            double at = turn * i / steps;
            arc.add(corners.add(middle.add(start.multiply(Math.cos(at)))
                    .add(up.multiply(Math.sin(at)))
                    .withNorm(radius)));
        }
        arc.add(to);
        deviation = Math.max(deviation, circle * (1 - Math.cos(turn / steps / 2)));
        return arc;
    }
}
