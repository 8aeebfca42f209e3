package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Agreement.ACCURACY;
import static org.orbwright.band.Agreement.assertAreas;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Trials;
import org.orbwright.source.Source;

/** A band line that passes through the tip, or so close by that only rounding parts them. */
@Source(
        value = ORACLE,
        text = "tanh-sinh quadrature of the surface's definition, SurfaceOracle, which is held to band-areas.csv")
class BandLineThroughTheTipTest {

    /** Once broken: not a number, because the cosine of the line's own direction rounded to a negative one. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 45, 60, 90, -30, -45, -60, -90, 37})
    void tiltedLineThroughTheTipAgreesWithQuadrature(double degrees) {
        for (double scale : new double[] {1e-3, 1, 50, 1e5}) {
            for (double radius : new double[] {0.9, 1.1135, 1.2, 1.3}) {
                SurfaceOracle oracle = new SurfaceOracle(
                        1.1135 * scale, 1.1135 * scale, 0.6882 * scale, 0.5 * scale, 0.4 * scale, radius * scale);
                assertAgrees(oracle, BandLine.of(0, Math.toRadians(degrees)));
                assertAgrees(oracle, BandLine.of(-0.0, Math.toRadians(degrees)));
            }
        }
    }

    @Test
    @Source(INVARIANT)
    void lineSquareToTheBaseThroughTheTipHalvesASymmetricSegment() {
        SegmentSurface surface = new SegmentSurface(55, 55, 34, 25, 25, 55);
        double half = surface.below(BandLine.of(0, Math.PI / 2)).visible();
        assertEquals(
                surface.whole().visible() / 2, half, ACCURACY * surface.whole().visible());
    }

    @Test
    void everyDirectionThroughTheTipAgreesWithQuadrature() {
        Random random = new Random(11);
        for (int i = 0; i < Trials.of(1000); i++) {
            double radius = 20 + 44 * random.nextDouble();
            SurfaceOracle oracle =
                    new SurfaceOracle(55, 55, 34, 1 + 60 * random.nextDouble(), 1 + 60 * random.nextDouble(), radius);
            assertAgrees(oracle, BandLine.of(0, 2 * Math.PI * random.nextDouble()));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-13, 1e-14, 7e-15, 1e-16, 1e-17, 1e-20, 1e-40, 1e-200, Double.MIN_VALUE})
    void lineWithinRoundingOfTheTipHasTheAreaOfTheLineThroughIt(double offset) {
        SurfaceOracle oracle = new SurfaceOracle(55, 55, 34, 31, 17, 55);
        SegmentSurface surface = surface(oracle);
        double whole = surface.whole().visible();
        Random random = new Random(12);
        for (int i = 0; i < Trials.of(2000); i++) {
            double degrees = i < 25 ? 15.0 * i - 180 : 360 * random.nextDouble();
            double expected = i < 25 || i % 20 == 0
                    ? oracle.below(BandLine.of(0, Math.toRadians(degrees))).visible()
                    : Double.NaN;
            for (double signed : new double[] {offset, -offset}) {
                Area below = surface.below(BandLine.of(signed, Math.toRadians(degrees)));
                assertTrue(below.visible() >= -ACCURACY * whole && below.visible() <= whole * (1 + ACCURACY));
                assertTrue(below.plan() >= -ACCURACY * whole && below.plan() <= whole * (1 + ACCURACY));
                if (!Double.isNaN(expected)) {
                    assertEquals(expected, below.visible(), ACCURACY * whole, "angle " + degrees);
                }
            }
        }
    }

    private static void assertAgrees(SurfaceOracle oracle, BandLine line) {
        SegmentSurface surface = surface(oracle);
        assertAreas(oracle.below(line), surface.below(line), surface.whole(), () -> oracle + " " + line);
    }

    private static SegmentSurface surface(SurfaceOracle o) {
        return new SegmentSurface(o.joint(), o.face(), o.base(), o.left(), o.right(), o.radius());
    }
}
