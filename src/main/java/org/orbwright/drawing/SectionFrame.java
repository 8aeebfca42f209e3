package org.orbwright.drawing;

import java.util.List;

/**
 * Where a section's panel lies on the sheet: the solid's centre, the scale, and the angle from the vertical to the
 * panel's normal. A neighbour lies beyond its seam, turned and mirrored: its outside lies to the left of its normal.
 */
record SectionFrame(double x, double y, double scale, double turn, boolean mirrored) {

    /** A point of the section on the sheet. */
    Point at(Point point) {
        double across = mirrored ? -point.x() : point.x();
        double sin = Math.sin(turn);
        double cos = Math.cos(turn);
        return new Point(x + scale * (across * cos + point.y() * sin), y - scale * (point.y() * cos - across * sin));
    }

    /** A point given by its distance from the solid's centre and its angle from the panel's normal. */
    Point polar(double distance, double angle) {
        return at(new Point(distance * Math.sin(angle), distance * Math.cos(angle)));
    }

    /** A polygon of the section on the sheet. */
    PathData path(PlanPolygon polygon) {
        return path(polygon.points()).close();
    }

    /** A line of the section on the sheet. */
    PathData path(List<Point> points) {
        return new PathData().lines(points.stream().map(this::at).toList());
    }
}
