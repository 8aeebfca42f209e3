package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Agreement.ACCURACY;
import static org.orbwright.source.Kind.INVARIANT;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.orbwright.source.Source;

/** What holds for the surface of every segment. */
@Source(INVARIANT)
class SegmentSurfacePropertiesTest {

    @Property
    void scalingByKScalesAreasByItsSquare(
            @ForAll("segments") Segment s,
            @ForAll("lines") Line line,
            @ForAll @DoubleRange(min = 0.01, max = 500) double k) {
        Area one = s.surface().below(line.on(s));
        Area scaled = s.scaled(k).surface().below(line.on(s.scaled(k)));
        double slack = ACCURACY * s.surface().whole().visible();
        assertEquals(one.visible(), scaled.visible() / (k * k), slack);
        assertEquals(one.flat(), scaled.flat() / (k * k), slack);
        assertEquals(one.plan(), scaled.plan() / (k * k), slack);
    }

    @Property
    void mirroredSegmentWithTheAngleReversedHasTheSameAreas(@ForAll("segments") Segment s, @ForAll("lines") Line line) {
        Area one = s.surface().below(line.on(s));
        Area mirrored = s.mirrored().surface().below(BandLine.of(line.on(s).offset(), -line.angle()));
        double slack = ACCURACY * s.surface().whole().visible();
        assertEquals(one.visible(), mirrored.visible(), slack);
        assertEquals(one.flat(), mirrored.flat(), slack);
        assertEquals(one.plan(), mirrored.plan(), slack);
    }

    @Property
    void belowAndAboveMakeTheWhole(@ForAll("segments") Segment s, @ForAll("lines") Line line) {
        SegmentSurface surface = s.surface();
        Area below = surface.below(line.on(s));
        Area above = surface.below(BandLine.of(-line.on(s).offset(), line.angle() + Math.PI));
        double slack = ACCURACY * surface.whole().visible();
        assertEquals(surface.whole().visible(), below.visible() + above.visible(), slack);
        assertEquals(surface.whole().flat(), below.flat() + above.flat(), slack);
        assertEquals(surface.whole().plan(), below.plan() + above.plan(), slack);
    }

    @Property
    void areaNeverFallsAsTheLineMovesOut(
            @ForAll("segments") Segment s,
            @ForAll("lines") Line line,
            @ForAll @DoubleRange(min = 0, max = 1) double step) {
        SegmentSurface surface = s.surface();
        Area nearer = surface.below(line.on(s));
        Area farther = surface.below(line.moved(step).on(s));
        double slack = ACCURACY * surface.whole().visible();
        assertTrue(farther.visible() >= nearer.visible() - slack);
        assertTrue(farther.flat() >= nearer.flat() - slack);
        assertTrue(farther.plan() >= nearer.plan() - slack);
    }

    @Property
    void survivalOfABandNeverRisesAsTheSphereShrinks(
            @ForAll("segments") Segment s,
            @ForAll("lines") Line line,
            @ForAll @DoubleRange(min = 0.01, max = 1) double width,
            @ForAll @DoubleRange(min = 0.5, max = 1) double shrink) {
        BandLine outer = line.on(s);
        BandLine inner = line.moved(-width).on(s);
        SegmentSurface smaller = s.onSphere(s.radius() * shrink).surface();
        double before =
                s.surface().below(outer).plan() - s.surface().below(inner).plan();
        double after = smaller.below(outer).plan() - smaller.below(inner).plan();
        assertTrue(after <= before + ACCURACY * s.surface().whole().plan(), () -> before + " became " + after);
    }

    @Property
    void surfaceIsNeverSmallerThanItsPlanAndThePlanNeverLargerThanThePanel(
            @ForAll("segments") Segment s, @ForAll("lines") Line line) {
        Area below = s.surface().below(line.on(s));
        double panel = s.base() * (s.left() + s.right()) / 2;
        double slack = ACCURACY * s.surface().whole().visible();
        assertTrue(below.visible() >= below.plan() - slack);
        assertTrue(below.plan() <= panel + slack);
        assertTrue(below.plan() >= below.flat() - slack);
        assertTrue(below.flat() >= -slack);
    }

    @Property
    void lineBeyondTheExtentLeavesTheWholeBelowAndOneJustInsideDoesNot(
            @ForAll("segments") Segment s, @ForAll @DoubleRange(min = -3.1, max = 3.1) double angle) {
        SegmentSurface surface = s.surface();
        double extent = surface.extent(Math.cos(angle), Math.sin(angle));
        double whole = surface.whole().visible();
        assertEquals(
                whole,
                surface.below(BandLine.of(extent + 1e-9 * s.base(), angle)).visible(),
                ACCURACY * whole);
        if (extent > 0.01 * s.base()) {
            assertTrue(surface.below(BandLine.of(extent * 0.99, angle)).visible() < whole);
        }
    }

    @Property
    void surfaceEndsInsideThePanelInEveryDirection(
            @ForAll("segments") Segment s, @ForAll @DoubleRange(min = 0, max = 1) double place) {
        double slope = (-s.left() + place * (s.left() + s.right())) / s.base();
        double reach = s.surface().reach(slope);
        assertTrue(reach > 0 && reach < s.radius());
        assertTrue(reach / Math.hypot(1, slope) <= s.base() * (1 + ACCURACY));
    }

    /** Segments on spheres up to the seam radius, some of which leave a flat. */
    @Provide
    Arbitrary<Segment> segments() {
        return Combinators.combine(
                        between(0.05, 2.5), between(0.05, 3), between(0.05, 3), between(0.2, 1.0), between(0, 0.9))
                .as((base, left, right, size, land) -> {
                    double seam = Math.hypot(100, 100 * base);
                    double face = 100 + (seam - 100) * land;
                    return new Segment(100, face, 100 * base, 100 * base * left, 100 * base * right, seam * size);
                });
    }

    /** Lines beside the tip on either side, at any angle and often at one that shops use. */
    @Provide
    Arbitrary<Line> lines() {
        Arbitrary<Double> exact = Arbitraries.of(0.0, 30.0, 45.0, 60.0, 90.0, -30.0, -45.0, -60.0, -90.0);
        Arbitrary<Double> degrees = Arbitraries.oneOf(exact, between(-90, 90));
        Arbitrary<Double> offsets = Arbitraries.oneOf(between(0.001, 2), between(-2, -0.001));
        return Combinators.combine(offsets, degrees).as((offset, angle) -> new Line(offset, Math.toRadians(angle)));
    }

    private static Arbitrary<Double> between(double from, double to) {
        return Arbitraries.doubles().between(from, to).ofScale(6);
    }

    record Segment(double joint, double face, double base, double left, double right, double radius) {
        SegmentSurface surface() {
            return new SegmentSurface(joint, face, base, left, right, radius);
        }

        Segment scaled(double k) {
            return new Segment(k * joint, k * face, k * base, k * left, k * right, k * radius);
        }

        Segment mirrored() {
            return new Segment(joint, face, base, /* left= */ right, /* right= */ left, radius);
        }

        Segment onSphere(double newRadius) {
            return new Segment(joint, face, base, left, right, newRadius);
        }
    }

    /** A line whose offset is a share of the base distance. */
    record Line(double share, double angle) {
        /** The line this many base distances farther out, beside the tip like every other. */
        Line moved(double step) {
            double moved = share + step;
            return new Line(Math.abs(moved) < 0.001 ? Math.copySign(0.001, moved) : moved, angle);
        }

        BandLine on(Segment s) {
            return BandLine.of(share * s.base(), angle);
        }
    }
}
