package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A circle around the middle as straight moves. They are the sides of a regular polygon around the circle, begun in the
 * middle of a side: so the cutter never comes nearer to the middle than on the circle. Lengths in millimetres.
 */
final class RingSegments {
    /** How far the corners stand out at most: a tenth of the finest ridge that is usual. */
    static final double STRAY = 0.01;

    private RingSegments() {}

    /** Number of sides for a circle of a radius above 0. */
    static int sides(double radius) {
        return (int) Math.ceil(Math.PI / Math.acos(radius / (radius + STRAY)));
    }

    /** The ends of the moves around a circle of a radius above 0, counter-clockwise from X and back to there. */
    static List<Vector2D> ends(double radius) {
        int sides = sides(radius);
        double step = 2 * Math.PI / sides;
        double corner = radius / Math.cos(step / 2);
        List<Vector2D> ends = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            double at = (i + 0.5) * step;
            ends.add(Vector2D.of(corner * Math.cos(at), corner * Math.sin(at)));
        }
        ends.add(Vector2D.of(radius, 0));
        return ends;
    }
}
