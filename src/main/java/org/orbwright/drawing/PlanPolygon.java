package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A convex polygon on a panel, in the segment's coordinates: x from the tip to the base, y along the base to the right.
 *
 * @param points its corners in order
 */
record PlanPolygon(List<PlanPolygon.Point> points) {

    /** A point on the panel. */
    record Point(double x, double y) {
        double along(double cos, double sin) {
            return x * cos + y * sin;
        }
    }

    PlanPolygon {
        points = List.copyOf(points);
    }

    boolean isEmpty() {
        return points.size() < 3;
    }

    /** Area, by the shoelace formula. */
    double area() {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    /** The part in which {@code x cos + y sin <= offset}, by the method of Sutherland and Hodgman. */
    PlanPolygon below(double offset, double cos, double sin) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            double beyondA = a.along(cos, sin) - offset;
            double beyondB = b.along(cos, sin) - offset;
            if (beyondA <= 0) {
                kept.add(a);
            }
            if ((beyondA < 0 && beyondB > 0) || (beyondA > 0 && beyondB < 0)) {
                double share = beyondA / (beyondA - beyondB);
                kept.add(new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
            }
        }
        return new PlanPolygon(kept);
    }

    /** The part in which {@code x cos + y sin >= offset}. */
    PlanPolygon above(double offset, double cos, double sin) {
        return below(-offset, -cos, -sin);
    }
}
