package org.orbwright.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Points with numbers; points that are nearer to each other than a tolerance are one. */
final class Corners {
    private final List<Vector3D> points = new ArrayList<>();
    private final Map<Cell, List<Integer>> cells = new HashMap<>();
    private final double tolerance;

    private record Cell(long x, long y, long z) {}

    Corners(double tolerance) {
        this.tolerance = tolerance;
    }

    double tolerance() {
        return tolerance;
    }

    Vector3D at(int number) {
        return points.get(number);
    }

    int size() {
        return points.size();
    }

    /** The number of a point, or of one that is as near as the tolerance. */
    int of(Vector3D point) {
        long x = cell(point.getX());
        long y = cell(point.getY());
        long z = cell(point.getZ());
        for (long i = x - 1; i <= x + 1; i++) {
            for (long j = y - 1; j <= y + 1; j++) {
                for (long k = z - 1; k <= z + 1; k++) {
                    for (int number : cells.getOrDefault(new Cell(i, j, k), List.of())) {
                        if (points.get(number).distance(point) <= tolerance) {
                            return number;
                        }
                    }
                }
            }
        }
        int number = add(point);
        cells.computeIfAbsent(new Cell(x, y, z), key -> new ArrayList<>(2)).add(number);
        return number;
    }

    /** A new point, whatever is near. */
    int add(Vector3D point) {
        points.add(point);
        return points.size() - 1;
    }

    private long cell(double coordinate) {
        return (long) Math.floor(coordinate / tolerance);
    }
}
