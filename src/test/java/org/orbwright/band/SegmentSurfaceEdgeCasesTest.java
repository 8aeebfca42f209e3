package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Agreement.ACCURACY;
import static org.orbwright.band.Agreement.assertAreas;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Trials;
import org.orbwright.source.Source;

/** Angles, offsets and radii that sit exactly on a border, and the smallest and largest segments. */
@Source(
        value = ORACLE,
        text = "tanh-sinh quadrature of the surface's definition, SurfaceOracle, which is held to band-areas.csv")
class SegmentSurfaceEdgeCasesTest {
    private static final double[] ANGLES = {0, -0.0, 30, 45, 60, 90, -30, -45, -60, -90};
    private static final double[] SCALES = {1e-3, 1, 1e5};

    /** Segments without and with a land, symmetric and scalene, each on spheres that end on a border. */
    static Stream<Arguments> surfaces() {
        return Trials.every(
                5,
                Arrays.stream(SCALES)
                        .boxed()
                        .flatMap(k -> Stream.of(
                                dodecahedron(k, 0),
                                dodecahedron(k, 0.1),
                                new SurfaceOracle(1.2 * k, 1.2 * k, 0.9 * k, 0.2 * k, 1.7 * k, k)))
                        .flatMap(SegmentSurfaceEdgeCasesTest::onSpheresThatEndOnABorder));
    }

    private static SurfaceOracle dodecahedron(double edge, double land) {
        double joint = 1.1135163644116068 * edge;
        double base = 0.6881909602355868 * edge;
        return new SurfaceOracle(joint, joint + land * edge, base, edge / 2, edge / 2, joint);
    }

    private static Stream<Arguments> onSpheresThatEndOnABorder(SurfaceOracle s) {
        double seam = Math.hypot(s.base(), s.joint());
        return Stream.of(
                Arguments.of("far below the face", with(s, s.joint() / 2)),
                Arguments.of("at the joint distance", with(s, s.joint())),
                Arguments.of("touching the face", with(s, s.face())),
                Arguments.of("rounded up from the face", with(s, Math.nextUp(s.face()))),
                Arguments.of("with a flat", with(s, (s.face() + seam) / 2)),
                Arguments.of("just short of the seam radius", with(s, seam * (1 - 1e-12))));
    }

