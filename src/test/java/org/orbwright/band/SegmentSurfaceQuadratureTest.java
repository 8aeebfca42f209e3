package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.band.Agreement.assertAreas;
import static org.orbwright.source.Kind.ORACLE;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Trials;
import org.orbwright.source.Source;

/** Areas, reach and extent of a segment's surface against quadrature and search that use only its definition. */
@DisplayName("Segment surfaces against quadrature of their definition")
@Source(
        value = ORACLE,
        text = "tanh-sinh quadrature of the surface's definition, SurfaceOracle, which is held to band-areas.csv")
class SegmentSurfaceQuadratureTest {
    private static final int CASES = Trials.of(400);

    @Test
    @DisplayName("the oracle itself agrees with counting points of a grid, to a thousandth")
    @Source(value = ORACLE, text = "counting points of a grid")
    void oracleAgreesWithCountingPoints() {
        Random random = new Random(7);
        for (int i = 0; i < 6; i++) {
            SurfaceOracle oracle = beyondTheSeam(random);
            BandLine line = line(random, oracle);
            SurfaceOracle.Measured counted = count(oracle, line);
            SurfaceOracle.Measured area = oracle.below(line);
            assertEquals(
                    counted.visible(), area.visible(), 1e-3 * oracle.whole().visible());
            assertEquals(counted.flat(), area.flat(), 1e-3 * oracle.whole().visible());
            assertEquals(counted.plan(), area.plan(), 1e-3 * oracle.whole().plan());
        }
    }

    @Test
    void sphereBelowTheFaceAgrees() {
        Random random = new Random(1);
        for (int i = 0; i < CASES; i++) {
            assertAgrees(random, belowTheFace(random));
        }
    }

    @Test
    void sphereThatLeavesAFlatAgrees() {
        Random random = new Random(2);
        for (int i = 0; i < CASES; i++) {
            assertAgrees(random, withFlat(random));
        }
    }

    @Test
    void straightBandsAgreeToTheirOwnSize() {
        Random random = new Random(4);
        for (int i = 0; i < CASES; i++) {
            SurfaceOracle oracle = withFlat(random);
            SegmentSurface surface = surface(oracle);
            BandLine line = BandLine.of(oracle.base() * random.nextDouble(), 0);
            SurfaceOracle.Measured expected = oracle.below(line);
            Area actual = surface.below(line);
            Agreement.assertArea(
                    expected.visible(), actual.visible(), surface.whole().visible(), oracle.toString());
            Agreement.assertArea(expected.plan(), actual.plan(), surface.whole().plan(), oracle.toString());
        }
    }

    @RepeatedTest(3)
    @Source(value = ORACLE, text = "bisection of the definition")
    void reachAgreesWithBisection(RepetitionInfo info) {
        Random random = new Random(50L + info.getCurrentRepetition());
        for (int i = 0; i < Trials.of(300); i++) {
            SurfaceOracle oracle = any(random, info.getCurrentRepetition());
            double slope = (-oracle.left() + random.nextDouble() * (oracle.left() + oracle.right())) / oracle.base();
            double expected = oracle.reach(slope);
            assertEquals(expected, surface(oracle).reach(slope), 1e-12 * expected, () -> oracle + " slope " + slope);
        }
    }

    @RepeatedTest(3)
    @Source(value = ORACLE, text = "search along the end of the surface")
    void extentAgreesWithSearch(RepetitionInfo info) {
        Random random = new Random(60L + info.getCurrentRepetition());
        for (int i = 0; i < 60; i++) {
            SurfaceOracle oracle = any(random, info.getCurrentRepetition());
            double angle = 2 * Math.PI * random.nextDouble();
            double expected = oracle.extent(Math.cos(angle), Math.sin(angle));
            double actual = surface(oracle).extent(Math.cos(angle), Math.sin(angle));
            assertEquals(expected, actual, 1e-12 * oracle.radius(), () -> oracle + " angle " + angle);
        }
    }

    private static void assertAgrees(Random random, SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        assertAreas(oracle.whole(), surface.whole(), surface.whole(), oracle::toString);
        BandLine line = line(random, oracle);
        assertAreas(oracle.below(line), surface.below(line), surface.whole(), () -> oracle + " " + line);
    }

    private static SurfaceOracle any(Random random, int kind) {
        return switch (kind) {
            case 1 -> belowTheFace(random);
            case 2 -> withFlat(random);
            default -> beyondTheSeam(random);
        };
    }

    private static SurfaceOracle belowTheFace(Random random) {
        double joint = between(random, 10, 200);
        double base = joint * between(random, 0.05, 2.5);
        double face = joint * between(random, 1, 1.3);
        double largest = Math.min(face, Math.hypot(joint, base));
        double radius = largest * between(random, 0.3, 1);
        return new SurfaceOracle(joint, face, base, part(random, base), part(random, base), radius);
    }

    private static SurfaceOracle withFlat(Random random) {
        double joint = between(random, 10, 200);
        double base = joint * between(random, 0.05, 2.5);
        double seam = Math.hypot(joint, base);
        double face = joint + (seam - joint) * between(random, 0, 0.9);
        double radius = face + (seam - face) * random.nextDouble();
        return new SurfaceOracle(joint, face, base, part(random, base), part(random, base), radius);
    }

    private static SurfaceOracle beyondTheSeam(Random random) {
        double joint = between(random, 10, 200);
        double base = joint * between(random, 0.05, 2.5);
        double seam = Math.hypot(joint, base);
        double face = joint + (seam - joint) * between(random, 0, 1.5);
        double radius = seam * between(random, 1, 1.5);
        return new SurfaceOracle(joint, face, base, part(random, base), part(random, base), radius);
    }

    private static double part(Random random, double base) {
        return base * between(random, 0.05, 3);
    }

    /** A band line anywhere across the segment, often beyond the tip, at any angle or at one that shops use. */
    private static BandLine line(Random random, SurfaceOracle oracle) {
        double[] exact = {0, 30, 45, 60, 90, -30, -45, -60, -90, 120, 180};
        double degrees = random.nextBoolean() ? between(random, -180, 180) : exact[random.nextInt(exact.length)];
        double size = Math.min(oracle.radius(), oracle.base() + oracle.left() + oracle.right());
        return BandLine.of(size * between(random, -0.6, 0.9), Math.toRadians(degrees));
    }

    private static double between(Random random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private static SegmentSurface surface(SurfaceOracle o) {
        return new SegmentSurface(o.joint(), o.face(), o.base(), o.left(), o.right(), o.radius());
    }

    private static SurfaceOracle.Measured count(SurfaceOracle oracle, BandLine line) {
        int n = 1500;
        double dx = oracle.base() / n;
        double dy = (oracle.left() + oracle.right()) / n;
        double visible = 0;
        double flat = 0;
        double plan = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = (i + 0.5) * dx;
                double y = (j + 0.5) * dy - oracle.left();
                if (x * line.cos() + y * line.sin() <= line.offset() && oracle.contains(x, y)) {
                    visible += oracle.slant(x, y) * dx * dy;
                    flat += oracle.slant(x, y) == 1 ? dx * dy : 0;
                    plan += dx * dy;
                }
            }
        }
        return new SurfaceOracle.Measured(visible, flat, plan);
    }
}
