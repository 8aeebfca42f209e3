package org.orbwright.body;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A plane that bounds a piece of wood: its unit normal, outwards, and its distance along that. */
record Side(Vector3D normal, double distance) {
    /** Unit normals that differ by less are one, but for rounding. */
    private static final double SAME_NORMAL = 1e-12;
    /** In millimetres; planes that are nearer are one. */
    private static final double SAME_DISTANCE = 1e-9;

    /** A side with a normal of any length; the distance is in multiples of that length. */
    static Side of(Vector3D direction, double distance) {
        double length = direction.norm();
        return new Side(direction.multiply(1 / length), distance / length);
    }

    Side reversed() {
        return new Side(normal.negate(), -distance);
    }

    boolean isSame(Side other) {
        return normal.distance(other.normal) < SAME_NORMAL && Math.abs(distance - other.distance) < SAME_DISTANCE;
    }

    double above(Vector3D point) {
        return normal.dot(point) - distance;
    }

    /** A square of the plane around the point nearest to the origin, counter-clockwise seen from outside. */
    List<Vector3D> square(double halfWidth) {
        Vector3D right = normal.orthogonal().multiply(halfWidth);
        Vector3D up = normal.cross(right);
        Vector3D middle = normal.multiply(distance);
        return List.of(
                middle.subtract(right).subtract(up),
                middle.add(right).subtract(up),
                middle.add(right).add(up),
                middle.subtract(right).add(up));
    }

    /** What this plane leaves of a convex polygon on its inner side (Sutherland and Hodgman). */
    List<Vector3D> cut(List<Vector3D> corners) {
        List<Vector3D> left = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vector3D from = corners.get(i);
            Vector3D to = corners.get((i + 1) % corners.size());
            double aboveFrom = above(from);
            double aboveTo = above(to);
            if (aboveFrom <= 0) {
                left.add(from);
            }
            if ((aboveFrom < 0 && aboveTo > 0) || (aboveFrom > 0 && aboveTo < 0)) {
                left.add(from.lerp(to, aboveFrom / (aboveFrom - aboveTo)));
            }
        }
        return left.size() < 3 ? List.of() : left;
    }
}
