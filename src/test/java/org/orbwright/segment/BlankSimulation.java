package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Piece;
import org.orbwright.segment.SegmentPlan.Cut;

/**
 * Segments laid out along a blank one by one, as a sawyer would: each is the one before turned by half a turn and slid
 * up until the saw cut just fits between the two. Along the blank is x, across it y, with the first band's edge at 0.
 */
final class BlankSimulation {
    private BlankSimulation() {}

    /** A line across the blank. */
    record Leg(double atFirstEdge, double atLastEdge, double width) {
        /** Distance, square to both, to a leg of the same direction further along. */
        double distanceTo(Leg other) {
            assertEquals(atLastEdge - atFirstEdge, other.atLastEdge - other.atFirstEdge, 1e-9, "legs are parallel");
            return (other.atFirstEdge - atFirstEdge) * width / Math.hypot(width, atLastEdge - atFirstEdge);
        }

        Leg moved(double along) {
            return new Leg(atFirstEdge + along, atLastEdge + along, width);
        }
    }

    /** A segment between its two legs; its base is on the first band's edge if upright. */
    record Triangle(Leg from, Leg to, boolean upright) {
        double start() {
            return Math.min(from.atFirstEdge(), from.atLastEdge());
        }

        double end() {
            return Math.max(to.atFirstEdge(), to.atLastEdge());
        }

        double gapTo(Triangle next) {
            return to.distanceTo(next.from());
        }

        /** Half a turn: the leg behind comes to the front. */
        Triangle turned() {
            return new Triangle(turned(to), turned(from), !upright);
        }

        private static Leg turned(Leg leg) {
            return new Leg(-leg.atLastEdge(), -leg.atFirstEdge(), leg.width());
        }

        Triangle moved(double along) {
            return new Triangle(from.moved(along), to.moved(along), upright);
        }
    }

    /** The first segment, upright, with the shorter part of its base first and its base's end at x = 0. */
    static Triangle first(Piece piece) {
        double shorter = Math.min(piece.left(), piece.right());
        double width = piece.base();
        return new Triangle(new Leg(0, shorter, width), new Leg(piece.left() + piece.right(), shorter, width), true);
    }

    /** The next segment: turned, and slid along until its distance is the kerf. */
    static Triangle next(Triangle triangle, double kerf) {
        Triangle turned = triangle.turned();
        double perStep = turned.from().distanceTo(turned.from().moved(1));
        double missing = kerf - triangle.to().distanceTo(turned.from());
        return turned.moved(missing / perStep);
    }

    /** As many segments as fit between the end trims. */
    static List<Triangle> layOut(Piece piece, double kerf, double trim, double blank) {
        List<Triangle> triangles = new ArrayList<>();
        Triangle triangle = first(piece).moved(trim);
        while (triangle.end() <= blank - trim + BlankLayout.EXACT_FIT) {
            triangles.add(triangle);
            triangle = next(triangle, kerf);
        }
        return triangles;
    }

    /** The first cut is the first leg, and every other one the leg behind a segment. */
    static void assertCutsAreLegs(List<Triangle> triangles, List<Cut> cuts) {
        assertEquals(triangles.size() + 1, cuts.size());
        assertLeg(triangles.get(0).from(), cuts.get(0));
        for (int i = 0; i < triangles.size(); i++) {
            assertEquals(i + 1, cuts.get(i + 1).number());
            assertLeg(triangles.get(i).to(), cuts.get(i + 1));
        }
    }

    private static void assertLeg(Leg leg, Cut cut) {
        assertEquals(leg.atFirstEdge(), cut.firstBandEdge(), 1e-8);
        assertEquals(leg.atLastEdge(), cut.lastBandEdge(), 1e-8);
    }

    /** The segments that a list of cuts describes: each behind a cut, its other leg through the tip. */
    static List<Triangle> fromCuts(List<Cut> cuts, double width, double base, double kerf) {
        List<Triangle> triangles = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            boolean upright = i % 2 == 1;
            Cut before = cuts.get(i - 1);
            Leg to = new Leg(cuts.get(i).firstBandEdge(), cuts.get(i).lastBandEdge(), width);
            Leg from = upright
                    ? new Leg(to.atFirstEdge() - base, to.atLastEdge(), width)
                    : new Leg(to.atFirstEdge(), to.atLastEdge() - base, width);
            Leg cut = new Leg(before.firstBandEdge(), before.lastBandEdge(), width);
            assertEquals(i == 1 ? 0 : kerf, cut.distanceTo(from), 1e-9);
            triangles.add(new Triangle(from, to, upright));
        }
        return triangles;
    }
}
