package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.turning.ProgramReader.Position;

/** Takes straight moves around the upright axis together as rings, once it is sure that they are. */
final class SegmentedRings {
    /** What the contract says of how far they stray, in millimetres. */
    private static final double STRAY = 0.01;

    private SegmentedRings() {}

    /**
     * The same run with one ring for the moves around each circle.
     *
     * @param written half of the last decimal that is written
     */
    static List<Position> joined(List<Position> run, double written) {
        List<Position> joined = new ArrayList<>();
        List<Position> around = new ArrayList<>();
        for (Position at : run) {
            if (at.motion() == 1 && (at.y() != 0 || !around.isEmpty())) {
                around.add(at);
                // A corner may lie on the other side of the axis.
                if (at.y() == 0 && at.x() > 0) {
                    joined.add(ring(joined.get(joined.size() - 1), around, written));
                    around.clear();
                }
            } else {
                joined.add(at);
            }
        }
        assertTrue(around.isEmpty(), "every circle is closed");
        return joined;
    }

    private static Position ring(Position start, List<Position> around, double written) {
        double radius = start.x();
        double turned = 0;
        double minutes = 0;
        Position from = start;
        for (Position to : around) {
            assertEquals(start.z(), to.z(), 0, "at one height");
            double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
            double area = from.x() * to.y() - from.y() * to.x();
            assertTrue(area > 0, () -> "counter-clockwise: " + to);
            assertTrue(area / length >= radius - 3 * written, () -> "never inside: " + to);
            assertTrue(Math.hypot(to.x(), to.y()) <= radius + STRAY + 2.5 * written, () -> "hardly outside: " + to);
            turned += Math.atan2(area, from.x() * to.x() + from.y() * to.y());
            minutes += to.minutes();
            from = to;
        }
        assertEquals(radius, from.x(), 0, "back where it began");
        assertEquals(2 * Math.PI, turned, 1e-9, "once around");
        return new Position(3, true, radius, 0, start.z(), start.a(), minutes);
    }
}
