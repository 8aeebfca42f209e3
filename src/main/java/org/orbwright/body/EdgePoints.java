package org.orbwright.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Finds the corners of other pieces that lie on an edge, so that neighbours meet corner to corner. */
final class EdgePoints {
    private static final int CELLS = 32;

    private final Corners corners;
    private final double width;
    private final Map<Cell, List<Integer>> cells = new HashMap<>();
    private final Map<List<Integer>, List<Integer>> known = new HashMap<>();

    private record Cell(long x, long y, long z) {}

    EdgePoints(Corners corners) {
        this.corners = corners;
        double largest = 0;
        for (int i = 0; i < corners.size(); i++) {
            largest = Math.max(largest, corners.at(i).norm());
        }
        this.width = 2 * largest / CELLS;
        for (int i = 0; i < corners.size(); i++) {
            Vector3D p = corners.at(i);
            cells.computeIfAbsent(new Cell(cell(p.getX()), cell(p.getY()), cell(p.getZ())), key -> new ArrayList<>())
                    .add(i);
        }
    }

    private long cell(double coordinate) {
        return (long) Math.floor(coordinate / width);
    }

    /** The corners of a closed loop with those that lie on its edges; what runs to and fro is left out. */
    List<Integer> complete(List<Integer> loop) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            int from = loop.get(i);
            int to = loop.get((i + 1) % loop.size());
            if (from != to) {
                all.add(from);
                all.addAll(between(from, to));
            }
        }
        return Loops.withoutSpurs(all);
    }

    private List<Integer> between(int from, int to) {
        List<Integer> key = List.of(Math.min(from, to), Math.max(from, to));
        List<Integer> found = known.computeIfAbsent(key, this::search);
        return from < to ? found : Loops.reversed(found);
    }

    private List<Integer> search(List<Integer> edge) {
        Vector3D from = corners.at(edge.get(0));
        Vector3D to = corners.at(edge.get(1));
        double near = corners.tolerance();
        double length = from.distance(to);
        Vector3D along = to.subtract(from).multiply(1 / length);
        List<Integer> found = new ArrayList<>();
        for (long x = low(from.getX(), to.getX()); x <= high(from.getX(), to.getX()); x++) {
            for (long y = low(from.getY(), to.getY()); y <= high(from.getY(), to.getY()); y++) {
                for (long z = low(from.getZ(), to.getZ()); z <= high(from.getZ(), to.getZ()); z++) {
                    for (int number : cells.getOrDefault(new Cell(x, y, z), List.of())) {
                        Vector3D way = corners.at(number).subtract(from);
                        double at = way.dot(along);
                        boolean within = at > near && at < length - near;
                        if (within && way.subtract(along.multiply(at)).norm() <= near && !edge.contains(number)) {
                            found.add(number);
                        }
                    }
                }
            }
        }
        found.sort(Comparator.comparingDouble(
                number -> corners.at(number).subtract(from).dot(along)));
        return found;
    }

    private long low(double a, double b) {
        return cell(Math.min(a, b) - corners.tolerance());
    }

    private long high(double a, double b) {
        return cell(Math.max(a, b) + corners.tolerance());
    }
}
