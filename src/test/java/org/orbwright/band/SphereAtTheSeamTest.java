package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.band.Agreement.assertAreas;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.source.Source;

/**
 * A sphere of exactly the seam radius, or a rounding to either side of it: at the edge middle the seam, the outline,
 * the rim of the flat and a line along the base all meet in one point.
 */
@Source(
        value = ORACLE,
        text = "tanh-sinh quadrature of the surface's definition, SurfaceOracle, which is held to band-areas.csv")
class SphereAtTheSeamTest {
    private static final double[] ANGLES = {0, 30, 45, 60, 90, -30, -45, -60, -90};

    static Stream<Arguments> surfaces() {
        return Stream.of(1e-3, 1.0, 50.0, 1e5)
                .flatMap(k -> Stream.of(0.0, 0.1).flatMap(land -> {
                    double joint = 1.1135163644116068 * k;
                    double base = 0.6881909602355868 * k;
                    double seam = Math.hypot(joint, base);
                    return Stream.of(Math.nextDown(seam), seam, Math.nextUp(seam))
                            .map(radius -> Arguments.of(
                                    new SurfaceOracle(joint, joint + land * k, base, k / 2, k / 2, radius)));
                }));
    }

    /** Once broken: the segment of 24246.47 counted as one flat of 22992.31. */
    @Test
    void flatThatTouchesTheEdgeMiddleIsNotTheWholeSegment() {
        double radius = Math.hypot(100, 166.7816);
        SurfaceOracle oracle = new SurfaceOracle(100, 100, 166.7816, 166.7816, 166.7816, radius);
        assertAreas(oracle.whole(), surface(oracle).whole(), surface(oracle).whole(), oracle::toString);
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    void wholeSegmentAgreesWithQuadrature(SurfaceOracle oracle) {
        assertAreas(oracle.whole(), surface(oracle).whole(), surface(oracle).whole(), oracle::toString);
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    @Source(INVARIANT)
    void lineAlongTheBaseHasTheWholeSegmentBelow(SurfaceOracle oracle) {
        double whole = surface(oracle).whole().visible();
        double below = surface(oracle).below(BandLine.of(oracle.base(), 0)).visible();
        assertEquals(whole, below, Agreement.ACCURACY * whole);
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    void linesThroughTheCornersOfThePanelAgreeWithQuadrature(SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        for (double angle : ANGLES) {
            double cos = Math.cos(Math.toRadians(angle));
            double sin = Math.sin(Math.toRadians(angle));
            for (double y : new double[] {-oracle.left(), oracle.right()}) {
                BandLine line = new BandLine(oracle.base() * cos + y * sin, cos, sin);
                assertAreas(oracle.below(line), surface.below(line), surface.whole(), () -> oracle + " " + line);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("surfaces")
    @Source(INVARIANT)
    void areaNeverFallsAsTheLineMovesOut(SurfaceOracle oracle) {
        double size = oracle.base() + oracle.left() + oracle.right();
        double slack = Agreement.ACCURACY * oracle.whole().visible();
        for (double angle : ANGLES) {
            double[] areas = new double[400];
            Arrays.setAll(
                    areas,
                    i -> surface(oracle)
                            .below(BandLine.of((i - 199.5) * size / 200, Math.toRadians(angle)))
                            .visible());
            for (int i = 1; i < areas.length; i++) {
                assertEquals(0, Math.min(0, areas[i] - areas[i - 1]), slack);
            }
            assertEquals(oracle.whole().visible(), areas[399], slack);
        }
    }

    private static SegmentSurface surface(SurfaceOracle o) {
        return new SegmentSurface(o.joint(), o.face(), o.base(), o.left(), o.right(), o.radius());
    }
}
