package org.orbwright.body;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Divides polygons to triangles so that the thinnest triangle is as thick as it can be. */
final class PolygonMesher {
    /** Polygons with more corners are divided from a point in their middle. */
    static final int MOST_CORNERS = 14;

    private PolygonMesher() {}

    /** Divides a flat convex polygon, some of whose corners may lie on straight edges. */
    static List<Triangle> convex(List<Integer> loop, Corners corners, Vector3D normal) {
        if (loop.size() <= MOST_CORNERS) {
            return best(loop, triangle -> thickness(triangle, corners, normal));
        }
        Vector3D sum = Vector3D.ZERO;
        for (int corner : loop) {
            sum = sum.add(corners.at(corner));
        }
        int middle = corners.add(sum.multiply(1.0 / loop.size()));
        List<Triangle> triangles = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            triangles.add(new Triangle(loop.get(i), loop.get((i + 1) % loop.size()), middle));
        }
        return triangles;
    }

    /** Area by the square of the longest edge; negative for a triangle that lies the other way round. */
    private static double thickness(Triangle t, Corners corners, Vector3D normal) {
        Vector3D a = corners.at(t.a());
        Vector3D b = corners.at(t.b());
        Vector3D c = corners.at(t.c());
        double longest = Math.max(a.distanceSq(b), Math.max(b.distanceSq(c), c.distanceSq(a)));
        return normal.dot(b.subtract(a).cross(c.subtract(a))) / longest;
    }

    /** The division of a loop whose worst triangle is best, found from the smallest parts up. */
    static List<Triangle> best(List<Integer> loop, ToDoubleFunction<Triangle> quality) {
        int size = loop.size();
        double[][] worst = new double[size][size];
        int[][] apex = new int[size][size];
        for (int length = 1; length < size; length++) {
            for (int from = 0; from + length < size; from++) {
                int to = from + length;
                worst[from][to] = length == 1 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
                for (int middle = from + 1; middle < to; middle++) {
                    Triangle tried = new Triangle(loop.get(from), loop.get(middle), loop.get(to));
                    double sides = Math.min(worst[from][middle], worst[middle][to]);
                    double found = Math.min(sides, quality.applyAsDouble(tried));
                    if (found > worst[from][to] || middle == from + 1) {
                        worst[from][to] = found;
                        apex[from][to] = middle;
                    }
                }
            }
        }
        List<Triangle> triangles = new ArrayList<>();
        collect(loop, apex, 0, size - 1, triangles);
        return triangles;
    }

    private static void collect(List<Integer> loop, int[][] apex, int from, int to, List<Triangle> triangles) {
        if (to - from > 1) {
            int middle = apex[from][to];
            triangles.add(new Triangle(loop.get(from), loop.get(middle), loop.get(to)));
            collect(loop, apex, from, middle, triangles);
            collect(loop, apex, middle, to, triangles);
        }
    }
}
