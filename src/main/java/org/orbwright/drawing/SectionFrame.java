package org.orbwright.drawing;

import java.util.List;
import org.orbwright.drawing.PlanPolygon.Point;

/**
 * Where a section's panel lies on the sheet. Distances from the solid's centre are scaled; a neighbour lies beyond its
 * seam, mirrored and turned.
 *
 * @param x the solid's centre on the sheet
 * @param y the solid's centre on the sheet
 * @param scale millimetres on the sheet for one of the solid
 * @param turn angle from the vertical to the panel's normal
 * @param mirrored whether its outside lies to the left of its normal
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
