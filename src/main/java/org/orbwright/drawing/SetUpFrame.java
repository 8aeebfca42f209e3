package org.orbwright.drawing;

import java.util.List;
import org.orbwright.drawing.PlanPolygon.Point;

/**
 * Where a set-up lies on the sheet: the blade's cutting side at 0, x to the right and y upwards, in millimetres of the
 * work, scaled to fit a room.
 *
 * @param x where 0 is on the sheet
 * @param y where 0 is on the sheet
 * @param scale millimetres on the sheet for one of the work
 */
record SetUpFrame(double x, double y, double scale) {

    /**
     * The frame in which points fit into a room.
     *
     * @param points what has to have room
     * @param room the room on the sheet
     */
    static SetUpFrame fitting(List<Point> points, Box room) {
        double left = points.stream().mapToDouble(Point::x).min().orElseThrow();
        double right = points.stream().mapToDouble(Point::x).max().orElseThrow();
        double low = points.stream().mapToDouble(Point::y).min().orElseThrow();
        double high = points.stream().mapToDouble(Point::y).max().orElseThrow();
        double scale = Math.min(room.width() / (right - left), room.height() / (high - low));
        double x = room.middle() - scale * (left + right) / 2;
        double y = (room.top() + room.bottom()) / 2 + scale * (low + high) / 2;
        return new SetUpFrame(x, y, scale);
    }

    /** Where a point is on the sheet. */
    Point at(double right, double up) {
        return new Point(x + scale * right, y - scale * up);
    }

    /** Straight lines through points. */
    PathData path(Point... points) {
        return new PathData()
                .lines(List.of(points).stream().map(p -> at(p.x(), p.y())).toList());
    }
}
