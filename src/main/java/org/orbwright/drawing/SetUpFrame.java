package org.orbwright.drawing;

import java.util.List;

/**
 * Where a set-up lies on the sheet: the place of the blade's cutting side, 0, with x to the right and y upwards. The
 * scale is that of the sheet by the work.
 */
record SetUpFrame(double x, double y, double scale) {

    /** The frame in which points fit into a room on the sheet. */
    static SetUpFrame fitting(List<Point> points, Box room) {
        Box work = Box.around(points);
        double scale = Math.min(room.width() / work.width(), room.height() / work.height());
        double x = room.middle() - scale * (work.left() + work.right()) / 2;
        double y = (room.top() + room.bottom()) / 2 + scale * (work.top() + work.bottom()) / 2;
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
