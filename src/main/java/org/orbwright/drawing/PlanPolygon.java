package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A convex polygon on a panel: x runs from the segment's tip to the base, y along the base to the right. */
record PlanPolygon(List<Point> points) {
    private static final int TRIED_PER_CORNER = 16;
    /** Another place has to have this much more room before a label leaves the middle. */
    private static final double WORTH_MOVING = 1.15;

    PlanPolygon {
        points = List.copyOf(points);
    }

    boolean isEmpty() {
        return points.size() < 3;
    }

    /** Area, by the shoelace formula. */
    double area() {
        return Math.abs(signedArea());
    }

    private double signedArea() {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
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

    /** Distance of the nearest side from a point inside; below 0 for a point outside. */
    double clearance(Point point) {
        double nearest = Double.POSITIVE_INFINITY;
        double orientation = Math.signum(signedArea());
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
            if (length > 0) {
                double cross = (b.x() - a.x()) * (point.y() - a.y()) - (b.y() - a.y()) * (point.x() - a.x());
                nearest = Math.min(nearest, orientation * cross / length);
            }
        }
        return nearest;
    }

    /** A point with much room around it, near the middle where there is a choice. */
    Point roomiest() {
        Point best = middle();
        double room = clearance(best);
        Point start = best;
        for (Point corner : points) {
            for (int i = 1; i < TRIED_PER_CORNER; i++) {
                double share = (double) i / TRIED_PER_CORNER;
                Point tried = new Point(
                        start.x() + share * (corner.x() - start.x()), start.y() + share * (corner.y() - start.y()));
                double found = clearance(tried);
                if (found > room * WORTH_MOVING) {
                    best = tried;
                    room = found;
                }
            }
        }
        return best;
    }

    /** Mean of the corners, which lies inside. */
    private Point middle() {
        double x = 0;
        double y = 0;
        for (Point point : points) {
            x += point.x();
            y += point.y();
        }
        return new Point(x / points.size(), y / points.size());
    }
}
