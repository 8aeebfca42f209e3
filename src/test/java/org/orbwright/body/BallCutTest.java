package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.body.BallCut.Cut;

/** A ball of radius 5 cuts the plane at height 3 along a circle of radius 4. */
class BallCutTest {
    private static final double RADIUS = 5;
    private static final double HEIGHT = 3;
    private static final double CIRCLE = 4;
    private static final double EXACT = 1e-9;

    private final Corners corners = new Corners(1e-7);
    private final Side plane = Side.of(Vector3D.Unit.PLUS_Z, HEIGHT);

    private List<Integer> polygon(double... coordinates) {
        List<Integer> loop = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            loop.add(corners.of(Vector3D.of(coordinates[i], coordinates[i + 1], HEIGHT)));
        }
        return loop;
    }

    private double area(List<Integer> loop) {
        double twice = 0;
        for (int i = 0; i < loop.size(); i++) {
            Vector3D from = corners.at(loop.get(i));
            Vector3D to = corners.at(loop.get((i + 1) % loop.size()));
            twice += from.getX() * to.getY() - from.getY() * to.getX();
        }
        return twice / 2;
    }

    /** The farthest of an arc's chords from the circle. */
    private double sagitta(List<Integer> arc) {
        double most = 0;
        for (int i = 0; i + 1 < arc.size(); i++) {
            Vector3D middle = corners.at(arc.get(i)).lerp(corners.at(arc.get(i + 1)), 0.5);
            most = Math.max(most, CIRCLE - Math.hypot(middle.getX(), middle.getY()));
        }
        return most;
    }

    /** The area between a circle's middle and so many equal chords over an angle. */
    private static double fan(double angle, int chords) {
        return chords * CIRCLE * CIRCLE / 2 * Math.sin(angle / chords);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.1, 0.001})
    @DisplayName("hand-worked: a large square with a side at x = -2 keeps the circle but for 120 degrees of it")
    void moreThanHalfOfTheCircleIsLeft(double deviation) {
        BallCut ball = new BallCut(corners, RADIUS, new Fineness(deviation));
        assertEquals(0, ball.deviation());
        Cut cut = ball.cut(polygon(-2, -20, 20, -20, 20, 20, -2, 20), plane);
        assertEquals(1, cut.arcs().size());
        List<Integer> arc = cut.arcs().get(0);
        for (int corner : arc) {
            assertEquals(RADIUS, corners.at(corner).norm(), EXACT);
            assertEquals(HEIGHT, corners.at(corner).getZ(), EXACT);
            assertTrue(corners.at(corner).getX() > -2 - EXACT);
        }
        int chords = arc.size() - 1;
        double expected = fan(Math.toRadians(240), chords) + fan(Math.toRadians(120), 1);
        assertEquals(expected, area(cut.loop()), EXACT);
        assertEquals(sagitta(arc), ball.deviation(), EXACT);
        assertTrue(ball.deviation() <= deviation);
    }

    @Test
    @DisplayName("hand-worked: a triangle from the middle of the circle with 90 degrees keeps a quarter of it")
    void aSegmentKeepsItsPartOfTheCircle() {
        BallCut ball = new BallCut(corners, RADIUS, new Fineness(0.01));
        Cut cut = ball.cut(polygon(0, 0, 9, -9, 9, 9), plane);
        int chords = cut.arcs().get(0).size() - 1;
        assertEquals(fan(Math.PI / 2, chords), area(cut.loop()), EXACT);
        assertEquals(CIRCLE * (1 - Math.cos(Math.PI / 4 / chords)), ball.deviation(), EXACT);
        // A coarser arc comes after it: the largest deviation counts.
        double before = ball.deviation();
        Cut again = ball.cut(polygon(3, -9, 9, -9, 9, 9, 3, 9), plane);
        assertEquals(Math.max(before, sagitta(again.arcs().get(0))), ball.deviation(), EXACT);
    }

    @Test
    void aPolygonInsideIsKeptAndOneOutsideIsNot() {
        BallCut ball = new BallCut(corners, RADIUS, new Fineness(0.01));
        List<Integer> inside = polygon(-1, -1, 2, -1, 0, 2);
        assertEquals(new Cut(inside, List.of()), ball.cut(inside, plane));
        assertEquals(new Cut(List.of(), List.of()), ball.cut(polygon(5, 0, 9, 0, 9, 5), plane));
        assertEquals(0, ball.deviation());
    }

    @Test
    @DisplayName("hand-worked: a square of 6 by 6 whose corners stand out keeps four chords and four arcs")
    void cornersBeyondTheSphereAreCutOff() {
        BallCut ball = new BallCut(corners, RADIUS, new Fineness(0.01));
        Cut cut = ball.cut(polygon(-3, -3, 3, -3, 3, 3, -3, 3), plane);
        assertEquals(4, cut.arcs().size());
        // Each side is crossed at sqrt(7) from its middle.
        double side = Math.atan2(Math.sqrt(7), 3);
        int chords = cut.arcs().get(0).size() - 1;
        double expected = 4 * (fan(2 * side, 1) + fan(Math.PI / 2 - 2 * side, chords));
        assertEquals(expected, area(cut.loop()), EXACT);
    }
}