    private static SurfaceOracle with(SurfaceOracle s, double radius) {
        return new SurfaceOracle(s.joint(), s.face(), s.base(), s.left(), s.right(), radius);
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    void wholeSegmentAgreesWithQuadrature(String sphere, SurfaceOracle oracle) {
        assertAreas(oracle.whole(), surface(oracle).whole(), surface(oracle).whole(), oracle::toString);
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    void lineThroughACornerOfThePanelAgreesWithQuadrature(String sphere, SurfaceOracle oracle) {
        for (double angle : ANGLES) {
            assertAgrees(oracle, along(oracle.base(), -oracle.left(), angle), angle);
            assertAgrees(oracle, along(oracle.base(), oracle.right(), angle), angle);
        }
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    void lineThroughACornerOfTheSphericalSegmentAgreesWithQuadrature(String sphere, SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        double left = surface.reach(-oracle.left() / oracle.base());
        double right = surface.reach(oracle.right() / oracle.base());
        double toLeft = Math.atan2(-oracle.left(), oracle.base());
        double toRight = Math.atan2(oracle.right(), oracle.base());
        for (double angle : ANGLES) {
            assertAgrees(oracle, along(left * Math.cos(toLeft), left * Math.sin(toLeft), angle), angle);
            assertAgrees(oracle, along(right * Math.cos(toRight), right * Math.sin(toRight), angle), angle);
        }
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    void lineThatTouchesTheSeamLeavesTheWholeSegmentBelow(String sphere, SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        for (double angle : ANGLES) {
            BandLine direction = BandLine.of(0, Math.toRadians(angle));
            double extent = surface.extent(direction.cos(), direction.sin());
            Area below = surface.below(new BandLine(extent, direction.cos(), direction.sin()));
            assertEquals(
                    surface.whole().visible(),
                    below.visible(),
                    ACCURACY * surface.whole().visible());
            assertAgrees(oracle, extent, angle);
        }
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    void lineThatTouchesTheFlatOrTheSphereAgreesWithQuadrature(String sphere, SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        for (double angle : ANGLES) {
            assertAgrees(oracle, oracle.radius(), angle);
            assertAgrees(oracle, -oracle.radius(), angle);
            if (surface.flatRadius() > 0) {
                assertAgrees(oracle, surface.flatRadius(), angle);
                assertAgrees(oracle, -surface.flatRadius(), angle);
            }
        }
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    @Source(INVARIANT)
    void areaIsFiniteAndNeverFallsAsTheLineMovesOut(String sphere, SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        double size = oracle.base() + oracle.left() + oracle.right();
        double slack = ACCURACY * surface.whole().visible();
        for (double angle : ANGLES) {
            Area before = Area.NONE;
            for (int i = -200; i <= 200; i++) {
                Area below = surface.below(BandLine.of((i + 0.5) * size / 200, Math.toRadians(angle)));
                assertTrue(Double.isFinite(below.visible() + below.flat() + below.plan()));
                assertTrue(below.visible() >= before.visible() - slack, "visible at " + angle);
                assertTrue(below.flat() >= before.flat() - slack, "flat at " + angle);
                assertTrue(below.plan() >= before.plan() - slack, "plan at " + angle);
                before = below;
            }
            assertEquals(surface.whole().visible(), before.visible(), slack);
        }
    }

    @ParameterizedTest(name = "sphere {0}: {1}")
    @MethodSource("surfaces")
    void lineCloseToTheTipLeavesAlmostNothingOrAlmostAll(String sphere, SurfaceOracle oracle) {
        SegmentSurface surface = surface(oracle);
        double whole = surface.whole().visible();
        for (double share : new double[] {1e-6, 1e-9, 1e-12}) {
            double below = surface.below(BandLine.of(share * oracle.base(), 0)).visible();
            double flatTriangle = share * share * oracle.base() * (oracle.left() + oracle.right()) / 2;
            assertEquals(flatTriangle, below, 1e-9 * flatTriangle);
            for (double angle : ANGLES) {
                assertAgrees(oracle, share * oracle.base(), angle);
                assertAgrees(oracle, -share * oracle.base(), angle);
            }
        }
        assertEquals(0, surface.below(BandLine.of(-1e-12 * oracle.base(), 0)).visible(), ACCURACY * whole);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1, 1e5})
    @Source(INVARIANT)
    void straightLineThroughTheTipLeavesNothingBelow(double scale) {
        SegmentSurface surface = surface(dodecahedron(scale, 0));
        assertEquals(new Area(0, 0, 0), surface.below(BandLine.of(0.0, 0.0)));
        assertEquals(0, surface.below(BandLine.of(-0.0, -0.0)).visible());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1, 1e5})
    @Source(INVARIANT)
    void negativeZeroAngleIsZero(double scale) {
        SurfaceOracle oracle = dodecahedron(scale, 0);
        double offset = oracle.base() / 3;
        assertEquals(
                surface(oracle).below(BandLine.of(offset, 0.0)), surface(oracle).below(BandLine.of(offset, -0.0)));
    }

    @Test
    @DisplayName("a right angle halves a symmetric segment just beside its axis")
    @Source(INVARIANT)
    void lineAtARightAngleBesideTheAxisHalvesASymmetricSegment() {
        SegmentSurface surface = surface(dodecahedron(50, 0));
        double half = surface.below(BandLine.of(1e-13, Math.PI / 2)).visible();
        assertEquals(
                surface.whole().visible() / 2, half, ACCURACY * surface.whole().visible());
    }

    @Test
    @DisplayName("the sphere at the joint distance ends at 85.1 % of a dodecahedron's base distance at the edge middle "
            + "and at 79.5 % at the corner (common practice, no source)")
    @Source(
            value = HAND,
            text = "1 - g / rho and 1 - g / R of a dodecahedron: inradius 1.1135, midradius 1.3090, circumradius "
                    + "1.4013")
    void dodecahedronLosesARimOfKnownWidth() {
        SurfaceOracle oracle = dodecahedron(1, 0);
        SegmentSurface surface = surface(oracle);
        double corner = surface.reach(oracle.right() / oracle.base()) * Math.cos(Math.PI / 5);
        assertEquals(0.149, 1 - surface.reach(0) / oracle.base(), 5e-4);
        assertEquals(0.205, 1 - corner / oracle.base(), 5e-4);
    }

    @Test
    @Source(value = HAND, text = "1 - g / rho of a dodecahedron, 1 - 1.1135163644 / 1.3090169944 = 0.14935")
    void bandNarrowerThanTheLostRimIsGone() {
        SurfaceOracle oracle = dodecahedron(1, 0);
        SegmentSurface surface = surface(oracle);
        Area below = surface.below(BandLine.of(oracle.base() * (1 - 0.1493), 0));
        assertEquals(surface.whole().visible(), below.visible(), ACCURACY);
    }

    private static double along(double x, double y, double degrees) {
        double angle = Math.toRadians(degrees);
        return x * Math.cos(angle) + y * Math.sin(angle);
    }

    private static void assertAgrees(SurfaceOracle oracle, double offset, double degrees) {
        BandLine line = BandLine.of(offset, Math.toRadians(degrees));
        SegmentSurface surface = surface(oracle);
        assertAreas(oracle.below(line), surface.below(line), surface.whole(), () -> oracle + " " + line);
    }

    private static SegmentSurface surface(SurfaceOracle o) {
        return new SegmentSurface(o.joint(), o.face(), o.base(), o.left(), o.right(), o.radius());
    }
}
